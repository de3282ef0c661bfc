import { z } from "zod";
import { inEach } from "../speech/language.ts";
import { fail, ok, type Result } from "../result.ts";
import { plain } from "../speech/wording.ts";
import { CAPACITY_SQ_IN_PER_LITRE } from "../../store/shapes/limits.ts";
import { fromSquareMetres, SQ_IN_PER_ROLL } from "./area.ts";
import { de } from "./words/figures.de.ts";
import { en, type FigureWords } from "./words/figures.en.ts";

/* Capacities, shelf lives and counts of a batch as people write them. */

const LITRES_PER_US_GALLON = 3.785_41;

const words = inEach({ en, de });

export type FigureFaultCode = keyof FigureWords["fault"];
export interface FigureFault {
  readonly code: FigureFaultCode;
  readonly typed: string;
}
type Read = Result<number, FigureFault>;

export function figureFaultWords({ code, typed }: FigureFault): string {
  return words().fault[code](plain(typed));
}

/** sq in of film per litre, from `20 films/l`, `20 Filme/l`, `50 prints/l` (of 8x10 in), `20/l`, `80 per gal` (US), `1600 sq in/l`, `1 m2/l`. */
export function parseCapacity(text: string): Read {
  const typed = text.normalize("NFKC").trim().toLowerCase();
  const match =
    /^(\d{1,6}(?:[.,]\d{1,4})?) ?(films?|filme|rolls?|prints?|blatt|sq ?in|m2)? ?(?:\/|per|a|je|pro)? ?(l|litres?|liters?|gal|gallons?)?$/.exec(
      typed,
    );
  if (!match || (match[2] === undefined && match[3] === undefined))
    return fail({ code: "ERR_NO_CAPACITY", typed });
  // Labels have both: of a litre, and of what a pack makes. Taken for the other, film would not be fixed.
  if (match[3] === undefined) return fail({ code: "ERR_CAPACITY_OF_WHAT", typed });
  const value = Number((match[1] ?? "").replace(",", "."));
  const unit = match[2] ?? "films";
  const sqIn = unit.startsWith("sq")
    ? value
    : unit === "m2"
      ? fromSquareMetres(value)
      : value * SQ_IN_PER_ROLL;
  const perLitre = Math.round(match[3]?.startsWith("gal") ? sqIn / LITRES_PER_US_GALLON : sqIn);
  const { least, most } = CAPACITY_SQ_IN_PER_LITRE;
  return perLitre >= least && perLitre <= most ? ok(perLitre) : fail({ code: "ERR_CAPACITY_RANGE", typed });
}

// A month is 30 days: a shelf life is never known to the day, and the shorter reading is the safer one.
const HOURS = { h: 1, d: 24, w: 168, m: 720, y: 8760 } as const;
/** German units by their first letter: Stunde, Tag, Jahr; the others are the same as in English. */
const GERMAN = { s: "h", t: "d", j: "y" } as const;

const SHELF_LIFE =
  /^(\d{1,4}) ?(h|hours?|stunden?|d|days?|tage?n?|w|weeks?|wochen?|months?|monate?n?|y|years?|jahre?n?)$/;

/** Whole hours from `24 h`, `7 days`, `2 weeks`, `6 months`, `1 year`, `7 Tage`. */
export function parseShelfLife(text: string): Read {
  const typed = text.normalize("NFKC").trim().toLowerCase();
  const match = SHELF_LIFE.exec(typed);
  const letter = (match?.[2] ?? "").charAt(0) as keyof typeof HOURS | keyof typeof GERMAN | "";
  const unit = letter in GERMAN ? GERMAN[letter as keyof typeof GERMAN] : (letter as keyof typeof HOURS | "");
  if (!match || unit === "") return fail({ code: "ERR_NO_SHELF_LIFE", typed });
  const hours = Number(match[1]) * HOURS[unit];
  return hours >= 1 && hours <= 10 * HOURS.y ? ok(hours) : fail({ code: "ERR_NO_SHELF_LIFE", typed });
}

/** `24 h`, `7 days`, `6 months`. */
export function formatShelfLife(hours: number): string {
  if (hours % HOURS.m === 0) return words().months(hours / HOURS.m);
  if (hours % 24 === 0 && hours > 24) return words().days(hours / 24);
  return `${hours} h`;
}

function figureOption(parse: (text: string) => Read) {
  return z
    .string()
    .max(40)
    .transform((text, context): number => {
      const read = parse(text);
      if (read.ok) return read.value;
      const { code } = read.fault;
      context.addIssue({ code: "custom", message: figureFaultWords(read.fault), params: { code } });
      return z.NEVER;
    });
}

export const capacityOption = figureOption(parseCapacity);
export const shelfLifeOption = figureOption(parseShelfLife);
