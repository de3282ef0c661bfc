import { describe, expect, test } from "vitest";
import { cutStrips, layContactSheet } from "../../../commands/plan/cut.ts";
import { framesFor, stripFramesOf, stripMm, unitsOf, usualFrames } from "../../../commands/plan/frames.ts";
import { FILM_FORMATS, FRAMES_120, isSheetFilm } from "../../../store/shapes/film.ts";
import { createRoom } from "../../support/room.ts";

const PLAN = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20";
const fieldsOf = (more: string) => createRoom().asks("Mina", `${PLAN} ${more}`).reply;

describe("frames on a film", () => {
  // ISO 732 as an encyclopedia has it (liquisearch, grade C); 6x7 and 6x17: from memory.
  test.each([
    ["6x4.5", 16, 32],
    ["6x6", 12, 24],
    ["6x7", 10, 20],
    ["6x8", 9, 19],
    ["6x9", 8, 18],
    ["6x12", 6, 12],
    ["6x17", 4, 8],
    ["6x24", 3, 6],
  ] as const)("%s: %i on 120, %i on 220", (frame, on120, on220) => {
    expect([usualFrames("120", frame), usualFrames("220", frame)]).toEqual([on120, on220]);
  });

  test("135 has 36, 72 half ones; lengths sold of 12, 20 and 24, and 40, are cut without a lone frame", () => {
    expect([usualFrames("135", "24x36"), usualFrames("135", "half")]).toEqual([36, 72]);
    for (const frames of [12, 20, 24, 36, 37, 40])
      for (const strip of [3, 4, 5, 6]) {
        const { strips } = cutStrips(frames, strip);
        expect(strips.reduce((sum, each) => sum + each, 0)).toBe(frames);
        expect(Math.max(...strips)).toBeLessThanOrEqual(strip);
        expect(Math.min(...strips), `${frames} in ${strip}`).toBeGreaterThan(1);
      }
  });
});

describe("a contact sheet", () => {
  /*
   * Length x stack in mm and whether it fits 8x10 and 9.5x12 in: derived from 38 mm a frame on 135 (ISO 1007), film 35 and 61 mm
   * wide, nominal frames (ISO 732) and a gap of 4 mm on 120.
   */
  test.each([
    ["24x36", 35, 5, 190, 245, "8x10"],
    ["24x36", 40, 5, 190, 280, "9.5x12"],
    ["24x36", 36, 6, 228, 210, "9.5x12"],
    ["24x36", 42, 6, 228, 245, "9.5x12"],
    ["24x36", 36, 4, 152, 315, "11x14"],
    ["6x4.5", 16, 4, 178, 244, "8x10"],
    ["6x6", 12, 3, 176, 244, "8x10"],
    ["6x7", 10, 3, 218, 244, "9.5x12"],
    ["6x9", 8, 2, 172, 244, "8x10"],
    ["6x12", 6, 2, 240, 183, "8x10"],
    ["6x17", 4, 1, 168, 244, "8x10"],
  ] as const)(
    "of %s, %i frames in strips of %i: %i x %i mm, on %s",
    (frame, frames, strip, width, height, paper) => {
      const sheet = layContactSheet(cutStrips(frames, strip).strips, frame);
      expect([sheet.widthMm, sheet.heightMm]).toEqual([width, height]);
      expect(sheet.paper).toContain(paper);
    },
  );

  test("of 6x24 is longer than 8 in: never on paper too small for a strip", () => {
    expect(layContactSheet(cutStrips(3, 1).strips, "6x24").paper).toMatch(/^(8x10|9.5x12)/);
    for (const frame of FRAMES_120) {
      const strip = stripFramesOf("120", frame, 6);
      const { widthMm, paper } = layContactSheet(cutStrips(usualFrames("120", frame), strip).strips, frame);
      const longest = { "8x10": 254, "9.5x": 305, "11x1": 356, "16x2": 508 }[(paper ?? "").slice(0, 4)] ?? 0;
      expect(longest, frame).toBeGreaterThanOrEqual(widthMm);
    }
  });
});

describe("sleeves for 120", () => {
  // A practitioner's page: 120 by 3 or 4 frames of 6x6 (grade C).
  test("of three and of four 6x6 frames hold as many others as fit their length", () => {
    const held = (of120: number | null) => FRAMES_120.map((frame) => stripFramesOf("120", frame, 6, of120));
    for (const of120 of [3, 4])
      for (const frame of FRAMES_120) {
        const count = stripFramesOf("120", frame, 6, of120);
        const length = stripMm("6x6", of120) + 4;
        expect(count === 1 || stripMm(frame, count) <= length, frame).toBe(true);
        expect(stripMm(frame, count + 1), frame).toBeGreaterThan(length);
      }
    expect(stripFramesOf("120", "6x6", 6, 4)).toBe(4);
    expect(held(null)).toEqual([4, 3, 3, 2, 2, 2, 1, 1]);
  });
});

describe("film area for the ledger", () => {
  test("in units of 80 sq in: 135-36 and 120 are 1, 4x5 a quarter, 8x10 1 (practitioners' pages, grade C)", () => {
    expect([unitsOf("135"), unitsOf("135", 36), unitsOf("120"), unitsOf("4x5"), unitsOf("8x10")]).toEqual([
      1, 1, 1, 0.25, 1,
    ]);
  });

  test("5x7 in is 0.438, 13x18 cm 0.453 (derived from their sides); 220 is two 120", () => {
    expect(unitsOf("5x7")).toBeCloseTo(0.4375, 4);
    expect(unitsOf("13x18")).toBeCloseTo(0.453, 3);
    expect(unitsOf("9x12")).toBeCloseTo(108 / 516.1, 3);
    expect(unitsOf("220")).toBe(2);
  });

  test("a short 135 is less film, a half frame no more than a whole one", () => {
    expect(unitsOf("135", 12)).toBeLessThan(unitsOf("135", 20));
    expect(unitsOf("135", 24)).toBeCloseTo((24 * 38 + 232) / 1600, 6);
    expect(unitsOf("135", 72, "half")).toBe(1);
  });
});

describe("/plan by frame", () => {
  test("takes each frame that the film can carry, and finds the film by it", () => {
    expect(fieldsOf("frame:6x7").fields).toMatchObject({ format: "120", frames: 10, strips: [3, 3, 2, 2] });
    expect(fieldsOf("frame:6x17").text).toMatch(/4 strips of 1.*contact sheet on 8x10/);
    expect(fieldsOf("frame:half").fields).toMatchObject({ format: "135", frames: 72 });
    expect(fieldsOf("format:220 frame:6x4.5").fields).toMatchObject({ frames: 32 });
    expect(fieldsOf("frame:half format:120").text).toMatch(/no half on 120 film. It takes 6x4.5/);
    expect(fieldsOf("frame:6x6 format:4x5").text).toMatch(/sheet film/);
  });

  test("half a frame at the end, a single kept frame, sleeves of one's own", () => {
    expect(fieldsOf("frames:36.5").fields).toMatchObject({ frames: 37, strips: [5, 5, 5, 5, 5, 5, 5, 2] });
    expect(fieldsOf("frames:1").text).toContain("keeps its blank tail");
    expect(fieldsOf("sleeve:6").fields).toMatchObject({ strips: [6, 6, 6, 6, 6, 6] });
    expect(fieldsOf("sleeve:3").fields?.["strips"]).toHaveLength(12);
  });

  test("every format gives a plan", () => {
    for (const format of FILM_FORMATS) {
      const { fields } = fieldsOf(`format:${format}`);
      expect(fields?.["strips"], format).toHaveLength(
        isSheetFilm(format) ? 0 : format === "220" ? 8 : format === "135" ? 8 : 4,
      );
      for (const frame of framesFor(format))
        expect(fieldsOf(`format:${format} frame:${frame}`).fields).toBeDefined();
    }
  });
});
