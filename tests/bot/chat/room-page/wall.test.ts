import { describe, expect, test } from "vitest";
import type { WallRow } from "../../../../bot/chat/room/wire.ts";
import { arrangeWall, layOutWall } from "../../../../bot/chat/room-page/wall.ts";
import { advance } from "../../../../commands/run/machine.ts";
import { viewOf } from "../../../../commands/run/view.ts";
import type { Run } from "../../../../store/shapes/run.ts";
import { aPlan, aRun, START } from "../../../support/make.ts";

/** A tank whose developer, 9:00 long, went in so many seconds before START; null: it is not in yet. */
function row(tank: number, pouredAgo: number | null): WallRow {
  const over = { number: tank, plan: aPlan({ tank }), startedAtMs: START - 3600_000 } satisfies Partial<Run>;
  if (pouredAgo === null) return { ...viewOf(aRun(over), "Mina") };
  const atMs = START - pouredAgo * 1000;
  const poured = advance(aRun(over), { kind: "next", step: 0, sure: true, atMs });
  if (!poured.ok) throw new Error(poured.fault.code);
  const ended = pouredAgo >= 540 ? advance(poured.value, { kind: "elapsed", atMs: START }) : poured;
  if (!ended.ok) throw new Error(ended.fault.code);
  return { ...viewOf(ended.value, "Mina") };
}

describe("the order on the wall", () => {
  const tanksOf = (rows: readonly WallRow[], now = START) => {
    const { large, small } = arrangeWall(rows, now);
    const say = (each: (typeof large)[number]): string => `${each.row.tank} ${each.state}`;
    return { large: large.map(say), small: small.map(say) };
  };

  test("what is late first, the longest first, then what is due soonest; the rest is small", () => {
    expect(tanksOf([row(1, null), row(2, 60), row(3, 600), row(4, 500), row(5, 700), row(6, 300)])).toEqual({
      large: ["5 late", "3 late", "4 running"],
      small: ["6 running", "2 running", "1 idle"],
    });
  });

  test("the next one to end is large, however long it has", () => {
    expect(tanksOf([row(1, 10), row(2, 20)])).toEqual({ large: ["2 running"], small: ["1 running"] });
  });

  test("a bath whose time has passed is late before the room has said so", () => {
    expect(tanksOf([row(1, 500)], START + 41_000).large).toEqual(["1 late"]);
  });
});

/*
 * A sign of 20 to 22 minutes of arc is read with ease, 16 are the least (ISO 9241-303, from memory). At 5 m 20' are 29 mm:
 * 4.7 % of the height of a screen of 50 inches (623 mm). The digits of the typeface are 0.67 of its size high.
 */
const LEAST_SHARE = 0.047;
const DIGIT_HEIGHT = 0.67;

describe("the layout", () => {
  const SCREENS = [
    [1280, 720],
    [3840, 2160],
  ] as const;
  /** What the header leaves of the height. */
  const LEFT = 0.8;

  test.each(
    SCREENS.flatMap(([width, height]) =>
      [1, 8, 24, 30].flatMap((tanks) =>
        [1, 3, 6].map((large) => [tanks, Math.min(tanks, large), width, height] as const),
      ),
    ),
  )("%d tanks, %d of them large, fit on %d x %d and can be read from 5 m", (tanks, large, width, height) => {
    const small = tanks - large;
    const area = height * LEFT;
    const { largeColumns, largePx, smallColumns, smallPx } = layOutWall(large, small, width, area);
    const used = Math.ceil(large / largeColumns) * largePx + Math.ceil(small / smallColumns) * smallPx;
    expect(used).toBeLessThanOrEqual(area + 1);
    expect((largePx * 0.44 * DIGIT_HEIGHT) / height).toBeGreaterThan(LEAST_SHARE);
    if (small > 0) {
      expect(largePx).toBeGreaterThan(smallPx * 1.3);
      expect((smallPx * 0.68 * DIGIT_HEIGHT) / height).toBeGreaterThan(LEAST_SHARE * 0.8);
    }
  });

  test("all of thirty late at once still fit", () => {
    const { largeColumns, largePx } = layOutWall(30, 0, 1280, 576);
    expect(Math.ceil(30 / largeColumns) * largePx).toBeLessThanOrEqual(577);
    expect(largePx).toBeGreaterThan(80);
  });
});
