export const en = {
  nameless: (number: number) => `Enlarger ${number}`,
  check: "What you left out stands as usual: condenser, 50 mm, steps of 0.5 s. Say it if that is wrong.",
  removed: (name: string) => `Enlarger ${name} is off the list. Prints made with it keep what it was.`,
};
export type EnlargerWords = typeof en;
