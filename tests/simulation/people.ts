import { makeNumber } from "../../commands/speech/wording.ts";
import type { Random } from "./random.ts";
import { SLACK_MS, type Verdict } from "./reference.ts";
import { drawPlan } from "./plans.ts";
import { beginRun, type Course, type Student, type World } from "./world.ts";

/*
 * Students with wet hands. Each thing they do is told to the bot and to the reference, and the two must agree on the
 * answer. Faults of a run that the reference does not know come from the arithmetic, and change nothing.
 */

const RUN_FAULTS = new Set([
  "ERR_RUN_OVER",
  "ERR_OLD_BUTTON",
  "ERR_ALREADY_RUNNING",
  "ERR_TOO_EARLY",
  "ERR_BEFORE_LAST_STEP",
  "ERR_NOTHING_RUNNING",
  "ERR_POURING_OUT",
]);

/** Calls and reckons; throws where the answers differ. */
function act(
  world: World,
  course: Course,
  name: string,
  options: Record<string, unknown>,
  reckon: (atMs: number) => Verdict,
): boolean {
  const { student } = course;
  if (!world.bot) return false;
  world.compare(course);
  const called = world.call(student, name, { run: makeNumber("run", course.number), ...options });
  if (!called) return false;
  if (called.kind === "refused" && !RUN_FAULTS.has(called.code ?? "")) return false;
  const atMs = world.time.trueMs();
  const expected = reckon(atMs);
  const got = called.code ?? called.kind;
  if (got !== expected) throw new Error(`${student.name}: ${name} gave ${got}, due is ${expected}`);
  if (expected === "done") course.changes.push(atMs);
  world.compare(course);
  return expected === "done";
}

export function press(world: World, course: Course, step: number | undefined, isSure = false): boolean {
  const { run } = course;
  if (isOnTheEdge(world, course)) return false;
  const options = { ...(step === undefined ? {} : { step }), ...(isSure ? { sure: "yes" } : {}) };
  return act(world, course, "run next", options, (atMs) => run.next(step, isSure, atMs));
}

/** The chat delivers one press twice: the second changes nothing and gets no answer. */
export function pressRepeated(world: World, course: Course): void {
  const { run, student } = course;
  if (!world.bot) return;
  world.compare(course);
  if (run.stage.kind !== "waiting") return;
  const { step } = run.stage;
  const options = { run: makeNumber("run", course.number), step };
  const callId = `twice-${student.id}-${world.time.trueMs()}`;
  const first = world.call(student, "run next", options, callId);
  if (!first) return;
  if (run.next(step, false, world.time.trueMs()) !== (first.code ?? first.kind))
    throw new Error(`a press gave ${first.code ?? first.kind}`);
  course.changes.push(world.time.trueMs());
  world.compare(course);
  const second = world.call(student, "run next", options, callId);
  if (second && second.kind !== "repeat") throw new Error(`a repeated press gave ${second.kind}`);
  world.compare(course);
}

export function correctPour(world: World, course: Course, agoSeconds: number): void {
  const { run } = course;
  if (isOnTheEdge(world, course)) return;
  const before = run.starts.at(-1);
  const startMs = world.time.trueMs() - agoSeconds * 1000;
  if (before && Math.abs(startMs - before.atMs) <= SLACK_MS) return;
  act(world, course, "run correct", { ago: `${agoSeconds}` }, (atMs) => run.poured(agoSeconds, atMs));
}

export function giveTemperature(world: World, course: Course, tenthsC: number): void {
  const { run } = course;
  if (isOnTheEdge(world, course)) return;
  act(world, course, "run correct", { temp: `${tenthsC / 10}` }, (atMs) => {
    const row = world.bot?.peek(({ db }) =>
      db.prepare("select phase ->> 'endsAtMs' as ends from runs where id = ?").get(course.id),
    ) as { ends: number | null };
    return run.newTemperature(atMs, world.toTrue(row.ends ?? 0));
  });
}

export function stopRun(world: World, course: Course): void {
  const { run } = course;
  act(world, course, "run stop", { sure: "yes" }, (atMs) => run.stop(atMs));
}

/** So close to a boundary that either answer would be right: let it be. */
function isOnTheEdge(world: World, { run }: Course): boolean {
  if (run.stage.kind !== "running") return false;
  const { endMs, step } = run.stage;
  const pourOutMs = endMs - (run.plan.steps[step]?.pourOutSeconds ?? 0) * 1000;
  return [endMs, pourOutMs, run.earliestMs(run.stage)].some(
    (edgeMs) => Math.abs(world.time.trueMs() - edgeMs) <= SLACK_MS,
  );
}

/** Lives through an evening: begins, waits, presses, errs, and presses again. */
export function livePerson(world: World, student: Student, random: Random, isTrying: () => boolean): void {
  const { time } = world;
  const again = (ms: number): void => time.after(ms, () => isTrying() && step());
  function step(): void {
    const course = student.courses.at(-1);
    if (!course || (course.run.isOver && random.chance(0.7))) beginRun(world, student, drawPlan(random));
    else if (course.run.isOver) press(world, course, 0);
    else doSomething(world, course, random);
    again(random.wait(student.courses.at(-1)?.run.stage.kind === "waiting" ? 8000 : 20_000));
  }
  again(random.wait(5000));
}

function doSomething(world: World, course: Course, random: Random): void {
  const { run, student } = course;
  if (!("step" in run.stage)) return;
  const { step, kind } = run.stage;
  const dice = random.next();
  if (kind === "waiting") {
    if (dice < 0.55) press(world, course, random.chance(0.9) ? step : undefined);
    else if (dice < 0.65) pressRepeated(world, course);
    else if (dice < 0.75) correctPour(world, course, random.whole(1, 40));
    else if (dice < 0.8) press(world, course, random.whole(0, run.plan.steps.length));
    else if (dice < 0.83) giveTemperature(world, course, random.whole(190, 215));
    else if (dice < 0.85) stopRun(world, course);
    else if (dice < 0.9) world.call(student, "run status", {});
    return;
  }
  if (dice < 0.08) press(world, course, step + 1);
  else if (dice < 0.12) press(world, course, step + 1, true);
  else if (dice < 0.18) press(world, course, step);
  else if (dice < 0.22) press(world, course, random.whole(0, run.plan.steps.length));
  else if (dice < 0.3) correctPour(world, course, random.whole(1, 60));
  else if (dice < 0.38) giveTemperature(world, course, random.whole(190, 215));
  else if (dice < 0.4) stopRun(world, course);
  else if (dice < 0.5) world.call(student, "run status", {});
}
