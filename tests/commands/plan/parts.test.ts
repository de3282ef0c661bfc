import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  agitationFactor,
  judgeAgitation,
  NAVY_TANK,
  NO_REST,
  restSeconds,
} from "../../../commands/sheet/agitation.ts";
import { cutAround, cutStrips, layContactSheet, numbered } from "../../../commands/plan/cut.ts";
import { coldFactor, fixTime } from "../../../commands/plan/fix.ts";
import { reusedSeconds } from "../../../commands/plan/reuse.ts";
import { sharedSeconds } from "../../../commands/plan/share.ts";
import { splitVolume, volumeFor, volumeForConcentrate } from "../../../commands/plan/volume.ts";
import {
  coldWashFactor,
  hypoLeftAfter,
  hypoLeftByChanges,
  largestStepTenths,
  washTime,
} from "../../../commands/plan/wash.ts";
import { aSheet } from "../../support/make.ts";

const tank = {
  number: 4,
  reels: 2,
  volumeMl: 500,
  format: "135" as const,
  condition: null,
  timeConstantSeconds: null,
};

describe("agitation", () => {
  test("the sheet's own scheme changes nothing", () => {
    expect(agitationFactor(aSheet(), { ...NAVY_TANK, taps: 5 })).toBe(1);
  });

  test("continuous movement takes up to 15 % off (makers' sheets, from memory)", () => {
    expect(agitationFactor(aSheet(), NO_REST)).toBeCloseTo(0.85, 5);
  });

  test("from 30 s to 60 s between bursts asks for 10 to 15 % more (from memory)", () => {
    const factor = agitationFactor(aSheet({ agitation: { ...NAVY_TANK, cycleSeconds: 30 } }), NAVY_TANK);
    expect(factor).toBeGreaterThan(1.1);
    expect(factor).toBeLessThan(1.15);
  });

  test("too much, too little and no start are told apart", () => {
    expect(judgeAgitation(NAVY_TANK)).toBeNull();
    expect(judgeAgitation(NO_REST)).toBeNull();
    expect(judgeAgitation({ ...NAVY_TANK, burstSeconds: 55 })).toBe("over");
    expect(judgeAgitation({ ...NAVY_TANK, cycleSeconds: 600 })).toBe("under");
    expect(judgeAgitation({ ...NAVY_TANK, cycleSeconds: 0, burstSeconds: 0 })).toBe("under");
    expect(judgeAgitation({ ...NAVY_TANK, initialSeconds: 0 })).toBe("no-start");
    expect(restSeconds({ ...NAVY_TANK, cycleSeconds: 0, burstSeconds: 0 })).toBe(Infinity);
  });
});

describe("volumes", () => {
  test("the tank's own volume goes in; fewer films may lie in less, never uncovered", () => {
    expect(volumeFor(tank, "135", 2, null)).toEqual({ ok: true, value: 500 });
    expect(volumeFor(tank, "135", 1, 250)).toEqual({ ok: true, value: 250 });
    expect(volumeFor(tank, "135", 2, 450)).toMatchObject({
      fault: { code: "ERR_NOT_COVERED", neededMl: 500 },
    });
    expect(volumeFor(tank, "135", 3, null)).toMatchObject({
      fault: { code: "ERR_TOO_MANY_ROLLS", reels: 2 },
    });
    expect(volumeFor(tank, "120", 1, null)).toMatchObject({ fault: { code: "ERR_WRONG_FORMAT" } });
  });

  test("a 12-sheet 4x5 tank needs about 1 litre (encyclopedia, grade C)", () => {
    const made = volumeFor(null, "4x5", 12, null);
    expect(made.ok && Math.abs(made.value - 1000)).toBeLessThan(20);
  });

  test("20 oz at 1+9 is 2 + 18, at 1+4 is 4 + 16 (published notes, grade C; one of them prints 5 + 15)", () => {
    const ounce = 29.5735;
    const at = (waterParts: number) =>
      splitVolume(Math.round(20 * ounce), { concentrateParts: 1, waterParts });
    expect(at(9).concentrateMl).toBe(Math.round(2 * ounce));
    expect(at(4).concentrateMl).toBe(Math.round(4 * ounce));
    expect(at(4).concentrateMl).not.toBe(Math.round(5 * ounce));
  });

  test("100 ml of stock for a roll at 1+1 wants 200 ml, and a sheet of 4x5 a quarter of it (from memory)", () => {
    const sheet = aSheet({ minConcentrateMl: 100 });
    expect(volumeForConcentrate(sheet, "135", 1)).toBe(200);
    expect(volumeForConcentrate(sheet, "135", 3)).toBe(600);
    expect(volumeForConcentrate(sheet, "4x5", 4)).toBe(200);
    expect(volumeForConcentrate(aSheet(), "135", 1)).toBeNull();
  });
});

describe("fixing", () => {
  test("twice the clearing time (NAVEDTRA 14209), three times for tabular grain, never under the house minimum", () => {
    expect(fixTime(200, false, 300, 200).seconds).toBe(400);
    expect(fixTime(200, true, 300, 200).seconds).toBe(600);
    expect(fixTime(60, false, 300, 200).seconds).toBe(300);
    expect(fixTime(null, true, 300, 240).seconds).toBe(300);
  });

  test("below 68 °F the time doubles for every 18 °F (US Army TM 11-2323)", () => {
    expect(coldFactor(200)).toBe(1);
    expect(coldFactor(250)).toBe(1);
    expect(coldFactor(100)).toBe(2);
    expect(fixTime(null, false, 300, 100).seconds).toBe(600);
  });

  test("past ten minutes it is called long", () => {
    expect(fixTime(290, false, 300, 200).isLong).toBe(false);
    expect(fixTime(310, false, 300, 200).isLong).toBe(true);
  });
});

describe("washing", () => {
  test("half of the hypo goes each minute of running water (NAVEDTRA 14209: 1, 1/2, 1/4; 20 min about 1e-6)", () => {
    expect([0, 60, 120].map((seconds) => hypoLeftAfter(seconds, 200))).toEqual([1, 0.5, 0.25]);
    expect(hypoLeftAfter(1200, 200)).toBeCloseTo(1e-6, 7);
  });

  test("20 ml left of 320 leaves 1/16 a change, three changes 1/4096 (derived)", () => {
    expect(hypoLeftByChanges(1, 300)).toBeCloseTo(1 / 16, 10);
    expect(hypoLeftByChanges(3, 300)).toBeCloseTo(1 / 4096, 10);
  });

  test("what nobody has set is what handbooks say: 20 min (NAVEDTRA 14209), or 5 min after an aid (SS0509-8)", () => {
    expect(washTime("running", false, null, 200, 300)).toMatchObject({ seconds: 1200, isShort: false });
    expect(washTime("running", true, null, 200, 300)).toMatchObject({ seconds: 300, isShort: false });
  });

  test("a time past the longest handbook's 30 min (SS0509-8, Johnson 1955) is never called short, however cold", () => {
    for (const tenthsC of [20, 60, 100, 150, 200])
      for (const least of [900, 1200, 1800, 3600]) {
        const { seconds, isShort } = washTime("running", false, least, tenthsC, 300);
        if (seconds >= 1800) expect(isShort, `${least} s at ${tenthsC / 10} °C`).toBe(false);
      }
    expect(washTime("running", false, 300, 100, 300)).toMatchObject({ seconds: 600, isShort: true });
  });

  test("colder water never washes faster, and an hour of it never leaves less", () => {
    const temperatures = Array.from({ length: 61 }, (_, at) => at * 5);
    for (const [at, tenthsC] of temperatures.slice(1).entries()) {
      const colder = temperatures[at] ?? 0;
      expect(hypoLeftAfter(600, colder)).toBeGreaterThanOrEqual(hypoLeftAfter(600, tenthsC));
      expect(washTime("running", false, 180, colder, 300).seconds).toBeGreaterThanOrEqual(
        washTime("running", false, 180, tenthsC, 300).seconds,
      );
    }
    // Twice the time at 50 °F leaves what the time leaves at 68 °F.
    expect(hypoLeftAfter(360, 100)).toBeCloseTo(hypoLeftAfter(180, 200), 10);
  });

  test("after a wash aid 5 min are enough (US Army SS0509-8); without, the house minimum is called short", () => {
    expect(washTime("running", true, 180, 200, 300)).toMatchObject({ seconds: 300, isShort: false });
    expect(washTime("running", false, 180, 200, 300)).toMatchObject({ seconds: 180, isShort: true });
    expect(washTime("running", false, 1200, 200, 300).isShort).toBe(false);
  });

  test("fill and empty: 8 to 10 refills within 30 min (Johnson 1955)", () => {
    const wash = washTime("fill-dump", false, 180, 200, 300);
    expect(wash.changes).toBeGreaterThanOrEqual(8);
    expect(wash.changes).toBeLessThanOrEqual(10);
    expect(wash.seconds).toBeLessThanOrEqual(1800);
  });

  test("twice as long at 50 °F, four times at 35 °F (US Army TM 11-2323, said of prints)", () => {
    expect(coldWashFactor(200)).toBe(1);
    expect(coldWashFactor(100)).toBe(2);
    expect(coldWashFactor(17)).toBeCloseTo(4, 5);
  });

  test("the largest step between neighbours counts, not the span", () => {
    expect(largestStepTenths([200, 190, 180, 175])).toBe(10);
    expect(largestStepTenths([200, 165])).toBe(35);
  });
});

describe("a used developer", () => {
  const reuse = { everyFilms: 1, addPercent: 10, addSeconds: 0, maxFilms: 10 };

  test("10 % more for each film already done, ten films a litre (makers' powder sheets, from memory)", () => {
    expect(reusedSeconds({ reuse }, 600, 0)).toEqual({ ok: true, value: 600 });
    expect(reusedSeconds({ reuse }, 600, 3)).toEqual({ ok: true, value: 780 });
    expect(reusedSeconds({ reuse }, 600, 10)).toMatchObject({ fault: { code: "ERR_USED_UP" } });
  });

  test("15 % after each five (from memory), and a minute after each four", () => {
    const byFive = { everyFilms: 5, addPercent: 15, addSeconds: 0, maxFilms: 15 };
    expect([4, 5, 10].map((films) => reusedSeconds({ reuse: byFive }, 600, films))).toMatchObject([
      { value: 600 },
      { value: 690 },
      { value: 780 },
    ]);
    const byMinute = { everyFilms: 4, addPercent: 0, addSeconds: 60, maxFilms: 12 };
    expect(reusedSeconds({ reuse: byMinute }, 600, 8)).toMatchObject({ value: 720 });
  });

  test("without a rule a used developer is refused", () => {
    expect(reusedSeconds({}, 600, 1)).toMatchObject({ fault: { code: "ERR_ONE_SHOT" } });
  });
});

describe("sharing a tank", () => {
  test("times within 10 % share their middle, no film more than 5 % off", () => {
    expect(sharedSeconds([600])).toBeCloseTo(600);
    const middle = sharedSeconds([600, 655]);
    expect(Math.abs((middle ?? 0) / 600 - 1)).toBeLessThan(0.05);
    expect(sharedSeconds([600, 661])).toBeNull();
  });
});

describe("cutting", () => {
  test("36 frames in strips of five leave no single frame: 6 x 5, 4, 2", () => {
    expect(cutStrips(36, 5).strips).toEqual([5, 5, 5, 5, 5, 5, 4, 2]);
    expect(cutStrips(36, 6).strips).toEqual([6, 6, 6, 6, 6, 6]);
    expect(cutStrips(37, 6).strips).toEqual([6, 6, 6, 6, 6, 5, 2]);
    expect(cutStrips(24, 5).strips).toEqual([5, 5, 5, 5, 4]);
  });

  test("a film of one frame, or an odd one in pairs, keeps its blank tail", () => {
    expect(cutStrips(1, 5)).toEqual({ strips: [1], keepsTail: true });
    expect(cutStrips(5, 2)).toEqual({ strips: [2, 2, 1], keepsTail: true });
  });

  test("round lost and cut frames the film comes in pieces, each cut for itself", () => {
    expect(cutAround(12, 5, [])).toEqual(numbered(cutStrips(12, 5).strips));
    expect(cutAround(36, 6, [13])).toEqual([
      { from: 1, frames: 6 },
      { from: 7, frames: 6 },
      { from: 14, frames: 6 },
      { from: 20, frames: 6 },
      { from: 26, frames: 6 },
      { from: 32, frames: 5 },
    ]);
    expect(cutAround(6, 6, [1, 6, 99])).toEqual([{ from: 2, frames: 4 }]);
    expect(cutAround(2, 6, [1, 2])).toEqual([]);
  });

  test("no frame is lost but those that are, and none is cut through", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 80 }),
        fc.integer({ min: 2, max: 12 }),
        fc.array(fc.integer({ min: 1, max: 80 }), { maxLength: 6 }),
        (frames, strip, lost) => {
          const kept = cutAround(frames, strip, lost).flatMap(({ from, frames: count }) =>
            Array.from({ length: count }, (_, at) => from + at),
          );
          const wanted = Array.from({ length: frames }, (_, at) => at + 1).filter(
            (each) => !lost.includes(each),
          );
          expect(kept).toEqual(wanted);
        },
      ),
    );
  });

  test("the contact sheet is laid out from the strips; frames are 38 mm apart (ISO 1007, 8 perforations of 4.75 mm)", () => {
    const sheet = layContactSheet(cutStrips(36, 6).strips, "24x36");
    expect(sheet).toMatchObject({ rows: 6, columns: 6, widthMm: 228, heightMm: 210 });
    expect(sheet.paper).toMatch(/^9.5x12/);
    expect(layContactSheet([5, 5, 5, 5, 4], "24x36").paper).toMatch(/^8x10/);
    expect(
      layContactSheet(
        Array.from({ length: 20 }, () => 5),
        "24x36",
      ).paper,
    ).toBeNull();
  });
});
