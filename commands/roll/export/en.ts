import { countOf } from "../../speech/wording.ts";

export const en = {
  exported: (count: number, format: string) =>
    `**${countOf(count, "roll")}** as ${format}: one line for each film, the unit in each name. It holds names and notes: keep it as you keep a class list.`,
  more: (page: number) => `There are more: add \`page:${page}\` for the next.`,
};
export type ExportWords = typeof en;
