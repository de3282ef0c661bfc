import { isFilmPlan } from "../../store/shapes/tray.ts";
import type { Action } from "../define.ts";
import { developTime } from "../plan/quick.ts";
import { sayTimeOf } from "../plan/time-words.ts";
import { matchSheets } from "../sheet/find.ts";
import { bathLabel, sheetName } from "../sheet/pick.ts";
import { fitsKey, makeLine } from "../speech/line.ts";
import { makeTemperature } from "../speech/measure.ts";
import { formatBothScales, formatSeconds, plain } from "../speech/wording.ts";
import { makeDilution, type Sheet } from "../../store/shapes/sheet.ts";
import type { Answer } from "./shape.ts";
import type { Facts } from "./facts.ts";
import type { Reading } from "./read.ts";
import { askWords as words } from "./words.ts";

/* How long a film takes, as a plan would say it, and the key that makes that plan. */

/** What most sheets are printed for; said to be an assumption. */
const USUAL_TENTHS_C = 200;
const MOST_KEYS = 5;

export function timeAnswer(reading: Reading, facts: Facts): Answer {
  const { things } = reading;
  const meant = sheetsMeant(reading, facts);
  if (facts.sheets.length === 0) return { text: words().noFilms, keys: [] };
  if (meant.length === 0) return whichFilm(reading, facts);
  const tenthsC = things.tenthsC ?? USUAL_TENTHS_C;
  const timed = meant.map((sheet) => ({
    sheet,
    time: developTime(sheet, tenthsC, { exposureIndex: things.exposureIndex }, facts.habits),
  }));
  const shown = timed.slice(0, MOST_KEYS);
  const isOneFilm = new Set(shown.map(({ sheet }) => sheet.film)).size === 1;
  const nameOf = isOneFilm ? bathLabel : sheetName;
  const lines = shown.map(({ sheet, time }) =>
    time === null
      ? words().noTime(sheetName(sheet), formatBothScales(tenthsC))
      : words().timeAt(sayTimeOf(time, tenthsC, sheet), things.exposureIndex ?? sheet.boxSpeed),
  );
  const text = [
    ...lines,
    ...(things.tenthsC === null ? [words().twenty] : []),
    ...(shown.length > 1 ? [words().chooseSheet] : []),
  ].join("\n");
  const keys = shown.flatMap(({ sheet, time }): Action[] => {
    if (time === null) return [];
    const label =
      shown.length === 1 ? words().planKey : words().timeKey(formatSeconds(time.seconds), nameOf(sheet));
    return keyFor(label, sheet, tenthsC, things);
  });
  return { text, keys };
}

/** By name; where none is named, the film of today's plan, or the only one there is. */
function sheetsMeant({ things }: Reading, { sheets, plan }: Facts): readonly Sheet[] {
  const named = (films: readonly string[]): Sheet[] =>
    films.flatMap((film) =>
      matchSheets(sheets, {
        film,
        developer: things.developer ?? undefined,
        dilution: things.dilution ?? undefined,
      }),
    );
  if (things.films.length > 0) {
    const found = named(things.films);
    return found.length > 0 ? found : things.films.flatMap((film) => matchSheets(sheets, { film }));
  }
  if (plan && isFilmPlan(plan.plan)) {
    const { film, developer, dilution } = plan.plan.sheet;
    return matchSheets(sheets, { film, developer, dilution });
  }
  const all = [...new Set(sheets.map(({ film }) => film))];
  return all.length === 1 ? named(all) : [];
}

function keyFor(
  label: string,
  sheet: Sheet,
  tenthsC: number,
  { exposureIndex, tank }: Pick<Reading["things"], "exposureIndex" | "tank">,
): Action[] {
  const line = makeLine("plan", {
    film: sheet.film,
    developer: sheet.developer,
    dilution: makeDilution(sheet.dilution),
    temp: makeTemperature(tenthsC),
    ...(exposureIndex === null ? {} : { ei: exposureIndex }),
    ...(tank === null ? {} : { tank }),
  });
  return fitsKey(line) ? [{ label, line, weight: "main" }] : [];
}

function whichFilm({ things }: Reading, { sheets }: Facts): Answer {
  const films = [...new Set(sheets.map(({ film }) => film))];
  const more = things.tenthsC === null ? "" : ` ${makeTemperature(things.tenthsC)}`;
  const keys = films.slice(0, MOST_KEYS).flatMap((film): Action[] => {
    const line = makeLine("ask", { text: `${film}${more}`, as: "time" });
    return fitsKey(line) ? [{ label: plain(film), line }] : [];
  });
  return { text: [words().whichFilm, words().sayFilm].join("\n"), keys };
}
