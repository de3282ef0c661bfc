import { NAVY_TANK } from "./agitation.ts";
import type { Agitation, Dilution, Point, Reuse, Sheet } from "../../store/shapes/sheet.ts";
import { fail, ok, type Result } from "../result.ts";
import { checkSheet, type SheetFault } from "./check.ts";

/* Adding a row to a sheet, or beginning one. */

export interface SheetEdit {
  readonly film: string;
  readonly developer: string;
  readonly dilution: Dilution;
  readonly tenthsC: number;
  readonly seconds: number;
  /** null: the film's own speed. */
  readonly exposureIndex: number | null;
  readonly source: string;
  /** Take the place of a row of the same temperature and exposure index. */
  readonly replace: boolean;
  /** What is said of the whole sheet; null: as it is. */
  readonly boxSpeed: number | null;
  readonly agitation: Agitation | null;
  readonly factorPer10C: number | null;
  readonly minTenthsC: number | null;
  readonly maxTenthsC: number | null;
  readonly minConcentrateMl: number | null;
  readonly tabularGrain: boolean | null;
  readonly reuse: Reuse | null;
}

export type EditFault =
  | { readonly code: "ERR_NO_SPEED" }
  | { readonly code: "ERR_SHEET_FULL" }
  | { readonly code: "ERR_SHEET_FAULTS"; readonly faults: readonly SheetFault[] };

const MOST_POINTS = 200;

/** The sheet with the row in it; refused whole where the row contradicts another. */
export function addRow(before: Sheet | undefined, edit: SheetEdit): Result<Sheet, EditFault> {
  const boxSpeed = edit.boxSpeed ?? before?.boxSpeed ?? edit.exposureIndex;
  if (boxSpeed === null) return fail({ code: "ERR_NO_SPEED" });
  const point: Point = {
    tenthsC: edit.tenthsC,
    exposureIndex: edit.exposureIndex ?? boxSpeed,
    seconds: edit.seconds,
    source: edit.source,
  };
  const kept = (before?.points ?? []).filter(
    (each) => !edit.replace || each.tenthsC !== point.tenthsC || each.exposureIndex !== point.exposureIndex,
  );
  if (kept.length >= MOST_POINTS) return fail({ code: "ERR_SHEET_FULL" });
  const sheet: Sheet = {
    film: before?.film ?? edit.film,
    developer: before?.developer ?? edit.developer,
    dilution: { concentrateParts: edit.dilution.concentrateParts, waterParts: edit.dilution.waterParts },
    boxSpeed,
    points: sortPoints([...kept, point]),
    agitation: edit.agitation ?? before?.agitation ?? NAVY_TANK,
    factorPer10C: edit.factorPer10C ?? before?.factorPer10C ?? null,
    minTenthsC: edit.minTenthsC ?? before?.minTenthsC ?? null,
    maxTenthsC: edit.maxTenthsC ?? before?.maxTenthsC ?? null,
    minConcentrateMl: edit.minConcentrateMl ?? before?.minConcentrateMl ?? null,
    tabularGrain: edit.tabularGrain ?? before?.tabularGrain ?? false,
    reuse: edit.reuse ?? before?.reuse ?? null,
    source: before?.source ?? edit.source,
  };
  const faults = checkSheet(sheet);
  return faults.length > 0 ? fail({ code: "ERR_SHEET_FAULTS", faults }) : ok(sheet);
}

/** By exposure index, then from cold to hot. */
export function sortPoints(points: readonly Point[]): Point[] {
  return [...points].sort((a, b) => a.exposureIndex - b.exposureIndex || a.tenthsC - b.tenthsC);
}
