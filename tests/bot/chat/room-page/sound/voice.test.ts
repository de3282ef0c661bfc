import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { speakAloud } from "../../../../../bot/chat/room-page/voice.ts";

/* Calls said aloud, with a voice that takes its time. */

const SAYING_MS = 2500;
let said: { readonly text: string; readonly at: number }[];
let isCut: boolean;

beforeEach(() => {
  vi.useFakeTimers({ now: 0 });
  said = [];
  isCut = false;
  let endsAt = -Infinity;
  const speechSynthesis = {
    get speaking() {
      return performance.now() < endsAt;
    },
    cancel() {
      isCut ||= this.speaking;
      endsAt = -Infinity;
    },
    speak({ text }: { readonly text: string }) {
      said.push({ text, at: performance.now() });
      endsAt = performance.now() + SAYING_MS;
    },
  };
  vi.stubGlobal("speechSynthesis", speechSynthesis);
  vi.stubGlobal("window", { speechSynthesis });
  vi.stubGlobal("SpeechSynthesisUtterance", function Utterance(this: { text: string }, text: string) {
    this.text = text;
  });
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

test("of two tanks called at once, or one while the other is said, each has its words", () => {
  speakAloud("Tank 2.", "en", 400, Infinity);
  speakAloud("Tank 3.", "en", 400, Infinity);
  vi.advanceTimersByTime(1500);
  speakAloud("Tank 5.", "en", 400, Infinity);
  vi.advanceTimersByTime(20_000);
  expect(said.map(({ text }) => text)).toEqual(["Tank 2.", "Tank 3.", "Tank 5."]);
  expect(isCut).toBe(false);
});

test("what would be said when it is of no use any more is left out", () => {
  for (const tank of [1, 2, 3, 4]) speakAloud(`Tank ${tank}.`, "de", 400, 5000);
  vi.advanceTimersByTime(20_000);
  expect(said.map(({ text }) => text)).toEqual(["Tank 1.", "Tank 2."]);
});

test("a voice that never says that it has ended is cut for the next call", () => {
  Object.defineProperty(speechSynthesis, "speaking", { get: () => true });
  speakAloud("Tank 1.", "de", 400, Infinity);
  vi.advanceTimersByTime(60_000);
  speakAloud("Tank 2.", "de", 400, Infinity);
  vi.advanceTimersByTime(400);
  expect(said.map(({ text }) => text)).toEqual(["Tank 1.", "Tank 2."]);
});
