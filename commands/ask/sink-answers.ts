import type { Action } from "../define.ts";
import { makeLine } from "../speech/line.ts";
import { formatBothScales, formatSeconds, makeNumber, saySeconds } from "../speech/wording.ts";
import { washTime } from "../plan/wash.ts";
import { describeAgitation, titleOf } from "../sheet/step-words.ts";
import type { Step, StepKind } from "../../store/shapes/plan.ts";
import { currentStep, isFilmRun, type Run } from "../../store/shapes/run.ts";
import { isFilmPlan } from "../../store/shapes/tray.ts";
import type { Facts } from "./facts.ts";
import type { Reading } from "./read.ts";
import { runLabel, runsMeant, whereAnswer } from "./run-answers.ts";
import { says, type Answerer } from "./shape.ts";
import { askWords, sinkWords as words, termText } from "./words.ts";

/* Answers to what is in somebody's way at the sink: a reel, a lid, a leak, a call nobody heard. */

/** The same, and below it where the film is, if one is in a tank. */
export const withRun = (text: string, reading: Reading, facts: Facts): ReturnType<Answerer> =>
  runsMeant(reading, facts).length > 0 ? { ...whereAnswer(reading, facts), text } : says(text);

export const reelAnswer: Answerer = () => says(words().reel);
export const missedAnswer: Answerer = (reading, facts) => withRun(words().missed, reading, facts);
/** Whoever has missed a call does first what is to be done now. */
export const silentAnswer: Answerer = (reading, facts) => {
  const { silent, missedCall } = words();
  const hasMissed = reading.signs.has("MISSED") && runsMeant(reading, facts).length > 0;
  return withRun(hasMissed ? `${missedCall}\n${silent}` : silent, reading, facts);
};
/** Words of a bath that should not be in. */
const INTO_TANK = ["INSTEAD", "OTHER", "FIRST", "WRONG", "PERSON"] as const;
/** What has gone wrong with the film in the tank: all that fits is said. */
export const mishapAnswer: Answerer = (reading, facts) => {
  const { signs } = reading;
  const { early, instead, fell, foam } = words().mishap;
  const isPouredAway = signs.has("PERSON") && (signs.has("OUT") || signs.has("POUREDOUT"));
  const parts = [
    ...(signs.has("EARLY") || signs.has("BRIEF") || isPouredAway ? [early] : []),
    ...(!isPouredAway && INTO_TANK.some((sign) => signs.has(sign)) ? [instead] : []),
    ...(signs.has("FELL") ? [fell] : []),
    ...(signs.has("FOAM") || signs.has("BUBBLES") ? [foam] : []),
  ];
  return withRun((parts.length > 0 ? parts : [early, instead, fell]).join("\n"), reading, facts);
};
export const hangAnswer: Answerer = (_, { habits }) => says(words().hang(saySeconds(habits.drySeconds)));
export const lightsAnswer: Answerer = () =>
  says(words().lights, { label: askWords().whoInTrays, line: "tray lines" });

/** Whether the fixing time of a film is over: then light does it no harm. */
export function isFixed(run: Run): boolean {
  const lastFix = run.plan.steps.findLastIndex(({ kind }) => kind === "fix");
  return "step" in run.phase && run.phase.step > lastFix;
}

export const lidAnswer: Answerer = (reading, facts) => {
  const films = runsMeant(reading, facts).filter(isFilmRun);
  const isSafe = films.length > 0 && films.every(isFixed);
  return withRun(isSafe ? words().lidSafe : words().lidShut, reading, facts);
};

export const leakAnswer: Answerer = (reading, facts) => {
  const named = reading.things.tank;
  const tanks = named === null ? runsMeant(reading, facts).flatMap(({ plan }) => plan.tank ?? []) : [named];
  const keys = tanks.map((tank): Action => ({
    label: words().reportLeak(tank),
    line: makeLine("tank report", { tank: makeNumber("tank", tank), fault: words().leaks }),
  }));
  return says(words().leak, ...keys);
};

export const warmthAnswer: Answerer = (_, { sheets, plan }) => {
  const meant = plan && isFilmPlan(plan.plan) ? [plan.plan.sheet] : sheets;
  const known = meant.flatMap(({ points }) => points.map(({ tenthsC }) => tenthsC));
  const [low, high] = [Math.min(...known), Math.max(...known)];
  const range =
    known.length > 0 && low < high ? words().range(formatBothScales(low), formatBothScales(high)) : "";
  return says([words().warmth, range].filter(Boolean).join(" "), {
    label: askWords().warmIt,
    line: "mix temper",
  });
};

/** Of one's own film, or of the plan that waits. */
export function stepsOf(
  reading: Reading,
  facts: Facts,
): { readonly name: string; readonly steps: readonly Step[] } | null {
  const [run] = runsMeant(reading, facts).filter(isFilmRun);
  if (run) return { name: runLabel(run), steps: run.plan.steps };
  const { plan } = facts;
  return plan && isFilmPlan(plan.plan)
    ? { name: makeNumber("plan", plan.number), steps: plan.plan.steps }
    : null;
}

/** A rinse stands where a stop bath may. */
function kindsNamed({ signs }: Reading): readonly StepKind[] | null {
  if (signs.has("STOPBATH")) return ["stop", "rinse"];
  return signs.has("FIXER") ? ["fix"] : null;
}

export const bathsAnswer: Answerer = (reading, facts) => {
  const kinds = kindsNamed(reading) ?? ["wash"];
  const [run] = runsMeant(reading, facts).filter(isFilmRun);
  const now = run && currentStep(run);
  if (now && kinds.includes(now.kind)) return whereAnswer(reading, facts);
  const meant = stepsOf(reading, facts);
  const times = (meant?.steps ?? []).flatMap((step) =>
    kinds.includes(step.kind) && step.seconds !== null
      ? [`${titleOf(step)} ${formatSeconds(step.seconds)}`]
      : [],
  );
  if (meant && times.length > 0) return says(words().baths(times.join(", "), meant.name));
  const { fixMinSeconds, washMethod, washAid, washMinSeconds } = facts.habits;
  // As a plan at 20 °C has it.
  const wash = washTime(washMethod, washAid, washMinSeconds, 200, 300);
  return says(words().bathsAtLeast(saySeconds(fixMinSeconds), saySeconds(wash.seconds)));
};

/** Of the baths that are named; else of the one that a film is in, else of the developer. */
export const agitateAnswer: Answerer = (reading, facts) => {
  const [run, second] = runsMeant(reading, facts);
  const kinds = kindsAgitated(reading);
  const current = run && isFilmRun(run) ? currentStep(run) : undefined;
  if (run && !kinds && (second || !current)) return whereAnswer(reading, facts);
  if (current && (!kinds || kinds.includes(current.kind)))
    return withRun(agitationOf(current), reading, facts);
  const asked: readonly StepKind[] = kinds ?? ["develop"];
  const steps = (stepsOf(reading, facts)?.steps ?? []).filter(({ kind }) => asked.includes(kind));
  return says(steps.length > 0 ? [...new Set(steps.map(agitationOf))].join("\n") : termText("agitation"));
};

function kindsAgitated(reading: Reading): readonly StepKind[] | null {
  const named = kindsNamed(reading);
  if (named) return named;
  if (reading.signs.has("DEVELOPER")) return ["develop"];
  return reading.signs.has("WASH") ? ["rinse", "wash"] : null;
}

function agitationOf(step: Step): string {
  const { agitation, changes } = step;
  const { often, always, refills, never } = words().agitate;
  if (agitation?.manner === "continuous") return always(titleOf(step));
  if (agitation) return often(titleOf(step), describeAgitation(agitation));
  return changes ? refills(titleOf(step), changes) : never(titleOf(step));
}
