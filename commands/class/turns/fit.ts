import { createUse, type Use } from "./use.ts";

/*
 * The darkroom as a small flow shop: a tank load takes a place at the sinks from pour-in to the end of the fixer, a wash
 * place until its film hangs, and drying places. A film may wait in the wash, never in the developer or the fixer: from the
 * sink it goes into the wash at once, so pour-in waits until that can be kept. All times in seconds from now.
 */

export interface FitJob {
  readonly id: string;
  /** Pour-in to the fixer poured back; what is left of it, once begun. */
  readonly sinkSeconds: number;
  /** Wash to wetting agent. */
  readonly washSeconds: number;
  readonly drySeconds: number;
  /** Films in the tank: each takes a drying place. */
  readonly films: number;
  /** Under way already: its times begin now, whatever else there is. */
  readonly isUnderWay: boolean;
  /** Not poured in before: its own tank has another film in it till then; 0: it waits for none. */
  readonly notBefore: number;
  /** The film must be dry by then. */
  readonly deadline: number;
}

export interface Places {
  readonly sinks: number;
  readonly washPlaces: number;
  readonly drySlots: number;
  /** Tanks that are sound; null: as many as are wanted. */
  readonly tanks: number | null;
}

export interface Placed {
  readonly job: FitJob;
  readonly pourIn: number;
  readonly washIn: number;
  readonly hungAt: number;
  readonly dryAt: number;
}

/** A tank and its reels are rinsed, dried and loaded anew before they serve again. Our estimate, no source. */
export const TURNAROUND_SECONDS = 900;

export interface Uses {
  readonly sinks: Use;
  readonly wash: Use;
  readonly dryer: Use;
  readonly tanks: Use;
}

export function createUses(places: Places): Uses {
  return {
    sinks: createUse(places.sinks),
    wash: createUse(places.washPlaces),
    dryer: createUse(places.drySlots),
    tanks: createUse(places.tanks),
  };
}

/** Two ways to make use of what the loads before have left: pour in as soon as one can, or hang the film as soon as one can. */
export const MANNERS = ["hang-soon", "pour-soon"] as const;
export type Manner = (typeof MANNERS)[number];

/** Each load takes what the ones before it in the order leave; what is under way comes first. */
export function scheduleInOrder(
  order: readonly FitJob[],
  places: Places,
  mannerOf: (position: number) => Manner = () => "hang-soon",
): Placed[] {
  const uses = createUses(places);
  const begun = order.filter(({ isUnderWay }) => isUnderWay);
  const waiting = order.filter(({ isUnderWay }) => !isUnderWay);
  return [
    ...begun.map((job) => placeBegun(job, uses)),
    ...waiting.map((job, at) => placeEarliest(job, uses, mannerOf(at))),
  ];
}

function placeBegun(job: FitJob, uses: Uses): Placed {
  const washIn = job.sinkSeconds;
  const hungAt = washIn + job.washSeconds;
  const placed = { job, pourIn: 0, washIn, hungAt, dryAt: hungAt + job.drySeconds };
  take(placed, uses);
  return placed;
}

function take({ job, pourIn, washIn, hungAt, dryAt }: Placed, uses: Uses): void {
  uses.sinks.take(pourIn, washIn, 1);
  uses.wash.take(washIn, hungAt, 1);
  uses.dryer.take(hungAt, dryAt, job.films);
  if (hungAt > pourIn) uses.tanks.take(pourIn, hungAt + TURNAROUND_SECONDS, 1);
}

function placeEarliest(job: FitJob, uses: Uses, manner: Manner): Placed {
  const placed = (manner === "hang-soon" ? hangSoon : pourSoon)(job, uses) ?? placeAfterAll(job, uses);
  take(placed, uses);
  return placed;
}

function placedAt(job: FitJob, pourIn: number, hungAt: number): Placed {
  return { job, pourIn, washIn: pourIn + job.sinkSeconds, hungAt, dryAt: hungAt + job.drySeconds };
}

function hangSoon(job: FitJob, uses: Uses): Placed | undefined {
  const { sinkSeconds, washSeconds, drySeconds, films } = job;
  const least = sinkSeconds + washSeconds;
  let hungAt: number | null = job.notBefore + least;
  // Each round finds the hanging feasible or moves it on to where what was in its way is free.
  for (let before = -1; hungAt !== null && hungAt > before;) {
    before = hungAt;
    hungAt = uses.dryer.next(before, drySeconds, films);
    hungAt = later(hungAt, uses.wash.next((hungAt ?? 0) - washSeconds, washSeconds, 1), washSeconds);
    const span = least + TURNAROUND_SECONDS;
    hungAt = later(hungAt, uses.tanks.next((hungAt ?? 0) - least, span, 1), least);
    if (hungAt === null) return undefined;
    if (hungAt > before) continue;
    const pourIn = latestPourIn(job, hungAt, uses);
    if (pourIn !== undefined) return placedAt(job, pourIn, hungAt);
    hungAt = later(hungAt, uses.sinks.next(hungAt - least, sinkSeconds, 1), least);
  }
  return undefined;
}

/** The later of a hanging and of another instant plus what lies between; null where either never comes. */
function later(hungAt: number | null, from: number | null, plus: number): number | null {
  return hungAt === null || from === null ? null : Math.max(hungAt, from + plus);
}

function pourSoon(job: FitJob, uses: Uses): Placed | undefined {
  const { sinkSeconds, washSeconds, drySeconds, films } = job;
  const least = sinkSeconds + washSeconds;
  for (let pourIn = uses.sinks.next(job.notBefore, sinkSeconds, 1); pourIn !== null;) {
    const hungAt = uses.dryer.next(pourIn + least, drySeconds, films);
    if (hungAt === null) return undefined;
    const isFree =
      uses.wash.fits(pourIn + sinkSeconds, hungAt, 1) &&
      uses.tanks.fits(pourIn, hungAt + TURNAROUND_SECONDS, 1);
    if (isFree) return placedAt(job, pourIn, hungAt);
    const changes = [
      after(uses.wash, pourIn, sinkSeconds),
      after(uses.dryer, pourIn, least),
      after(uses.tanks, pourIn, 0),
    ];
    const next = Math.min(...changes);
    pourIn = Number.isFinite(next) ? uses.sinks.next(next, sinkSeconds, 1) : null;
  }
  return undefined;
}

/** The first pour-in after this one that meets a change `lead` seconds later; infinite where there is none. */
function after(use: Use, pourIn: number, lead: number): number {
  const change = use.changeAfter(pourIn + lead);
  return change === null ? Infinity : change - lead;
}

/** After the last change of all everything is free; reached only by a load larger than the dryer. */
function placeAfterAll(job: FitJob, uses: Uses): Placed {
  const last = Math.max(job.notBefore, ...Object.values(uses).flatMap((use: Use) => [...use.changes()]));
  return placedAt(job, last, last + job.sinkSeconds + job.washSeconds);
}

/** The latest pour-in from which the film can hang at `hungAt`; the wash is lengthened where the sinks leave no other. */
function latestPourIn(job: FitJob, hungAt: number, uses: Uses): number | undefined {
  if (!uses.dryer.fits(hungAt, hungAt + job.drySeconds, job.films)) return undefined;
  const direct = hungAt - job.washSeconds - job.sinkSeconds;
  const starts = [
    direct,
    ...uses.sinks
      .changes()
      .map((at) => at - job.sinkSeconds)
      .filter((at) => at < direct)
      .reverse(),
    job.notBefore,
  ];
  for (const pourIn of starts) {
    if (pourIn < job.notBefore) return undefined;
    const washIn = pourIn + job.sinkSeconds;
    // An earlier pour-in takes the wash and the tank for longer still: no use in looking on.
    if (!uses.wash.fits(washIn, hungAt, 1)) return undefined;
    if (!uses.tanks.fits(pourIn, hungAt + TURNAROUND_SECONDS, 1)) return undefined;
    if (uses.sinks.fits(pourIn, washIn, 1)) return pourIn;
  }
  return undefined;
}

/** The last instant at which anything is still drying. */
export function endOf(placed: readonly Placed[]): number {
  return placed.reduce((latest, { dryAt }) => Math.max(latest, dryAt), 0);
}

export function isInTime({ job, dryAt }: Placed): boolean {
  return dryAt <= job.deadline;
}
