import { agitationSchema } from "../../store/shapes/sheet.ts";
import { simplifyParts } from "../../store/shapes/sheet.ts";
import { fail, ok, type Result } from "../result.ts";
import { pointDecimal } from "./decimal.ts";
import type { Agitation, Dilution } from "../../store/shapes/sheet.ts";

/*
 * Quantities as people write them, in English or German, read into whole numbers of one unit: with a decimal point or a
 * decimal comma. The sentences for the faults are in quantity.ts.
 */

export const MEASURE_FAULT_CODES = [
  "ERR_TEXT_TOO_LONG",
  "ERR_NO_TEMPERATURE",
  "ERR_WHICH_SCALE",
  "ERR_TWO_SCALES",
  "ERR_NO_LIQUID",
  "ERR_NO_VOLUME",
  "ERR_THOUSANDS",
  "ERR_VOLUME_RANGE",
  "ERR_NO_DURATION",
  "ERR_WHICH_UNIT",
  "ERR_MINUTES_OR_SECONDS",
  "ERR_DURATION_RANGE",
  "ERR_NO_DILUTION",
  "ERR_DILUTION_RANGE",
  "ERR_NO_AGITATION",
  "ERR_AGITATION_RANGE",
] as const;
export type MeasureFaultCode = (typeof MEASURE_FAULT_CODES)[number];
export interface MeasureFault {
  readonly code: MeasureFaultCode;
  readonly typed: string;
  /** What the text would mean in the house's unit, where that helps. */
  readonly value?: number;
}

/** Longer than any quantity anybody writes. */
const LONGEST_TEXT = 60;
/** Above this a bare number is more likely Fahrenheit than a bath. */
const BARE_CELSIUS_MAX = 45;
/** Two scales written side by side may differ by their rounding, no more. */
const SCALES_AGREE_TENTHS = 6;

const US_FLUID_OUNCE_ML = 29.5735;
const ML_PER_UNIT: Readonly<Record<string, number>> = {
  ml: 1,
  cc: 1,
  cl: 10,
  l: 1000,
  litre: 1000,
  litres: 1000,
  liter: 1000,
  liters: 1000,
  oz: US_FLUID_OUNCE_ML,
  floz: US_FLUID_OUNCE_ML,
  ounce: US_FLUID_OUNCE_ML,
  ounces: US_FLUID_OUNCE_ML,
  pt: 473.176,
  qt: 946.353,
  gal: 3785.41,
};

type Read<T> = Result<T, MeasureFault>;

function tidy(text: string): Read<string> {
  const tidied = text.normalize("NFKC").trim().replace(/\s+/g, " ");
  return tidied.length > LONGEST_TEXT ? fail({ code: "ERR_TEXT_TOO_LONG", typed: tidied }) : ok(tidied);
}

function read<T>(text: string, parse: (tidied: string) => Read<T>): Read<T> {
  const tidied = tidy(text);
  return tidied.ok ? parse(tidied.value) : tidied;
}

/** Tenths of a degree Celsius from `20`, `20,5 °C`, `20,5 Grad`, `68F`, `68 °F (20 °C)`; the two scales must agree. */
export function parseTemperature(text: string): Read<number> {
  return read(text, (typed) => {
    const scale = "(?:°|deg(?:rees?)?|grad)? ?(c|f|celsius|fahrenheit)?";
    const match = new RegExp(
      `^([+-]?\\d{1,5}(?:[.,]\\d{1,4})?) ?${scale}(?: ?[(/=] ?([+-]?\\d{1,5}(?:[.,]\\d{1,4})?) ?${scale} ?\\)?)?$`,
      "i",
    ).exec(typed.replace(/℃/g, "°C").replace(/℉/g, "°F"));
    if (!match) return fail({ code: "ERR_NO_TEMPERATURE", typed });
    const value = toNumber(match[1] ?? "");
    if (match[2] === undefined && Math.abs(value) > BARE_CELSIUS_MAX)
      return fail({ code: "ERR_WHICH_SCALE", typed, value: toTenthsC(value, "f") });
    const tenthsC = toTenthsC(value, match[2]);
    if (match[3] !== undefined) {
      const other = toTenthsC(toNumber(match[3]), match[4] ?? (isFahrenheit(match[2]) ? "c" : "f"));
      if (Math.abs(other - tenthsC) > SCALES_AGREE_TENTHS)
        return fail({ code: "ERR_TWO_SCALES", typed, value: tenthsC });
    }
    return tenthsC < 0 || tenthsC > 1000 ? fail({ code: "ERR_NO_LIQUID", typed }) : ok(tenthsC);
  });
}

function toNumber(text: string): number {
  return Number(pointDecimal(text));
}

function isFahrenheit(scale: string | undefined): boolean {
  return /^f/i.test(scale ?? "");
}

function toTenthsC(value: number, scale: string | undefined): number {
  // Adding 0 turns -0 into 0.
  return Math.round(isFahrenheit(scale) ? ((value - 32) * 50) / 9 : value * 10) + 0;
}

/** Whole ml from `300`, `300 ml`, `0.3 l`, `10 oz` (US fluid ounces). */
export function parseVolume(text: string): Read<number> {
  return parseMl(text, 1);
}

/** The same to a tenth of a ml, from 0.1 ml on. */
export function parseAmount(text: string): Read<number> {
  return parseMl(text, 10);
}

/** `perMl`: how finely it is read. */
function parseMl(text: string, perMl: 1 | 10): Read<number> {
  return read(text, (typed) => {
    const match = /^([+-]?\d{1,7}(?:[.,]\d{1,4})?) ?((?:us )?(?:fl\.? ?)?[a-z]*)\.?$/i.exec(typed);
    if (!match) return fail({ code: "ERR_NO_VOLUME", typed });
    const unit = (match[2] ?? "").toLowerCase().replace(/^us /, "").replace(/[. ]/g, "") || "ml";
    const factor = Object.hasOwn(ML_PER_UNIT, unit) ? ML_PER_UNIT[unit] : undefined;
    if (factor === undefined) return fail({ code: "ERR_NO_VOLUME", typed });
    if (/^[1-9]\d{0,2},\d{3}$/.test(match[1] ?? "")) return fail({ code: "ERR_THOUSANDS", typed });
    const ml = Math.round(toNumber(match[1] ?? "") * factor * perMl) / perMl;
    return ml < 1 / perMl || ml > 200_000 ? fail({ code: "ERR_VOLUME_RANGE", typed }) : ok(ml);
  });
}

/** Whole seconds from `9:00`, `1:02:03`, `540 s`, `9 min`, `9,5 min`, `9 Minuten 30 s`. A bare number is refused. */
export function parseDuration(text: string): Read<number> {
  return read(text, (typed) => {
    const seconds = clockSeconds(typed) ?? spokenSeconds(typed);
    if (/^[-\u2212] ?\d/.test(typed)) return fail({ code: "ERR_DURATION_RANGE", typed });
    if (seconds === undefined) {
      const bare = /^[+-]?\d+([.,]\d+)?$/.test(typed);
      return fail({ code: bare ? "ERR_WHICH_UNIT" : "ERR_NO_DURATION", typed });
    }
    if (Number.isNaN(seconds)) return fail({ code: "ERR_MINUTES_OR_SECONDS", typed });
    return seconds < 1 || seconds > 86_400 ? fail({ code: "ERR_DURATION_RANGE", typed }) : ok(seconds);
  });
}

function clockSeconds(typed: string): number | undefined {
  const match = /^(?:(\d{1,2}):)?(\d{1,3}):([0-5]\d)(?: ?min)?$/i.exec(typed);
  if (!match) return undefined;
  return Number(match[1] ?? 0) * 3600 + Number(match[2]) * 60 + Number(match[3]);
}

/** NaN: two decimals of a minute, which published lists also use for minutes.seconds. */
function spokenSeconds(typed: string): number | undefined {
  const number = "(\\d{1,5}(?:[.,]\\d{1,2})?)";
  const match = new RegExp(
    `^(?:${number} ?(?:h|hours?|std\\.?|stunden?))? ?(?:${number} ?(?:m|min|mins|minuten?|minutes?|['′]))? ?(?:${number} ?(?:s|secs?|seconds?|sek\\.?|sekunden?|["″]))?$`,
    "i",
  ).exec(typed);
  if (!match || (match[1] ?? match[2] ?? match[3]) === undefined) return undefined;
  if (/[.,]\d\d$/.test(match[2] ?? "")) return Number.NaN;
  const [hours, minutes, seconds] = [match[1], match[2], match[3]].map((part) => toNumber(part ?? "0"));
  return Math.round((hours ?? 0) * 3600 + (minutes ?? 0) * 60 + (seconds ?? 0));
}

export interface ReadDilution extends Dilution {
  /** Written `1:9`. Makers' 1:9 means 1+9 (one published table of volumes reads it as 1 in 9: a slip). */
  readonly wasRatio: boolean;
}

/** Parts from `1+9`, `1:9` (read as 1+9), `stock`, `Stammlösung`. */
export function parseDilution(text: string): Read<ReadDilution> {
  return read(text, (typed) => {
    if (/^(stock|undiluted|neat|stammlösung|stammloesung|unverdünnt|unverduennt)$/i.test(typed))
      return ok({ concentrateParts: 1, waterParts: 0, wasRatio: false });
    const match = /^(\d{1,6}) ?([+:]) ?(\d{1,6})$/.exec(typed);
    if (!match) return fail({ code: "ERR_NO_DILUTION", typed });
    const [concentrateParts, waterParts] = [Number(match[1]), Number(match[3])];
    if (concentrateParts < 1 || concentrateParts > 100 || waterParts > 1000)
      return fail({ code: "ERR_DILUTION_RANGE", typed });
    return ok({ ...simplifyParts({ concentrateParts, waterParts }), wasRatio: match[2] === ":" });
  });
}

/** A scheme from `30/5/60` (first/burst/cycle, seconds), `30/5/60 rotation`, `30/5/60 inversion 2 taps`, `continuous`. */
export function parseAgitation(text: string): Read<Agitation> {
  return read(text, (typed): Read<Agitation> => {
    if (/^(continuous|ständig)$/i.test(typed))
      return ok({ initialSeconds: 0, burstSeconds: 0, cycleSeconds: 0, manner: "continuous", taps: 0 });
    const match =
      /^(\d{1,4}) ?\/ ?(\d{1,4}) ?\/ ?(\d{1,4})(?: (inversion|rotation|kippen|drehen))?(?:,? (\d{1,2}) (?:taps?|mal))?$/i.exec(
        typed,
      );
    const [initialSeconds, burstSeconds, cycleSeconds] = [match?.[1], match?.[2], match?.[3]].map(Number);
    const taps = Number(match?.[5] ?? 1);
    if (!match) return fail({ code: "ERR_NO_AGITATION", typed });
    if (!isScheme(initialSeconds ?? 0, burstSeconds ?? 0, cycleSeconds ?? 0) || taps > 10)
      return fail({ code: "ERR_AGITATION_RANGE", typed });
    const manner = /rotation|drehen/i.test(match[4] ?? "") ? "rotation" : "inversion";
    return ok({
      initialSeconds: initialSeconds ?? 0,
      burstSeconds: burstSeconds ?? 0,
      cycleSeconds: cycleSeconds ?? 0,
      manner,
      taps,
    });
  });
}

/** A burst fits into its cycle, or there is neither. */
export function isScheme(initialSeconds: number, burstSeconds: number, cycleSeconds: number): boolean {
  const { initialSeconds: initial, cycleSeconds: cycle } = agitationSchema.shape;
  if (!initial.safeParse(initialSeconds).success || !cycle.safeParse(cycleSeconds).success) return false;
  return cycleSeconds === 0 ? burstSeconds === 0 : burstSeconds >= 1 && burstSeconds < cycleSeconds;
}

/** The reverse of parseAgitation. */
export function makeAgitation({
  initialSeconds,
  burstSeconds,
  cycleSeconds,
  manner,
  taps,
}: Agitation): string {
  if (manner === "continuous") return "continuous";
  return `${initialSeconds}/${burstSeconds}/${cycleSeconds} ${manner} ${taps} taps`;
}

/** The reverse of parseTemperature. */
export function makeTemperature(tenthsC: number): string {
  return `${tenthsC / 10}C`;
}
