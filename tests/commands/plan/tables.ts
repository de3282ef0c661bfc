/*
 * Published times, each with its source and grade. A: maker, standard, authority or armed-service manual; C: somebody's
 * hand copy. Fahrenheit columns are held in tenths of a degree Celsius. A cell that is damaged in the copy read is null.
 */

export interface PublishedRow {
  readonly film: string;
  readonly developer: string;
  readonly source: string;
  readonly grade: "A" | "C";
  readonly cells: readonly {
    readonly tenthsC: number;
    readonly exposureIndex: number;
    readonly minutes: number | null;
  }[];
}

const F32 =
  "Eastman Kodak, Tech. Pub. F-32, part c, Rotary-Tube Processing: Rolls (kodak.com techPubs/f32/f32c.jhtml)";
/** 68, 70, 72 and 75 °F. */
const F32_TENTHS = [200, 211, 222, 239];

function f32(
  film: string,
  index: number,
  developer: string,
  minutes: readonly (number | null)[],
): PublishedRow {
  const cells = F32_TENTHS.map((tenthsC, at) => ({
    tenthsC,
    exposureIndex: index,
    minutes: minutes[at] ?? null,
  }));
  return { film, developer, source: F32, grade: "A", cells };
}

/** Rotary tube, continuous; printed to a quarter or half minute. */
export const TABLE_1A: readonly PublishedRow[] = [
  f32("T-MAX 100", 100, "T-MAX 1:4", [6.5, 6.5, 6, 5.5]),
  f32("T-MAX 100, 120", 100, "XTOL stock", [5.75, 5, 4.5, 3.75]),
  f32("T-MAX 100, 120", 100, "XTOL 1:1", [7.75, 7.5, 7.25, 6.75]),
  f32("T-MAX 100", 100, "D-76", [6.5, 6, 5.5, 5]),
  f32("T-MAX 100", 100, "HC-110 B", [6.5, 6, 5.5, null]),
  f32("T-MAX 400, 120", 400, "XTOL stock", [5.25, 4.75, 4.25, null]),
  f32("T-MAX 400, 135", 400, "XTOL 1:1", [7.75, 7, 6.5, 5.5]),
  f32("T-MAX 400", 400, "HC-110 B", [6, 5.5, 5, 5]),
];

/** The same page: one temperature (75 °F), several dilutions. Minutes for the 100 and the 400 film. */
export const TABLE_1B = [
  { developer: "T-MAX", water: 4, minutes100: 5.5, minutes400: 5.5 },
  { developer: "T-MAX", water: 7, minutes100: 10, minutes400: 10 },
  { developer: "T-MAX", water: 15, minutes100: 13, minutes400: 14 },
  { developer: "T-MAX RS", water: 4, minutes100: 5, minutes400: 5.5 },
  { developer: "T-MAX RS", water: 7, minutes100: 8.5, minutes400: 7.5 },
].map((row) => ({ ...row, source: F32, grade: "A" as const }));

const DDX =
  "hand copy of ILFORD ILFOTEC DD-X Developer Times (a public gist, 65f47b39a2617a41131ba59aea32673d, 14 Feb 2022)";

function ddx(film: string, boxSpeed: number, lines: readonly (readonly [number, number, number | null])[]) {
  return {
    film,
    boxSpeed,
    developer: "DD-X",
    source: DDX,
    grade: "C" as const,
    lines: lines.map(([exposureIndex, minutes20, minutes24]) => ({ exposureIndex, minutes20, minutes24 })),
  };
}

/** Minutes at 20 and 24 °C for each exposure index; from these the steps of table 2A follow. */
export const TABLE_1C = [
  ddx("Delta 3200", 3200, [
    [400, 6, null],
    [800, 7, 5],
    [1600, 8, 6],
    [3200, 9.5, 7],
    [6400, 12.5, 9],
    [12500, 17, 12],
    [25000, 25, 17],
  ]),
  ddx("HP5 Plus", 400, [
    [400, 9, 7],
    [800, 10, 8],
    [1600, 13, 10],
    [3200, 20, 14.5],
  ]),
  ddx("Pan F Plus", 50, [
    [50, 8, 5],
    [100, 9, 6],
  ]),
  ddx("T-MAX 400", 400, [
    [400, 8, 6],
    [800, 10, 8],
    [1600, 13, 10],
  ]),
] as const;
