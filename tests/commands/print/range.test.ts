import { beforeEach, describe, expect, test } from "vitest";
import {
  filterForRange,
  gradeForRange,
  MIDDLES,
  oldGradeForRange,
  RANGE_BY_FILTER,
  slopeFor,
} from "../../../commands/print/range.ts";
import { parseRange } from "../../../commands/print/stops.ts";
import { createRoom, type Room } from "../../support/room.ts";

const read = (text: string): number | string => {
  const range = parseRange(text);
  return range.ok ? range.value : range.fault.code;
};

describe("the filter, the grade", () => {
  // A maker's data sheet as a page on matching negatives quotes it (grainmag.com): ISO range by filter 00 to 5.
  test.each([
    [-10, 180],
    [0, 160],
    [10, 130],
    [20, 110],
    [30, 90],
    [40, 60],
    [50, 40],
  ])("filter %i prints a range of %i", (gradeTenths, range) => {
    expect(filterForRange(range)).toBe(gradeTenths);
    expect(RANGE_BY_FILTER).toContainEqual([gradeTenths, range]);
  });

  // Edges of grades from memory, no source seen: each is the first of the softer grade.
  test.each([
    [64, 50],
    [65, 40],
    [80, 30],
    [95, 20],
    [115, 10],
    [140, 0],
  ])("a range of %i is graded paper %i", (range, gradeTenths) =>
    expect(gradeForRange(range)).toBe(gradeTenths),
  );

  // A handbook of photography (fliphtml5.com/lnym/cdgt, p. 679): ANSI PH2.2-1966 cut 0.50 to 1.70 into six, 0 to 5; a
  // draft of 1978 put 0.35 to 0.50 as 6; all dropped in 1981. Six alike is our reading.
  test.each([
    [49, null],
    [50, 50],
    [69, 50],
    [70, 40],
    [105, 30],
    [129, 20],
    [149, 10],
    [170, 0],
    [171, null],
  ])("a range of %i was grade %s by the older standard", (range, gradeTenths) =>
    expect(oldGradeForRange(range)).toBe(gradeTenths),
  );

  test("longer than the softest is the softest, shorter than the hardest the hardest", () => {
    expect([filterForRange(250), filterForRange(20)]).toEqual([-10, 50]);
    expect([gradeForRange(200), gradeForRange(40)]).toEqual([0, 50]);
  });

  // A forum's thread 1396476: grade 2 at log 1.05 from a scene of 2.20 is a slope of 0.477; another school's 1.20 over 7 stops
  // of 0.30 is 0.57.
  test("two schools take two ranges for the middle of grade 2, and so develop to two slopes", () => {
    const [one, other] = MIDDLES;
    expect(slopeFor(one)).toBeCloseTo(0.477, 3);
    expect(slopeFor(other)).toBeCloseTo(0.57, 2);
    expect([gradeForRange(one.range), gradeForRange(other.range)]).toEqual([20, 10]);
  });
});

// The same handbook on ISO 6846: R is 100 times the log range.
test("a range is read as a log, as a paper's R, and in stops", () => {
  expect(["1.05", "1,05", "105", "R105", "ISO R 105", "3 1/2 stops", "3,5 Blenden"].map(read)).toEqual([
    ...Array.from({ length: 5 }, () => 105),
    105,
    105,
  ]);
  expect(["3.5", "0.1", "500", "9 stops", "soft", ""].map(read)).toEqual(
    Array.from({ length: 6 }, () => "ERR_NO_RANGE"),
  );
});

describe("/print grade", () => {
  let room: Room;
  const ask = (given: string) => room.asks("Mina", `/print grade ${given}`);
  beforeEach(() => {
    room = createRoom();
    room.says("Ada", "/print paper paper:1 name:Harbour Gloss kind:resin-coated", "aide");
    room.says("Ada", "/print paper paper:2 name:Slate kind:fibre grade:3", "aide");
  });

  test("tells each source, and that they do not agree", () => {
    const { reply } = ask("1.05");
    expect(reply.fields).toMatchObject({ filterTenths: 25, gradeTenths: 20, oldGradeTenths: 30 });
    expect(reply.text).toMatch(
      /^\*\*Filter 2 1\/2\*\*, or graded paper \*\*2\*\*, for a range of 1\.05 \(ISO R 105\)\./,
    );
    for (const source of ["data sheet", "from memory", "ANSI PH2.2-1966", "slope of 0.48", "1.20 by another"])
      expect(reply.text).toContain(source);
    expect(reply.text).toContain("They do not agree: 2 to 3.");
    expect(reply.actions?.map(({ line }) => line)).toEqual(['print strip base:8 grade:"2 1/2"']);
  });

  test("agrees where the sources do", () => {
    expect(ask("0.55").reply.text).toContain("They agree to half a grade.");
  });

  test("tells the draft's grade 6, which no paper bears any more", () => {
    expect(ask("0.40").reply.text).toContain("put 0.35 to 0.50 as a grade 6");
    expect(ask("0.34").reply.text).not.toContain("grade 6");
    expect(ask("0.50").reply.text).toContain("Grade 5 by the older standard");
  });

  test("says the filter for a box of variable contrast, and how a graded box fits", () => {
    expect(ask("1.05 paper:1").reply.text).toMatch(/^\*\*Filter 2 1\/2\*\* for .*, on X1 Harbour Gloss/);
    expect(ask("0.85 paper:2").reply.text).toContain("That is X2 Slate");
    expect(ask("1.05 paper:2").reply.text).toContain("is grade 3: too hard for it");
    expect(ask("0.70 paper:2").reply.text).toContain("is grade 3: too soft for it");
    expect(room.asks("Mina", `/${ask("1.05 paper:2").reply.actions?.[0]?.line ?? ""}`).kind).toBe("done");
  });

  test("says what no paper prints, in German too", () => {
    room.says("Mina", "/mine language language:de");
    expect(ask("2,10").reply.text).toContain("mehr, als der weichste Filter fasst");
    expect(ask("0,30").reply.text).toContain("Der Abzug bleibt flau");
    expect(ask("1,05").reply.text).toContain("für einen Umfang von 1,05 (ISO R 105)");
    // Beyond what paper prints the sources only seem to agree.
    expect(ask("0,30").reply.text).not.toContain("stimmen");
    expect(ask("7").code).toBe("ERR_OPTIONS");
  });
});
