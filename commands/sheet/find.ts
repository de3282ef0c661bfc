import { type Dilution, makeDilution, type Sheet } from "../../store/shapes/sheet.ts";
import { foldName } from "./names.ts";

/* Choosing among a class's sheets by what was typed. */

export interface Wanted {
  readonly film?: string | undefined;
  readonly developer?: string | undefined;
  readonly dilution?: Dilution | undefined;
}

/** The sheets that fit all that was said. */
export function matchSheets(sheets: readonly Sheet[], wanted: Wanted): Sheet[] {
  const isNamed = (typed: string | undefined, name: string): boolean =>
    typed === undefined || foldName(typed) === foldName(name);
  return sheets.filter(
    (sheet) =>
      isNamed(wanted.film, sheet.film) &&
      isNamed(wanted.developer, sheet.developer) &&
      (wanted.dilution === undefined || makeDilution(sheet.dilution) === makeDilution(wanted.dilution)),
  );
}

/** Offers for a name while it is typed: each once, those that begin with it first. */
export function offerNames(typed: string, names: readonly string[]): string[] {
  const wanted = foldName(typed);
  return [...new Set(names)]
    .filter((name) => foldName(name).includes(wanted))
    .sort((a, b) => startRank(a, wanted) - startRank(b, wanted) || a.localeCompare(b))
    .slice(0, 25);
}

function startRank(name: string, wanted: string): number {
  return foldName(name).startsWith(wanted) ? 0 : 1;
}
