import { countOf } from "../../speech/wording.ts";

const KEPT =
  "one line for each film, the unit in each name. It holds names and notes: keep it as you keep a class list.";

export const en = {
  exported: (count: number, format: string) => `**${countOf(count, "roll")}** as ${format}: ${KEPT}`,
  exportedMany: (count: number, format: string) =>
    `**More than ${count.toLocaleString("en")} rolls** as ${format}: ${KEPT}`,
  rest: (roll: string, format: string) => `**The rolls before ${roll}** as ${format}: ${KEPT}`,
  noSuchRoll: (typed: string) => `There is no roll ${typed}. Write its number, like L1200.`,
};
export type ExportWords = typeof en;
