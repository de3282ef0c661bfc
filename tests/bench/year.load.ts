import { mkdtempSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { openSchool } from "../support/school-year.ts";
import { sizeOf, type StoreSize } from "../support/store-size.ts";
import { percentile, table } from "./whole-bot-figures.ts";

/*
 * `npm run bench:year`: a school year on one store, 40 weeks of ten periods with thirty films each. At the end of every four weeks:
 *   file     the store's file, MB
 *   log      what a school keeps for ever: rolls with their index of words, bottles with their ledgers, people, tanks, times
 *   passing  what is cleared by age
 *   free     pages that were cleared and are used again
 * and what a portion of clearing takes of a processor, in the middle and at the slow end.
 * `WEEKS` and `FILMS` (a period's) make it shorter; `FOLDER` says where it lies, best in memory.
 */

const WEEKS = Number(process.env.WEEKS ?? 40);
const FILMS = Number(process.env.FILMS ?? 30);
const GROUPS = 10;
const MONTH_WEEKS = 4;

test("a school year", { timeout: 4 * 3_600_000 }, async () => {
  const folder = mkdtempSync(join(process.env.FOLDER ?? tmpdir(), "sinkside-year-"));
  const path = join(folder, "sinkside.db");
  const school = openSchool(path, {
    groups: GROUPS,
    filmsAPeriod: FILMS,
    ages: { messagesDays: 28, runsDays: 28 },
  });
  // Nothing is killed here: what a flush of the disk costs is not the question.
  school.stores.db.pragma("synchronous = OFF");
  const sizes: StoreSize[] = [];
  const rows: Record<string, string | number>[] = [];
  const mb = (bytes: number): string => (bytes / 2 ** 20).toFixed(1);
  for (let week = 1; week <= WEEKS; week += 1) {
    await school.week();
    school.stores.db.pragma("wal_checkpoint(TRUNCATE)");
    if (week % MONTH_WEEKS !== 0) continue;
    const size = sizeOf(school.stores);
    sizes.push(size);
    rows.push({
      month: week / MONTH_WEEKS,
      films: school.films,
      "file MB": mb(statSync(path).size),
      "log MB": mb(size.kept),
      "passing MB": mb(size.passing),
      "free MB": mb(size.free),
      "file less log MB": mb(size.file - size.kept),
      "a portion, CPU ms": percentile(school.clearing, 0.5).toFixed(1),
      "99 of 100": percentile(school.clearing, 0.99).toFixed(1),
    });
    console.log(table(rows));
  }
  expect(school.faults()).toEqual([]);
  expect(school.films).toBe(WEEKS * GROUPS * FILMS);
  // Flat after the first month: what the log does not need is no more than it was, give or take a page split otherwise.
  const rest = sizes.map(({ file, kept }) => file - kept);
  for (const each of rest.slice(2)) expect(each).toBeLessThan((rest[1] ?? 0) * 1.05);
  school.stores.close();
  rmSync(folder, { recursive: true });
});
