import type { PersonView } from "../room/view.ts";
import { callsOf, type Answered, type Call } from "./calls.ts";

/* Which tones sound, and when: the same for the page's own voice and for the track a dark phone plays. */

export type Sound = "agitate" | "ready" | "change" | "word";

export interface Tone {
  readonly id: string;
  readonly call: Call;
  readonly sound: Sound;
  /** Which of the voices: each tank of a person has its own. */
  readonly voice: number;
  readonly at: number;
  readonly until: number;
  /** True for the tones that only ask again. */
  readonly isRepeat: boolean;
}

/** Asked again so often while a change of bath stays unanswered, and then no more: thirty phones share the room. */
const REPEATS = 4;
const REPEAT_MS = 5000;

const SOUNDS = {
  agitate: "agitate",
  "agitate-first": "agitate",
  "get-ready": "ready",
  "pour-out": "change",
  "next-bath": "change",
  nudge: "change",
  word: "word",
} as const satisfies Record<Call["kind"], Sound>;

/** Every tone of these runs and words, in order, but those of answered calls. */
export function tonesOf(views: readonly PersonView[], words: readonly Call[], answered: Answered): Tone[] {
  const voices = voicesOf(views);
  const isUnanswered = (call: Call): boolean => call.mark > (answered[call.of] ?? -Infinity);
  const ofRuns = views.flatMap((view) => {
    const calls = callsOf(view);
    return calls.flatMap((call, index) =>
      isUnanswered(call) ? soundings(call, voices.get(view.run) ?? 0, calls[index + 1]?.at ?? Infinity) : [],
    );
  });
  const ofWords = words.filter(isUnanswered).flatMap((call) => soundings(call, 0, Infinity).slice(0, 1));
  return [...ofRuns, ...ofWords].sort((a, b) => a.at - b.at);
}

function soundings(call: Call, voice: number, nextAt: number): Tone[] {
  const sound = SOUNDS[call.kind];
  const times = sound === "change" ? 1 + REPEATS : 1;
  return Array.from({ length: times }, (_, index): Tone => {
    const at = call.at + index * REPEAT_MS;
    return { id: `${call.id} ${index}`, call, sound, voice, at, until: call.until, isRepeat: index > 0 };
  }).filter(({ at }) => at < nextAt && at < call.until);
}

/** Between two tones of one device. */
const APART_MS = 300;

/**
 * Where many share a device, no two sound together: whichever comes second waits for the first, as long as it is of use.
 * `before`: how they stood so far; one whose turn has come by now keeps it, whatever else has come between.
 */
export function inTurn(tones: readonly Tone[], before: readonly Tone[] = [], now = -Infinity): Tone[] {
  const kept = new Map(before.filter(({ at }) => at <= now).map(({ id, at }) => [id, at]));
  let freeAt = -Infinity;
  return tones.flatMap((tone) => {
    const at = kept.get(tone.id) ?? Math.max(tone.at, freeAt);
    if (at >= tone.until) return [];
    freeAt = Math.max(freeAt, at + lengthMs(tone.sound) + APART_MS);
    return [at === tone.at ? tone : { ...tone, at }];
  });
}

/** What sounds now: of each run the newest tone that has not sounded. Those before it are past. */
export function tonesDue(tones: readonly Tone[], hasSounded: (id: string) => boolean, now: number): Tone[] {
  const newest = new Map<string, Tone>();
  for (const tone of tones) if (tone.at <= now && now < tone.until) newest.set(tone.call.of, tone);
  return [...newest.values()].filter(({ id }) => !hasSounded(id));
}

/** Half tones up or down; far enough apart to be told from each other. */
const VOICES = [0, 5, -4, 9, -7, 3, 7, -2] as const;

/** Each run its own voice, by its tank's number, so that a tank sounds the same all evening. */
export function voicesOf(views: readonly Pick<PersonView, "run" | "tank">[]): Map<number, number> {
  const voices = new Map<number, number>();
  const taken = new Set<number>();
  for (const { run, tank } of [...views].sort((a, b) => a.run - b.run)) {
    let voice = ((tank ?? run) - 1) % VOICES.length;
    for (let tries = 0; taken.has(voice) && tries < VOICES.length; tries += 1)
      voice = (voice + 1) % VOICES.length;
    taken.add(voice);
    voices.set(run, voice);
  }
  return voices;
}

export interface Note {
  readonly hertz: number;
  /** From the beginning of the tone. */
  readonly afterMs: number;
  readonly ms: number;
}

/** Pairs of pitch (Hz) and length (ms); 0 Hz is a pause. Rising for a change of bath, level for an agitation. */
const MELODIES: Record<Sound, readonly (readonly [number, number])[]> = {
  agitate: [
    [740, 140],
    [0, 90],
    [740, 140],
  ],
  ready: [
    [587, 120],
    [0, 60],
    [740, 200],
  ],
  change: [
    [587, 200],
    [740, 200],
    [988, 420],
  ],
  word: [
    [988, 160],
    [0, 60],
    [659, 320],
  ],
};

export function notesOf(sound: Sound, voice: number): Note[] {
  const by = 2 ** ((VOICES[voice % VOICES.length] ?? 0) / 12);
  let afterMs = 0;
  return MELODIES[sound].flatMap(([hertz, ms]) => {
    const note = { hertz: hertz * by, afterMs, ms };
    afterMs += ms;
    return hertz > 0 ? [note] : [];
  });
}

export function lengthMs(sound: Sound): number {
  return MELODIES[sound].reduce((sum, [, ms]) => sum + ms, 0);
}
