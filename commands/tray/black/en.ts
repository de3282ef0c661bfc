export const en = {
  stainFirst: "A time that stains is longer than the least for full black: check which is which.",
  outside: (seconds: string) =>
    `At the temperature of the line's own times that is ${seconds}, which no print is developed for. Check the temperature.`,
  usable: (least: string, most: string) => `**${least} to ${most}**: from full black to where it stains.`,
  rule: "A print stays between the least time and twice that; under it more exposure can't give full black (Clerc, 556). No plan goes under it from now on.",
  raised: (least: string, at: string) =>
    `The developer's own time is shorter: plans take ${least} at ${at} instead.`,
};
export type BlackWords = typeof en;
