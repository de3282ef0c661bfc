import { Temporal } from "temporal-polyfill";
import type { Collected } from "../../../store/shapes/shelf.ts";
import type { Print } from "../../../store/shapes/print.ts";
import type { RollSum } from "../../../store/shapes/roll.ts";

/* The term's figures, from the rolls and bottles of a stretch of time. Pure. */

export interface WeekCount {
  /** The week's Monday, its first instant. */
  readonly startsAtMs: number;
  readonly rolls: number;
}

export interface Tally {
  readonly name: string;
  readonly count: number;
}

export interface DosePoint {
  readonly roll: number;
  readonly atMs: number;
  readonly perMille: number;
}

export interface ReportFigures {
  readonly className: string;
  readonly fromMs: number;
  readonly untilMs: number;
  readonly rolls: number;
  readonly finished: number;
  readonly people: number;
  readonly weeks: readonly WeekCount[];
  /** Runs whose every call was on time, of all that were developed. */
  readonly runsOnTime: number;
  readonly runsCalled: number;
  readonly doses: readonly DosePoint[];
  /** Of the doses: the middle one, and the band that holds nine of ten. */
  readonly dose: { readonly median: number; readonly low: number; readonly high: number } | null;
  readonly faults: readonly Tally[];
  readonly faulty: number;
  readonly rating: { readonly mean: number; readonly count: number } | null;
  readonly films: readonly Tally[];
  /** Working developer that went through tanks, ml; by developer and dilution. */
  readonly developers: readonly {
    readonly name: string;
    readonly ml: number;
    readonly concentrateMl: number;
  }[];
  readonly prints: PrintFigures;
  readonly batchesMixed: readonly Tally[];
  readonly silver: Collected;
}

export interface PrintFigures {
  readonly count: number;
  readonly people: number;
  readonly rating: { readonly mean: number; readonly count: number } | null;
  readonly faulty: number;
  /** By the paper's name. */
  readonly papers: readonly Tally[];
}

export interface ReportInput {
  readonly className: string;
  readonly zone: string;
  readonly fromMs: number;
  readonly untilMs: number;
  readonly rolls: readonly RollSum[];
  readonly prints: readonly Print[];
  /** Kinds of the batches mixed in that time. */
  readonly mixed: readonly string[];
  readonly silver: Collected;
}

export function reportOf(input: ReportInput): ReportFigures {
  const { rolls, zone, fromMs, untilMs } = input;
  const runs = runsOf(rolls).filter(({ body }) => body.developedSeconds !== null);
  const doses = runs.flatMap((roll) =>
    roll.body.dosePerMille === null
      ? []
      : [{ roll: roll.number, atMs: roll.endedAt, perMille: roll.body.dosePerMille }],
  );
  const faulty = rolls.filter(({ fault }) => fault !== "");
  return {
    className: input.className,
    fromMs,
    untilMs,
    rolls: rolls.length,
    finished: rolls.filter(({ outcome }) => outcome === "finished").length,
    people: new Set(rolls.map(({ personName }) => personName)).size,
    weeks: weeksOf(rolls, zone, fromMs, untilMs),
    runsOnTime: runs.filter(({ lateCues, body }) => lateCues + body.missedCues === 0).length,
    runsCalled: runs.length,
    doses,
    dose: doses.length === 0 ? null : bandOf(doses.map(({ perMille }) => perMille)),
    faults: tally(faulty.map(({ fault }) => fault)),
    faulty: faulty.length,
    rating: ratingOf(rolls),
    prints: printsOf(input.prints),
    films: tally(rolls.map(({ film }) => film)),
    developers: developersOf(rolls),
    batchesMixed: tally(input.mixed),
    silver: input.silver,
  };
}

function ratingOf(rated: readonly { readonly rating: number | null }[]): ReportFigures["rating"] {
  const ratings = rated.flatMap(({ rating }) => (rating === null ? [] : [rating]));
  if (ratings.length === 0) return null;
  return { mean: ratings.reduce((sum, each) => sum + each, 0) / ratings.length, count: ratings.length };
}

function printsOf(prints: readonly Print[]): PrintFigures {
  return {
    count: prints.length,
    people: new Set(prints.map(({ personName }) => personName)).size,
    rating: ratingOf(prints),
    faulty: prints.filter(({ fault }) => fault !== "").length,
    papers: tally(prints.flatMap(({ body }) => body.paper?.name ?? [])),
  };
}

/** One roll for each run: films in one tank shared its calls and its developer. */
function runsOf(rolls: readonly RollSum[]): RollSum[] {
  return rolls.filter(({ body }) => body.film.index === 1);
}

/** Every week of the stretch, those without a roll as well. */
const LONGEST_MS = 10 * 365 * 86_400_000;

function weeksOf(rolls: readonly RollSum[], zone: string, fromMs: number, untilMs: number): WeekCount[] {
  const mondayOf = (atMs: number): Temporal.PlainDate => {
    const day = Temporal.Instant.fromEpochMilliseconds(atMs).toZonedDateTimeISO(zone).toPlainDate();
    return day.subtract({ days: day.dayOfWeek - 1 });
  };
  const firstMs = Math.min(untilMs, ...rolls.map(({ endedAt }) => endedAt));
  // Of a stretch longer than any log the empty weeks before its first roll are left out.
  const beginMs = untilMs - fromMs > LONGEST_MS ? Math.max(fromMs, firstMs) : fromMs;
  const starts: number[] = [];
  for (let monday = mondayOf(beginMs); ; monday = monday.add({ weeks: 1 })) {
    const startsAtMs = monday.toZonedDateTime(zone).epochMilliseconds;
    if (startsAtMs >= untilMs) break;
    starts.push(startsAtMs);
  }
  const counts = starts.map(() => 0);
  for (const { endedAt } of rolls) {
    const week = starts.findLastIndex((startsAtMs) => startsAtMs <= endedAt);
    counts[week] = (counts[week] ?? 0) + 1;
  }
  return starts.map((startsAtMs, week) => ({ startsAtMs, rolls: counts[week] ?? 0 }));
}

function bandOf(values: readonly number[]): { median: number; low: number; high: number } {
  const sorted = values.toSorted((a, b) => a - b);
  const at = (share: number): number => sorted[Math.round((sorted.length - 1) * share)] ?? 0;
  return { median: at(0.5), low: at(0.05), high: at(0.95) };
}

/** The commonest first. */
function tally(names: readonly string[]): Tally[] {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts]
    .map(([name, count]) => ({ name, count }))
    .sort((a, b) => b.count - a.count || a.name.localeCompare(b.name));
}

function developersOf(rolls: readonly RollSum[]): ReportFigures["developers"] {
  const sums = new Map<string, { ml: number; concentrateMl: number }>();
  for (const { developer, dilution, body } of rolls) {
    if (body.developedSeconds === null || body.developerMl === null) continue;
    const name = `${developer} ${dilution}`;
    const before = sums.get(name) ?? { ml: 0, concentrateMl: 0 };
    sums.set(name, {
      ml: before.ml + body.developerMl,
      concentrateMl: before.concentrateMl + (body.concentrateMl ?? 0),
    });
  }
  return [...sums].map(([name, sum]) => ({ name, ...sum })).sort((a, b) => b.ml - a.ml);
}
