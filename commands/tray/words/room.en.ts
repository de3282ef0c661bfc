export const en = {
  full: (time: string, wait: string, ahead: number) =>
    `**Put it in at ${time}, in ${wait}.** Till then a tray on its way is full, and a print can't wait in the developer.${ahead > 0 ? ` ${ahead === 1 ? "One waits" : `${ahead} wait`} before you.` : ""} Keep the paper in the dark: I call you.`,
  tooSmall: (prints: number) =>
    `${prints === 1 ? "A sheet of this size has" : `${prints} sheets have`} no room in these trays at once. Take fewer, or set the places with \`/tray set\`.`,
  anyway: "It is in already",
  washAnew: (wash: string, until: string) =>
    `**A wet print came into the wash: wash ${wash} again**, until ${until}. What it carries in goes to all.`,
};
export type RoomWords = typeof en;
