import type { PaperSize } from "../../store/shapes/paper.ts";
import { parseSize } from "../print/sizes.ts";

/* Sheets by the names they are sold under, to be picked with one tap. */

export const SIZE_NAMES = [
  "9x13 cm",
  "13x18 cm",
  "18x24 cm",
  "20x25 cm",
  "24x30 cm",
  "30x40 cm",
  "40x50 cm",
  "5x7 in",
  "8x10 in",
  "9.5x12 in",
  "11x14 in",
  "12x16 in",
  "16x20 in",
] as const;
export type SizeName = (typeof SIZE_NAMES)[number];

export function sizeNamed(name: SizeName): PaperSize {
  const size = parseSize(name);
  if (!size.ok) throw new Error(`no size of paper is called ${name}`);
  return size.value;
}

const AREA_8X10 = 203 * 254;

/** How many places of 8x10 in sheets of this size take in a tray, each at least one. */
export function placesOf({ shortMm, longMm }: PaperSize, prints: number): number {
  return prints * Math.max(1, Math.ceil((shortMm * longMm) / AREA_8X10 - 0.05));
}
