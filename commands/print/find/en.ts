import { countOf } from "../../speech/wording.ts";

export const en = {
  empty: "The log of prints is empty. `/print log` writes the first one.",
  noneLike: "No print is like that. Leave one option out or widen the days.",
  pagesOnly: (pages: number) => `There ${pages === 1 ? "is 1 page" : `are ${pages} pages`} only.`,
  head: (total: number) => `**${countOf(total, "print")}**`,
  headOfPages: (total: number, page: number, pages: number) =>
    `**${countOf(total, "print")}**, page ${page} of ${pages}`,
  rated: (rating: number) => `rated ${rating}`,
  fault: (fault: string) => `fault: ${fault}`,
  newer: "Newer",
  older: "Older",
};
export type FindWords = typeof en;
