/* How a call is made heard and felt. */

export type CallTone = "agitate" | "change";

/** Pairs of pitch (Hz) and length (ms); 0 Hz is a pause. Rising for a change of bath, level for an agitation. */
const TONES: Record<CallTone, readonly (readonly [number, number])[]> = {
  agitate: [
    [740, 140],
    [0, 90],
    [740, 140],
  ],
  change: [
    [587, 200],
    [740, 200],
    [988, 420],
  ],
};
const BUZZ: Record<CallTone, number[]> = { agitate: [180, 90, 180], change: [350, 120, 350, 120, 600] };

export interface Alarm {
  /** A browser lets a page sound only after a touch: to be called from one. */
  unlock(): void;
  isUnlocked(): boolean;
  call(tone: CallTone, isSoundOn: boolean): void;
}

export function createAlarm(): Alarm {
  let context: AudioContext | undefined;
  const isUnlocked = (): boolean => context?.state === "running";

  function sound(tone: CallTone): void {
    if (!context || !isUnlocked()) return;
    let at = context.currentTime + 0.02;
    for (const [hertz, ms] of TONES[tone]) {
      if (hertz > 0) note(context, hertz, at, ms / 1000);
      at += ms / 1000;
    }
  }

  return {
    isUnlocked,
    unlock() {
      context ??= new AudioContext();
      if (context.state !== "running") void context.resume().catch(() => undefined);
    },
    call(tone, isSoundOn) {
      if (!isSoundOn) return;
      sound(tone);
      navigator.vibrate?.(BUZZ[tone]);
    },
  };
}

function note(context: AudioContext, hertz: number, at: number, seconds: number): void {
  const oscillator = context.createOscillator();
  const gain = context.createGain();
  oscillator.type = "triangle";
  oscillator.frequency.value = hertz;
  // Eased in and out, since a hard edge clicks.
  gain.gain.setValueAtTime(0, at);
  gain.gain.linearRampToValueAtTime(0.6, at + 0.015);
  gain.gain.setValueAtTime(0.6, at + seconds - 0.03);
  gain.gain.linearRampToValueAtTime(0, at + seconds);
  oscillator.connect(gain).connect(context.destination);
  oscillator.start(at);
  oscillator.stop(at + seconds + 0.02);
}
