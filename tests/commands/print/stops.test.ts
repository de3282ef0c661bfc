import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseChange } from "../../../commands/print/change.ts";
import { localSeconds, makeLocals, parseLocals, toLocal } from "../../../commands/print/locals.ts";
import { formatSize, parseSize, SIZE_NAMES } from "../../../commands/print/sizes.ts";
import {
  formatGrade,
  formatStops,
  parseAperture,
  parseDistance,
  parseExposure,
  parseGrade,
  parseStops,
} from "../../../commands/print/stops.ts";

const valueOf = <T>(read: { ok: true; value: T } | { ok: false; fault: { code: string } }): T | string =>
  read.ok ? read.value : read.fault.code;

describe("as people write them", () => {
  test.each([
    ["8", 80],
    ["12,5 s", 125],
    ["12.5", 125],
    ["1:30", 900],
    ["2 min 5 s", 1250],
    ["0", "ERR_NO_SECONDS"],
    ["", "ERR_NO_SECONDS"],
    ["soon", "ERR_NO_SECONDS"],
  ])("an exposure: %s", (text, tenths) => expect(valueOf(parseExposure(text))).toBe(tenths));
  test.each([
    ["1/3", 333],
    ["1½", 1500],
    ["0,5", 500],
    ["1 1/2 stops", 1500],
    ["1/0", "ERR_NO_STOPS"],
    ["-1", "ERR_NO_STOPS"],
  ])("stops: %s", (text, milli) => expect(valueOf(parseStops(text))).toBe(milli));
  test.each([
    ["00", -10],
    ["0", 0],
    ["2½", 25],
    ["2,5", 25],
    ["grade 3 1/2", 35],
    ["2.3", "ERR_NO_GRADE"],
    ["6", "ERR_NO_GRADE"],
  ])("a grade: %s", (text, tenths) => expect(valueOf(parseGrade(text))).toBe(tenths));
  test.each([
    ["f/5.6", 56],
    ["11", 110],
    ["0.5", "ERR_NO_APERTURE"],
  ])("an f-number: %s", (text, tenths) => expect(valueOf(parseAperture(text))).toBe(tenths));
  test.each([
    ["42", 420],
    ["16 in", 406.4],
    ["1,2 m", 1200],
    ["3", "ERR_NO_DISTANCE"],
  ])("a height: %s", (text, mm) => expect(valueOf(parseDistance(text))).toBe(mm));
  test("a change, with what it was or without", () => {
    expect(valueOf(parseChange(parseAperture)("8 to 11"))).toEqual({ from: 80, to: 110 });
    expect(valueOf(parseChange(parseAperture)("von 8 auf 5,6"))).toEqual({ from: 80, to: 56 });
    expect(valueOf(parseChange(parseAperture)("11"))).toEqual({ from: null, to: 110 });
    expect(valueOf(parseChange(parseAperture)("8 to foo"))).toBe("ERR_NO_APERTURE");
  });
});

test("what is written of stops and grades is read back as the same", () => {
  for (const milli of [83, 167, 250, 333, 500, 667, 750, 1000, 1333, 2500, 850])
    expect(valueOf(parseStops(formatStops(milli / 1000)))).toBe(milli);
  for (let tenths = 0; tenths <= 50; tenths += 5)
    expect(valueOf(parseGrade(formatGrade(tenths)))).toBe(tenths);
  expect(valueOf(parseGrade(formatGrade(-10)))).toBe(-10);
});

describe("sizes of paper", () => {
  test("3 1/2 x 5 in is 89 x 127 mm, which is sold as 9x13 cm (an encyclopedia on ISO 1008)", () => {
    expect(valueOf(parseSize("3.5x5"))).toEqual({ shortMm: 89, longMm: 127 });
  });
  test("a size is read back as it is written, and one that is none of the trade's needs its unit", () => {
    for (const name of [...SIZE_NAMES, "200x203 mm"]) {
      const size = parseSize(name);
      expect(size.ok && formatSize(size.value)).toBe(name);
      expect(size.ok && valueOf(parseSize(formatSize(size.value)))).toEqual(size.ok && size.value);
    }
    expect(valueOf(parseSize("7x9"))).toBe("ERR_NO_SIZE");
    expect(valueOf(parseSize("24 x 18"))).toEqual({ shortMm: 180, longMm: 240 });
  });
});

describe("burning and dodging", () => {
  const local = (kind: "burn" | "dodge", text: string, base: number) => {
    const read = parseLocals(kind)(text);
    return read.ok && read.value[0] ? toLocal(read.value[0], base) : undefined;
  };
  test("US Army SS0509-8, p. 68: 10 s overall, 3 s dodged, 8 s burned in: -0.51 and +0.85 stop (derived)", () => {
    expect(local("dodge", "face 3 s", 10)?.milliStops).toBe(515);
    expect(local("burn", "sky 8 s", 10)?.milliStops).toBe(848);
  });
  test("a printer's 20 % more is 0.26 stop, less 0.32 (The Print, p. 102, as quoted; stops derived)", () => {
    expect(local("burn", "20 % sky", 10)?.milliStops).toBe(263);
    expect(local("dodge", "face 20 %", 10)?.milliStops).toBe(322);
  });
  test("a printer's table: from 25.4 s, 1/3 stop is 5.24 s held back, 1/2 stop 10.52 s more", () => {
    expect(localSeconds({ kind: "dodge", place: "x", milliStops: 333 }, 25.4)).toBeCloseTo(5.24, 2);
    expect(localSeconds({ kind: "burn", place: "x", milliStops: 500 }, 25.4)).toBeCloseTo(10.52, 2);
  });
  test("they survive another base time: twice the base is twice the seconds", () => {
    const sky = { kind: "burn", place: "sky", milliStops: 500 } as const;
    expect(localSeconds(sky, 20)).toBeCloseTo(2 * localSeconds(sky, 10), 9);
  });
  test("more can't be held back than there is", () => {
    expect(local("dodge", "face 10 s", 10)).toBeUndefined();
    expect(local("dodge", "face 120 %", 10)).toBeUndefined();
  });
  test("what is kept is read back as it was", () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            kind: fc.constant("burn" as const),
            place: fc.constantFrom("sky", "left corner", "2 trees", "Wolke"),
            milliStops: fc.constantFrom(83, 167, 250, 333, 500, 667, 850, 1000, 1333, 1500, 2000),
          }),
          { minLength: 1, maxLength: 6 },
        ),
        (locals) => {
          const read = parseLocals("burn")(makeLocals(locals));
          expect(read.ok && read.value.map((each) => toLocal(each, 10))).toEqual(locals);
        },
      ),
    );
  });
});
