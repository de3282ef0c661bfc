/*
 * Long exposures: film answers less than the light says, and published corrections do not agree. Each form is kept with its
 * source and none is called the right one. The law holds from about 1/5 to 1/1000 s (Kodak E-31); up to 1 s nothing is added.
 */

export const LAW_HOLDS_SECONDS = 1;
/** Past an hour of corrected time no published form was seen to reach. */
export const MOST_SECONDS = 3600;

/**
 * Exponents published for eleven films of one maker's sheet (a copy of it): 1.25 to 1.43, in the middle 1.31. Corrected time
 * is the metered one to this power.
 */
export const POWER = { low: 1.25, middle: 1.31, high: 1.43 } as const;
/** Bond and Gainer: k times the metered time to the power of 1.62 is added; k 0.046 to 0.169 by film, in the middle 0.069. */
export const ADDED = { power: 1.62, low: 0.046, middle: 0.069, high: 0.169 } as const;

/** Metered against corrected seconds, as printed. */
export type Table = readonly (readonly [metered: number, corrected: number])[];
/** For one 400 film: Barnbaum 1994, p. 77 (a copy of the book). */
export const BOOK_TABLE: Table = [
  [1, 1],
  [2, 3],
  [5, 8],
  [10, 18],
  [15, 30],
  [20, 45],
  [30, 75],
  [60, 180],
  [120, 420],
  [240, 960],
];
/** For older films of two speeds: a photographer's copy of a maker's table. */
export const OLD_TABLE: Table = [
  [1, 1],
  [5, 13],
  [10, 31],
  [15, 55],
  [20, 83],
  [25, 117],
  [30, 155],
  [60, 428],
  [120, 1041],
];

export function byPower(meteredSeconds: number, power: number): number {
  return meteredSeconds <= LAW_HOLDS_SECONDS ? meteredSeconds : meteredSeconds ** power;
}

export function byAdding(meteredSeconds: number, k: number): number {
  return meteredSeconds <= LAW_HOLDS_SECONDS
    ? meteredSeconds
    : meteredSeconds + k * meteredSeconds ** ADDED.power;
}

/** Straight between printed times on log scales; undefined past the table's end. */
export function byTable(table: Table, meteredSeconds: number): number | undefined {
  if (meteredSeconds <= LAW_HOLDS_SECONDS) return meteredSeconds;
  const next = table.findIndex(([metered]) => metered >= meteredSeconds);
  const [above, below] = [table[next], table[next - 1]];
  if (!above || !below) return undefined;
  const share = Math.log(meteredSeconds / below[0]) / Math.log(above[0] / below[0]);
  return Math.exp(Math.log(below[1]) + share * Math.log(above[1] / below[1]));
}

export type Form = "power" | "added" | "book" | "old";
export interface Answer {
  readonly form: Form;
  readonly seconds: number;
  /** The same form with the least and the greatest constant published; equal where the film's own was given. */
  readonly lowSeconds: number;
  readonly highSeconds: number;
}

export interface LongExposure {
  /** With the filter's factor in: filters come before this correction. */
  readonly meteredSeconds: number;
  readonly answers: readonly Answer[];
  readonly lowSeconds: number;
  readonly highSeconds: number;
  /** The geometric middle of the answers. */
  readonly middleSeconds: number;
  /** Per cent to take off development: contrast rises with long exposure. Published: 10 to 30. */
  readonly lessPercent: number;
}

/** @param power the film's own exponent as its maker states it; null: not known. */
export function longExposure(seconds: number, filterFactor: number, power: number | null): LongExposure {
  const metered = seconds * filterFactor;
  const answers: Answer[] = [
    {
      form: "power",
      seconds: byPower(metered, power ?? POWER.middle),
      lowSeconds: byPower(metered, power ?? POWER.low),
      highSeconds: byPower(metered, power ?? POWER.high),
    },
    {
      form: "added",
      seconds: byAdding(metered, ADDED.middle),
      lowSeconds: byAdding(metered, ADDED.low),
      highSeconds: byAdding(metered, ADDED.high),
    },
    ...(["book", "old"] as const).flatMap((form): Answer[] => {
      const found = byTable(form === "book" ? BOOK_TABLE : OLD_TABLE, metered);
      return found === undefined ? [] : [{ form, seconds: found, lowSeconds: found, highSeconds: found }];
    }),
  ];
  const own = power === null ? answers : answers.filter(({ form }) => form === "power");
  const logs = own.map((each) => Math.log(each.seconds));
  return {
    meteredSeconds: metered,
    answers,
    lowSeconds: Math.min(...answers.map(({ lowSeconds }) => lowSeconds)),
    highSeconds: Math.max(...answers.map(({ highSeconds }) => highSeconds)),
    middleSeconds: Math.exp(logs.reduce((sum, log) => sum + log, 0) / logs.length),
    lessPercent: lessPercent(metered),
  };
}

/** A textbook copy: 10 to 30 % less. Barnbaum has contrast half a grade up to 10 s, one to 30 s, more beyond. The steps are ours. */
function lessPercent(meteredSeconds: number): number {
  if (meteredSeconds <= LAW_HOLDS_SECONDS) return 0;
  return meteredSeconds <= 10 ? 10 : meteredSeconds <= 30 ? 20 : 30;
}
