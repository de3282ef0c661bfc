import { countOf } from "../../speech/wording.ts";

const KEPT =
  "one line for each, the unit in each name. It holds names and notes: keep it as you keep a class list.";

export const en = {
  exported: (count: number, format: string) => `**${countOf(count, "print")}** as ${format}: ${KEPT}`,
  exportedMany: (count: number, format: string) =>
    `**More than ${count.toLocaleString("en")} prints** as ${format}: ${KEPT}`,
  rest: (print: string, format: string) => `**The prints before ${print}** as ${format}: ${KEPT}`,
};
export type ExportWords = typeof en;
