import { inEach } from "../speech/language.ts";
import type { Instead } from "../define.ts";
import { fail, ok, type Result } from "../result.ts";
import { formatDilution, joinAnd, plain, quoted } from "../speech/wording.ts";
import { matchSheets, type Wanted } from "./find.ts";
import { foldName, nearestNames } from "./names.ts";
import { makeDilution, type Sheet } from "../../store/shapes/sheet.ts";
import { de } from "./words/pick.de.ts";
import { en } from "./words/pick.en.ts";

/* One sheet by what was typed, or why not; /sheet and /plan say it in the same words. */

const words = inEach({ en, de });

export interface PickFault {
  readonly code: "ERR_NO_SHEETS" | "ERR_UNKNOWN_FILM" | "ERR_UNKNOWN_PAIR" | "ERR_SEVERAL_SHEETS";
  readonly text: string;
  /** The sheets that come near. */
  readonly near: readonly Sheet[];
}

/** The ways in which a call that named no one sheet would do. `labelOf`: what stands on a sheet's button. */
export function insteadOf(
  { code, near }: PickFault,
  labelOf: (sheet: Sheet) => string = bathLabel,
): Instead[] {
  if (code === "ERR_UNKNOWN_FILM")
    return [...new Set(near.map(({ film }) => film))].map((film) => ({
      label: plain(film),
      options: { film },
    }));
  return near.slice(0, MOST_NEAR).map((sheet) => {
    const { film, developer, dilution } = sheet;
    return { label: labelOf(sheet), options: { film, developer, dilution: makeDilution(dilution) } };
  });
}

/** `House MQ 1+1`. */
export function bathLabel({ developer, dilution }: Pick<Sheet, "developer" | "dilution">): string {
  return `${plain(developer)} ${formatDilution(dilution)}`;
}

export const noSheets = (): string => words().noSheets;

const MOST_NEAR = 6;

export function pickSheet(
  sheets: readonly Sheet[],
  wanted: Wanted & { film: string },
): Result<Sheet, PickFault> {
  const found = matchSheets(sheets, wanted);
  const [sheet] = found;
  if (sheet && found.length === 1) return ok(sheet);
  return fail(sheet ? severalFault(found) : noneFault(sheets, wanted));
}

/** `Lantern 400 in House MQ 1+9`. */
export function sheetName(sheet: Pick<Sheet, "film" | "developer" | "dilution">): string {
  return `${plain(sheet.film)} in ${plain(sheet.developer)} ${formatDilution(sheet.dilution)}`;
}

function list(sheets: readonly Sheet[]): string {
  const some = sheets.slice(0, MOST_NEAR).map(sheetName);
  const rest = sheets.length - some.length;
  return joinAnd(rest > 0 ? [...some, words().more(rest)] : some);
}

function severalFault(found: readonly Sheet[]): PickFault {
  return { code: "ERR_SEVERAL_SHEETS", text: words().several(list(found)), near: found };
}

function noneFault(sheets: readonly Sheet[], wanted: Wanted & { film: string }): PickFault {
  if (sheets.length === 0) return { code: "ERR_NO_SHEETS", text: noSheets(), near: [] };
  const ofFilm = sheets.filter((sheet) => foldName(sheet.film) === foldName(wanted.film));
  if (ofFilm.length > 0) {
    const text = words().noPair(plain(ofFilm[0]?.film ?? ""), ofFilm.length, list(ofFilm));
    return { code: "ERR_UNKNOWN_PAIR", text, near: ofFilm };
  }
  const names = nearestNames(
    wanted.film,
    sheets.map(({ film }) => film),
  );
  const typed = quoted(plain(wanted.film.slice(0, 60)));
  const text =
    names.length > 0 ? words().meant(typed, names.map(plain)) : words().unknown(typed, sheets.length);
  const near = sheets.filter(({ film }) => names.includes(film));
  return { code: "ERR_UNKNOWN_FILM", text, near };
}
