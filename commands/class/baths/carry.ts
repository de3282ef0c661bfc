import { pointDecimal } from "../../speech/decimal.ts";
import { SQ_IN_PER_ROLL } from "../../batch/area.ts";

/* What film carries over, as people write it. */

const CM2_PER_SQ_IN = 6.4516;
const CM2_PER_ROLL = SQ_IN_PER_ROLL * CM2_PER_SQ_IN;

const TEXT = /^(\d{1,4}(?:[.,]\d{1,4})?) ?ml ?(?:(?:\/|per|je|pro|a) ?(roll|film|cm2|cm²|m2|m²))?$/i;

/** ml to 0.1 for a roll of 80 sq in (516 cm2): `20 ml`, `20 ml/roll`, `0.04 ml/cm2`, `400 ml/m2`; undefined: not so written. */
export function parseCarry(text: string): number | undefined {
  const match = TEXT.exec(text.normalize("NFKC").trim());
  if (!match) return undefined;
  const value = Number(pointDecimal(match[1] ?? ""));
  const unit = (match[2] ?? "roll").toLowerCase();
  const ml = unit === "cm2" ? value * CM2_PER_ROLL : unit === "m2" ? (value * CM2_PER_ROLL) / 10_000 : value;
  return Math.round(ml * 10) / 10;
}
