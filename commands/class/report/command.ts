import { isFixer } from "../../../store/shapes/batch.ts";
import { z } from "zod";
import { collectedFrom, NOTHING } from "../../batch/silver.ts";
import type { Collected } from "../../../store/shapes/shelf.ts";
import { type Context, defineCommand, UserError } from "../../define.ts";
import { parseDays } from "../../roll/dates.ts";
import { NO_DAY } from "../../roll/day-words.ts";
import { EVERY_PRINT } from "../../../store/shapes/print.ts";
import { reportOf } from "./report.ts";
import * as words from "./reply.ts";
import { whoMay } from "../../who.ts";

const MOST_ROLLS = 10_000;
const MOST_PRINTS = 10_000;

export const classReport = defineCommand({
  name: "class report",
  summary: "The term on one page: rolls a week, calls on time, development, faults, chemistry, silver",
  options: () => ({
    when: z
      .string()
      .trim()
      .min(1)
      .max(20)
      .default("12 weeks")
      .describe("Which days: 12 weeks, 2026-03, this year"),
  }),
  who: whoMay("class report"),
  visibility: "private",
  rest: "when",
  handle({ when }, context) {
    const { class: school, stores, now } = context;
    const days = parseDays(when, school.zone, now);
    if (!days.ok) throw new UserError(days.fault.code, NO_DAY(days.fault.typed));
    const { fromMs, untilMs } = days.value;
    const rolls = stores.rolls.sums(school.id, fromMs, untilMs, MOST_ROLLS);
    const { prints } = stores.prints.search(school.id, { ...EVERY_PRINT, fromMs, untilMs }, MOST_PRINTS, 0);
    if (rolls.length === 0 && prints.length === 0) throw new UserError("ERR_NO_ROLLS", words.noRolls());
    const batches = stores.batches.list(school.id);
    const figures = reportOf({
      className: school.name,
      zone: school.zone,
      fromMs,
      untilMs,
      rolls,
      prints,
      mixed: batches
        .filter(({ mixedAtMs }) => mixedAtMs >= fromMs && mixedAtMs < untilMs)
        .map(({ kind }) => kind),
      silver: silverOf(context, fromMs, untilMs),
    });
    return words.reportReply(figures, school.zone, rolls.length === MOST_ROLLS);
  },
});

/** What went to the silver collection in this time: all until its end, less all before its beginning. */
function silverOf({ stores, class: { id } }: Context, fromMs: number, untilMs: number): Collected {
  return stores.batches
    .list(id)
    .filter(({ kind }) => isFixer(kind))
    .map((batch) => {
      const lines = stores.batches.lines(batch.id);
      const all = collectedFrom(
        batch,
        lines.filter(({ atMs }) => atMs < untilMs),
      );
      const before = collectedFrom(
        batch,
        lines.filter(({ atMs }) => atMs < fromMs),
      );
      return {
        ml: all.ml - before.ml,
        lowMg: all.lowMg - before.lowMg,
        highMg: all.highMg - before.highMg,
        measuredMl: all.measuredMl - before.measuredMl,
      };
    })
    .reduce(
      (sum, each) => ({
        ml: sum.ml + each.ml,
        lowMg: sum.lowMg + each.lowMg,
        highMg: sum.highMg + each.highMg,
        measuredMl: sum.measuredMl + each.measuredMl,
      }),
      NOTHING,
    );
}
