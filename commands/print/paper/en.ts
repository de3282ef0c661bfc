export const en = {
  noName: (paper: string) =>
    `There is no box ${paper} yet. Say what is on it: \`name:\`, \`kind:\` and \`size:\`.`,
  check: "What you left out stands as usual: resin-coated, 18x24 cm. Say it if that is wrong.",
  newLot:
    "A new lot: what was measured of the old one no longer counts. Make a strip on both and tell me with `/print measure`.",
  removed: (paper: string) => `Box ${paper} is off the list. Prints made on it keep what it was.`,
};
export type PaperWords = typeof en;
