export const CUE_KINDS = ["agitate-first", "agitate", "get-ready", "pour-out", "next-bath", "nudge"] as const;

export type CueKind = (typeof CUE_KINDS)[number];

export interface Cue {
  /** Names this cue within its run, for ever: schedule, step, kind and number. */
  readonly key: string;
  readonly kind: CueKind;
  readonly step: number;
  /** Which agitation, counted from 1; for the others 0, for a nudge which one. */
  readonly number: number;
  readonly dueAtMs: number;
}

export interface DueCue extends Cue {
  readonly id: number;
  /** When this cue came to be known; a correction can make one that is due already, which is nobody's lateness. */
  readonly madeAtMs: number;
}
