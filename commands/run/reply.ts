import { unreachedWords } from "./unreached.ts";
import type { Action, Reply } from "../define.ts";
import { inEach } from "../speech/language.ts";
import { makeLine } from "../speech/line.ts";
import type { RetemperFault } from "../plan/retemper.ts";
import { doingOf, labelOf } from "../sheet/step-words.ts";
import { formatNumber, makeNumber, plain, saySeconds } from "../speech/wording.ts";
import { afterRun } from "./after-run.ts";
import { EARLY_SECONDS, withoutWeight } from "./doing.ts";
import { isFilmPlan, isLampPlan, isStripPlan, isTrayPlan } from "../../store/shapes/tray.ts";
import {
  currentStep,
  isTrayRun,
  isTrial,
  lastingMs,
  pourOutAtMs,
  type Run,
  secondsIn,
  stepAt,
} from "../../store/shapes/run.ts";
import type { StepKind } from "../../store/shapes/plan.ts";
import { de } from "./words/reply.de.ts";
import { en } from "./words/reply.en.ts";
import { nameOf, queuedWords } from "./run-words.ts";
import { seenAction } from "./seen.ts";
import { whereIs } from "./where.ts";

/* What a run says when it is asked. What it says unasked is in cue-words.ts. */

const words = inEach({ en, de });

/** The button that begins a step; it names the step, so that an old one is recognised. */
export function nextAction(run: Run, step: number): Action[] {
  const next = stepAt(run, step);
  if (!next) return [];
  return [{ label: labelOf(next), line: makeLine("run next", { run: run.number, step }), weight: "main" }];
}

export const statusAction = (run: Run): Action => ({
  label: words().whereAmI,
  line: makeLine("run status", { run: run.number }),
});

export function startedReply(run: Run): Reply {
  const { plan } = run;
  const develop = plan.steps.find(({ kind }) => kind === "develop") ?? plan.steps[0];
  const first = plan.steps[0];
  const text = [
    isLampPlan(plan)
      ? words().lamp.started(nameOf(run), plain(plan.lamp))
      : isStripPlan(plan)
        ? words().strip.started(nameOf(run), plan.strip.bars)
        : words().started(nameOf(run), develop?.seconds ?? 0, plan.tenthsC),
    ...(run.speed === undefined ? [] : [words().trial(run.speed)]),
    ...(run.queued ? [queuedWords(run)] : []),
    first ? words().next(doingOf(first)) : "",
  ].join("\n");
  return {
    text,
    fields: fieldsOf(run),
    actions: [...(run.queued ? nextAction(run, 0).map(withoutWeight) : nextAction(run, 0)), stopAction(run)],
  };
}

export function stopAction(run: Run): Action {
  return { label: words().stopThis, line: makeLine("run stop", { run: run.number }), weight: "danger" };
}

/** The answer to a change: where the film is now, and the one next thing to do. */
export function changedReply(run: Run, now: number): Reply {
  return { text: whereIs(run, now), fields: fieldsOf(run), actions: actionsOf(run, now) };
}

export function actionsOf(run: Run, now: number): Action[] {
  if (run.phase.kind === "waiting") return [...nextAction(run, run.phase.step), statusAction(run)];
  if (run.phase.kind !== "running") return [];
  const step = currentStep(run);
  const seen = seenAction(run);
  const isEarly =
    seen !== undefined ||
    (step !== undefined && now < pourOutAtMs(run, step, run.phase.endsAtMs) - lastingMs(run, EARLY_SECONDS));
  const next = nextAction(run, run.phase.step + 1);
  // Too early it would be an invitation.
  return [...(seen ? [seen] : []), ...(isEarly ? next.map(withoutWeight) : next), statusAction(run)];
}

export function movedReply(run: Run, now: number): Reply {
  return {
    ...changedReply(run, now),
    text: `${words().moved}\n${whereIs(run, now)}`,
  };
}

export function newTemperatureReply(run: Run, tenthsC: number, leftBefore: number, now: number): Reply {
  const left = run.phase.kind === "running" ? Math.ceil(secondsIn(run, run.phase.endsAtMs - now)) : 0;
  const change = left - leftBefore;
  const { timeStays, timeChanged } = words();
  const { newTemperature } = isTrayRun(run) ? words().tray : words();
  const effect = change === 0 ? timeStays : timeChanged(change, left, leftBefore);
  return {
    ...changedReply(run, now),
    text: `${newTemperature(tenthsC, effect)}\n${whereIs(run, now)}`,
  };
}

/** The image was seen: how long it is developed in all. */
export function seenReply(run: Run, now: number): Reply {
  const seen = run.deviations.findLast((each) => each.kind === "seen");
  const { factor, leastSeconds } = isTrayRun(run) ? run.plan : { factor: null, leastSeconds: 0 };
  const first =
    seen?.kind === "seen"
      ? words().seen(
          seen.afterSeconds,
          formatNumber(factor ?? 0),
          seen.toSeconds,
          seen.toSeconds === leastSeconds,
        )
      : "";
  return { ...changedReply(run, now), text: `${first}\n${whereIs(run, now)}` };
}

export const noFactor = (run: Run): string => words().tray.noFactor(nameOf(run));

/** `unreached`: ids of runs whose calls reach nobody. */
export function statusReply(
  runs: readonly Run[],
  now: number,
  ownerOf: (run: Run) => string | null,
  unreached: ReadonlySet<number>,
): Reply {
  if (runs.length === 0) return { text: words().noneGoing, fields: { runs: [] } };
  const lines = runs.map((run) => {
    const owner = ownerOf(run);
    const reach = unreached.has(run.id) ? `\n${unreachedWords(owner === null)}` : "";
    return `${owner === null ? "" : `${owner}: `}${whereIs(run, now)}${reach}`;
  });
  const only = runs.length === 1 ? runs[0] : undefined;
  return {
    text: lines.join("\n\n"),
    fields: { runs: runs.map(fieldsOf) },
    actions: only ? actionsOf(only, now).filter(({ line }) => !line.startsWith("run status")) : [],
  };
}

export function fieldsOf(run: Run): { [key: string]: string | number | null } {
  const step = currentStep(run);
  return {
    run: run.number,
    tank: run.plan.tank,
    phase: run.phase.kind,
    step: "step" in run.phase ? run.phase.step : null,
    stepKind: step?.kind ?? null,
    stepCount: run.plan.steps.length,
    startedAtMs: run.phase.kind === "running" ? run.phase.startedAtMs : null,
    endsAtMs: run.phase.kind === "running" ? run.phase.endsAtMs : null,
  };
}

export function sureToStop(run: Run): Reply {
  return {
    text: (isTrayRun(run) ? words().tray : isStripPlan(run.plan) ? words().strip : words()).sureToStop(
      nameOf(run),
    ),
    actions: [
      {
        label: words().yesStop,
        line: makeLine("run stop", { run: run.number, sure: "yes" }),
        weight: "danger",
      },
      statusAction(run),
    ],
  };
}

/** Shorter by so much of its time, and a film may spoil: what is less is how people are. */
const SHORT_SHARE = 0.1;

/** Nobody makes a contact sheet of a film that was fixed or washed too short, and no one sees that on it. */
function doneWithFilm(run: Run, rolls: number): string {
  const shortBy = (kind: StepKind): number | undefined =>
    run.deviations
      .filter((each) => each.kind === "cut-short")
      .find(({ step, bySeconds }) => {
        const at = stepAt(run, step);
        return at?.kind === kind && bySeconds > (at.seconds ?? 0) * SHORT_SHARE;
      })?.bySeconds;
  const fixing = shortBy("fix");
  if (fixing !== undefined) return words().fixedShort(nameOf(run), saySeconds(fixing));
  const washing = shortBy("wash");
  if (washing !== undefined) return words().washedShort(nameOf(run), saySeconds(washing));
  return words().doneWithRolls(nameOf(run), rolls);
}

export function overReply(run: Run, rolls: readonly { readonly number: number }[]): Reply {
  if (isTrial(run)) return { text: words().trialOver(nameOf(run)), fields: fieldsOf(run) };
  const labels = rolls.map(({ number }) => makeNumber("roll", number));
  const kept = labels.length > 0 ? words().keptAs(labels.join(", ")) : "";
  const head =
    run.phase.kind === "finished"
      ? isTrayPlan(run.plan)
        ? words().doneWithPrints(nameOf(run), run.plan.prints)
        : isFilmPlan(run.plan)
          ? doneWithFilm(run, run.plan.rolls)
          : isStripPlan(run.plan)
            ? words().strip.done(nameOf(run))
            : words().lamp.done(nameOf(run))
      : words().stoppedNow(nameOf(run));
  return {
    text: `${head} ${kept}`.trim(),
    fields: { ...fieldsOf(run), rolls: rolls.map(({ number }) => number) },
    actions: afterRun(run, rolls[0]),
  };
}

export const whichRun = (
  runs: readonly Run[],
  verb: string,
  rest: Readonly<Record<string, string>>,
): { text: string; actions: Action[] } => ({
  text: words().whichRun(runs.length, runs.map(nameOf).join("; ")),
  actions: runs
    .slice(0, 5)
    .map((run) => ({ label: nameOf(run), line: makeLine(verb, { run: run.number, ...rest }) })),
});

export const noRun = (): string => words().noRun;
export const notYours = (run: Run): string => words().notYours(nameOf(run));
export const unknownRun = (text: string): string => words().unknownRun(text);
export const unknownPlan = (text: string): string => words().unknownPlan(text);
export const noPlan = (): string => words().noPlan;
export const nothingToCorrect = (): string => words().nothingToCorrect;
export const planNotYours = (plan: number, owner: string): string =>
  words().planNotYours(makeNumber("plan", plan), plain(owner));

export function temperatureRefused(fault: RetemperFault): string {
  const { noTimeFor, nearest } = words();
  return "nearestTenthsC" in fault ? `${noTimeFor} ${nearest(fault.nearestTenthsC)}` : noTimeFor;
}
