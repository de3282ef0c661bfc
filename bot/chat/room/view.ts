import type { Action } from "../../../commands/define.ts";
import type { Language } from "../../../store/shapes/language.ts";

/** One run as its owner's panel shows it. Instants are ms since the epoch. */
export interface PersonView {
  /** Its number: 7 of `R7`. */
  readonly run: number;
  readonly tank: number | null;
  /** The step's name: `Developer`. */
  readonly title: string;
  /** Counted from 1. */
  readonly stepNumber: number;
  readonly stepCount: number;
  readonly phase: "waiting" | "running" | "finished" | "stopped";
  /** The one next action: `Agitate 30 s`. */
  readonly now: string;
  readonly startedAt: number | null;
  readonly endsAt: number | null;
  readonly nextCue: ComingCue | null;
  /** What else will be said in this step, in order, so that a phone without a link can go on calling by itself. */
  readonly coming?: readonly ComingCue[];
  readonly actions: readonly Action[];
}

export interface ComingCue {
  readonly text: string;
  readonly at: number;
}

/** The open runs of a person, in the language they read or, where one is given, in that. */
export type ViewOf = (personId: string, classId: number, language?: Language) => readonly PersonView[];
