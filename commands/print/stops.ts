import { fail, ok, type Result } from "../result.ts";
import { RANGE } from "./range.ts";
import { formatNumber } from "../speech/wording.ts";

/* Stops, times, grades and their like as people write and read them: `1/3`, `12.5 s`, `2 1/2`, `8x10`. */

export type PrintFaultCode =
  | "ERR_NO_SECONDS"
  | "ERR_NO_STOPS"
  | "ERR_NO_GRADE"
  | "ERR_NO_SIZE"
  | "ERR_NO_APERTURE"
  | "ERR_NO_DISTANCE"
  | "ERR_NO_NUMBER"
  | "ERR_NO_LOCAL"
  | "ERR_NO_BAR"
  | "ERR_NO_RANGE";
export interface PrintFault {
  readonly code: PrintFaultCode;
  readonly typed: string;
}
export type Read<T> = Result<T, PrintFault>;
export type Parse<T> = (text: string) => Read<T>;

const LONGEST = 60;
const FRACTIONS: Readonly<Record<string, string>> = {
  "½": "1/2",
  "⅓": "1/3",
  "⅔": "2/3",
  "¼": "1/4",
  "¾": "3/4",
  "⅙": "1/6",
  "⅚": "5/6",
};

/** Fractions written out, spaces single, decimal points. */
export function tidy(text: string): string {
  return text
    .slice(0, 4 * LONGEST)
    .replace(/[½⅓⅔¼¾⅙⅚]/g, (sign) => ` ${FRACTIONS[sign]}`)
    .normalize("NFKC")
    .replace(/(\d),(?=\d)/g, "$1.")
    .trim()
    .replace(/\s+/g, " ");
}

/** Inches are no whole mm. */
const inTenths = (value: number): number => Math.round(value * 10) / 10;

const NUMBER = "\\d{1,5}(?:\\.\\d{1,4})?";

/** `2`, `0.5`, `1/3`, `1 1/2`; undefined: none of these. */
export function parseFraction(text: string): number | undefined {
  const match = /^(?:(\d{1,3}) )?(\d{1,3})\/(\d{1,3})$/.exec(text);
  if (match)
    return Number(match[3]) === 0 ? undefined : Number(match[1] ?? 0) + Number(match[2]) / Number(match[3]);
  return new RegExp(`^${NUMBER}$`).test(text) ? Number(text) : undefined;
}

function reading<T>(code: PrintFaultCode, read: (tidied: string) => T | undefined): Parse<T> {
  return (text) => {
    const tidied = tidy(text);
    const value = tidied.length > LONGEST ? undefined : read(tidied);
    return value === undefined ? fail({ code, typed: text }) : ok(value);
  };
}

const SECONDS = new RegExp(
  `^(?:(${NUMBER}) ?(?:m|min|minutes?|minuten?) ?)?(?:(${NUMBER}) ?(?:s|secs?|seconds?|sek\\.?|sekunden?|")?)?$`,
  "i",
);

/** Whole tenths of a second: `12.5`, `12,5 s`, `1:30`, `2 min`. A bare number is seconds: so every enlarger's timer says it. */
export const parseExposure: Parse<number> = reading("ERR_NO_SECONDS", (typed) => {
  const clock = /^(\d{1,2}):([0-5]\d)$/.exec(typed);
  const match = clock ?? SECONDS.exec(typed);
  if (!match || (match[1] ?? match[2]) === undefined) return undefined;
  const tenths = Math.round(Number(match[1] ?? 0) * 600 + Number(match[2] ?? 0) * 10);
  return tenths >= 1 && tenths <= 36_000 ? tenths : undefined;
});

/** Thousandths of a stop, above 0: `1/3`, `0.5`, `1 1/2 stops`. */
export const parseStops: Parse<number> = reading("ERR_NO_STOPS", (typed) => {
  const stops = parseFraction(typed.replace(/ ?(?:stops?|blenden?|blendenstufen?|ev)$/i, ""));
  const milli = stops === undefined ? 0 : Math.round(stops * 1000);
  return milli >= 1 && milli <= 8000 ? milli : undefined;
});

/** Tenths of a grade: `00` is -10, `2 1/2` and `2.5` are 25. */
export const parseGrade: Parse<number> = reading("ERR_NO_GRADE", (typed) => {
  const bare = typed.replace(/^(?:grade|filter|gradation|grad) ?/i, "");
  if (bare === "00") return -10;
  const grade = parseFraction(bare);
  const tenths = grade === undefined ? Number.NaN : grade * 10;
  return tenths >= 0 && tenths <= 50 && tenths % 5 === 0 ? tenths : undefined;
});

/** Tenths of an f-number: `8`, `f/5.6`. */
export const parseAperture: Parse<number> = reading("ERR_NO_APERTURE", (typed) => {
  const match = new RegExp(`^(?:f ?/? ?)?(${NUMBER})$`, "i").exec(typed);
  const tenths = Math.round(Number(match?.[1]) * 10);
  return tenths >= 10 && tenths <= 640 ? tenths : undefined;
});

/** mm, to a tenth: `42 cm`, `420 mm`, `16 in`. A bare number is centimetres. */
export const parseDistance: Parse<number> = reading("ERR_NO_DISTANCE", (typed) => {
  const match = new RegExp(`^(${NUMBER}) ?(cm|mm|m|in|inch|inches|zoll|")?$`, "i").exec(typed);
  if (!match) return undefined;
  const unit = (match[2] ?? "cm").toLowerCase();
  const mm = inTenths(
    Number(match[1]) * (unit === "mm" ? 1 : unit === "cm" ? 10 : unit === "m" ? 1000 : 25.4),
  );
  return mm >= 50 && mm <= 5000 ? mm : undefined;
});

/** A number above 0 of at most `most`, to three decimals: a meter's seconds, a density, an enlargement. */
export const parseNumberUpTo = (most: number): Parse<number> =>
  reading("ERR_NO_NUMBER", (typed) => {
    const value = parseFraction(typed.replace(/ ?(?:x|×|s)$/i, ""));
    return value !== undefined && value > 0 && value <= most ? value : undefined;
  });

/** Hundredths of a log unit: `1.05`, `105` as papers have it (ISO R), `3 1/2 stops`. */
export const parseRange: Parse<number> = reading("ERR_NO_RANGE", (typed) => {
  const match = /^(?:iso )?(r ?)?(.+?)( ?(?:stops?|blenden?|blendenstufen?|ev))?$/i.exec(typed);
  const value = match?.[2] === undefined ? undefined : parseFraction(match[2]);
  if (match === null || value === undefined) return undefined;
  const perOne = match[3] ? 100 * Math.log10(2) : match[1] || value >= RANGE.least ? 1 : 100;
  const range = Math.round(value * perOne);
  return range >= RANGE.least && range <= RANGE.most ? range : undefined;
});

const KNOWN_TWELFTHS: Readonly<Record<number, string>> = {
  0: "",
  1: "1/12",
  2: "1/6",
  3: "1/4",
  4: "1/3",
  6: "1/2",
  8: "2/3",
  9: "3/4",
  10: "5/6",
};

/** `1/3`, `1 1/2`, `0.85`, `-1/2`: what no printer's fraction says is a decimal. */
export function formatStops(stops: number): string {
  const size = Math.abs(stops);
  const twelfths = Math.round(size * 12);
  const fraction = KNOWN_TWELFTHS[twelfths % 12];
  const sign = stops < 0 ? "-" : "";
  if (fraction === undefined || Math.abs(size * 12 - twelfths) > 0.02 || twelfths === 0)
    return size < 0.005 ? "0" : `${sign}${formatNumber(Math.round(size * 100) / 100)}`;
  return `${sign}${[Math.floor(twelfths / 12) || "", fraction].filter(Boolean).join(" ")}`;
}

/** `8 s`, `12.7 s`: as a timer shows it. */
export const formatExposure = (tenths: number): string => `${formatNumber(tenths / 10)} s`;

/** `00`, `2`, `2 1/2`. */
export function formatGrade(gradeTenths: number): string {
  if (gradeTenths < 0) return "00";
  const whole = Math.floor(gradeTenths / 10);
  return gradeTenths % 10 === 0 ? `${whole}` : whole === 0 ? "1/2" : `${whole} 1/2`;
}

/** `f/5.6`. */
export const formatAperture = (tenths: number): string => `f/${formatNumber(tenths / 10)}`;

/** `42 cm`. */
export const formatDistance = (mm: number): string => `${formatNumber(mm / 10)} cm`;
