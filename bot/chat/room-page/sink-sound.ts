import { nameNext, speakTone } from "./page-sound.ts";
import type { PageRoom } from "./room.ts";
import { createSounder, type Sounder } from "./sounder.ts";
import { inTurn, type Tone } from "./tones.ts";
import { createTrackPlayer } from "./track-player.ts";

/* A device at a sink sounds for everybody who stands there, as a phone does: each tank in its voice, and no two at once. */

const BEAT_MS = 100;

export interface SinkSound extends Sounder {
  stop(): void;
}

/** `main`: the page's own, which says whether it sounds and in which language; `rooms`: those of the people at it. */
export function createSinkSound(main: PageRoom, rooms: () => readonly PageRoom[]): SinkSound {
  let known: readonly (readonly Tone[])[] = [];
  let all: readonly Tone[] = [];
  // All of them go by the clock of one and the same room, as soon as it has told one of them its time.
  const now = (): number => (rooms().find(({ store }) => store.get().facts) ?? main).clock.now();
  const track = createTrackPlayer(now);

  function tones(): readonly Tone[] {
    const each = rooms().map((room) => room.tones());
    if (each.length === known.length && each.every((own, index) => own === known[index])) return all;
    known = each;
    // A word to all is in everybody's feed, and sounds once.
    const once = new Map(each.flat().map((tone) => [tone.id, tone]));
    all = inTurn(
      [...once.values()].sort((a, b) => a.at - b.at),
      all,
      now(),
    );
    return all;
  }

  const sounder = createSounder({
    alarm: main.alarm,
    track,
    tones,
    now,
    isOn: () => main.store.get().isSoundOn,
    speak: (tone) => main.store.get().isSpeechOn && speakTone(tone, main.store.get().language, now()),
  });
  const beating = setInterval(() => {
    sounder.beat();
    const states = rooms().map(({ store }) => store.get());
    const views = states.flatMap((state) => state.views);
    nameNext(track, { views, facts: states[0]?.facts ?? null, language: main.store.get().language }, now());
  }, BEAT_MS);
  return {
    ...sounder,
    stop() {
      clearInterval(beating);
      track.follow([]);
    },
  };
}
