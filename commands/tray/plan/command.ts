import { z } from "zod";
import { BATH_TENTHS_C, PAPER_TENTHS_C, WATER_TENTHS_C } from "../../../store/shapes/limits.ts";
import type { PaperKind } from "../../../store/shapes/paper.ts";
import { trayPlanSchema, type TrayPlan } from "../../../store/shapes/tray.ts";
import { trayLineSchema, type TrayLine } from "../../../store/shapes/tray-line.ts";
import { completeBatchOf } from "../../batch/options.ts";
import { bellWarning } from "../../plan/outlast-words.ts";
import { defineCommand, type InputOf, UserError, type Context } from "../../define.ts";
import { SIZE_NAMES, sizeNamed, USUAL_SIZE } from "../../print/sizes.ts";
import { durationIn, temperatureIn } from "../../speech/quantity.ts";
import { numberIn, wholeIn } from "../../speech/shaped.ts";
import { whoMay } from "../../who.ts";
import { bathsForPrints } from "../baths.ts";
import { filmCallingBefore } from "../beside.ts";
import { findLine } from "../lines.ts";
import { completePaperAsked, paperAsked, type PaperAsked } from "../paper.ts";
import { makeTrayPlan } from "../process.ts";
import { FIXERS, type TrayRequest } from "../request.ts";
import { judgeSilver, silverLimit, type SilverFact } from "../silver.ts";
import * as words from "./reply.ts";

const label = z.string().trim().min(1).max(40);
const yesNo = z.enum(["yes", "no"]);
/** A strip is cut into steps of 5 s, the longest of 45 s (Lambrecht); an ordinary fixer may need more. */
const CLEAR_SECONDS = { least: 5, most: 300 };

const options = () => ({
  paper: z
    .string()
    .trim()
    .min(1)
    .max(20)
    .describe("resin-coated or fibre, or the number of your box, like X2"),
  temp: temperatureIn(PAPER_TENTHS_C).describe("Temperature of the developer in its tray, like 20C"),
  size: z.enum(SIZE_NAMES).optional().describe("Size of the sheets; the box's, or 18x24 cm, if left out"),
  prints: wholeIn(trayPlanSchema.shape.prints).default(1).describe("Prints that go through together"),
  line: wholeIn(trayLineSchema.shape.number)
    .optional()
    .describe("Which line of trays; the first if left out"),
  fixer: z.enum(FIXERS).default("usual").describe("How strong the fixer is"),
  washaid: yesNo.default("yes").describe("Fibre paper: a wash aid is used"),
  lasting: yesNo.default("yes").describe("Fibre paper: it is to last; a work print need not"),
  clear: durationIn(CLEAR_SECONDS)
    .optional()
    .describe("First clear patch of your own strip in this fixer, like 25 s"),
  factor: numberIn(trayLineSchema.shape.factor)
    .optional()
    .describe("Develop by first appearance times this factor"),
  fixtemp: temperatureIn(BATH_TENTHS_C).optional().describe("Temperature of the fixer, if measured"),
  watertemp: temperatureIn(WATER_TENTHS_C).optional().describe("Temperature of the wash water, if measured"),
  devbatch: label.optional().describe("Label of the developer, like B3"),
  fixbatch: label.optional().describe("Label of the fixer, or of the first of two, like B4"),
  fixbatch2: label.optional().describe("Label of the second fixer, like B5"),
});
type Input = InputOf<typeof options>;

export const trayPlan = defineCommand({
  name: "tray plan",
  summary: "Work out the times of prints through the trays: developer, stop, fixer, wash",
  options,
  first: ["paper", "temp", "size", "prints"],
  who: whoMay("tray plan"),
  visibility: "private",
  complete: {
    paper: completePaperAsked,
    devbatch: completeBatchOf("paper-developer"),
    fixbatch: completeBatchOf("paper-fixer"),
    fixbatch2: completeBatchOf("paper-fixer"),
  },
  handle(input, context) {
    const { stores, class: school, person, now } = context;
    const line = findLine(context, input.line);
    const paper = paperAsked(context, input.paper);
    const made = makeTrayPlan(requestOf(input, line, paper));
    if (!made.ok) throw new UserError(made.fault.code, words.timeRefused(made.fault));
    const baths = bathsForPrints(context, made.value, {
      ...(input.devbatch === undefined ? {} : { develop: input.devbatch }),
      ...(input.fixbatch === undefined ? {} : { fix: input.fixbatch }),
      ...(input.fixbatch2 === undefined ? {} : { "fix-2": input.fixbatch2 }),
    });
    const plan: TrayPlan = {
      ...made.value,
      steps: [...baths.steps],
      cautions: [
        ...silverCautions(paper.kind, input.lasting, line, baths.silver),
        ...besideFilm(context, made.value),
        ...made.value.cautions,
      ],
    };
    const { number } = stores.plans.add(school.id, person.id, plan, now);
    return words.plannedReply(number, plan, bellWarning(plan, school, now));
  },
});

function requestOf(input: Input, line: TrayLine, { kind, box }: PaperAsked): TrayRequest {
  const sheet = input.size === undefined ? undefined : sizeNamed(input.size);
  return {
    line,
    paper: kind,
    box: box?.number ?? null,
    size: sheet ?? box?.size ?? USUAL_SIZE,
    prints: input.prints,
    tenthsC: input.temp,
    fixTenthsC: input.fixtemp ?? null,
    waterTenthsC: input.watertemp ?? null,
    fixer: input.fixer,
    baths: line.baths,
    washAid: input.washaid === "yes",
    clearSeconds: input.clear ?? null,
    factor: input.factor ?? line.factor,
  };
}

/** @throws UserError where a fixer carries too much silver for prints that last. */
function silverCautions(
  paper: PaperKind,
  lasting: Input["lasting"],
  { baths }: TrayLine,
  facts: readonly SilverFact[],
): TrayPlan["cautions"] {
  if (paper !== "fibre" || lasting === "no") return [];
  return facts.flatMap((fact, place) => {
    const verdict = judgeSilver(fact, place, baths);
    if (verdict === "over")
      throw new UserError("ERR_PRINT_SILVER", words.tooMuchSilver(fact, silverLimit(place, baths)), [], {
        instead: [{ label: words.workPrint(), options: { lasting: "no" } }],
      });
    const detail = { batch: fact.label, lowMg: fact.lowMg, highMg: fact.highMg };
    return verdict === "unknown" ? [{ code: "WARN_SILVER_UNKNOWN" as const, detail }] : [];
  });
}

function besideFilm({ stores, class: { id }, person, now }: Context, plan: TrayPlan): TrayPlan["cautions"] {
  const run = filmCallingBefore(stores.runs.open(id, person.id), plan, now);
  return run === null ? [] : [{ code: "WARN_FILM_CALLS", detail: { run } }];
}
