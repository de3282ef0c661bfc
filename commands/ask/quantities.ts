import { pointDecimal } from "../speech/decimal.ts";
import { parseDilution } from "../speech/measure.ts";
import type { Dilution } from "../../store/shapes/sheet.ts";
import * as known from "./number-words.ts";

/* Numbers and quantities in a sentence. Each is taken out, so that no number counts twice. */

export interface Bench {
  readonly tokens: readonly string[];
  readonly taken: boolean[];
}

export function take({ taken }: Bench, from: number, count: number): void {
  for (let at = from; at < from + count; at += 1) taken[at] = true;
}

export const isNumber = (token: string | undefined): boolean => /^\d+([.,]\d+)?$/.test(token ?? "");

export function numberAt({ tokens, taken }: Bench, at: number): number | null {
  const token = tokens[at];
  if (token === undefined || taken[at]) return null;
  if (isNumber(token)) return Number(pointDecimal(token));
  return known.NUMBER_WORDS[token] ?? null;
}

export function takeDilution(bench: Bench): Dilution | null {
  const at = bench.tokens.findIndex(
    (token, index) =>
      !bench.taken[index] && (/^\d+[+:]\d+$/.test(token) || /^(stock|stammlosung)$/.test(token)),
  );
  const token = bench.tokens[at];
  if (token === undefined) return null;
  const read = parseDilution(token === "stammlosung" ? "stock" : token);
  // 9:30 is a time, and 1:30 may be one.
  const isTime =
    token.includes(":") && (!token.startsWith("1:") || known.SINCE.has(bench.tokens[at - 1] ?? ""));
  if (!read.ok || isTime) return null;
  const { concentrateParts, waterParts } = read.value;
  if (token !== "stock" && token !== "stammlosung") take(bench, at, 1);
  return { concentrateParts, waterParts };
}

/** `tank 3`, `dose drei`, `t3`, `t 3`, `tank is number 5`. */
export function takeNumbered(bench: Bench, letter: string, nouns: ReadonlySet<string> | null): number | null {
  const { tokens } = bench;
  for (const [at, token] of tokens.entries()) {
    if (bench.taken[at]) continue;
    const isNoun = nouns?.has(token) ?? false;
    if (!isNoun && token !== letter) continue;
    const reach = isNoun ? 3 : 1;
    for (let next = at + 1; next <= at + reach; next += 1) {
      const isFar = next > at + 1 && !known.NUMBER_SIGNS.has(tokens[next - 1] ?? "");
      const number = isFar ? null : numberAt(bench, next);
      if (
        number === null ||
        !Number.isInteger(number) ||
        number < 1 ||
        /^(a|an|ein\w*)$/.test(tokens[next] ?? "")
      )
        continue;
      take(bench, next, 1);
      return number;
    }
  }
  return null;
}

export function takeSeconds(bench: Bench): number | null {
  const { tokens } = bench;
  for (const [at, token] of tokens.entries()) {
    if (bench.taken[at]) continue;
    if (/^\d{1,2}:[0-5]\d$/.test(token)) {
      take(bench, at, 1);
      const [minutes = 0, seconds = 0] = token.split(":").map(Number);
      return minutes * 60 + seconds;
    }
    const unit = known.SECONDS.has(token) ? 1 : known.MINUTES.has(token) ? 60 : 0;
    if (unit === 0 || at === 0) continue;
    const number = halfOf(bench, at) ?? numberAt(bench, at - 1);
    if (number === null) continue;
    take(bench, at - 1, 2);
    return Math.round(number * unit);
  }
  return null;
}

/** `half a minute`. */
function halfOf({ tokens }: Bench, at: number): number | null {
  return known.NUMBER_WORDS[tokens[at - 2] ?? ""] === 0.5 && known.NUMBER_WORDS[tokens[at - 1] ?? ""] === 1
    ? 0.5
    : null;
}

/** With its scale or the word degrees; else a bare number that could be a bath's. */
export function takeTemperature(bench: Bench, hasUnit: boolean): number | null {
  const { tokens } = bench;
  for (const [at, token] of tokens.entries()) {
    if (bench.taken[at] || !isNumber(token)) continue;
    const value = Number(pointDecimal(token));
    const unit = tokens
      .slice(at + 1, at + 3)
      .join(" ")
      .split(" ");
    const isF = unit.some((each) => known.FAHRENHEIT.has(each));
    const isC = unit.some((each) => known.CELSIUS.has(each));
    const isMarked = isF || isC || known.DEGREES.has(tokens[at + 1] ?? "");
    if (hasUnit !== isMarked) continue;
    const inF = isF || (!isC && value >= known.COOLEST_F && value <= known.WARMEST_F);
    const [least, most] = inF
      ? [known.COOLEST_F - 23, 212]
      : [hasUnit ? 0 : known.COOLEST_C, hasUnit ? 100 : known.WARMEST_C];
    if (value < least || value > most) continue;
    take(bench, at, isMarked ? (isC || isF ? 2 : 2) : 1);
    return Math.round(inF ? ((value - 32) * 50) / 9 : value * 10);
  }
  return null;
}

/** Of several the one it was exposed at, not the one on its box: `iso 400 film shot at 800`. */
export function takeSpeed(bench: Bench): number | null {
  const { tokens } = bench;
  const speeds = [...tokens.keys()].filter(
    (index) =>
      !bench.taken[index] &&
      known.SPEEDS.has(Number(tokens[index])) &&
      (Number(tokens[index]) >= 100 ||
        tokens.slice(Math.max(0, index - 2), index).some((each) => known.EXPOSED.has(each))),
  );
  const at = speeds.find((index) => known.EXPOSED_AT.has(tokens[index - 1] ?? "")) ?? speeds[0];
  if (at === undefined) return null;
  take(bench, at, 1);
  return Number(tokens[at]);
}
