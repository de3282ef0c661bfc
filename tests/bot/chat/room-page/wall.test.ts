import { describe, expect, test } from "vitest";
import type { WallRow } from "../../../../bot/chat/room/wire.ts";
import { columnsFor, orderForWall } from "../../../../bot/chat/room-page/wall.ts";

function row(tank: number, phase: WallRow["phase"], endsAt: number | null): WallRow {
  return {
    run: tank,
    owner: "Mina",
    ownerId: "room:mina",
    tank,
    title: "Developer",
    stepNumber: 1,
    stepCount: 8,
    phase,
    now: "",
    startedAt: null,
    endsAt,
    nextCue: null,
    actions: [],
  };
}

test("who waits comes first, then whose bath ends soonest", () => {
  const rows = [row(1, "running", 900), row(2, "running", 300), row(3, "waiting", null)];
  expect(orderForWall(rows).map(({ tank }) => tank)).toEqual([3, 2, 1]);
});

describe("columns", () => {
  test("three tanks on a projector stand in one row", () => {
    expect(columnsFor(3, 1280, 650)).toBe(3);
  });
  test("thirty tanks are all seen at once on 1080 lines", () => {
    const columns = columnsFor(30, 1920, 930);
    const height = (Math.ceil(30 / columns) * 1920) / columns / 2;
    expect(height).toBeLessThanOrEqual(930);
  });
  test("a phone has one column", () => {
    expect(columnsFor(30, 320, 500)).toBe(1);
  });
});
