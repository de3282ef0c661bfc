import { describe, expect, test } from "vitest";
import { groupReady } from "../../../bot/deliver/units.ts";
import type { Ready } from "../../../store/owed.ts";

const ready = (id: number, dueAt: number, over: Partial<Ready> = {}): Ready => ({
  id,
  key: `k${id}`,
  classId: 1,
  runId: null,
  personId: `discord:${id}`,
  priority: 1,
  dueAt,
  usefulUntil: null,
  bundle: null,
  tries: 0,
  ...over,
});
const alone = ({ key }: Ready) => ({ channel: key, isShared: false });
const shared = () => ({ channel: "class", isShared: true });

describe("what goes out as one message", () => {
  test("each alone where people are spoken to alone", () => {
    expect(groupReady([ready(1, 0), ready(2, 0)], alone).map(({ ids, bundle }) => [ids, bundle])).toEqual([
      [[1], null],
      [[2], null],
    ]);
  });

  test("cues due within a second in one channel, led by the first", () => {
    const units = groupReady([ready(1, 0), ready(2, 900), ready(3, 1100)], shared);
    expect(units.map(({ ids, key, bundle }) => ({ ids, key, bundle }))).toEqual([
      { ids: [1, 2], key: "k1", bundle: "k1" },
      { ids: [3], key: "k3", bundle: null },
    ]);
  });

  test("what was tried as a bundle stays that bundle, and nothing joins it", () => {
    const tried = { bundle: "k1", tries: 1 };
    const units = groupReady([ready(1, 0, tried), ready(2, 0, tried), ready(3, 0)], shared);
    expect(units.map(({ ids, bundle }) => [ids, bundle])).toEqual([
      [[1, 2], "k1"],
      [[3], null],
    ]);
  });

  test("what was tried alone stays alone: under its key the chat would take the others for said", () => {
    const units = groupReady([ready(1, 0, { tries: 1 }), ready(2, 0), ready(3, 0)], shared);
    expect(units.map(({ ids, bundle }) => [ids, bundle])).toEqual([
      [[1], null],
      [[2, 3], "k2"],
    ]);
  });

  test("a warning is read on its own", () => {
    const units = groupReady([ready(1, 0, { priority: 3 }), ready(2, 0, { priority: 3 })], shared);
    expect(units).toHaveLength(2);
  });

  test("no more than thirty in one message", () => {
    const units = groupReady(
      Array.from({ length: 65 }, (_, id) => ready(id, 0)),
      shared,
    );
    expect(units.map(({ ids }) => ids.length)).toEqual([30, 30, 5]);
  });
});
