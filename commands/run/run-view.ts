import type { Action } from "../define.ts";
import type { CueKind } from "../../store/shapes/cue.ts";
import type { Run, RunName } from "../../store/shapes/run.ts";

/** What one call asks for. */
export interface CallParts {
  /** The action, in the imperative, with its length: `Agitate 30 s.` */
  readonly does: string;
  /** How it is done and what follows; may be empty. */
  readonly how: string;
  /** What comes before it where the call to pour out was not heard. */
  readonly first?: string;
  /** As a voice says it. */
  readonly spoken: string;
  /** How long the doing lasts, seconds; null where it lasts until it is answered or another call comes. */
  readonly seconds: number | null;
}

/** One call of the phase a run is in, gone or still to come. */
export interface ViewCall {
  readonly kind: CueKind;
  /** The moment it is for, ms since the epoch. */
  readonly at: number;
}

/** What all calls of one kind in this phase say. */
export interface CallWords extends CallParts {
  /** As a line of what comes next: `Agitate 5 s`. */
  readonly brief: string;
  readonly actions: readonly Action[];
}

/** Says nothing of the present moment, so that it changes only with the run: who shows it has a clock. */
export interface RunView {
  /** Its number. */
  readonly run: number;
  readonly owner: string;
  readonly ownerId: string;
  readonly tank: number | null;
  /** The line of trays that prints go along. */
  readonly trays?: number;
  readonly title: string;
  /** From 1. */
  readonly stepNumber: number;
  readonly stepCount: number;
  readonly phase: Run["phase"]["kind"];
  /** What is to be done while no call asks for anything: `Let it stand.` */
  readonly resting: string;
  /** Whether something is poured at this step, and the moment of pouring can be put right. */
  readonly isPoured: boolean;
  /** The developer works on its film, and does until the next bath is in: what follows it can wait, this can't. */
  readonly isDeveloping: boolean;
  readonly startedAt: number | null;
  readonly endsAt: number | null;
  /** Of a trial: so many of its seconds pass in one of the room's. All instants are the room's. */
  readonly speed?: number;
  /** When the run itself came to be: where the room's clock is set, this moves with all the others. */
  readonly begunAt: number;
  /** Since when the next step is waited for, where its moment was called; null otherwise. */
  readonly overdueSince: number | null;
  /** When this schedule came to be: a call it has made in the past is nobody's lateness. */
  readonly knownAt: number;
  /** Every call of this phase and, where nobody answers, of the wait after it: a phone goes on calling by these alone. */
  readonly calls: readonly ViewCall[];
  readonly sayings: Readonly<Partial<Record<CueKind, CallWords>>>;
  readonly actions: readonly Action[];
}

/** A view's run, as whatever speaks of it names it. */
export const nameOfView = ({ run, tank, trays, speed }: Omit<RunView, "owner" | "ownerId">): RunName => ({
  number: run,
  tank,
  ...(trays === undefined ? {} : { trays }),
  ...(speed === undefined ? {} : { isTrial: true }),
});
