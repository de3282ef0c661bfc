import { scaleLinear } from "d3-scale";
import { line } from "d3-shape";
import type { Picture } from "../define.ts";
import { inEach } from "../speech/language.ts";
import { FONT, INK, svgText } from "../speech/svg.ts";
import { formatDilution, formatNumber, formatSeconds } from "../speech/wording.ts";
import { EXHAUSTED_TIMES } from "./clearing.ts";
import { leftWords, labelOf, standingWord, stateLine } from "./batch-words.ts";
import type { Trace } from "./trace.ts";
import { de } from "./words/picture.de.ts";
import { en } from "./words/picture.en.ts";

/*
 * Batch gauges: a row for each bottle, with what is left, its age and its clearing time over the films. Everything a
 * colour says is also said in words or by shape.
 */

const WIDTH = 1200;
const TOP = 70;
const ROW = 130;
const MOST_ROWS = 12;
const BAR = { x: 330, width: 380, height: 24 };
const CHART = { x: 800, width: 340, height: 84 };
/** Letters that fit beside the bar. */
const LONGEST_NAME = 17;
const GREY = "#5c574d";
const words = inEach({ en, de });

export function gaugesPicture(traces: readonly Trace[], nowMs: number): Picture {
  const rows = traces.slice(0, MOST_ROWS);
  const height = TOP + rows.length * ROW + 20;
  const body = rows.map((trace, index) => row(trace, TOP + index * ROW, nowMs)).join("");
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${height}" width="${WIDTH}" height="${height}" font-family="${FONT}" fill="${INK.text}"><rect width="${WIDTH}" height="${height}" fill="${INK.paper}"/>${heading()}${body}</svg>`;
  return {
    name: "batches",
    alt: rows
      .map(({ batch, state }) => stateLine(batch, state))
      .join("; ")
      .slice(0, 900),
    svg,
  };
}

function heading(): string {
  return [
    text(30, 42, words().bottle, 24, GREY),
    text(BAR.x, 42, words().leftAndAge, 24, GREY),
    text(CHART.x, 42, words().clearing, 24, GREY),
  ].join("");
}

function row(trace: Trace, y: number, nowMs: number): string {
  const { batch, state } = trace;
  const isBad = state.standing !== "ready";
  const standing = isBad ? standingWord(state.standing) : "";
  return [
    `<line x1="30" x2="${WIDTH - 30}" y1="${y}" y2="${y}" stroke="${INK.grid}"/>`,
    text(30, y + 52, labelOf(batch), 44, isBad ? INK.mark : INK.text, true),
    text(140, y + 40, clip(batch.product, LONGEST_NAME), 20),
    text(140, y + 66, formatDilution(batch.dilution), 20),
    standing ? text(140, y + 96, standing.toUpperCase(), 22, INK.mark, true) : "",
    bar(y + 22, leftShare(trace), isBad ? INK.mark : INK.curve),
    text(BAR.x, y + 70, leftWords(batch, state), 22),
    bar(y + 82, ageShare(trace, nowMs), GREY, 8),
    text(BAR.x, y + 114, ageWords(trace, nowMs), 20, GREY),
    chart(trace, y + 16),
  ].join("");
}

function leftShare({ state }: Trace): number | null {
  return state.usedPercent === null ? null : 1 - state.usedPercent / 100;
}

function ageShare({ batch, state }: Trace, nowMs: number): number | null {
  if (state.expiresAtMs === null) return null;
  return (nowMs - batch.mixedAtMs) / Math.max(1, state.expiresAtMs - batch.mixedAtMs);
}

function ageWords({ batch, state }: Trace, nowMs: number): string {
  const days = Math.floor((nowMs - batch.mixedAtMs) / 86_400_000);
  const { age, keeps, outOfDate, partFull } = words();
  if (state.expiresAtMs === null) return age(days);
  const leftDays = Math.ceil((state.expiresAtMs - nowMs) / 86_400_000);
  const left = leftDays >= 0 ? keeps(leftDays) : outOfDate(-leftDays);
  return [age(days), left, ...(state.isPartFull ? [partFull] : [])].join(", ");
}

function bar(y: number, share: number | null, colour: string, height = BAR.height): string {
  const track = `<rect x="${BAR.x}" y="${y}" width="${BAR.width}" height="${height}" rx="4" fill="${INK.grid}"/>`;
  if (share === null) return track;
  const x = scaleLinear().domain([0, 1]).range([0, BAR.width]).clamp(true);
  return `${track}<rect x="${BAR.x}" y="${y}" width="${round(x(share))}" height="${height}" rx="4" fill="${colour}"/>`;
}

function chart({ batch, clearing, state }: Trace, y: number): string {
  if (batch.kind !== "fixer") return "";
  const fresh = state.clearing?.freshSeconds;
  if (fresh === undefined || clearing.length === 0) return text(CHART.x, y + 50, words().notTested, 20, GREY);
  const end = EXHAUSTED_TIMES * fresh;
  const most = Math.max(end * 1.1, ...clearing.map(({ seconds }) => seconds));
  const x = scaleLinear()
    .domain([0, Math.max(1, ...clearing.map(({ rolls }) => rolls))])
    .range([CHART.x, CHART.x + CHART.width - 70]);
  const yOf = scaleLinear()
    .domain([0, most])
    .range([y + CHART.height, y]);
  const path = line<Trace["clearing"][number]>(
    (point) => round(x(point.rolls)),
    (point) => round(yOf(point.seconds)),
  )(clearing);
  const marks = clearing
    .filter(({ isTest }) => isTest)
    .map(
      (each) =>
        `<circle cx="${round(x(each.rolls))}" cy="${round(yOf(each.seconds))}" r="6" fill="${INK.text}"/>`,
    );
  const last = clearing.at(-1);
  return [
    `<line x1="${CHART.x}" x2="${CHART.x + CHART.width}" y1="${y + CHART.height}" y2="${y + CHART.height}" stroke="${GREY}"/>`,
    `<line x1="${CHART.x}" x2="${CHART.x + CHART.width - 70}" y1="${round(yOf(end))}" y2="${round(yOf(end))}" stroke="${INK.mark}" stroke-dasharray="8 6"/>`,
    text(CHART.x, round(yOf(end)) - 5, words().exhaustedAt(formatSeconds(end)), 16, INK.mark),
    `<path d="${path ?? ""}" fill="none" stroke="${INK.curve}" stroke-width="4"/>`,
    ...marks,
    last
      ? text(
          CHART.x + CHART.width - 60,
          round(yOf(last.seconds)) + 8,
          formatSeconds(last.seconds),
          22,
          INK.text,
          true,
        )
      : "",
    text(CHART.x, y + CHART.height + 22, words().rolls(formatNumber(round(x.domain()[1] ?? 0))), 16, GREY),
  ].join("");
}

function text(
  x: number,
  y: number,
  said: string,
  size: number,
  fill: string = INK.text,
  bold = false,
): string {
  return svgText(x, y, said, size, { fill, bold });
}

function clip(said: string, most: number): string {
  return said.length > most ? `${said.slice(0, most - 1)}…` : said;
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
