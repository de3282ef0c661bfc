export const en = {
  noExposure: "Say how long it was exposed: `seconds:12.5`, or `as:V7` for one made like another.",
  unknownRoll: (typed: string) => `There is no roll ${typed}. Find it with \`/roll find\`.`,
  logged: (print: string) => `**${print} is in the log.** Write that on its back in pencil.`,
  rate: "Once it is dry, rate it: 1 (unusable) to 5 (as you wanted it).",
};
export type LogWords = typeof en;
