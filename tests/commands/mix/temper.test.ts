import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { temper, type TemperRequest } from "../../../commands/mix/temper.ts";
import { waterTenthsFor } from "../../../commands/sheet/suggest.ts";
import { createRoom } from "../../support/room.ts";

function water(
  totalMl: number,
  targetTenthsC: number,
  coldTenthsC: number,
  hotTenthsC: number,
  more: Partial<TemperRequest> = {},
) {
  return temper({
    totalMl,
    targetTenthsC,
    coldTenthsC,
    hotTenthsC,
    concentrateMl: 0,
    concentrateTenthsC: 200,
    ...more,
  });
}

describe("hot and cold to a target (derived from equal heat a ml; the three checks are worked by hand)", () => {
  test.each([
    [1000, 200, 120, 500, 210.5, 789.5],
    [500, 240, 180, 600, 71.4, 428.6],
    // 300 ml at 20 from 26 and 4: the cold share is 0.2727.
    [300, 200, 40, 260, 218.2, 81.8],
  ])("%d ml at %d from %d and %d tenths: hot %f, cold %f ml", (total, target, cold, hot, hotMl, coldMl) => {
    const made = water(total, target, cold, hot);
    expect(made.ok && Math.abs(made.value.hotMl - hotMl)).toBeLessThanOrEqual(0.5);
    expect(made.ok && Math.abs(made.value.coldMl - coldMl)).toBeLessThanOrEqual(0.5);
    expect(made.ok && made.value.reachedTenthsC).toBe(target);
  });

  test("with water's true heat and density (IAPWS-95 figures) the simple rule is good to about 0.1 °C near a bath", () => {
    // kJ/(kg K) and kg/m3 at 10 and 60 °C; enthalpy by the mean of the ends is close enough for a bound.
    const [cold, hot] = [
      { c: 4.1921, d: 999.7 },
      { c: 4.1843, d: 983.2 },
    ];
    const made = water(1000, 300, 100, 600);
    if (!made.ok) throw new Error(made.fault.code);
    const heat = made.value.coldMl * cold.d * cold.c * 10 + made.value.hotMl * hot.d * hot.c * 60;
    const capacity = made.value.coldMl * cold.d * cold.c + made.value.hotMl * hot.d * hot.c;
    expect(Math.abs(heat / capacity - 30)).toBeLessThan(0.25);
    const near = water(1000, 200, 150, 400);
    if (!near.ok) throw new Error(near.fault.code);
    const [c15, c40] = [
      { c: 4.1855, d: 999.1 },
      { c: 4.1785, d: 992.2 },
    ];
    const warm = near.value.coldMl * c15.d * c15.c * 15 + near.value.hotMl * c40.d * c40.c * 40;
    const holds = near.value.coldMl * c15.d * c15.c + near.value.hotMl * c40.d * c40.c;
    expect(Math.abs(warm / holds - 20)).toBeLessThan(0.1);
  });
});

describe("concentrate and the impossible", () => {
  test("concentrate at room temperature takes its share of the heat", () => {
    const made = water(1000, 200, 100, 500, { concentrateMl: 100, concentrateTenthsC: 150 });
    if (!made.ok) throw new Error(made.fault.code);
    const { hotMl, coldMl, concentrateMl } = made.value;
    expect(hotMl + coldMl + concentrateMl).toBe(1000);
    expect(Math.abs(hotMl * 50 + coldMl * 10 + concentrateMl * 15 - 20_000)).toBeLessThan(50);
  });

  test("what can't be reached is refused with the nearest that can", () => {
    const cool = water(1000, 300, 100, 250);
    expect(cool).toMatchObject({ fault: { code: "ERR_TOO_COOL_TO_REACH", nearestTenthsC: 250 } });
    expect(water(1000, 250, 100, 250).ok).toBe(true);
    expect(water(1000, 80, 100, 250)).toMatchObject({
      fault: { code: "ERR_TOO_WARM_TO_REACH", nearestTenthsC: 100 },
    });
    expect(water(1000, 200, 250, 100)).toMatchObject({ fault: { code: "ERR_HOT_IS_COLD" } });
    expect(water(100, 200, 100, 500, { concentrateMl: 100 })).toMatchObject({
      fault: { code: "ERR_NO_WATER_LEFT" },
    });
  });

  test("water of 22 °C and stock of 20 °C make 21 °C at 1+1; stock alone takes none", () => {
    expect(waterTenthsFor({ concentrateParts: 1, waterParts: 1 }, 210, 200)).toBe(220);
    expect(waterTenthsFor({ concentrateParts: 1, waterParts: 0 }, 210, 200)).toBeNull();
  });

  test("the nearest it names is always reachable, sums hold, nothing crashes", () => {
    const tenths = fc.integer({ min: 0, max: 1000 });
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 200_000 }),
        tenths,
        tenths,
        tenths,
        fc.integer({ min: 0, max: 5000 }),
        tenths,
        (totalMl, target, a, b, concentrateMl, concentrateTenthsC) => {
          const more = { concentrateMl, concentrateTenthsC };
          const made = water(totalMl, target, Math.min(a, b), Math.max(a, b), more);
          if (made.ok) {
            expect(made.value.hotMl + made.value.coldMl + concentrateMl).toBe(totalMl);
            expect(Math.min(made.value.hotMl, made.value.coldMl)).toBeGreaterThanOrEqual(0);
          } else if ("nearestTenthsC" in made.fault)
            expect(water(totalMl, made.fault.nearestTenthsC, Math.min(a, b), Math.max(a, b), more).ok).toBe(
              true,
            );
        },
      ),
      { numRuns: 5_000 },
    );
  });
});

describe("/mix temper", () => {
  const room = createRoom();
  test("gives hot, cold and concentrate first, and asks to measure", () => {
    const { reply } = room.asks("Ann", "/mix temper total:1 l target:20C cold:12C hot:50C dilution:1+9");
    expect(reply.text).toMatch(/^\*\*\d+ ml hot \+ \d+ ml cold \+ 100 ml concentrate\*\* = 1 l at 20 °C/);
    expect(reply.text).toContain("measure");
  });

  test("the impossible is refused in words, with what would be nearest", () => {
    const { reply, code } = room.asks("Ann", "/mix temper total:1 l target:20C cold:24C hot:50C");
    expect(code).toBe("ERR_TOO_WARM_TO_REACH");
    expect(reply.text).toContain("24 °C");
    expect(reply.text).toContain("never put ice");
  });
});
