import { playNote } from "./play-note.ts";

export type CallTone = "agitate" | "change";

/* A tone for each tank of a device that is everybody's: who knows theirs need not look. */

/** Hz: a pentatonic row, so that any two that sound one after the other are told apart and none is harsh. */
const PITCHES = [523, 587, 659, 784, 880, 1047, 1175, 1319] as const;
/** Shares of the pitch, and how long each lasts (s): level for an agitation, rising for a change of bath. */
const SHAPES: Record<CallTone, readonly (readonly [number, number])[]> = {
  agitate: [
    [1, 0.16],
    [1, 0.16],
  ],
  change: [
    [1, 0.18],
    [1.25, 0.18],
    [1.5, 0.4],
  ],
};
const GAP_SECONDS = 0.07;
const BETWEEN_CALLS_SECONDS = 0.3;

export const pitchOf = (tank: number | null): number => PITCHES[((tank ?? 1) - 1) % PITCHES.length] ?? 523;

export interface SinkTones {
  /** From a touch: browsers hold sound back until one. */
  unlock(): void;
  isHeard(): boolean;
  /** Sounds after what is sounding: two at once would be neither. */
  call(tone: CallTone, tank: number | null): void;
}

export function createSinkTones(): SinkTones {
  let context: AudioContext | undefined;
  let freeAt = 0;
  const isHeard = (): boolean => context?.state === "running";
  return {
    isHeard,
    unlock() {
      context ??= new AudioContext();
      if (context.state !== "running") void context.resume().catch(() => undefined);
    },
    call(tone, tank) {
      if (!context || !isHeard()) return;
      let at = Math.max(context.currentTime + 0.02, freeAt);
      for (const [share, seconds] of SHAPES[tone]) {
        playNote(context, pitchOf(tank) * share, at, seconds);
        at += seconds + GAP_SECONDS;
      }
      freeAt = at + BETWEEN_CALLS_SECONDS;
    },
  };
}
