import { playNote } from "./play-note.ts";
import { lengthMs, notesOf, type Sound, type Tone } from "./tones.ts";

/* How a call is made heard and felt by the page itself. */

const BUZZ: Record<Sound, number[]> = {
  agitate: [180, 90, 180],
  ready: [180, 90, 300],
  change: [350, 120, 350, 120, 600],
  word: [300, 120, 180],
};

/** `held`: the browser waits for a touch. `none`: touched, and this device gives no sound all the same. */
export type AlarmState = "on" | "held" | "none";

export interface Alarm {
  /** A browser lets a page sound only after a touch: to be called from one. */
  unlock(): void;
  /** Asks the browser, so that it is known before the first call whether a touch is wanted; `on` while it is asked first. */
  look(): AlarmState;
  /** Sounds at once, one after the other where there are several; false where the browser holds it back. */
  play(tones: readonly Pick<Tone, "sound" | "voice">[]): boolean;
  buzz(sound: Sound): void;
}

/** A context that was let go by a touch runs within this time, or never. */
const STARTS_WITHIN_MS = 1500;
const GAP_MS = 250;

export function createAlarm(): Alarm {
  let context: AudioContext | undefined;
  let touchedAt = Infinity;
  let isTouched = false;

  function open(): AudioContext {
    context ??= new AudioContext();
    return context;
  }

  const resume = (): void => void context?.resume().catch(() => undefined);

  return {
    unlock() {
      const { state } = open();
      if (state !== "running") resume();
      touchedAt = Math.min(touchedAt, performance.now());
      isTouched = true;
    },
    look() {
      if (!context) {
        // Making one takes as long as the first view does, which doesn't wait for it.
        setTimeout(open);
        return "on";
      }
      if (context.state === "running") {
        touchedAt = Infinity;
        return "on";
      }
      return performance.now() - touchedAt > STARTS_WITHIN_MS ? "none" : "held";
    },
    play(tones) {
      if (context?.state !== "running") {
        // A touch long ago is enough, where something else had the sound meanwhile, or the device was slow to give it.
        if (isTouched) resume();
        return false;
      }
      let at = context.currentTime + 0.02;
      for (const { sound, voice } of tones) {
        for (const { hertz, afterMs, ms } of notesOf(sound, voice))
          playNote(context, hertz, at + afterMs / 1000, ms / 1000);
        at += (lengthMs(sound) + GAP_MS) / 1000;
      }
      return true;
    },
    buzz: (sound) => void navigator.vibrate?.(BUZZ[sound]),
  };
}
