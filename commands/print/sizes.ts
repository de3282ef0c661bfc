import type { PaperSize } from "../../store/shapes/paper.ts";
import { fail, ok } from "../result.ts";
import { type Parse, tidy } from "./stops.ts";

/*
 * Sheets of paper by the names of the trade. ISO 1008 sets paper sizes in mm; the names are their inches or centimetres, and
 * which of the two a name is, is known of those in use: 8x10 is inches, 18x24 is centimetres.
 */

const INCH_MM = 25.4;
const INCHES = [
  "3.5x5",
  "4x5",
  "5x7",
  "8x10",
  "8.5x11",
  "9.5x12",
  "11x14",
  "12x16",
  "16x20",
  "20x24",
] as const;
const CENTIMETRES = ["9x13", "10x15", "13x18", "18x24", "20x25", "24x30", "30x40", "40x50", "50x60"] as const;

type Unit = "in" | "cm";
const NAMES: readonly (readonly [name: string, unit: Unit])[] = [
  ...CENTIMETRES.map((name) => [name, "cm"] as const),
  ...INCHES.map((name) => [name, "in"] as const),
];

/** What a sheet is taken for where nobody says. */
export const USUAL_SIZE: PaperSize = { shortMm: 180, longMm: 240 };

function sizeOf(sides: readonly number[], unit: Unit | "mm"): PaperSize {
  const perUnit = unit === "in" ? INCH_MM : unit === "cm" ? 10 : 1;
  const [shortMm = 0, longMm = 0] = sides.map((side) => Math.round(side * perUnit)).sort((a, b) => a - b);
  return { shortMm, longMm };
}

const SIZES: ReadonlyMap<string, PaperSize> = new Map(
  NAMES.map(([name, unit]) => [`${name} ${unit}`, sizeOf(name.split("x").map(Number), unit)]),
);

/** Each with its unit, to be picked with one tap. */
export const SIZE_NAMES = [...SIZES.keys()];
export const sizeNamed = (name: string): PaperSize | undefined => SIZES.get(name);

/** `8x10`, `18 x 24 cm`, `203x254 mm`; a size that is none of the trade's needs its unit. */
export const parseSize: Parse<PaperSize> = (text) => {
  const match =
    /^(\d{1,4}(?:\.\d{1,2})?) ?(?:x|×|by|mal) ?(\d{1,4}(?:\.\d{1,2})?) ?(in|inch|inches|zoll|"|cm|mm)?$/i.exec(
      tidy(text),
    );
  if (!match) return fail({ code: "ERR_NO_SIZE", typed: text });
  const sides = [Number(match[1]), Number(match[2])].sort((a, b) => a - b);
  const written = match[3]?.toLowerCase();
  const unit =
    written === undefined
      ? NAMES.find(([name]) => name === sides.join("x"))?.[1]
      : written === "mm" || written === "cm"
        ? written
        : "in";
  const size = unit && sizeOf(sides, unit);
  return size && size.shortMm >= 30 && size.longMm <= 2000
    ? ok(size)
    : fail({ code: "ERR_NO_SIZE", typed: text });
};

/** `8x10 in`, `18x24 cm`; a size that is none of the trade's in mm. It can be read back. */
export function formatSize({ shortMm, longMm }: PaperSize): string {
  const named = [...SIZES].find(([, size]) => size.shortMm === shortMm && size.longMm === longMm);
  return named ? named[0] : `${shortMm}x${longMm} mm`;
}

/** How often a negative is enlarged so that it fills the sheet: the longer way of the two. */
export function enlargementTo(size: PaperSize, negative: PaperSize): number {
  return Math.max(size.shortMm / negative.shortMm, size.longMm / negative.longMm);
}
