import { fail, ok, type Result } from "../result.ts";
import { countOf, formatDilution, joinAnd, plain } from "../wording.ts";
import { matchSheets, type Wanted } from "./find.ts";
import { foldName, nearestNames } from "./names.ts";
import type { Sheet } from "./sheet.ts";

/* One sheet by what was typed, or why not; /sheet and /plan say it in the same words. */

export interface PickFault {
  readonly code: "ERR_NO_SHEETS" | "ERR_UNKNOWN_FILM" | "ERR_UNKNOWN_PAIR" | "ERR_SEVERAL_SHEETS";
  readonly text: string;
  /** The sheets that come near. */
  readonly near: readonly Sheet[];
}

export const NO_SHEETS =
  "This class has no sheets yet. A sheet holds the maker's times for one film in one developer. An aide or the teacher adds one with `/sheet add`.";

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
  return joinAnd(rest > 0 ? [...some, `${rest} more`] : some);
}

function severalFault(found: readonly Sheet[]): PickFault {
  const text = `Several sheets fit: ${list(found)}. Say which developer and dilution.`;
  return { code: "ERR_SEVERAL_SHEETS", text, near: found };
}

function noneFault(sheets: readonly Sheet[], wanted: Wanted & { film: string }): PickFault {
  if (sheets.length === 0) return { code: "ERR_NO_SHEETS", text: NO_SHEETS, near: [] };
  const ofFilm = sheets.filter((sheet) => foldName(sheet.film) === foldName(wanted.film));
  if (ofFilm.length > 0) {
    const text = `There is no sheet for ${plain(ofFilm[0]?.film ?? "")} with that developer and dilution. There ${ofFilm.length === 1 ? "is" : "are"} ${list(ofFilm)}.`;
    return { code: "ERR_UNKNOWN_PAIR", text, near: ofFilm };
  }
  const names = nearestNames(
    wanted.film,
    sheets.map(({ film }) => film),
  );
  const typed = plain(wanted.film.slice(0, 60));
  const hint =
    names.length > 0
      ? `Did you mean ${names.map(plain).join(" or ")}?`
      : `See the ${countOf(sheets.length, "sheet")} there are with \`/sheet list\`.`;
  const near = sheets.filter(({ film }) => names.includes(film));
  return { code: "ERR_UNKNOWN_FILM", text: `I know no film "${typed}". ${hint}`, near };
}
