import { inEach } from "./language.ts";
import { de } from "./words/wording.de.ts";
import { en } from "./words/wording.en.ts";

/* Words and number formats that every reply shares, in the language of the one who is spoken to. Pure. */

const words = inEach({ en, de });

/** A number with the reader's decimal mark; with `digits`, exactly so many after it. */
export function formatNumber(value: number, digits?: number): string {
  return (digits === undefined ? String(value) : value.toFixed(digits)).replace(".", words().decimalMark);
}

/** `9:00`, `0:05`, `1:02:03`. */
export function formatSeconds(seconds: number): string {
  const whole = Math.round(Math.abs(seconds));
  const hours = Math.floor(whole / 3600);
  const minutes = Math.floor((whole % 3600) / 60);
  const rest = String(whole % 60).padStart(2, "0");
  const sign = seconds < 0 ? "-" : "";
  return hours > 0
    ? `${sign}${hours}:${String(minutes).padStart(2, "0")}:${rest}`
    : `${sign}${minutes}:${rest}`;
}

/** For speech: `40 s`, `9 min`, `9 min 30 s`; from an hour on to the minute, `1 h 5 min`; from two days on `4 d 17 h`. */
export function saySeconds(seconds: number): string {
  const whole = Math.round(seconds);
  if (whole < HOUR) return sayTwo(whole, 60, "min", 1, "s");
  if (whole < 2 * DAY) return sayTwo(Math.round(whole / 60) * 60, HOUR, "h", 60, "min");
  return sayTwo(Math.round(whole / HOUR) * HOUR, DAY, words().day, HOUR, "h");
}

/** From a minute on in whole minutes, rounded down: `40 s`, `9 min`. */
export const sayMinutes = (seconds: number): string =>
  saySeconds(seconds < MINUTE ? seconds : seconds - (seconds % MINUTE));

const MINUTE = 60;
const HOUR = 3600;
const DAY = 86_400;

/** So many of the larger unit and the rest in the smaller; what is 0 is left out. */
function sayTwo(seconds: number, large: number, largeName: string, small: number, smallName: string): string {
  const [many, few] = [Math.floor(seconds / large), Math.floor((seconds % large) / small)];
  const parts = [...(many > 0 ? [`${many} ${largeName}`] : []), ...(few > 0 ? [`${few} ${smallName}`] : [])];
  return parts.join(" ") || `0 ${smallName}`;
}

/** Tenths of a degree Celsius as `20 °C`, `20.5 °C`. */
export function formatTenthsC(tenthsC: number): string {
  return `${formatTenths(tenthsC)} °C`;
}

function formatTenths(tenths: number): string {
  return formatNumber(tenths / 10, Number.isInteger(tenths / 10) ? 0 : 1);
}

/** The same temperature for readers of either scale: `20 °C (68 °F)`; in German `20 °C`. */
export function formatBothScales(tenthsC: number): string {
  const tenthsF = Math.round((tenthsC * 9) / 5 + 320);
  return words().bothScales(formatTenthsC(tenthsC), `${formatTenths(tenthsF)} °F`);
}

/** How far two temperatures are apart: `2.8 °C (5 °F)`; in German `2,8 °C`. */
export function formatApart(tenths: number): string {
  return words().bothScales(formatTenthsC(tenths), `${formatTenths(Math.round((tenths * 9) / 5))} °F`);
}

/** `300 ml`, `3.5 ml`, `1.5 l`. */
export function formatMl(ml: number): string {
  return ml >= 1000 && ml % 100 === 0
    ? `${formatNumber(ml / 1000)} l`
    : `${formatNumber(Math.round(ml * 10) / 10)} ml`;
}

/** `1+9`, `stock`. For people; what is kept, compared or typed is `makeDilution`. */
export function formatDilution(dilution: { concentrateParts: number; waterParts: number }): string {
  return dilution.waterParts === 0 ? words().stock : `${dilution.concentrateParts}+${dilution.waterParts}`;
}

/** A dilution that was kept as `makeDilution` writes it, for people. */
export function sayDilution(made: string): string {
  return made === "stock" ? words().stock : made;
}

/** `a, b and c`. */
export function joinAnd(list: readonly string[]): string {
  return joinBy(list, words().and);
}

/** `a, b or c`. */
export function joinOr(list: readonly string[]): string {
  return joinBy(list, words().or);
}

function joinBy(list: readonly string[], word: string): string {
  return list.length < 2 ? (list[0] ?? "") : `${list.slice(0, -1).join(", ")} ${word} ${list.at(-1)}`;
}

/** What somebody typed, in quotes: `"…"`, „…“. */
export function quoted(text: string): string {
  return words().quoted(text);
}

/** In a list of several what holds a comma stands in quotes. */
export const inList = (text: string): string => (text.includes(",") ? quoted(text) : text);

/** `1 roll`, `2 rolls`: English only. */
export function countOf(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

/**
 * Said aloud in the dark: R7 a run, B3 a batch, T4 a tank, L12 a roll in the log, P5 a plan, E1 an enlarger, X2 a box of paper,
 * V9 a print.
 */
export const NUMBER_LETTERS = {
  run: "R",
  batch: "B",
  tank: "T",
  roll: "L",
  plan: "P",
  enlarger: "E",
  paper: "X",
  print: "V",
} as const;
export type Numbered = keyof typeof NUMBER_LETTERS;

export function makeNumber(kind: Numbered, number: number): string {
  return `${NUMBER_LETTERS[kind]}${number}`;
}

/** Reads `R7`, `r7` or `7`; undefined for anything else. */
export function parseNumber(kind: Numbered, text: string): number | undefined {
  const match = /^\s*([a-z]?)\s*(\d{1,9})\s*$/i.exec(text);
  if (!match) return undefined;
  const letter = match[1]?.toUpperCase();
  if (letter && letter !== NUMBER_LETTERS[kind]) return undefined;
  const number = Number(match[2]);
  return number > 0 ? number : undefined;
}

/**
 * Text that came from a person, made harmless: no markdown, no mentions, no instants of ours, no control
 * characters. Zero-width joiners inside words stay out too, so that a search finds what the eye sees.
 */
export function plain(text: string): string {
  return text
    .replace(
      /[\u0000-\u0008\u000b-\u001f\u007f\u200b\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff\u27e6\u27e7]/g,
      "",
    )
    .replace(/([\\*_~`|>#[\]])/g, "\\$1")
    .replace(/@/g, "@\u2060")
    .replace(/</g, "<\u2060")
    .trim();
}

/* Instants in replies: each chat shows them in the reader's own zone, and the relative one counts by itself. */

export type InstantStyle = "time" | "date" | "relative";

/** A mark for one instant, for the text of a reply. */
export function instant(atMs: number, style: InstantStyle): string {
  return `\u27e6${Math.round(atMs)}:${style}\u27e7`;
}

const INSTANT = /\u27e6(-?\d+):(time|date|relative)\u27e7/g;

/** Replaces each mark by what `show` makes of it. */
export function renderInstants(text: string, show: (atMs: number, style: InstantStyle) => string): string {
  return text.replace(INSTANT, (_, at: string, style: string) => show(Number(at), style as InstantStyle));
}

/** For places that know no live text (a terminal): wall-clock words in the class's zone, in the reader's language. */
export function sayInstants(text: string, now: number, zone: string): string {
  return renderInstants(text, (atMs, style) => {
    const date = new Date(atMs);
    if (style === "time") return date.toLocaleTimeString(words().locale, { timeZone: zone });
    if (style === "date")
      return date.toLocaleDateString(words().locale, { timeZone: zone, dateStyle: "medium" });
    const seconds = Math.round((atMs - now) / 1000);
    return seconds >= 0 ? words().ahead(saySeconds(seconds)) : words().ago(saySeconds(-seconds));
  });
}
