import type { FieldValue, Reply } from "../define.ts";
import { makeLine } from "../line.ts";
import { makeDilution } from "../measure.ts";
import { sheetName } from "../sheet/pick.ts";
import {
  countOf,
  formatBothScales,
  formatDilution,
  formatMl,
  formatSeconds,
  joinAnd,
  makeNumber,
  plain,
} from "../wording.ts";
import { honestyLine, honestyLines, sayBasis } from "./basis-words.ts";
import { sayCaution } from "./caution-words.ts";
import { layContactSheet } from "./cut.ts";
import { drawPlan } from "./picture.ts";
import type { Plan, Step } from "./plan.ts";
import { describeAgitation, titleOf } from "./step-words.ts";
import { splitVolume } from "./volume.ts";

/* Every sentence of /plan, but the cautions, the faults and what the numbers rest on. */

export const NO_TANK = (typed: string): string =>
  `There is no tank ${plain(typed)} in this class. See the tanks with \`/tank list\`.`;
export const NO_PLAN = (typed: string): string =>
  `I know no plan "${plain(typed)}". Make one with \`/plan\`.`;
export const NO_PLAN_YET = "You have no plan yet. Make one with `/plan film:… temp:…`.";
export const NOT_SAME_BATH = (film: string): string =>
  `${plain(film)} has no sheet for the same developer and dilution, so it can't share the tank. Add one with \`/sheet add\`, or use two tanks.`;

export function plannedReply(number: number, plan: Plan, wasRatio: boolean): Reply {
  const develop = plan.steps.find(({ kind }) => kind === "develop");
  const also = (plan.alsoFilms ?? []).map(plain);
  const load = [
    countOf(
      plan.rolls,
      plan.format === "4x5" ? "sheet of 4x5" : `roll of ${plan.format}`,
      plan.format === "4x5" ? "sheets of 4x5" : `rolls of ${plan.format}`,
    ),
    ...(plan.tank === null ? [] : [`tank ${plan.tank}`]),
    formatMl(plan.volumeMl),
  ].join(", ");
  const text = [
    `**${formatSeconds(develop?.seconds ?? 0)}** at ${formatBothScales(plan.tenthsC)}${saySpread(plan)}`,
    `${sheetName(plan.sheet)}, EI ${plan.exposureIndex}${also.length > 0 ? `, with ${joinAnd(also)}` : ""}; ${load}. Plan ${makeNumber("plan", number)}.`,
    "",
    ...plan.steps.map((step, at) => `${at + 1}. ${sayStep(step, plan)}`),
    "",
    ...plan.cautions.map((caution) => `- ${sayCaution(caution, plan)}`),
    ...(wasRatio
      ? [`- I read the dilution as ${formatDilution(plan.sheet.dilution)}: makers' 1:9 means 1+9.`]
      : []),
    "",
    honestyLine(plan),
  ].join("\n");
  return {
    text,
    fields: fieldsOf(number, plan),
    actions: [
      { label: "Start", line: makeLine("run start", { plan: number }), weight: "main" },
      { label: "Show the curve", line: makeLine("plan curve", { plan: number }) },
    ],
  };
}

export function curveReply(number: number, plan: Plan): Reply {
  return {
    text: [
      `Plan ${makeNumber("plan", number)}: ${sheetName(plan.sheet)} at ${formatBothScales(plan.tenthsC)}, EI ${plan.exposureIndex}.`,
      "What each number rests on:",
      ...honestyLines(plan).map((line) => `- ${line}.`),
    ].join("\n"),
    fields: fieldsOf(number, plan),
    pictures: drawPlan(plan),
    actions: [{ label: "Start", line: makeLine("run start", { plan: number }), weight: "main" }],
  };
}

/** Rounded outwards to 10 s: a spread is no measurement. */
function saySpread({ spread }: Plan): string {
  if (!spread) return "";
  const low = formatSeconds(Math.floor(spread.lowSeconds / 10) * 10);
  const high = formatSeconds(Math.ceil(spread.highSeconds / 10) * 10);
  return `, the true time between ${low} and ${high}`;
}

function sayStep(step: Step, plan: Plan): string {
  const parts = [
    `${titleOf(step)}${step.seconds === null ? "" : ` **${formatSeconds(step.seconds)}**`}`,
    ...sayBath(step, plan),
  ];
  if (step.kind === "develop" && step.agitation) parts.push(describeAgitation(step.agitation));
  if (step.pourOutSeconds > 0 && step.seconds !== null)
    parts.push(`pour out from ${formatSeconds(step.seconds - step.pourOutSeconds)}`);
  if (step.changes) parts.push(`fill and empty ${step.changes} times`);
  if (step.kind === "cut") parts.push(sayCut(plan));
  return parts.filter((part) => part !== "").join("; ");
}

function sayBath(step: Step, plan: Plan): string[] {
  const label = step.batch === null ? [] : [`from ${plain(step.batch)}`];
  if (step.kind !== "develop" || step.ml === null) return label;
  const { concentrateMl, waterMl } = splitVolume(step.ml, plan.sheet.dilution);
  const mix =
    waterMl === 0
      ? `${formatMl(concentrateMl)} of stock`
      : `${formatMl(concentrateMl)} concentrate + ${formatMl(waterMl)} water`;
  return [mix, ...label];
}

function sayCut({ strips, format }: Plan): string {
  if (format === "4x5") return "one sleeve for each sheet";
  const keepsTail = strips.at(-1) === 1 ? "; the single frame keeps its blank tail" : "";
  const sheet = layContactSheet(strips, format);
  const paper = sheet.paper === null ? "" : `; contact sheet on ${sheet.paper}`;
  return `${sayRuns(strips)}${keepsTail}${paper}`;
}

/** `6 strips of 5, 1 of 4, 1 of 2`. */
export function sayRuns(strips: readonly number[]): string {
  const counts = new Map<number, number>();
  for (const frames of strips) counts.set(frames, (counts.get(frames) ?? 0) + 1);
  return [...counts]
    .map(([frames, count], at) => `${at === 0 ? countOf(count, "strip") : count} of ${frames}`)
    .join(", ");
}

function fieldsOf(number: number, plan: Plan): { readonly [key: string]: FieldValue } {
  const develop = plan.steps.find(({ kind }) => kind === "develop");
  const { concentrateMl, waterMl } = splitVolume(plan.volumeMl, plan.sheet.dilution);
  return {
    plan: number,
    film: plan.sheet.film,
    developer: plan.sheet.developer,
    dilution: makeDilution(plan.sheet.dilution),
    developSeconds: develop?.seconds ?? null,
    sheetSeconds: plan.sheetSeconds,
    lowSeconds: plan.spread?.lowSeconds ?? null,
    highSeconds: plan.spread?.highSeconds ?? null,
    tenthsC: plan.tenthsC,
    exposureIndex: plan.exposureIndex,
    tank: plan.tank,
    rolls: plan.rolls,
    format: plan.format,
    frames: plan.frames,
    volumeMl: plan.volumeMl,
    concentrateMl,
    waterMl,
    strips: plan.strips,
    steps: plan.steps.map(stepFields),
    cautions: plan.cautions.map(({ code, detail }) => ({ code, ...detail })),
  };
}

function stepFields(step: Step): { readonly [key: string]: FieldValue } {
  return {
    kind: step.kind,
    ordinal: step.ordinal,
    seconds: step.seconds,
    initialSeconds: step.agitation?.initialSeconds ?? null,
    burstSeconds: step.agitation?.burstSeconds ?? null,
    cycleSeconds: step.agitation?.cycleSeconds ?? null,
    manner: step.agitation?.manner ?? null,
    taps: step.agitation?.taps ?? null,
    pourOutSeconds: step.pourOutSeconds,
    ml: step.ml,
    concentrateMl: step.concentrateMl,
    batch: step.batch,
    changes: step.changes ?? null,
    restsOn: step.basis.map(sayBasis),
  };
}
