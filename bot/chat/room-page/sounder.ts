import type { Alarm } from "./alarm.ts";
import { tonesDue, type Tone } from "./tones.ts";
import type { TrackPlayer } from "./track-player.ts";

/* Makes each tone heard once: from the track where it plays, else by the page itself. */

/** Whether calls can be heard: `held`: after a touch; `paused`: the track was stopped from outside; `none`: not here. */
export type Hearing = "on" | "held" | "paused" | "none";

export interface Sounder {
  beat(): void;
  /** To be called from a touch. */
  touch(): void;
  hearing(): Hearing;
}

/** For a page that is heard by other means. */
export const SILENT: Sounder = { beat: () => undefined, touch: () => undefined, hearing: () => "on" };

export interface SounderParts {
  readonly alarm: Alarm;
  /** null: the page alone, as on the tour, whose clock runs otherwise. */
  readonly track: TrackPlayer | null;
  tones(): readonly Tone[];
  now(): number;
  isOn(): boolean;
  /** Says the call aloud, where that is wanted. */
  speak(tone: Tone): void;
}

/** More than an answer of the room puts a clock right by in passing. */
const AGAIN_MS = 1000;

export function createSounder({ alarm, track, tones, now, isOn, speak }: SounderParts): Sounder {
  const sounded = new Set<string>();
  const felt = new Set<string>();

  return {
    beat() {
      const all = tones();
      const moment = now();
      // A clock that ran ahead and was put right has them before it again.
      for (const { id, at } of all) if (at > moment + AGAIN_MS) sounded.delete(id);
      const due = tonesDue(all, (id) => sounded.has(id), moment);
      // Asked before the track is put right or made anew.
      const own = due.filter((tone) => !track?.covers(tone));
      track?.follow(isOn() ? all : []);
      // What lies before them is past, whether it was heard or slept through.
      for (const { id, at } of all) if (at <= moment) sounded.add(id);
      if (due.length === 0 || !isOn()) return;
      if (alarm.play(own)) track?.leave(own);
      // Held back until a touch: it sounds then, as long as it is of use.
      else for (const { id } of own) sounded.delete(id);
      const fresh = due.filter(({ id }) => !felt.has(id));
      for (const { id } of fresh) felt.add(id);
      const [first] = fresh;
      if (first) alarm.buzz(first.sound);
      for (const tone of fresh) if (!tone.isRepeat) speak(tone);
    },
    touch() {
      alarm.unlock();
      if (track?.state === "paused") track.resume();
      else track?.bless();
    },
    hearing() {
      if (track?.state === "paused") return "paused";
      const own = alarm.look();
      return own === "on" && track?.state === "refused" ? "held" : own;
    },
  };
}
