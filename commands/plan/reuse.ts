import { fail, ok, type Result } from "../result.ts";
import type { Reuse, Sheet } from "../../store/shapes/sheet.ts";

export type ReuseFault =
  | { readonly code: "ERR_ONE_SHOT"; readonly filmsDone: number }
  | { readonly code: "ERR_USED_UP"; readonly filmsDone: number; readonly maxFilms: number };

/** Seconds a used developer needs, by the maker's rule on the sheet. `filmsDone` counts films in each litre before this one. */
export function reusedSeconds(
  sheet: Pick<Sheet, "reuse">,
  seconds: number,
  filmsDone: number,
): Result<number, ReuseFault> {
  if (filmsDone === 0) return ok(seconds);
  if (!sheet.reuse) return fail({ code: "ERR_ONE_SHOT", filmsDone });
  if (filmsDone >= sheet.reuse.maxFilms)
    return fail({ code: "ERR_USED_UP", filmsDone, maxFilms: sheet.reuse.maxFilms });
  return ok(seconds + addedSeconds(sheet.reuse, seconds, filmsDone));
}

function addedSeconds(
  { everyFilms, addPercent, addSeconds }: Reuse,
  seconds: number,
  filmsDone: number,
): number {
  const times = Math.floor(filmsDone / everyFilms);
  return times * ((seconds * addPercent) / 100 + addSeconds);
}
