import { describe, expect, test } from "vitest";
import type { PersonView } from "../../../../bot/chat/room/view.ts";
import type { FeedEvent } from "../../../../bot/chat/room/wire.ts";
import { localCues, openCues, runOf } from "../../../../bot/chat/room-page/cues.ts";

function cue(over: Partial<FeedEvent> = {}): FeedEvent {
  return {
    id: 1,
    at: 1000,
    kind: "cue",
    isPrivate: true,
    author: null,
    callsYou: false,
    text: "**30 s** agitate.\n_R7, tank 3_",
    actions: [],
    pictures: [],
    files: [],
    dueAt: 1000,
    ...over,
  };
}

function view(over: Partial<PersonView> = {}): PersonView {
  return {
    run: "R7",
    tank: 3,
    title: "Developer",
    stepNumber: 1,
    stepCount: 8,
    phase: "running",
    now: "",
    startedAt: 0,
    endsAt: 540_000,
    nextCue: null,
    actions: [],
    ...over,
  };
}

describe("the run a call speaks of", () => {
  test("its button names it, or its last words", () => {
    expect(runOf(cue({ actions: [{ label: "x", line: "run next run:12 step:2" }] }))).toBe("R12");
    expect(runOf(cue())).toBe("R7");
    expect(runOf(cue({ text: "**Bell in 10 min.**" }))).toBeNull();
  });
});

describe("the calls that want an answer", () => {
  test("of one run only the newest, of two runs one each", () => {
    const events = [
      cue({ id: 1, dueAt: 1000 }),
      cue({ id: 2, dueAt: 2000 }),
      cue({ id: 3, dueAt: 1500, text: "**x**\n_R8_" }),
    ];
    const open = openCues(events, [view(), view({ run: "R8" })], {}, 3000);
    expect(open.map(({ event }) => event.id)).toEqual([2, 3]);
  });

  test("an answered call stays answered, and the next one comes", () => {
    const answered = { R7: 1000 };
    expect(openCues([cue()], [view()], answered, 2000)).toEqual([]);
    expect(openCues([cue(), cue({ id: 2, dueAt: 61_000 })], [view()], answered, 61_000)).toHaveLength(1);
  });

  test("one that slept sees the newest call however old it is, as long as the run goes on", () => {
    expect(openCues([cue()], [view({ phase: "waiting" })], {}, 3_600_000)).toHaveLength(1);
    expect(openCues([cue()], [view({ phase: "finished" })], {}, 2000)).toEqual([]);
    expect(openCues([cue()], [], {}, 2000)).toEqual([]);
  });

  test("a call that comes ahead of its moment is kept back until then", () => {
    expect(openCues([cue({ dueAt: 5000 })], [view()], {}, 4999)).toEqual([]);
    expect(openCues([cue({ dueAt: 5000 })], [view()], {}, 5000)).toHaveLength(1);
  });

  test("a call made here without a link and its twin from the room are one", () => {
    const [local] = localCues([view({ coming: [{ text: "Agitate 5 s", at: 60_000 }] })], 0, 60_000, () => -1);
    expect(local?.dueAt).toBe(60_000);
    expect(openCues([cue({ id: 9, dueAt: 60_000 })], [view()], { R7: 60_000 }, 61_000)).toEqual([]);
  });
});

describe("calls by the page's own clock", () => {
  test("each coming one once, when its moment has passed", () => {
    const coming = [
      { text: "Agitate 5 s", at: 60_000 },
      { text: "Pour out", at: 530_000 },
    ];
    const called = (since: number, until: number) =>
      localCues([view({ coming })], since, until, () => -1).map(({ text }) => text);
    expect(called(0, 59_999)).toEqual([]);
    expect(called(59_999, 60_000)).toEqual(["**5 s** agitate\n_R7_"]);
    expect(called(60_000, 100_000)).toEqual([]);
    expect(called(0, 600_000)).toHaveLength(2);
  });
});
