export const en = {
  noStrength: (typed: string) =>
    `${typed} can't be had by adding water: the first per cent is what you have, the second, lower one what you want, like 28% to 2%.`,
};
export type StrengthWords = typeof en;
