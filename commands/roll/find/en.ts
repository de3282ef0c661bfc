import type { ValueKind } from "../../../store/rolls.ts";
import { countOf } from "../../speech/wording.ts";

const KINDS: Record<ValueKind, string> = {
  film: "film",
  developer: "developer",
  person: "person",
  fault: "fault",
};

export const en = {
  empty: "The log is empty yet: a run that ends writes a roll into it.",
  noneLike: "No roll in the log is like that. Leave one option out or widen the days.",
  tooFar: "Nobody pages that far: narrow the search down, by film, person or `when:`.",
  pagesOnly: (pages: number) => `There are only ${countOf(pages, "page")}.`,
  head: (count: number) => `**${countOf(count, "roll")}**.`,
  headOfPages: (count: number, page: number, pages: number) =>
    `**${countOf(count, "roll")}**, page ${page} of ${pages}.`,
  headCapped: (count: number, page: number) => `**More than ${count} rolls**, page ${page}.`,
  stopped: (count: number) => `${count} stopped`,
  late: (count: number) => `${count} with late calls`,
  faulty: (count: number) => `${count} with a fault`,
  average: (average: string, count: number) => `${average} of 5 on average (${count} rated)`,
  ofNewest: (count: number, totals: string) => `Of the newest ${count}: ${totals}.`,
  ofAll: (totals: string) => `${totals}.`,
  newer: "Newer",
  older: "Older",
  roll: (name: string, person: string, film: string, exposureIndex: number, developer: string) =>
    `${name} ${person}: ${film} at EI ${exposureIndex} in ${developer}`,
  neverDeveloped: "never developed",
  wasStopped: "stopped",
  rated: (rating: number) => `rated ${rating} of 5`,
  fault: (fault: string) => `fault: ${fault}`,
  unknownValue: (kind: ValueKind, typed: string, near: readonly string[]) =>
    `The log has no ${KINDS[kind]} "${typed}".${near.length > 0 ? ` Did you mean ${near.join(" or ")}?` : ""}`,
  daysOrder: "The first day comes after the last one. Put them the other way round.",
};
export type FindWords = typeof en;
