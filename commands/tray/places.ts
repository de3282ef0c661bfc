import { isTrial, type Run, stepAt, type TrayRun, waitsToBegin } from "../../store/shapes/run.ts";
import type { PaperSize } from "../../store/shapes/paper.ts";
import type { StepKind } from "../../store/shapes/plan.ts";
import type { TrayLine } from "../../store/shapes/tray-line.ts";

/*
 * Who is where along one line of trays, and when the next prints may go in: a print can't wait in the developer or the stop
 * bath, so it goes in only when every tray on its way has a place for it at its time.
 */

/** From one tray into the next, beyond the draining. Our estimate, no source. */
const MOVING_SECONDS = 5;

/** Of 8x10 in, mm²: what a tray's places are counted in. */
const PLACE_MM2 = 203 * 254;

/** How many places of 8x10 in sheets of this size take in a tray, each at least one. */
export function placesOf({ shortMm, longMm }: PaperSize, prints: number): number {
  return prints * Math.max(1, Math.ceil((shortMm * longMm) / PLACE_MM2 - 0.05));
}

interface Stay {
  readonly tray: string;
  readonly fromMs: number;
  readonly untilMs: number;
  readonly places: number;
}

type Stepped = Pick<TrayRun["plan"], "steps" | "size" | "prints">;

/** Trays are told apart by step and ordinal; both washes of a print are in one. */
const trayOf = ({ kind, ordinal }: { readonly kind: StepKind; readonly ordinal: number }): string =>
  kind === "fix" ? `fix${ordinal}` : kind === "rinse" ? "stop" : kind;

function roomIn(line: TrayLine, tray: string): number {
  if (tray === "develop") return line.developPlaces;
  if (tray === "stop") return line.stopPlaces;
  if (tray.startsWith("fix")) return line.fixPlaces;
  return tray === "wash" ? line.washPlaces : Infinity;
}

/** Where prints will be from `startsAtMs` on, their first bath being that of `from`, with `leftMs` to go in it. */
function staysFrom(plan: Stepped, from: number, startsAtMs: number, leftMs: number | null): Stay[] {
  const places = placesOf(plan.size, plan.prints);
  const stays: Stay[] = [];
  let atMs = startsAtMs;
  for (const [at, step] of plan.steps.slice(from).entries()) {
    if (step.seconds === null) break;
    const lengthMs = (at === 0 ? leftMs : null) ?? step.seconds * 1000;
    const untilMs = atMs + lengthMs + MOVING_SECONDS * 1000;
    stays.push({ tray: trayOf(step), fromMs: atMs, untilMs, places });
    atMs = untilMs;
  }
  return stays;
}

/** Where the prints of a run are and will be; what waits for its first bath is nowhere yet. */
export function staysOf({ plan, phase }: TrayRun, nowMs: number): Stay[] {
  if (phase.kind === "running")
    return staysFrom(plan, phase.step, nowMs, Math.max(0, phase.endsAtMs - nowMs));
  if (phase.kind !== "waiting" || phase.step === 0) return [];
  // It lies on in the tray before until somebody moves it.
  return staysFrom(plan, phase.step - 1, nowMs, 0);
}

/** The same where nobody is counted on to move a print that waits to be moved: it keeps its tray until somebody does. */
export function heldStaysOf(run: TrayRun, nowMs: number): Stay[] {
  const stays = staysOf(run, nowMs);
  return run.phase.kind === "waiting"
    ? stays.map((stay, at) => (at === 0 ? { ...stay, untilMs: Infinity } : stay))
    : stays;
}

function fits(line: TrayLine, wanted: readonly Stay[], there: readonly Stay[]): boolean {
  return wanted.every((stay) => {
    const others = there.filter(
      (each) => each.tray === stay.tray && each.fromMs < stay.untilMs && each.untilMs > stay.fromMs,
    );
    const moments = [stay.fromMs, ...others.map(({ fromMs }) => Math.max(fromMs, stay.fromMs))];
    const fullest = Math.max(
      ...moments.map((atMs) =>
        others
          .filter((each) => each.fromMs <= atMs && atMs < each.untilMs)
          .reduce((sum, { places }) => sum + places, 0),
      ),
    );
    return fullest + stay.places <= roomIn(line, stay.tray);
  });
}

/** The first tray in which so many sheets have no room even when it is empty; null: all have. */
export function tooSmallFor(line: TrayLine, plan: Stepped): string | null {
  const places = placesOf(plan.size, plan.prints);
  return plan.steps.map(trayOf).find((tray) => places > roomIn(line, tray)) ?? null;
}

/**
 * When these prints may go into the developer: now, or as soon as each tray on their way has room. `ahead`: those who wait
 * before them, each let in at its own first moment. null: a tray is too small for them, or taken for nobody knows how long.
 * `stays` says where prints will be.
 */
export function firstStart(
  line: TrayLine,
  plan: Stepped,
  going: readonly TrayRun[],
  ahead: readonly Stepped[],
  nowMs: number,
  stays: typeof staysOf = staysOf,
): number | null {
  let there = going.flatMap((run) => stays(run, nowMs));
  for (const each of ahead) {
    const atMs = earliest(line, each, there, nowMs);
    if (atMs !== null) there = [...there, ...staysFrom(each, 0, atMs, null)];
  }
  return earliest(line, plan, there, nowMs);
}

function earliest(line: TrayLine, plan: Stepped, there: readonly Stay[], nowMs: number): number | null {
  if (tooSmallFor(line, plan) !== null) return null;
  const shifts = staysFrom(plan, 0, 0, null);
  // Only where somebody leaves a tray does room appear: so that these prints come into it just then.
  const starts = there.flatMap(({ tray, untilMs }) =>
    shifts.filter((each) => each.tray === tray).map(({ fromMs }) => untilMs - fromMs),
  );
  const later = starts.filter((atMs) => atMs > nowMs && atMs < Infinity);
  const moments = [nowMs, ...later].sort((a, b) => a - b);
  return moments.find((atMs) => fits(line, staysFrom(plan, 0, atMs, null), there)) ?? null;
}

/** Whoever has their turn and has not come by then gives way to the next. Our judgement, no source. */
const GIVES_WAY_MS = 3 * 60_000;

/** Since when a run that waits to begin has its turn: since it was called, or from its start on; null: it waits for a place. */
function turnSinceMs({ phase, queued }: Pick<Run, "phase" | "queued">): number | null {
  if (queued !== undefined) return queued.dueAtMs;
  return phase.kind === "waiting" ? phase.sinceMs : null;
}

/** When a run that has its turn by now gives way. */
export const givesWayAtMs = (run: Run, nowMs: number): number =>
  Math.min(turnSinceMs(run) ?? nowMs, nowMs) + GIVES_WAY_MS;

/** Whether it has had its turn for so long that the next need not wait for it. */
export function hasGivenWay(run: Run, nowMs: number): boolean {
  const sinceMs = turnSinceMs(run);
  return sinceMs !== null && sinceMs + GIVES_WAY_MS <= nowMs;
}

/** When prints that go in at `startsAtMs` are washed, ms. */
export function washedAtMs(plan: Stepped, startsAtMs: number): number {
  return staysFrom(plan, 0, startsAtMs, null).at(-1)?.untilMs ?? startsAtMs;
}

/** Of those at a line: who is in a tray, and who waits for a place, the longest waiting first. */
export function atLine(
  runs: readonly TrayRun[],
  line: number,
): { readonly inTrays: TrayRun[]; readonly waiting: TrayRun[] } {
  const here = runs.filter((run) => run.plan.line === line && !isTrial(run));
  return { inTrays: here.filter((run) => !waitsToBegin(run)), waiting: here.filter(waitsToBegin) };
}

/** Prints that light still spoils: not through the first fixing bath. */
export function isPaperOpen(run: TrayRun): boolean {
  const { phase, plan } = run;
  if (isTrial(run)) return false;
  if (phase.kind !== "waiting" && phase.kind !== "running") return false;
  const fixed = plan.steps.findIndex(({ kind }) => kind === "fix");
  return phase.step <= fixed;
}

export const stepNow = (run: TrayRun) =>
  run.phase.kind === "waiting" || run.phase.kind === "running" ? stepAt(run, run.phase.step) : undefined;
