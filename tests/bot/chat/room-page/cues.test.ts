import { describe, expect, test } from "vitest";
import type { PersonView } from "../../../../bot/chat/room/view.ts";
import type { FeedEvent } from "../../../../bot/chat/room/wire.ts";
import { localCues, markAnswered, openCues } from "../../../../bot/chat/room-page/cues.ts";

const R7 = { number: 7, tank: 3 };
const R8 = { number: 8, tank: 4 };

function cue(over: Partial<FeedEvent> = {}): FeedEvent {
  return {
    id: 1,
    at: 1000,
    kind: "cue",
    isPrivate: true,
    author: null,
    callsYou: false,
    text: "**30 s** bewegen.\n_R7, Dose 3_",
    runs: [R7],
    actions: [],
    pictures: [],
    files: [],
    dueAt: 1000,
    ...over,
  };
}

function view(over: Partial<PersonView> = {}): PersonView {
  return {
    run: 7,
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

describe("the calls that want an answer", () => {
  test("of one run only the newest, of two runs one each", () => {
    const events = [
      cue({ id: 1, dueAt: 1000 }),
      cue({ id: 2, dueAt: 2000 }),
      cue({ id: 3, dueAt: 1500, runs: [R8] }),
    ];
    const open = openCues(events, [view(), view({ run: 8 })], {}, 3000);
    expect(open.map(({ event }) => event.id)).toEqual([2, 3]);
  });

  test("an answered call stays answered, and the next one comes", () => {
    const answered = markAnswered({}, cue());
    expect(openCues([cue()], [view()], answered, 2000)).toEqual([]);
    expect(openCues([cue(), cue({ id: 2, dueAt: 61_000 })], [view()], answered, 61_000)).toHaveLength(1);
  });

  test("one that slept sees the newest call however old it is, as long as the run goes on", () => {
    expect(openCues([cue()], [view({ phase: "waiting" })], {}, 3_600_000)).toHaveLength(1);
    expect(openCues([cue()], [view({ phase: "finished" })], {}, 2000)).toEqual([]);
    expect(openCues([cue()], [], {}, 2000)).toEqual([]);
  });

  test("one said for several runs stays for those it was not answered for, and names them alone", () => {
    const both = cue({ id: 5, dueAt: 5000, runs: [R7, R8] });
    const views = [view(), view({ run: 8, tank: 4 })];
    const runs = (events: FeedEvent[], answered = {}) =>
      openCues(events, views, answered, 9000).map((each) => each.runs);
    expect(runs([both])).toEqual([[R7, R8]]);
    expect(runs([both, cue({ id: 6, dueAt: 6000 })])).toEqual([[R7], [R8]]);
    expect(runs([both], { 7: 5000 })).toEqual([[R8]]);
    expect(runs([both], markAnswered({}, both))).toEqual([]);
  });

  test("one of no run stays for a while, whatever runs there are", () => {
    const bell = cue({ text: "**Bell in 10 min.**", runs: [] });
    expect(openCues([bell, cue({ id: 2 })], [view()], {}, 2000).map(({ event }) => event.id)).toEqual([1, 2]);
    expect(openCues([bell], [view()], {}, 1000 + 10 * 60_000)).toEqual([]);
  });

  test("a call that comes ahead of its moment is kept back until then", () => {
    expect(openCues([cue({ dueAt: 5000 })], [view()], {}, 4999)).toEqual([]);
    expect(openCues([cue({ dueAt: 5000 })], [view()], {}, 5000)).toHaveLength(1);
  });

  test("a call made here without a link and its twin from the room are one", () => {
    const [local] = localCues([view({ coming: [{ text: "Agitate 5 s", at: 60_000 }] })], 0, 60_000, () => -1);
    expect(local?.dueAt).toBe(60_000);
    expect(openCues([cue({ id: 9, dueAt: 60_000 })], [view()], { 7: 60_000 }, 61_000)).toEqual([]);
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
    expect(called(59_999, 60_000)).toEqual(["**Agitate 5 s**"]);
    expect(called(60_000, 100_000)).toEqual([]);
    expect(called(0, 600_000)).toHaveLength(2);
  });
});
