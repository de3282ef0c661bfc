import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { createPageSound } from "../../../../../bot/chat/room-page/page-sound.ts";
import type { Calling } from "../../../../../bot/chat/room-page/calling.ts";
import type { RoomClock } from "../../../../../bot/chat/room-page/clock.ts";
import { createStore, NOTHING_OF_ANYBODY, type State } from "../../../../../bot/chat/room-page/state.ts";
import type { Tone } from "../../../../../bot/chat/room-page/tones.ts";
import { START } from "../../../../support/make.ts";
import { openEar, type Ear } from "./ear.ts";

let ear: Ear;

beforeEach(() => {
  vi.useFakeTimers({ toFake: ["setInterval", "clearInterval"] });
  ear = openEar(START, { loadMs: 60, seekMs: 20 });
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

const WORD: Tone = {
  id: "word 1 0",
  call: { of: "words", words: { spoken: "" } } as Tone["call"],
  sound: "word",
  voice: 0,
  at: START - 40,
  until: START + 600_000,
  isRepeat: false,
};

function soundPage(tones: () => readonly Tone[], isWall = false) {
  const store = createStore({ ...NOTHING_OF_ANYBODY, isSoundOn: true } as unknown as State);
  const alarm = { ...ear.alarm, look: () => "on" as const, unlock: () => undefined, buzz: () => undefined };
  createPageSound(store, { now: ear.now } as RoomClock, alarm, { tones } as Calling, isWall);
  return store;
}

test.each([
  [true, 0],
  [false, 1],
])("a wall (%s), which nobody can answer, sounds nothing: a phone does", (isWall, sounds) => {
  vi.stubGlobal("document", { hidden: false });
  soundPage(() => [WORD], isWall);
  vi.advanceTimersByTime(1000);
  expect(ear.heard).toHaveLength(sounds);
});

test.each([
  [true, 1],
  [false, 0],
])(
  "what the room says is sounded at once, where the page is hidden (%s): its timers may sleep for a minute",
  (hidden, sounds) => {
    vi.stubGlobal("document", { hidden });
    let tones: readonly Tone[] = [];
    const store = soundPage(() => tones);
    tones = [WORD];
    store.set({ events: [] });
    expect(ear.heard).toHaveLength(sounds);
    vi.advanceTimersByTime(100);
    expect(ear.heard).toHaveLength(1);
  },
);
