import { scaleLinear, type ScaleLinear } from "d3-scale";
import type { Picture } from "../define.ts";
import { inEach } from "../speech/language.ts";
import { titleOf } from "../sheet/step-words.ts";
import { FONT, INK, svgText } from "../speech/svg.ts";
import { formatSeconds, formatTenthsC, makeNumber } from "../speech/wording.ts";
import type { Roll } from "../../store/shapes/roll.ts";
import { de } from "./words/reply.de.ts";
import { en } from "./words/reply.en.ts";

/*
 * A run as it really went: each step from when its bath was in to when the next one was, over the bar that was planned.
 * A planned bar begins where the step really began, so that what is longer or shorter is seen at once.
 */

const words = inEach({ en: en.picture, de: de.picture });

const WIDTH = 900;
/** The least room for a title, and the width of its letters on average. */
const LABEL = 180;
const LETTER = 10.6;
const RIGHT = 96;
const TOP = 92;
const ROW = 46;
const BAR = 26;

type RollStep = Roll["body"]["steps"][number];

/** Undefined where nothing was poured in. */
export function drawTimeline(roll: Roll): Picture | undefined {
  // Drying and cutting take longer than all baths together and have nothing to be late for: the picture ends before.
  const steps = roll.body.steps.filter(({ kind }) => kind !== "dry" && kind !== "cut");
  const begun = steps.filter(({ startedAtMs }) => startedAtMs !== null);
  const zeroMs = begun[0]?.startedAtMs;
  if (zeroMs == null) return undefined;
  const minuteOf = (atMs: number): number => (atMs - zeroMs) / 60_000;
  const ends = begun.map((step) => minuteOf((step.startedAtMs ?? 0) + longestMs(step)));
  const x = scaleLinear()
    .domain([0, Math.max(1, ...ends)])
    .range([labelWidth(steps), WIDTH - RIGHT])
    .nice();
  const height = TOP + steps.length * ROW + 40;
  const svg = [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${height}" width="${WIDTH}" height="${height}" font-family="${FONT}" fill="${INK.text}">`,
    `<rect width="${WIDTH}" height="${height}" fill="${INK.paper}"/>`,
    svgText(20, 38, titleOfRoll(roll), 24, { bold: true }),
    svgText(20, 66, words().caption, 17),
    ...x.ticks(8).map((tick) => axisLine(x(tick), tick, height)),
    ...steps.map((step, at) => drawStep(step, at, x, zeroMs)),
    "</svg>",
  ].join("");
  return { name: `roll-${roll.number}`, alt: altOf(roll, steps), svg };
}

/** Room for the longest title; languages differ in that. */
function labelWidth(steps: readonly RollStep[]): number {
  const letters = Math.max(...steps.map((step) => titleOf(step).length));
  return Math.max(LABEL, 30 + Math.ceil(letters * LETTER));
}

function longestMs({ actualSeconds, plannedSeconds }: RollStep): number {
  return Math.max(actualSeconds ?? 0, plannedSeconds ?? 0) * 1000;
}

function titleOfRoll(roll: Roll): string {
  const title = `${makeNumber("roll", roll.number)} ${roll.film}, ${roll.developer} ${roll.dilution}`;
  return [...title].slice(0, 60).join("");
}

function axisLine(x: number, minute: number, height: number): string {
  const at = round(x);
  return `<line x1="${at}" x2="${at}" y1="${TOP - 8}" y2="${height - 30}" stroke="${INK.grid}"/>${svgText(at, height - 10, `${minute}`, 17, { anchor: "middle" })}`;
}

function drawStep(step: RollStep, at: number, x: ScaleLinear<number, number>, zeroMs: number): string {
  const y = TOP + at * ROW;
  const label = svgText(20, y + 19, titleOf(step), 20);
  if (step.startedAtMs === null)
    return label + svgText(x.range()[0] ?? LABEL, y + 19, words().notReached, 18, { fill: "#5c574d" });
  const from = (step.startedAtMs - zeroMs) / 60_000;
  const colour = INK.bath[at % INK.bath.length] ?? INK.text;
  const end = round(x(from + longestMs(step) / 60_000));
  return [
    label,
    bar(x, from, step.actualSeconds, y, `fill="${colour}"`),
    bar(x, from, step.plannedSeconds, y - 4, `fill="none" stroke="${INK.text}" stroke-width="1.5"`, BAR + 8),
    svgText(end + 8, y + 13, timeWords(step), 17, { bold: true, ...(isOff(step) ? { fill: INK.mark } : {}) }),
    step.tenthsC === null ? "" : svgText(end + 8, y + 31, formatTenthsC(step.tenthsC), 15),
  ].join("");
}

function bar(
  x: (minute: number) => number,
  from: number,
  seconds: number | null,
  y: number,
  look: string,
  height = BAR,
): string {
  if (seconds === null) return "";
  const left = round(x(from));
  const width = Math.max(2, round(x(from + seconds / 60)) - left);
  return `<rect x="${left}" y="${y}" width="${round(width)}" height="${height}" rx="3" ${look}/>`;
}

function timeWords({ actualSeconds }: RollStep): string {
  return actualSeconds === null ? words().begun : formatSeconds(actualSeconds);
}

/** Clearly shorter, or a bath that harms clearly longer, than planned. */
function isOff({ kind, actualSeconds, plannedSeconds }: RollStep): boolean {
  if (actualSeconds === null || plannedSeconds === null) return false;
  const off = actualSeconds - plannedSeconds;
  const most = Math.max(5, plannedSeconds * 0.05);
  return off < -most || (off > most && (kind === "develop" || kind === "stop" || kind === "fix"));
}

function altOf(roll: Roll, steps: readonly RollStep[]): string {
  const parts = steps.map((step) => {
    const title = titleOf(step);
    if (step.startedAtMs === null) return words().altNotReached(title);
    const planned = step.plannedSeconds === null ? null : formatSeconds(step.plannedSeconds);
    return words().altStep(title, timeWords(step), planned);
  });
  return words().alt(makeNumber("roll", roll.number), parts.join(", ")).slice(0, 1000);
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
