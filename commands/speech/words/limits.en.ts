export const en = {
  outside: (value: string, least: string, most: string) =>
    `${value} makes no sense here: it lies between ${least} and ${most}. Measure or read it again.`,
  ounces: (written: string) => `If you mean US fluid ounces, write ${written}.`,
};
export type LimitWords = typeof en;
