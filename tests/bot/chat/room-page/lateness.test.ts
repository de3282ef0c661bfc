import { describe, expect, test } from "vitest";
import { cue as de } from "../../../../bot/chat/room-page/call-words.de.ts";
import { cue as en } from "../../../../bot/chat/room-page/call-words.en.ts";
import { openCalls, wordOf, type Call } from "../../../../bot/chat/room-page/calls.ts";
import { doFirst, sayLateness, spokenOf } from "../../../../bot/chat/room-page/lateness.ts";
import type { FeedEvent } from "../../../../bot/chat/room/wire.ts";
import { advance } from "../../../../commands/run/machine.ts";
import { viewOf } from "../../../../commands/run/view.ts";
import { aRun, START } from "../../../support/make.ts";

/* Develop 9:00 from START on (30 s at first, pour-out at 8:50, called 15 s before), then a rinse. */

const s = (seconds: number): number => START + seconds * 1000;

function callAt(seconds: number): Call {
  const begun = advance(aRun(), { kind: "next", step: null, sure: true, atMs: START });
  if (!begun.ok) throw new Error(begun.fault.code);
  const [call] = openCalls([viewOf(begun.value, "")], [], {}, s(seconds));
  if (!call) throw new Error(`nothing is called at ${seconds} s`);
  return call;
}

const wordAt = (seconds: number, dueAt = s(seconds)): Call => {
  const event: FeedEvent = {
    id: 1,
    at: s(seconds),
    kind: "notice",
    isPrivate: false,
    author: { name: "Ada", isYou: false },
    callsYou: false,
    text: "Lights on in a minute.",
    runs: [],
    actions: [],
    pictures: [],
    files: [],
    dueAt,
    isWord: true,
  };
  const [call] = wordOf(event);
  if (!call) throw new Error("no word");
  return call;
};

describe("what a page shows of a call that is seen late", () => {
  test.each([
    [1, "", ""],
    [12, "12 s late: do it now", "12 s zu spät: jetzt tun"],
    [523, "only 7 s left", "nur noch 7 s"],
    [535, "5 s late: do it now", "5 s zu spät: jetzt tun"],
    [552, "12 s late: do it now", "12 s zu spät: jetzt tun"],
    // It asks whether it is done.
    [575, "35 s late", "35 s zu spät"],
  ])("at %d s: %s", (at, english, german) => {
    expect(sayLateness(callAt(at), s(at), en)).toBe(english);
    expect(sayLateness(callAt(at), s(at), de)).toBe(german);
  });

  test("whoever slept over the call to pour out is told to do that first, and nobody else", () => {
    expect(doFirst(callAt(552), s(552))).toMatch(/^Still in\? Pour out the developer\./);
    expect(doFirst(callAt(540), s(540))).toBe("");
    expect(doFirst(callAt(12), s(12))).toBe("");
    // Who is asked whether the next bath is in may have the old one in the tank.
    expect(doFirst(callAt(560), s(560))).toMatch(/^Still in\? Pour out the developer\./);
  });

  test("a voice says so too, once it is more than a few seconds", () => {
    expect(spokenOf(callAt(2), s(2), en)).toBe("Agitate, 30 seconds.");
    expect(spokenOf(callAt(12), s(12), en)).toBe("Agitate, 30 seconds. 12 seconds late.");
    expect(spokenOf(callAt(12), s(12), de)).toContain(" 12 Sekunden zu spät.");
    expect(spokenOf(callAt(523), s(523), en)).toBe("Get ready for rinse 1. Only 7 seconds left.");
    expect(spokenOf(callAt(4000), s(4000), en)).toMatch(/ 57 minutes late\.$/);
  });
});

describe("a word to many", () => {
  test("says how old it is, unless it was said just now", () => {
    const word = wordAt(0);
    expect(sayLateness(word, s(9), en)).toBe("");
    expect(sayLateness(word, s(40), en)).toBe("40 s ago");
    expect(sayLateness(word, s(599), en)).toBe("9 min ago");
    expect(sayLateness(word, s(599), de)).toBe("vor 9 min");
  });

  test("is as old as its saying, not as its entry, where the room could not be written meanwhile", () => {
    expect(sayLateness(wordAt(600, s(0)), s(600), en)).toBe("10 min ago");
  });
});
