import { describe, expect, test } from "vitest";
import type { FeedEvent } from "../../../../bot/chat/room/wire.ts";
import type { PersonView } from "../../../../bot/chat/room/view.ts";
import { lateSeconds, openCalls, wordOf, WORDS } from "../../../../bot/chat/room-page/calls.ts";
import { tonesOf } from "../../../../bot/chat/room-page/tones.ts";
import { advance, type RunEvent } from "../../../../commands/run/machine.ts";
import { actionsAt, comingCall, doingNow } from "../../../../commands/run/doing.ts";
import { viewOf } from "../../../../commands/run/view.ts";
import type { Run } from "../../../../store/shapes/run.ts";
import { shiftRun } from "../../../../store/shapes/run-shift.ts";
import { aPlan, aRun, START } from "../../../support/make.ts";

/* Develop 9:00 from START on (30 s at first, 5 s each minute, pour-out at 8:50, called 15 s before), then a rinse. */

function after(run: Run, ...events: RunEvent[]): Run {
  return events.reduce((now, event) => {
    const result = advance(now, event);
    if (!result.ok) throw new Error(result.fault.code);
    return result.value;
  }, run);
}

const s = (seconds: number): number => START + seconds * 1000;
const next = (atMs: number): RunEvent => ({ kind: "next", step: null, sure: true, atMs });
const developing = (over: Partial<Run> = {}): Run => after(aRun(over), next(START));
const view = (run: Run): PersonView => viewOf(run, "");
const open = (run: Run, at: number, answered = {}): string[] =>
  openCalls([view(run)], [], answered, s(at)).map(({ words }) => words.does);

describe("what a person is called to", () => {
  test.each([
    [0, "Agitate 30 s."],
    [29.9, "Agitate 30 s."],
    [30, undefined],
    [60, "Agitate 5 s."],
    [65, undefined],
    [515, "Pour out in 15 s."],
    [530, "Pour out now (10 s)."],
    [540, "Now: rinse 1."],
    [559.9, "Now: rinse 1."],
    [560, "Is the rinse 1 in?"],
    [4000, "Is the rinse 1 in?"],
  ])("at %d s it is %s", (at, does) => {
    expect(open(developing(), at)[0]).toBe(does);
  });

  test("the end of the bath is called the same before the room has said so and after", () => {
    const running = developing();
    const waiting = after(running, { kind: "elapsed", atMs: s(540) });
    for (const at of [540, 545, 560, 600, 720])
      expect(openCalls([view(running)], [], {}, s(at))).toEqual(openCalls([view(waiting)], [], {}, s(at)));
  });

  test("a run that has only been started, and one whose rinse is in, want nothing", () => {
    expect(open(aRun(), 5)).toEqual([]);
    expect(open(after(developing(), next(s(545))), 546)).toEqual([]);
  });

  test("whoever slept over ten calls has one, the newest that still matters", () => {
    expect(open(developing(), 603)).toHaveLength(1);
    expect(open(developing(), 303)).toEqual(["Agitate 5 s."]);
    expect(open(developing(), 333)).toEqual([]);
  });

  test("an answered call stays answered, and the next one comes", () => {
    expect(open(developing(), 10, { 7: 0 })).toEqual([]);
    expect(open(developing(), 60, { 7: 0 })).toEqual(["Agitate 5 s."]);
    expect(open(developing(), 550, { 7: 540_000 })).toEqual([]);
    expect(open(developing(), 560, { 7: 540_000 })).toEqual(["Is the rinse 1 in?"]);
  });

  test.each([-3600, -10, 86_400])("so it does where the clock is set by %d s in between", (by) => {
    const run = developing();
    const [answered] = openCalls([view(run)], [], {}, s(64));
    const set = shiftRun(run, by * 1000);
    const marks = { 7: answered?.mark ?? Number.NaN };
    expect(open(set, 64 + by, marks)).toEqual([]);
    expect(open(set, 120 + by, marks)).toEqual(["Agitate 5 s."]);
    expect(tonesOf([view(set)], [], marks)[0]?.at).toBe(s(120 + by));
  });

  test("of two tanks what must be done within seconds comes first", () => {
    const second = developing({ id: 8, number: 8, plan: aPlan({ tank: 4 }) });
    const ended = after(developing(), { kind: "poured", agoSeconds: 535, atMs: START });
    const calls = openCalls([view(second), view(ended)], [], {}, s(2));
    expect(calls.map(({ of, kind }) => [of, kind])).toEqual([
      ["7", "pour-out"],
      ["8", "agitate-first"],
    ]);
  });
});

describe("lateness", () => {
  const lateAt = (run: Run, at: number): number | undefined => {
    const [call] = openCalls([view(run)], [], {}, s(at));
    return call && lateSeconds(call, s(at));
  };

  test("is that of the moment when it is looked at", () => {
    expect(lateAt(developing(), 61)).toBeUndefined();
    expect(lateAt(developing(), 62)).toBe(2);
    expect(lateAt(developing(), 12)).toBe(12);
  });

  test("counts from the end of the bath, however often was asked since", () => {
    expect(lateAt(developing(), 575)).toBe(35);
    expect(lateAt(after(developing(), { kind: "elapsed", atMs: s(540) }), 575)).toBe(35);
  });

  test("is nobody's where a correction has put a call into the past", () => {
    const moved = after(developing(), { kind: "poured", agoSeconds: 61, atMs: s(1) });
    expect(open(moved, 2)).toEqual(["Agitate 5 s."]);
    expect(lateAt(moved, 2)).toBeUndefined();
    expect(lateAt(moved, 4)).toBe(3);
  });
});

describe("between the calls", () => {
  const doing = (at: number): string => doingNow(view(developing()), s(at));

  test("the card says what the board says", () => {
    expect([0, 29, 30, 59, 60, 65].map(doing)).toEqual([
      "Agitate 30 s.",
      "Agitate 30 s.",
      "Let it stand.",
      "Let it stand.",
      "Agitate 5 s.",
      "Let it stand.",
    ]);
    expect(doing(520)).toBe("Let it stand.");
    expect(doing(530)).toMatch(/^Pour out now \(10 s\)\. Pour out the developer\./);
    expect(doing(600)).toMatch(/^Fill the tank with water\./);
  });

  test("names what comes next, and no reminder", () => {
    const coming = (at: number) => comingCall(view(developing()), s(at))?.words.brief;
    expect([0, 60, 480, 515, 530, 540].map(coming)).toEqual([
      "Agitate 5 s",
      "Agitate 5 s",
      "Get ready for rinse 1",
      "Pour out",
      "Rinse 1",
      undefined,
    ]);
  });

  test("the next bath's key is the main one only when its time is near", () => {
    const weight = (at: number) => actionsAt(view(developing()), s(at))[0]?.weight;
    expect([0, 300, 509, 510, 540, 600].map(weight)).toEqual([
      "plain",
      "plain",
      "plain",
      "main",
      "main",
      "main",
    ]);
  });
});

test("who has two tanks is called to the one in its developer first, however long the other has waited in water", () => {
  const rinsed = after(developing({ id: 8, number: 8 }), next(s(540)), { kind: "elapsed", atMs: s(570) });
  const late = after(aRun({ id: 9, number: 9, startedAtMs: s(45) }), next(s(45)));
  const first = (at: number): (string | undefined)[] =>
    openCalls([view(rinsed), view(late)], [], {}, s(at)).map(({ of, words }) => `${of} ${words.does}`);
  expect(first(572)[0]).toMatch(/^8 /);
  expect(first(576)[0]).toMatch(/^9 Pour out now/);
  expect(first(586)).toEqual([expect.stringMatching(/^9 Now: rinse 1/), expect.stringMatching(/^8 /)]);
  expect(first(700)[0]).toBe("9 Is the rinse 1 in?");
});

describe("a word to many", () => {
  const event = (over: Partial<FeedEvent> = {}): FeedEvent => ({
    id: 5,
    at: START,
    kind: "notice",
    isPrivate: false,
    author: null,
    callsYou: false,
    text: "**Iris:** fixer B4 is retired",
    runs: [],
    actions: [],
    pictures: [],
    files: [],
    dueAt: START,
    isWord: true,
    ...over,
  });
  const words = (events: FeedEvent[], at: number, answered = {}): number[] =>
    openCalls([], events.flatMap(wordOf), answered, s(at)).map(({ mark }) => mark);

  test("calls each reader, the older one first, until it is answered or ten minutes old", () => {
    const two = [event(), event({ id: 6, at: START + 1000 })];
    expect(words(two, 2)).toEqual([5, 6]);
    expect(words(two, 2, { [WORDS]: 5 })).toEqual([6]);
    expect(words(two, 601)).toEqual([]);
  });

  test("has been said also where the clock was set back since, if not by long", () => {
    expect(words([event()], -300)).toEqual([5]);
    expect(words([event()], -300, { [WORDS]: 5 })).toEqual([]);
    expect(words([event()], -601)).toEqual([]);
  });

  test("other entries for all call nobody; one to a person that names no run does", () => {
    expect(words([event({ isWord: false })], 1)).toEqual([]);
    expect(words([event({ isWord: false, kind: "cue" })], 1)).toEqual([5]);
    expect(words([event({ isWord: false, kind: "cue", runs: [{ number: 7, tank: 3 }] })], 1)).toEqual([]);
  });

  test("one that tells of a change in one's run calls too, with the run's name, and is heard once", () => {
    const change = event({ isWord: false, kind: "cue", isChange: true, runs: [{ number: 7, tank: 3 }] });
    expect(words([change], 1)).toEqual([5]);
    const [call] = openCalls([], wordOf(change), {}, s(1));
    expect(call?.run).toEqual({ number: 7, tank: 3 });
    const tones = tonesOf([], wordOf(change), {});
    expect(tones.map(({ sound, at }) => [sound, at])).toEqual([["word", START]]);
    expect(tonesOf([], wordOf(change), { [WORDS]: 5 })).toEqual([]);
  });

  test("one that gives a bath another bottle stands for those before it on the same bath of the same run", () => {
    const told = (id: number, number: number, rebottled: number) =>
      event({ id, isWord: false, kind: "cue", isChange: true, runs: [{ number, tank: 3 }], rebottled });
    const none = told(5, 7, 3);
    expect(words([none], 1)).toEqual([5]);
    expect(words([none, told(6, 7, 3)], 1)).toEqual([6]);
    // The wash aid is another bath, and R8 another film.
    expect(words([none, told(6, 7, 5), told(7, 8, 3)], 1)).toEqual([5, 6, 7]);
    // Changes without a bottle each tell their own.
    const change = { isWord: false, kind: "cue", isChange: true, runs: [{ number: 7, tank: 3 }] } as const;
    expect(words([event(change), event({ ...change, id: 6 })], 1)).toEqual([5, 6]);
  });
});
