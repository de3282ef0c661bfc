import type { TrayLine } from "../../store/shapes/tray-line.ts";
import { USUAL_SECONDS } from "./develop.ts";

/** Where nobody says: drained for 10 s within the time (a class page); two trays of four and a wash of eight, our estimate. */
export const USUAL: Omit<TrayLine, "number" | "developer"> = {
  dilution: { concentrateParts: 1, waterParts: 9 },
  rcSeconds: USUAL_SECONDS["resin-coated"],
  fibreSeconds: USUAL_SECONDS.fibre,
  atTenthsC: 200,
  factorPer10C: null,
  factor: null,
  leastSeconds: null,
  stainSeconds: null,
  stop: "acid",
  baths: 1,
  drainSeconds: 10,
  developPlaces: 2,
  stopPlaces: 2,
  fixPlaces: 4,
  washPlaces: 8,
  isUsual: true,
};
