import { countOf } from "../../speech/wording.ts";

export const en = {
  exported: (count: number, format: string) =>
    `**${countOf(count, "print")}** as ${format}: one line for each, the unit in each name. It holds names and notes: keep it as you keep a class list.`,
  more: (page: number) => `There are more: add \`page:${page}\` for the next.`,
};
export type ExportWords = typeof en;
