import type { FieldValue, Reply } from "../define.ts";
import { minusMl } from "../speech/tenths.ts";
import { inEach, speaking } from "../speech/language.ts";
import { makeLine } from "../speech/line.ts";
import { makeDilution } from "../../store/shapes/sheet.ts";
import { bathLabel, sheetName } from "../sheet/pick.ts";
import {
  formatBothScales,
  formatDilution,
  formatMl,
  formatSeconds,
  makeNumber,
  plain,
  quoted,
} from "../speech/wording.ts";
import { honestyLine, honestyLines, sayBasis } from "../sheet/basis-words.ts";
import { sayCaution } from "./caution-words.ts";
import { layContactSheet } from "./cut.ts";
import { frameOn, stripMm } from "./frames.ts";
import { isSheetFilm } from "../../store/shapes/film.ts";
import { drawPlan } from "./picture.ts";
import type { TrayPlan } from "../../store/shapes/tray.ts";
import type { Plan, Step } from "../../store/shapes/plan.ts";
import { describeAgitation, titleOf } from "../sheet/step-words.ts";
import type { DevelopTime } from "./quick.ts";
import { sayTime, sayTimeOf } from "./time-words.ts";
import { de } from "./words/reply.de.ts";
import { en } from "./words/reply.en.ts";

/* Every sentence of /plan, but the cautions, the faults and what the numbers rest on. */

const words = inEach({ en, de });

export const noTank = (typed: string): string => words().noTank(plain(typed));
export const noPlan = (typed: string): string => words().noPlan(quoted(plain(typed)));
export const noPlanYet = (): string => words().noPlanYet;
export const notSameBath = (film: string): string => words().notSameBath(plain(film));
/** `9:00 · House MQ 1+1`; without its time where the sheet has none there. */
export const sheetKey = (sheet: Plan["sheet"], seconds: number | null): string =>
  seconds === null ? bathLabel(sheet) : `${formatSeconds(seconds)} · ${bathLabel(sheet)}`;
export const tankKey = (tank: number): string => words().tankKey(tank);
export const timeAnyway = (time: DevelopTime, sheet: Plan["sheet"], tenthsC: number, why: string): string =>
  words().timeAnyway(sayTimeOf(time, tenthsC, sheet), why);
export const tankOffer = (tank: number, reels: number, volumeMl: number, isReported: boolean): string =>
  words().tankOffer(tank, reels, volumeMl, isReported);

/** What is in the developer's bottle: stock that water is added to, or the bath itself; null: no bottle is named. */
export type BottleHolds = "stock" | "bath" | null;

export interface Planned {
  /** The dilution was typed as makers write it. */
  readonly wasRatio: boolean;
  readonly bottleHolds: BottleHolds;
  /** Who has its tank now, as a sentence; null: it is free. */
  readonly taken: string | null;
}

export function plannedReply(number: number, plan: Plan, { wasRatio, bottleHolds, taken }: Planned): Reply {
  const load = [
    words().films(plan.rolls, plan.format),
    ...(plan.tank === null ? [] : [words().tank(plan.tank)]),
    formatMl(plan.volumeMl),
  ].join(", ");
  const text = [
    sayDevelopment(plan),
    words().load(
      sheetName(plan.sheet),
      plan.exposureIndex,
      (plan.alsoFilms ?? []).map(plain),
      load,
      makeNumber("plan", number),
    ),
    ...(taken === null ? [] : [taken]),
    "",
    ...plan.steps.map((step, at) => `${at + 1}. ${sayStep(step, plan, bottleHolds)}`),
    "",
    ...plan.cautions.map((caution) => `- ${sayCaution(caution, plan)}`),
    ...(wasRatio ? [`- ${words().readRatio(formatDilution(plan.sheet.dilution))}`] : []),
    "",
    honestyLine(plan),
  ].join("\n");
  return {
    text,
    fields: fieldsOf(number, plan),
    actions: [
      { label: words().start, line: makeLine("run start", { plan: number }), weight: "main" },
      { label: words().showCurve, line: makeLine("plan curve", { plan: number }) },
    ],
  };
}

export function curveReply(number: number, plan: Plan): Reply {
  return {
    text: [
      words().curveHead(
        makeNumber("plan", number),
        sheetName(plan.sheet),
        formatBothScales(plan.tenthsC),
        plan.exposureIndex,
      ),
      words().whatItRestsOn,
      ...honestyLines(plan).map((line) => `- ${line}.`),
    ].join("\n"),
    fields: fieldsOf(number, plan),
    pictures: drawPlan(plan),
    actions: [{ label: words().start, line: makeLine("run start", { plan: number }), weight: "main" }],
  };
}

/** What the times of prints rest on; they have no curve. */
export function printsRestReply(number: number, plan: TrayPlan): Reply {
  return {
    text: [
      words().printsHead(makeNumber("plan", number), plan.prints, formatBothScales(plan.tenthsC)),
      words().whatItRestsOn,
      ...honestyLines(plan).map((line) => `- ${line}.`),
    ].join("\n"),
    fields: { plan: number, prints: plan.prints, tenthsC: plan.tenthsC },
    actions: [{ label: words().start, line: makeLine("run start", { plan: number }), weight: "main" }],
  };
}

function sayDevelopment({ steps, spread, tenthsC }: Plan): string {
  const seconds = steps.find(({ kind }) => kind === "develop")?.seconds ?? 0;
  return sayTime({ seconds, spread }, tenthsC);
}

function sayStep(step: Step, plan: Plan, bottleHolds: BottleHolds): string {
  const parts = [
    `${titleOf(step)}${step.seconds === null ? "" : ` **${formatSeconds(step.seconds)}**`}`,
    ...sayBath(step, bottleHolds),
  ];
  if (step.kind === "develop" && step.agitation) parts.push(describeAgitation(step.agitation));
  if (step.pourOutSeconds > 0 && step.seconds !== null)
    parts.push(words().pourOutFrom(step.seconds - step.pourOutSeconds));
  if (step.replenishMl) parts.push(words().replenish(step.replenishMl));
  if (step.changes) parts.push(words().fillAndEmpty(step.changes));
  if (step.kind === "cut") parts.push(sayCut(plan));
  return parts.filter((part) => part !== "").join("; ");
}

function sayBath(step: Step, bottleHolds: BottleHolds): string[] {
  const label = step.batch === null ? null : plain(step.batch);
  const bottle = label === null ? [] : [words().fromBottle(label)];
  if (step.kind !== "develop" || step.ml === null) return bottle;
  const { concentrateMl, waterMl } = splitOf(step, step.ml);
  if (label !== null && waterMl > 0 && bottleHolds === "bath") return [words().readyToPour(step.ml, label)];
  if (label !== null && waterMl > 0 && bottleHolds === "stock")
    return [words().stockAndWater(concentrateMl, label, waterMl)];
  const mix =
    waterMl === 0 ? words().ofStock(concentrateMl) : words().concentrateAndWater(concentrateMl, waterMl);
  return [mix, ...bottle];
}

/** As the plan has it: by the measures of the class at the time. */
function splitOf(step: Step | undefined, ml: number): { concentrateMl: number; waterMl: number } {
  const concentrateMl = step?.concentrateMl ?? ml;
  return { concentrateMl, waterMl: minusMl(ml, concentrateMl) };
}

/** A single frame shorter than this can't be held or pushed into a sleeve. Common practice, no source. */
const HANDLED_MM = 60;

function sayCut({ strips, format, frame }: Plan): string {
  if (isSheetFilm(format)) return words().sleeveEach;
  const { paper } = layContactSheet(strips, frameOn(format, frame));
  return [
    sayRuns(strips),
    ...(strips.at(-1) === 1 && stripMm(frameOn(format, frame), 1) < HANDLED_MM ? [words().keepsTail] : []),
    ...(paper === null ? [] : [words().contactSheet(paper)]),
  ].join("; ");
}

/** `6 strips of 5, 1 of 4, 1 of 2`. */
function sayRuns(strips: readonly number[]): string {
  const counts = new Map<number, number>();
  for (const frames of strips) counts.set(frames, (counts.get(frames) ?? 0) + 1);
  return [...counts]
    .map(([frames, count], at) =>
      at === 0 ? words().firstStrips(count, frames) : words().moreStrips(count, frames),
    )
    .join(", ");
}

function fieldsOf(number: number, plan: Plan): { readonly [key: string]: FieldValue } {
  const develop = plan.steps.find(({ kind }) => kind === "develop");
  const { concentrateMl, waterMl } = splitOf(develop, plan.volumeMl);
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
    replenishMl: step.replenishMl ?? null,
    changes: step.changes ?? null,
    // Data, not words: the same for every reader.
    restsOn: speaking("en", () => step.basis.map(sayBasis)),
  };
}
