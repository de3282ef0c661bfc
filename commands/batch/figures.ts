import { z } from "zod";
import { fail, ok, type Result } from "../result.ts";
import { plain } from "../wording.ts";
import { fromSquareMetres, SQ_IN_PER_ROLL } from "./area.ts";

/* Capacities, shelf lives and counts of a batch as people write them. */

const LITRES_PER_US_GALLON = 3.785_41;

export const FIGURE_FAULT_TEXT = {
  ERR_NO_CAPACITY: (typed) =>
    `I can't read "${typed}" as a capacity. Write it like 20 films/l, 1600 sq in/l or 1 m2/l.`,
  ERR_NO_SHELF_LIFE: (typed) =>
    `I can't read "${typed}" as a shelf life. Write it like 24 h, 7 days, 6 weeks or 6 months.`,
  ERR_NO_DATE: (typed) => `I can't read "${typed}" as a date. Write it like 2026-05-31, today or tomorrow.`,
} as const satisfies Record<string, (typed: string) => string>;
export type FigureFaultCode = keyof typeof FIGURE_FAULT_TEXT;
export interface FigureFault {
  readonly code: FigureFaultCode;
  readonly typed: string;
}
type Read = Result<number, FigureFault>;

/** sq in of film per litre, from `20 films/l`, `20/l`, `80 per gal` (US), `1600 sq in/l`, `1 m2/l`. */
export function parseCapacity(text: string): Read {
  const typed = text.normalize("NFKC").trim().toLowerCase();
  const match =
    /^(\d{1,6}(?:[.,]\d{1,4})?) ?(films?|rolls?|sq ?in|m2)? ?(?:\/|per|a)? ?(l|litres?|liters?|gal|gallons?)?$/.exec(
      typed,
    );
  if (!match || (match[2] === undefined && match[3] === undefined))
    return fail({ code: "ERR_NO_CAPACITY", typed });
  const value = Number((match[1] ?? "").replace(",", "."));
  const unit = match[2] ?? "films";
  const sqIn = unit.startsWith("sq")
    ? value
    : unit === "m2"
      ? fromSquareMetres(value)
      : value * SQ_IN_PER_ROLL;
  const perLitre = Math.round(match[3]?.startsWith("gal") ? sqIn / LITRES_PER_US_GALLON : sqIn);
  return perLitre >= 20 && perLitre <= 100_000 ? ok(perLitre) : fail({ code: "ERR_NO_CAPACITY", typed });
}

// A month is 30 days: a shelf life is never known to the day, and the shorter reading is the safer one.
const HOURS = { h: 1, d: 24, w: 168, m: 720, y: 8760 } as const;

/** Whole hours from `24 h`, `7 days`, `2 weeks`, `6 months`, `1 year`. */
export function parseShelfLife(text: string): Read {
  const typed = text.normalize("NFKC").trim().toLowerCase();
  const match = /^(\d{1,4}) ?(h|hours?|d|days?|w|weeks?|months?|y|years?)$/.exec(typed);
  const unit = (match?.[2] ?? "").charAt(0) as keyof typeof HOURS | "";
  if (!match || unit === "") return fail({ code: "ERR_NO_SHELF_LIFE", typed });
  const hours = Number(match[1]) * HOURS[unit];
  return hours >= 1 && hours <= 10 * HOURS.y ? ok(hours) : fail({ code: "ERR_NO_SHELF_LIFE", typed });
}

/** `24 h`, `7 days`, `6 months`. */
export function formatShelfLife(hours: number): string {
  if (hours % HOURS.m === 0) return `${hours / HOURS.m} months`.replace(/^1 months$/, "1 month");
  if (hours % 24 === 0 && hours > 24) return `${hours / 24} days`;
  return `${hours} h`;
}

function figureOption(parse: (text: string) => Read) {
  return z
    .string()
    .max(40)
    .transform((text, context): number => {
      const read = parse(text);
      if (read.ok) return read.value;
      const { code, typed } = read.fault;
      context.addIssue({ code: "custom", message: FIGURE_FAULT_TEXT[code](plain(typed)), params: { code } });
      return z.NEVER;
    });
}

export const capacityOption = figureOption(parseCapacity);
export const shelfLifeOption = figureOption(parseShelfLife);
