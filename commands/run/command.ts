import { nameOf } from "./run-words.ts";
import { keepRun } from "./keep.ts";
import { z } from "zod";
import { bellWarning } from "../plan/outlast-words.ts";
import { recheckPlan } from "../batch/for-plan.ts";
import { type Completer, type Context, defineCommand, UserError } from "../define.ts";
import { secondsLeftAt } from "../plan/retemper.ts";
import { durationOption, temperatureOption } from "../speech/quantity.ts";
import { wholeSeconds } from "../tray/factor.ts";
import { timeAt } from "../tray/rate.ts";
import { requireRoom } from "../tray/room.ts";
import { makeNumber, parseNumber } from "../speech/wording.ts";
import { advance, type RunEvent } from "./machine.ts";
import { setAsideNumber, withLeftOut } from "../unreadable.ts";
import { findRun, isLostRun, runsInReach } from "./find.ts";
import { faultWords } from "./fault-words.ts";
import * as words from "./reply.ts";
import { tellOwner } from "./others.ts";
import { callNext } from "./turns.ts";
import { washOthersAnew } from "./rewash.ts";
import { isFilmPlan, isTrayPlan } from "../../store/shapes/tray.ts";
import { isOver, isTrayRun, isTrial, type Run, secondsIn, waitsToBegin } from "../../store/shapes/run.ts";
import { findPlan, freshRun, ownerOf, wantThread } from "./starting.ts";
import { endWaits, inTank, requireTank, waitFor } from "./tank-busy.ts";
import { waitsNoMore } from "./tank-busy-words.ts";

const runOption = z
  .string()
  .min(1)
  .max(12)
  .optional()
  .describe("Which run, like R7; yours if you have only one");
const sureOption = z.enum(["yes", "no"]).default("no").describe("I know what I am doing");

/** Here a bare number can only be seconds: nobody with wet hands types the unit. */
const agoOption = z
  .string()
  .max(20)
  .transform((text) => (/^\s*\d+\s*$/.test(text) ? `${text} s` : text))
  .pipe(durationOption);

const completeRun: Completer = (typed, context) =>
  runsInReach(context)
    .map((run) => ({ label: nameOf(run), value: makeNumber("run", run.number) }))
    .filter(({ label }) => label.toLowerCase().includes(typed.toLowerCase()));

export const runStart = defineCommand({
  name: "run start",
  summary: "Start a run from your plan",
  options: () => ({
    plan: z.string().min(1).max(12).optional().describe("Which plan, like P12; your newest one if left out"),
    tank: z.string().trim().min(1).max(8).optional().describe("Another tank of the same size, like T4"),
    wait: sureOption.describe("Wait for its tank though another is free, and be called"),
  }),
  who: "student",
  visibility: "private",
  handle({ plan: text, tank, wait }, context) {
    const { stores, now } = context;
    const found = findPlan(context, text);
    const stored = tank === undefined ? found : inTank(context, found, tank);
    const waitsFor = waitFor(context, stored, wait === "yes");
    const plan = recheckPlan(context, stored.plan);
    const ended = isFilmPlan(plan) ? endWaits(context) : [];
    const run = stores.runs.add(freshRun(context, plan));
    wantThread(context, run);
    callNext(stores, run, now);
    const started = words.startedReply(stores.runs.get(run.id) ?? run);
    const first = [
      ended.length > 0 ? waitsNoMore(ended) : "",
      bellWarning(plan, context.class, now),
      waitsFor ?? "",
    ].filter(Boolean);
    return { ...started, text: [...first, started.text].join("\n") };
  },
});

export const runNext = defineCommand({
  name: "run next",
  summary: "Say that the next bath is in (or the step is done)",
  options: () => ({
    run: runOption,
    step: z.coerce
      .number()
      .int()
      .min(0)
      .max(99)
      .optional()
      .describe("Set by buttons, so that an old one is recognised"),
    sure: sureOption,
  }),
  who: "student",
  visibility: "private",
  complete: { run: completeRun },
  handle({ run: text, step, sure }, context) {
    const run = findRun(context, text, "run next");
    const isFirst = waitsToBegin(run);
    if (isFirst && sure !== "yes") {
      if (isTrayRun(run)) requireRoom(context, run);
      else requireTank(context, run);
    }
    return change(context, run, {
      kind: "next",
      step: step ?? null,
      sure: sure === "yes",
      atMs: context.now,
    });
  },
});

export const runStatus = defineCommand({
  name: "run status",
  summary: "Where your film is now and what comes next",
  options: () => ({ run: runOption }),
  who: "student",
  visibility: "private",
  complete: { run: completeRun },
  handle({ run: text }, context) {
    const runs = text === undefined ? runsInReach(context) : [findRun(context, text, "run status")];
    const unreached = context.stores.figures.unreached(context.class.id);
    const reply = words.statusReply(runs, context.now, (run) => ownerOf(context, run), unreached);
    return text === undefined ? withLeftOut(context, ["run"], reply) : reply;
  },
});

export const runCorrect = defineCommand({
  name: "run correct",
  summary: "Put right when you poured, or give a new temperature",
  options: () => ({
    run: runOption,
    ago: agoOption.optional().describe("How long ago you really poured: 20, 1:10"),
    temp: temperatureOption.optional().describe("Temperature in the tank now: 21.5, 70F"),
  }),
  who: "student",
  visibility: "private",
  complete: { run: completeRun },
  handle({ run: text, ago, temp }, context) {
    const run = findRun(context, text, "run correct");
    const atMs = context.now;
    if (ago === undefined && temp === undefined)
      throw new UserError("ERR_NOTHING_TO_CORRECT", words.nothingToCorrect());
    return context.stores.atomically(() => {
      const moved = ago === undefined ? run : move(context, run, { kind: "poured", agoSeconds: ago, atMs });
      if (temp === undefined) {
        tellOwner(context, run, moved);
        return words.movedReply(moved, atMs);
      }
      const left = leftNow(moved, atMs);
      const leftSeconds = leftAt(moved, temp, left, atMs);
      const changed = move(context, moved, { kind: "new-temperature", tenthsC: temp, leftSeconds, atMs });
      tellOwner(context, run, changed);
      return words.newTemperatureReply(changed, temp, left, atMs);
    });
  },
});

export const runSeen = defineCommand({
  name: "run seen",
  summary: "Say that the image has begun to appear: the factor then sets the developing time",
  options: () => ({ run: runOption }),
  who: "student",
  visibility: "private",
  complete: { run: completeRun },
  handle({ run: text }, context) {
    const run = findRun(context, text, "run seen");
    if (!isTrayRun(run) || run.plan.factor === null)
      throw new UserError("ERR_NO_FACTOR", words.noFactor(run));
    const { factor, leastSeconds } = run.plan;
    const inAll = (seenAfterSeconds: number): number => wholeSeconds(factor, seenAfterSeconds, leastSeconds);
    const seen = move(context, run, { kind: "seen", wholeSeconds: inAll, atMs: context.now });
    tellOwner(context, run, seen);
    return words.seenReply(seen, context.now);
  },
});

export const runStop = defineCommand({
  name: "run stop",
  summary: "Stop a run for good; the log keeps what was done",
  options: () => ({
    run: runOption,
    reason: z.string().max(300).default("").describe("Why, for the log"),
    sure: sureOption,
  }),
  who: "student",
  visibility: "private",
  complete: { run: completeRun },
  handle({ run: text, reason, sure }, context) {
    const lost = isLostRun(context, text)
      ? setAsideNumber(context, "run", parseNumber("run", text ?? ""))
      : undefined;
    if (lost) return lost;
    const run = findRun(context, text, "run stop");
    // Of a trial nothing is lost, nor of a film that is in no tank yet.
    if (sure !== "yes" && !isOver(run) && !isTrial(run) && !run.queued?.forTank) return words.sureToStop(run);
    return change(context, run, { kind: "stop", reason, atMs: context.now });
  },
});

function change(context: Context, run: Run, event: RunEvent) {
  const changed = move(context, run, event);
  tellOwner(context, run, changed);
  if (event.kind === "next" && isTrayRun(changed)) washOthersAnew(context.stores, changed, context.now);
  if (isOver(changed)) return words.overReply(changed, context.stores.rolls.ofRun(changed.id));
  return words.changedReply(changed, context.now);
}

/** Advances the run and keeps it, or refuses in words. */
function move(context: Context, run: Run, event: RunEvent): Run {
  const result = advance(run, event);
  if (!result.ok) {
    const { text, actions } = faultWords(result.fault, run, context.now);
    throw new UserError(result.fault.code, text, actions);
  }
  keepRun(context.stores, result.value, context.now);
  return result.value;
}

function leftNow(run: Run, atMs: number): number {
  return run.phase.kind === "running" ? Math.max(0, Math.ceil(secondsIn(run, run.phase.endsAtMs - atMs))) : 0;
}

/** Only the developer's time hangs on its temperature by the sheet; other baths keep theirs. */
function leftAt(run: Run, tenthsC: number, left: number, atMs: number): number {
  const { phase, plan } = run;
  if (phase.kind !== "running" || plan.steps[phase.step]?.kind !== "develop") return left;
  const secondsAt = (ms: number): number => Math.max(0, secondsIn(run, ms - phase.startedAtMs));
  const earlier = run.deviations.flatMap((each) =>
    each.kind === "new-temperature" && each.step === phase.step
      ? [{ atSeconds: secondsAt(each.atMs), tenthsC: each.tenthsC }]
      : [],
  );
  if (isTrayPlan(plan)) {
    const before = earlier.at(-1)?.tenthsC ?? plan.tenthsC;
    return Math.ceil(timeAt(left, before, tenthsC, plan.factorPer10C));
  }
  if (!isFilmPlan(plan)) return left;
  const result = secondsLeftAt(plan, secondsAt(atMs), tenthsC, earlier);
  if (!result.ok) throw new UserError(result.fault.code, words.temperatureRefused(result.fault));
  return result.value;
}
