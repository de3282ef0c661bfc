import type { Agitation } from "../../../store/shapes/sheet.ts";
import { EACH_MINUTE } from "../../support/make.ts";
import { BY_STOP, type Cell, type Series } from "./published.ts";

/* Published pairs that differ in one thing alone, each with its source: what the spreads of the rules of thumb are measured on. */

/* ---- Agitation: one film in one developer at one temperature, agitated in two ways. ---- */

/** A small tank: 5 s every half minute. */
const EACH_HALF: Agitation = { ...EACH_MINUTE, cycleSeconds: 30 };
const ROTARY: Agitation = { ...EACH_MINUTE, burstSeconds: 0, cycleSeconds: 0, manner: "continuous" };

export interface AgitationPair {
  readonly name: string;
  readonly source: string;
  readonly from: { readonly agitation: Agitation; readonly seconds: number };
  readonly to: { readonly agitation: Agitation; readonly seconds: number };
}

type Minutes = readonly (number | null)[];

function pairs(
  name: string,
  source: string,
  [from, to]: readonly [Agitation, Agitation],
  [before, after]: readonly [Minutes, Minutes],
): AgitationPair[] {
  return before.flatMap((minutes, column) => {
    const other = after[column] ?? null;
    if (minutes === null || other === null) return [];
    return [
      {
        name: `${name}, column ${column + 1}`,
        source,
        from: { agitation: from, seconds: minutes * 60 },
        to: { agitation: to, seconds: other * 60 },
      },
    ];
  });
}

/** The rotary tube's times: as read, Kodak F-32 part c (grade A); the small tank's: the same publication, from memory, medium. */
const F32 = "Kodak F-32: rotary tube as published in part c; small tank from memory, medium";
/** 68, 70, 72 and 75 °F; a cell that is damaged in the copy read is null. */
const SMALL_TO_ROTARY = [
  pairs(
    "100 film, T-MAX 1:4",
    F32,
    [EACH_HALF, ROTARY],
    [
      [8, 7.5, 7, 6.5],
      [6.5, 6.5, 6, 5.5],
    ],
  ),
  pairs(
    "100 film, D-76",
    F32,
    [EACH_HALF, ROTARY],
    [
      [9, 8, 7, 6],
      [6.5, 6, 5.5, 5],
    ],
  ),
  pairs(
    "100 film, HC-110 B",
    F32,
    [EACH_HALF, ROTARY],
    [
      [7, 6.5, 6, 5],
      [6.5, 6, 5.5, null],
    ],
  ),
  pairs(
    "400 film, T-MAX 1:4",
    F32,
    [EACH_HALF, ROTARY],
    [
      [7, 6.5, 6.5, 6],
      [6.5, 6.5, 6, 5.5],
    ],
  ),
  pairs(
    "400 film, D-76",
    F32,
    [EACH_HALF, ROTARY],
    [
      [8, 7, 6.5, 5.5],
      [7, 6.5, 6, 5.5],
    ],
  ),
  pairs(
    "400 film, HC-110 B",
    F32,
    [EACH_HALF, ROTARY],
    [
      [6, 5.5, 5, 4.5],
      [6, 5.5, 5, 5],
    ],
  ),
].flat();

const F9 = "Kodak F-9, TRI-X Pan: small tank at 30 s, large tank at 1 min intervals; from memory, high";
/** 65, 68, 70, 72 and 75 °F. */
const SMALL_TO_LARGE = [
  pairs(
    "HC-110 B",
    F9,
    [EACH_HALF, EACH_MINUTE],
    [
      [8.5, 7.5, 6.5, 6, 5],
      [9.5, 8.5, 8, 7.5, 6.5],
    ],
  ),
  pairs(
    "D-76",
    F9,
    [EACH_HALF, EACH_MINUTE],
    [
      [9, 8, 7.5, 6.5, 5.5],
      [10, 9, 8, 7, 6],
    ],
  ),
  pairs(
    "D-76 1:1",
    F9,
    [EACH_HALF, EACH_MINUTE],
    [
      [11, 10, 9.5, 9, 8],
      [13, 12, 11, 10, 9],
    ],
  ),
  pairs(
    "MICRODOL-X",
    F9,
    [EACH_HALF, EACH_MINUTE],
    [
      [11, 10, 9.5, 9, 8],
      [13, 12, 11, 10, 9],
    ],
  ),
  pairs(
    "DK-50 1:1",
    F9,
    [EACH_HALF, EACH_MINUTE],
    [
      [7, 6, 5.5, 5, 4.5],
      [7.5, 6.5, 6, 5.5, 5],
    ],
  ),
].flat();

const turned = ({ name, source, from, to }: AgitationPair): AgitationPair => ({
  name: `${name}, the other way`,
  source,
  from: to,
  to: from,
});

export const BY_HAND: readonly AgitationPair[] = [...SMALL_TO_LARGE, ...SMALL_TO_LARGE.map(turned)];
export const CONTINUOUS: readonly AgitationPair[] = [...SMALL_TO_ROTARY, ...SMALL_TO_ROTARY.map(turned)];

/* ---- Push and pull: one film at one temperature, the first cell given. ---- */

export interface PushPair {
  readonly series: Series;
  readonly given: Cell;
  readonly asked: Cell;
  /** The film's own speed. */
  readonly boxSpeed: number;
}

const memory = (name: string, minutes: Readonly<Record<number, number>>): Series => ({
  name,
  source: "Kodak F-4043 and F-32, push processing of a 400 film: none at EI 800; from memory, medium",
  grade: "from memory",
  cells: Object.entries(minutes).map(([index, each]) => ({
    tenthsC: 239,
    exposureIndex: Number(index),
    seconds: each * 60,
  })),
});

const PUSHED: readonly Series[] = [
  ...BY_STOP,
  memory("400 film, T-MAX 1:4", { 400: 6, 800: 6, 1600: 8, 3200: 9.5 }),
];
const BOX_SPEED: Readonly<Record<string, number>> = { "Delta 3200": 3200 };

/** From the film's own speed to every other index that the rule reaches. */
export const PUSHES: readonly PushPair[] = PUSHED.flatMap((series) => {
  const boxSpeed = BOX_SPEED[series.name.split(",")[0] ?? ""] ?? series.cells[0]?.exposureIndex ?? 100;
  const given = series.cells.find(({ exposureIndex }) => exposureIndex === boxSpeed);
  if (!given) return [];
  return series.cells
    .filter(({ exposureIndex }) => exposureIndex !== boxSpeed)
    .filter(({ exposureIndex }) => exposureIndex >= boxSpeed / 4 && exposureIndex <= boxSpeed * 8)
    .map((asked) => ({ series, given, asked, boxSpeed }));
});

/* ---- Drift: how fast vessels of water follow their room. ---- */

export interface Vessel {
  readonly name: string;
  readonly source: string;
  readonly ml: number;
  /** Degrees above the room, at first and after so many seconds. */
  readonly gap: number;
  readonly left: number;
  readonly seconds: number;
}

export const VESSELS: readonly Vessel[] = [
  {
    // 76 to 70 °F in a refrigerator of 39 °F.
    name: "32 oz of developer in a refrigerator",
    source: "a home worker's page, grade C (ditchwatertheblog.blogspot.com, 27 Dec 2008)",
    ml: 946,
    gap: 37,
    left: 31,
    seconds: 36 * 60,
  },
  {
    // 100 to 75 °F in a room of 72 °F.
    name: "16 oz mug, open, luke-warm",
    source: "somebody's own readings, grade C (wisedan.com/coffee.html)",
    ml: 473,
    gap: 28,
    left: 3,
    seconds: 2 * 3600,
  },
  {
    // 150 to 100 °F: an open mug evaporates, which a tank does not.
    name: "16 oz mug, open, hot",
    source: "the same page",
    ml: 473,
    gap: 78,
    left: 28,
    seconds: 45 * 60,
  },
  {
    // 82 °C, 15 °C lower after 21 min; the room's 22 °C and the 300 ml are ours, the page names neither.
    name: "mug with a lid",
    source: "a geologist's logger, grade C (stratigrafia.org, 16 Sep 2012)",
    ml: 300,
    gap: 60,
    left: 45,
    seconds: 21 * 60,
  },
  {
    // 60 to 55 °C under a cork lid, from the first half minute on; the room's 20 °C is ours.
    name: "plastic cup with a lid",
    source: "a pupil's measured table, grade C (markedbyteachers.com, three types of cups)",
    ml: 100,
    gap: 40,
    left: 35,
    seconds: 330,
  },
  {
    // 138.7 to 109.2 °F after half an hour; the room of 22.3 °C is fitted to the whole series. The mug's 300 ml are ours.
    name: "mug under oil, which keeps it from evaporating",
    source: "Portmann and Wagon, How quickly does hot water cool?, 2005 (R package fastR2, CoolingWater)",
    ml: 300,
    gap: 58.1 - 22.3,
    left: 42.9 - 22.3,
    seconds: 1740,
  },
  {
    // 82.9 to 45.0 °C; the room of 23 °C is ours, the end of the same mug's open series.
    name: "another mug under oil",
    source: "the same",
    ml: 300,
    gap: 82.95 - 23,
    left: 44.96 - 23,
    seconds: 12_014,
  },
];
