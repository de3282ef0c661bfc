/* Words and number formats that every reply shares. Pure. */

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

/** For speech: `40 s`, `9 min`, `9 min 30 s`. */
export function saySeconds(seconds: number): string {
  const whole = Math.round(seconds);
  if (whole < 60) return `${whole} s`;
  const minutes = Math.floor(whole / 60);
  const rest = whole % 60;
  return rest === 0 ? `${minutes} min` : `${minutes} min ${rest} s`;
}

/** Tenths of a degree Celsius as `20 °C`, `20.5 °C`. */
export function formatTenthsC(tenthsC: number): string {
  return `${Number.isInteger(tenthsC / 10) ? tenthsC / 10 : (tenthsC / 10).toFixed(1)} °C`;
}

/** The same temperature for readers of either scale: `20 °C (68 °F)`. */
export function formatBothScales(tenthsC: number): string {
  const tenthsF = Math.round((tenthsC * 9) / 5 + 320);
  const f = Number.isInteger(tenthsF / 10) ? String(tenthsF / 10) : (tenthsF / 10).toFixed(1);
  return `${formatTenthsC(tenthsC)} (${f} °F)`;
}

/** `300 ml`, `1.5 l`. */
export function formatMl(ml: number): string {
  return ml >= 1000 && ml % 100 === 0 ? `${ml / 1000} l` : `${Math.round(ml)} ml`;
}

export function formatDilution(dilution: { concentrateParts: number; waterParts: number }): string {
  return dilution.waterParts === 0 ? "stock" : `${dilution.concentrateParts}+${dilution.waterParts}`;
}

/** `a, b and c`. */
export function joinAnd(words: readonly string[]): string {
  if (words.length < 2) return words[0] ?? "";
  return `${words.slice(0, -1).join(", ")} and ${words[words.length - 1]}`;
}

/** `1 roll`, `2 rolls`. */
export function countOf(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** Said aloud in the dark: R7 a run, B3 a batch, T4 a tank, L12 a roll in the log, P5 a plan. */
export const NUMBER_LETTERS = { run: "R", batch: "B", tank: "T", roll: "L", plan: "P" } as const;
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

/** For places that know no live text (a terminal): wall-clock words in the class's zone. */
export function sayInstants(text: string, now: number, zone: string): string {
  return renderInstants(text, (atMs, style) => {
    const date = new Date(atMs);
    if (style === "time") return date.toLocaleTimeString("en-GB", { timeZone: zone });
    if (style === "date") return date.toLocaleDateString("en-GB", { timeZone: zone, dateStyle: "medium" });
    const seconds = Math.round((atMs - now) / 1000);
    return seconds >= 0 ? `in ${saySeconds(seconds)}` : `${saySeconds(-seconds)} ago`;
  });
}
