export const en = {
  taken: (typed: string, value: string) => `I took "${typed}" for ${value}.`,
};
export type TakenWords = typeof en;
