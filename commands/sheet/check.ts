import { isScheme } from "../speech/measure.ts";
import type { Point, Sheet } from "../../store/shapes/sheet.ts";

/* What can't be true of a sheet. */

export type SheetFault =
  /** The hotter bath (or the lower exposure index) is given the longer time. */
  | { readonly code: "ERR_CONTRADICTION"; readonly first: Point; readonly second: Point }
  /** Two times for one temperature and exposure index. */
  | { readonly code: "ERR_TWO_TIMES"; readonly first: Point; readonly second: Point }
  | { readonly code: "ERR_OUTSIDE_RANGE"; readonly point: Point; readonly min: number; readonly max: number }
  | { readonly code: "ERR_EMPTY_RANGE"; readonly min: number; readonly max: number }
  | { readonly code: "ERR_SCHEME" };

/** Every fault, with the two rows named where two disagree. A sheet without faults gives a curve that never turns. */
export function checkSheet(sheet: Sheet): SheetFault[] {
  const faults: SheetFault[] = [];
  for (const [at, first] of sheet.points.entries()) {
    for (const second of sheet.points.slice(at + 1)) {
      const fault = compare(first, second);
      if (fault) faults.push(fault);
    }
  }
  return [...faults, ...rangeFaults(sheet), ...schemeFaults(sheet)];
}

function compare(a: Point, b: Point): SheetFault | undefined {
  if (a.tenthsC === b.tenthsC && a.exposureIndex === b.exposureIndex)
    return { code: "ERR_TWO_TIMES", first: a, second: b };
  const isFaster = (x: Point, y: Point): boolean =>
    x.tenthsC >= y.tenthsC && x.exposureIndex <= y.exposureIndex;
  if (isFaster(a, b) && a.seconds > b.seconds) return { code: "ERR_CONTRADICTION", first: b, second: a };
  if (isFaster(b, a) && b.seconds > a.seconds) return { code: "ERR_CONTRADICTION", first: a, second: b };
  return undefined;
}

function rangeFaults({ points, minTenthsC, maxTenthsC }: Sheet): SheetFault[] {
  const [min, max] = [minTenthsC ?? -Infinity, maxTenthsC ?? Infinity];
  if (min > max) return [{ code: "ERR_EMPTY_RANGE", min, max }];
  return points
    .filter(({ tenthsC }) => tenthsC < min || tenthsC > max)
    .map((point) => ({ code: "ERR_OUTSIDE_RANGE", point, min, max }));
}

function schemeFaults({ agitation }: Sheet): SheetFault[] {
  const { initialSeconds, burstSeconds, cycleSeconds, manner } = agitation;
  if (manner === "continuous" || isScheme(initialSeconds, burstSeconds, cycleSeconds)) return [];
  return [{ code: "ERR_SCHEME" }];
}
