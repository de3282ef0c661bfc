import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { createSinkSound } from "../../../../../bot/chat/room-page/sink-sound.ts";
import type { PageRoom } from "../../../../../bot/chat/room-page/room.ts";
import { tonesOf, type Tone } from "../../../../../bot/chat/room-page/tones.ts";
import { advance } from "../../../../../commands/run/machine.ts";
import { viewOf } from "../../../../../commands/run/view.ts";
import { aPlan, aRun, START } from "../../../../support/make.ts";
import { openEar, type Ear } from "./ear.ts";

let ear: Ear;
vi.mock("../../../../../bot/chat/room-page/track.ts", async (load) => ({
  ...(await load<object>()),
  makeSegment(tones: readonly Tone[], fromMs: number, toMs: number) {
    ear.made(tones, fromMs, toMs);
    return new Uint8Array(0);
  },
}));

beforeEach(() => {
  vi.useFakeTimers({ toFake: ["setInterval", "clearInterval"] });
  vi.spyOn(URL, "createObjectURL").mockImplementation(() => "blob:");
  vi.spyOn(URL, "revokeObjectURL").mockImplementation(() => undefined);
  ear = openEar(START, { loadMs: 60, seekMs: 20 });
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

/** `facts`: whether the room has told it its time; until then its clock is the tablet's own. */
function aRoom(tones: readonly Tone[], told: { facts: object | null }, aheadMs = 0): PageRoom {
  const alarm = { ...ear.alarm, look: () => "on", unlock: () => undefined, buzz: () => undefined };
  return {
    alarm,
    tones: () => tones,
    clock: { now: () => ear.now() + (told.facts ? 0 : aheadMs) },
    store: { get: () => ({ isSoundOn: true, language: "en", views: [], facts: told.facts }) },
  } as unknown as PageRoom;
}

function tonesFrom(atMs: number): readonly Tone[] {
  const run = aRun({ plan: aPlan({ tank: 3 }), startedAtMs: atMs });
  const begun = advance(run, { kind: "next", step: 0, sure: true, atMs });
  if (!begun.ok) throw new Error(begun.fault.code);
  return tonesOf([viewOf(begun.value, "")], [], {});
}

function pass(ms: number): void {
  for (let left = ms; left > 0; left -= 10) {
    ear.pass(10);
    vi.advanceTimersByTime(10);
  }
}

test("a device that is one of the sink no more falls silent", () => {
  const room = aRoom(tonesFrom(START + 500), { facts: {} });
  const sound = createSinkSound(room, () => [room]);
  pass(2000);
  expect(ear.heard).toHaveLength(1);
  sound.stop();
  pass(120_000);
  expect(ear.heard).toHaveLength(1);
});

test("goes by the room's clock, though the first person's page has not heard it yet and the tablet's is minutes ahead", () => {
  const late = { facts: null as object | null };
  const first = aRoom([], late, 180_000);
  const second = aRoom(tonesFrom(START + 500), { facts: {} });
  createSinkSound(first, () => [first, second]);
  pass(300);
  late.facts = {};
  pass(65_000);
  // At the beginning, and after a minute.
  expect(ear.heard.map(({ at }) => Math.round((at - START - 500) / 1000))).toEqual([0, 60]);
});
