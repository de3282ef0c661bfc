import { scaleLinear } from "d3-scale";
import type { Picture } from "../define.ts";
import { inEach } from "../speech/language.ts";
import { altOf, drawCurve } from "../sheet/picture.ts";
import { FONT, INK, svgText } from "../speech/svg.ts";
import { formatDilution, formatSeconds } from "../speech/wording.ts";
import type { Plan, Step } from "../../store/shapes/plan.ts";
import { titleOf } from "../sheet/step-words.ts";
import { de } from "./words/picture.de.ts";
import { en } from "./words/picture.en.ts";

/* The pictures of a plan: this tank on the sheet's curve, and the steps as a strip. */

const words = inEach({ en, de });

export function drawPlan(plan: Plan): Picture[] {
  const develop = plan.steps.find(({ kind }) => kind === "develop");
  const seconds = develop?.seconds ?? plan.sheetSeconds;
  const mark = {
    tenthsC: plan.tenthsC,
    seconds,
    label:
      plan.tank === null
        ? words().thisTank(formatSeconds(seconds))
        : words().tank(plan.tank, formatSeconds(seconds)),
  };
  return [
    {
      name: "plan-curve",
      alt: altOf(plan.sheet, plan.exposureIndex, mark),
      svg: drawCurve(plan.sheet, plan.exposureIndex, mark),
    },
    { name: "plan-steps", alt: stepsAlt(plan), svg: drawSteps(plan) },
  ];
}

/** `Steps: Developer 9:00, Rinse 1 0:30, …`. */
function stepsAlt(plan: Plan): string {
  return words().steps(plan.steps.map((step) => `${titleOf(step)} ${sayTime(step)}`.trim()).join(", "));
}

function sayTime(step: Step): string {
  return step.seconds === null ? "" : formatSeconds(step.seconds);
}

const WIDTH = 720;
const ROW = 54;
const TOP = 60;
const LEFT = 20;
const RIGHT = 20;
/** The column of titles, as wide as English needs it. */
const LEAST_LABEL = 236;
/** A letter of the titles' size is about so wide. */
const LETTER = 12.7;

function drawSteps(plan: Plan): string {
  const height = TOP + plan.steps.length * ROW + 14;
  const label = Math.max(
    LEAST_LABEL,
    ...plan.steps.map((step, at) => LEFT + numbered(step, at).length * LETTER),
  );
  // Baths differ by a factor of twenty in time: the square root keeps the short ones visible.
  const longest = Math.max(1, ...plan.steps.map(({ seconds }) => seconds ?? 0));
  const length = scaleLinear([0, Math.sqrt(longest)], [0, WIDTH - label - RIGHT - 104]);
  const title = `${plan.sheet.film}, ${plan.sheet.developer} ${formatDilution(plan.sheet.dilution)}`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${height}" width="${WIDTH}" height="${height}" font-family="${FONT}" fill="${INK.text}">`,
    `<rect width="${WIDTH}" height="${height}" fill="${INK.paper}"/>`,
    svgText(LEFT, 38, [...title].slice(0, 48).join(""), 26, { bold: true }),
    ...plan.steps.map((step, at) =>
      drawStep(step, at, { x: label, y: TOP + at * ROW, length: length(Math.sqrt(step.seconds ?? 0)) }),
    ),
    "</svg>",
  ].join("");
}

function numbered(step: Step, at: number): string {
  return `${at + 1}. ${titleOf(step)}`;
}

function drawStep(
  step: Step,
  at: number,
  { x, y, length }: { x: number; y: number; length: number },
): string {
  const colour = INK.bath[at % INK.bath.length] ?? INK.text;
  const bar = Math.max(6, Math.round(length));
  return [
    svgText(LEFT, y + 32, numbered(step, at), 24),
    `<rect x="${Math.round(x)}" y="${y + 8}" width="${bar}" height="34" rx="4" fill="${colour}"/>`,
    svgText(x + bar + 12, y + 34, sayTime(step), 26, { bold: true }),
  ].join("");
}
