import { LATE_FROM_MS } from "./doing.ts";
import { advance } from "./machine.ts";
import { isOver, type Run } from "../../store/shapes/run.ts";
import type { DueCue } from "../../store/shapes/cue.ts";

/* What is said for the cues that have fallen due: pure, so that every late case can be tried without a timer. */

export { LATE_FROM_MS };

export interface Said {
  readonly cue: DueCue;
  /** Cues this one stands for, since they are no use any more. */
  readonly merged: readonly DueCue[];
}

export interface Settled {
  readonly run: Run;
  readonly said: readonly Said[];
  /** Whether the run moved on, so that its schedule must be written anew. */
  readonly moved: boolean;
}

/**
 * Settles the due cues of one run at `nowMs`. What is on time is said. Of what is late (the process was away) the older
 * cues are no use any more and are counted in a newer one; the end of a step stands for all before it. Each due cue comes
 * out exactly once: said, or merged into one that is.
 */
export function settle(run: Run, due: readonly DueCue[], nowMs: number): Settled {
  const ordered = [...due].sort((a, b) => a.dueAtMs - b.dueAtMs || a.id - b.id);
  const newest = ordered.at(-1);
  if (isOver(run) || !newest) return { run, said: [], moved: false };
  const end = ordered.find(({ kind }) => kind === "next-bath");
  const onTime = ordered.filter((cue) => lateness(cue, nowMs) < LATE_FROM_MS);
  const spoken = end ? [end] : onTime.length > 0 ? onTime : [newest];
  const merged = ordered.filter((cue) => !spoken.includes(cue));
  const said = spoken.map((cue, position) => ({
    cue,
    merged: position === 0 ? merged : [],
  }));
  if (!end) return { run, said, moved: false };
  const result = advance(run, { kind: "elapsed", atMs: nowMs });
  return result.ok ? { run: result.value, said, moved: true } : { run, said, moved: false };
}

/**
 * Whether nobody was called for a cue though they could have been: late or not, its person counts their calls. One that a
 * correction made when it was due already is missed only once that is late.
 */
export function isMissed(cue: DueCue, nowMs: number): boolean {
  return cue.dueAtMs >= cue.madeAtMs || lateness(cue, nowMs) >= LATE_FROM_MS;
}

/** How late a cue is; one that was due already when it came to be known is on time then. */
export function lateness(cue: DueCue, nowMs: number): number {
  return Math.max(0, nowMs - Math.max(cue.dueAtMs, cue.madeAtMs));
}
