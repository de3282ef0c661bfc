import type { FieldValue } from "../define.ts";
import { makeDilution, type Sheet } from "../../store/shapes/sheet.ts";

/** A sheet as a reply's fields hold it. */
export function fieldsOf(sheet: Sheet): { readonly [key: string]: FieldValue } {
  return {
    film: sheet.film,
    developer: sheet.developer,
    dilution: makeDilution(sheet.dilution),
    boxSpeed: sheet.boxSpeed,
    minTenthsC: sheet.minTenthsC,
    maxTenthsC: sheet.maxTenthsC,
    factorPer10C: sheet.factorPer10C,
    minConcentrateMl: sheet.minConcentrateMl,
    tabularGrain: sheet.tabularGrain,
    source: sheet.source,
    points: sheet.points.map((point) => ({ ...point })),
  };
}
