import type { LogWords } from "./en.ts";

export const de: LogWords = {
  noExposure:
    "Sag, wie lange belichtet wurde: `seconds:12,5`, oder `as:V7` für einen, der wie ein anderer gemacht ist.",
  unknownRoll: (typed) => `Einen Film ${typed} gibt es nicht. Such ihn mit \`/roll find\`.`,
  logged: (print) => `**${print} steht im Buch der Abzüge.** Schreib das mit Bleistift auf die Rückseite.`,
  rate: "Wenn er trocken ist, bewerte ihn: 1 (unbrauchbar) bis 5 (so wie gewollt).",
};
