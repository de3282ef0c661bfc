import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dilute, type DiluteRequest } from "../../../commands/mix/dilute.ts";
import { createRoom } from "../../support/room.ts";

const OUNCE_ML = 29.5735;
const oz = (ounces: number): number => Math.round(ounces * OUNCE_ML);

function mix(waterParts: number, given: Partial<DiluteRequest>) {
  const dilution = { concentrateParts: 1, waterParts };
  return dilute({ dilution, totalMl: null, concentrateMl: null, waterMl: null, ...given });
}

describe("dilution either way", () => {
  test("20 oz at 1+9 is 2 oz + 18 oz (published note, gist trey/823bdc14, grade C)", () => {
    expect(mix(9, { totalMl: oz(20) })).toMatchObject({
      value: { concentrateMl: oz(2), waterMl: oz(20) - oz(2) },
    });
  });

  test("20 oz at 1+4 is 4 oz + 16 oz by rule; the same note's 5 + 15 is refused as what it is: 1+3", () => {
    expect(mix(4, { totalMl: oz(20) })).toMatchObject({ value: { concentrateMl: oz(4) } });
    expect(mix(4, { concentrateMl: oz(5), waterMl: oz(15) })).toMatchObject({
      fault: { code: "ERR_OTHER_DILUTION", givenTenths: 30 },
    });
    expect(mix(3, { concentrateMl: oz(5), waterMl: oz(15) })).toMatchObject({ value: { isChecked: true } });
    expect(mix(4, { concentrateMl: oz(5), totalMl: oz(20) })).toMatchObject({
      fault: { code: "ERR_OTHER_DILUTION" },
    });
    expect(mix(4, { waterMl: oz(15), totalMl: oz(20) })).toMatchObject({
      fault: { code: "ERR_OTHER_DILUTION" },
    });
  });

  test("from the concentrate, from the water, from the whole: the same mixture", () => {
    const same = { value: { concentrateMl: 30, waterMl: 270, totalMl: 300 } };
    expect(mix(9, { totalMl: 300 })).toMatchObject(same);
    expect(mix(9, { concentrateMl: 30 })).toMatchObject(same);
    expect(mix(9, { waterMl: 270 })).toMatchObject(same);
  });

  test("a cylinder's slack is allowed, amounts that don't sum are not", () => {
    expect(mix(9, { concentrateMl: 30, waterMl: 268 }).ok).toBe(true);
    expect(mix(9, { concentrateMl: 30, waterMl: 270, totalMl: 500 })).toMatchObject({
      fault: { code: "ERR_SUM" },
    });
    expect(mix(9, { waterMl: 500, totalMl: 300 })).toMatchObject({ fault: { code: "ERR_SUM" } });
    expect(mix(9, { concentrateMl: 500, totalMl: 300 })).toMatchObject({ fault: { code: "ERR_SUM" } });
  });

  test("nothing given, less than 0.5 ml, and water for stock are refused", () => {
    expect(mix(9, {})).toMatchObject({ fault: { code: "ERR_NOTHING_GIVEN" } });
    expect(mix(1000, { totalMl: 100 })).toMatchObject({
      fault: { code: "ERR_TOO_LITTLE", leastTotalMl: 501 },
    });
    expect(mix(0, { waterMl: 100 })).toMatchObject({ fault: { code: "ERR_STOCK_HAS_NO_WATER" } });
    expect(mix(0, { totalMl: 100 })).toMatchObject({ value: { concentrateMl: 100, waterMl: 0 } });
  });

  test("parts always sum, and no amounts crash it", () => {
    const ml = fc.option(fc.integer({ min: 1, max: 200_000 }));
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 100 }),
        fc.integer({ min: 0, max: 1000 }),
        ml,
        ml,
        ml,
        (c, w, totalMl, concentrateMl, waterMl) => {
          const made = dilute({
            dilution: { concentrateParts: c, waterParts: w },
            totalMl,
            concentrateMl,
            waterMl,
          });
          if (!made.ok) return;
          const tenths = (amount: number): number => Math.round(amount * 10);
          const { value } = made;
          expect(tenths(value.concentrateMl) + tenths(value.waterMl)).toBe(tenths(value.totalMl));
          expect(value.concentrateMl > 0 && value.waterMl >= 0).toBe(true);
        },
      ),
    );
  });
});

describe("/mix dilute", () => {
  const room = createRoom();
  test("puts the amounts first, water before concentrate, and says how a ratio was read", () => {
    const { reply } = room.asks("Ann", "/mix dilute dilution:1:9 total:300 ml");
    expect(reply.text).toMatch(/^\*\*30 ml concentrate \+ 270 ml water\*\* = 300 ml at 1\+9/);
    expect(reply.text).toContain("I read it as 1+9");
    expect(reply.text).toContain("Acid goes into water");
    expect(reply.fields).toMatchObject({ concentrateMl: 30, waterMl: 270, totalMl: 300 });
  });

  test("a wrong pair is told what it is and what would be right", () => {
    const { reply, code } = room.asks("Ann", "/mix dilute dilution:1+4 concentrate:5 oz water:15 oz");
    expect(code).toBe("ERR_OTHER_DILUTION");
    expect(reply.text).toContain("That is 1+3, not 1+4");
  });
});
