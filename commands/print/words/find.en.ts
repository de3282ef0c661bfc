export const en = {
  noSuchRoll: (typed: string) => `I can't read ${typed} as a roll. Write it like L12.`,
};
export type FindOptionWords = typeof en;
