import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Film,
  layOut,
  type Layout,
  piecesOf,
  type Sleeves,
} from "../../../commands/contact/sheet/layout.ts";
import { cutStrips } from "../../../commands/plan/cut.ts";
import { stripFramesOf, usualFrames } from "../../../commands/plan/frames.ts";
import { FILM_FORMATS, FRAMES_120, type FilmFormat, type FrameSize } from "../../../store/shapes/film.ts";
import type { MarkedFrame } from "../../../store/shapes/roll.ts";

const SLEEVES = { of135: 5, of120: null };
const film = (
  format: FilmFormat,
  frame: FrameSize | null,
  frames: number,
  strip: number,
  marks: readonly MarkedFrame[] = [],
): Film => ({ roll: 12, format, frame, frames, strips: cutStrips(frames, strip).strips, marks });
const laid = (of: Film, shortMm: number, longMm: number, sleeves: Sleeves = "out"): Layout | null => {
  const layout = layOut(piecesOf(of, SLEEVES), { shortMm, longMm }, sleeves);
  return layout.ok ? layout.value : null;
};
const sheetsOf = (...args: Parameters<typeof laid>): number => laid(...args)?.sheets.length ?? 0;

describe("strips on paper, edge to edge, no sleeve", () => {
  // Derived from ISO 1007 and ISO 732 (encyclopedia) with a gap of 4 mm on 120: strip, strips, on 203x254, on 240x305 mm.
  test.each([
    ["135", "24x36", 35, 5, true, true],
    ["135", "24x36", 40, 5, false, true],
    ["135", "24x36", 36, 6, false, true],
    ["135", "24x36", 42, 6, false, true],
    ["135", "24x36", 36, 4, false, false],
    ["120", "6x4.5", 16, 4, true, true],
    ["120", "6x6", 12, 3, true, true],
    ["120", "6x7", 10, 3, false, true],
    ["120", "6x9", 8, 2, true, true],
    ["120", "6x12", 6, 2, true, true],
    ["120", "6x17", 4, 1, true, true],
  ] as const)(
    "%s %s, %i frames by %i: one sheet of 8x10 %s, of 9.5x12 %s",
    (format, frame, frames, strip, small, large) => {
      const one = film(format, frame, frames, strip);
      expect(sheetsOf(one, 203, 254) === 1).toBe(small);
      expect(sheetsOf(one, 240, 305) === 1).toBe(large);
    },
  );

  // An archivists' dictionary: 7 rows of 5 of 135, or 12 of 6x6, on one sheet.
  test("7 rows of 5 and 12 frames of 6x6 are the usual sheets", () => {
    const rows = laid(film("135", null, 35, 5), 203, 254)?.sheets[0] ?? [];
    expect(rows.map(({ from }) => from)).toEqual([1, 6, 11, 16, 21, 26, 31]);
    expect(rows.map(({ yMm }) => yMm)).toEqual([0, 35, 70, 105, 140, 175, 210]);
    expect(laid(film("120", "6x6", 12, 3), 203, 254)?.sheets[0]).toHaveLength(4);
  });

  test("sleeves take room: what fits bare may not fit in them", () => {
    expect(sheetsOf(film("135", null, 35, 5), 203, 254, "in")).toBe(2);
    expect(sheetsOf(film("135", null, 35, 5), 279, 356, "in")).toBe(1);
  });

  test("sheet film lies as it is, whole", () => {
    const sheet = laid(film("4x5", null, 1, 1), 203, 254);
    expect(sheet?.sheets[0]).toMatchObject([{ from: 1, frames: 1, widthMm: 127, heightMm: 101.6 }]);
    expect(laid(film("8x10", null, 1, 1), 127, 178)).toBeNull();
  });

  test("a lost frame is on no strip, and the film is cut round it", () => {
    const lost = [{ frame: 13, mark: "lost" }] as const;
    const pieces = laid(film("135", null, 36, 6, lost), 240, 305)?.sheets.flat() ?? [];
    const frames = pieces.flatMap(({ from, frames: count }) =>
      Array.from({ length: count }, (_, at) => from + at),
    );
    expect(frames).toHaveLength(35);
    expect(frames).not.toContain(13);
  });
});

test("every frame of every format lies once on some sheet, on the paper and over no other", () => {
  const formats = FILM_FORMATS.flatMap((format): [FilmFormat, FrameSize | null][] =>
    format === "120" || format === "220" ? FRAMES_120.map((frame) => [format, frame]) : [[format, null]],
  );
  fc.assert(
    fc.property(
      fc.constantFrom(...formats),
      fc.integer({ min: 2, max: 6 }),
      fc.constantFrom<Sleeves>("in", "out"),
      ([format, frame], of135, sleeves) => {
        const size = frame ?? "24x36";
        const count = usualFrames(format, size);
        const one = film(format, frame, count, stripFramesOf(format, size, of135));
        const layout = laid(one, 279, 356, sleeves);
        if (layout === null) return;
        const seen = layout.sheets.flatMap((sheet) =>
          sheet.flatMap(({ from, frames }) => Array.from({ length: frames }, (_, at) => from + at)),
        );
        expect([...seen].sort((a, b) => a - b)).toEqual(Array.from({ length: count }, (_, at) => at + 1));
        for (const sheet of layout.sheets)
          sheet.forEach((piece, at) => {
            expect(piece.xMm + piece.widthMm).toBeLessThanOrEqual(layout.widthMm + 1e-9);
            expect(piece.yMm + piece.heightMm).toBeLessThanOrEqual(layout.heightMm + 1e-9);
            for (const other of sheet.slice(at + 1))
              expect(
                other.yMm >= piece.yMm + piece.heightMm - 1e-9 ||
                  other.xMm >= piece.xMm + piece.widthMm - 1e-9,
              ).toBe(true);
          });
      },
    ),
  );
});
