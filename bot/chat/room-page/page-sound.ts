import { nameOfView } from "../../../commands/run/run-view.ts";
import type { Language } from "../../../store/shapes/language.ts";
import type { Alarm } from "./alarm.ts";
import { nextOfAll, type Calling } from "./calling.ts";
import type { RoomClock } from "./clock.ts";
import { sayInstant } from "./instant.ts";
import { spokenOf } from "./lateness.ts";
import { isOnWall } from "./place.ts";
import { createSounder, SILENT, type Sounder } from "./sounder.ts";
import type { State, Store } from "./state.ts";
import { lengthMs, type Tone } from "./tones.ts";
import { createTrackPlayer, type TrackPlayer } from "./track-player.ts";
import { speakAloud } from "./voice.ts";
import { wordsIn } from "./word-books.ts";

/** How exactly the page's own tones keep to their moment. */
const BEAT_MS = 100;

/**
 * The sound of a page in the real room: tones, the track, the voice, and what a lock screen says. A wall has none: it is
 * everybody's, nobody can answer there, and whose call it is hears it on their own device.
 */
export function createPageSound(
  store: Store,
  clock: RoomClock,
  alarm: Alarm,
  calling: Calling,
  isWall = isOnWall(),
): Sounder {
  if (isWall) return SILENT;
  const now = (): number => clock.now();
  const track = createTrackPlayer(now);
  const sounder = createSounder({
    alarm,
    track,
    tones: calling.tones,
    now,
    isOn: () => store.get().isSoundOn,
    speak: (tone) => store.get().isSpeechOn && speakTone(tone, store.get().language, now()),
  });

  setInterval(() => {
    sounder.beat();
    nameNext(track, store.get(), now());
  }, BEAT_MS);
  // Behind other pages a browser lets its timers wait for up to a minute, but not what the room says.
  store.subscribe(() => document.hidden && sounder.beat());
  return sounder;
}

/** What a lock screen says: when the next call comes, what it is, and whose. */
export function nameNext(
  track: TrackPlayer,
  { views, facts, language }: Pick<State, "views" | "facts" | "language">,
  now: number,
): void {
  const next = nextOfAll(views, now);
  if (!next) return;
  const title = `${sayInstant(next.at, "time", facts?.class.zone)} ${next.brief}`;
  track.name(title, wordsIn(language).runs.name(nameOfView(next.view)));
}

export function speakTone({ call, sound, until }: Tone, language: Language, now: number): void {
  const spoken = spokenOf(call, now, wordsIn(language).cue);
  if (spoken === "") return;
  const where = call.run && wordsIn(language).runs.where(call.run);
  const words = [spoken, where ? `${where}.` : ""];
  speakAloud(words.join(" ").trim(), language, lengthMs(sound), until - now);
}
