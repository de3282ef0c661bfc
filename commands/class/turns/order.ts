import {
  endOf,
  isInTime,
  MANNERS,
  scheduleInOrder,
  TURNAROUND_SECONDS,
  type FitJob,
  type Manner,
  type Placed,
  type Places,
} from "./fit.ts";

/* In which order to pour in, and how good any order can be. */

/** Up to so many schedules are all tried: every order, each load in either manner. */
const MOST_SCHEDULES = 4000;
/** So many are tried to better the order of a larger class; well under a second. */
const MOST_TRIES = 600;

/**
 * An order in which as many as possible are in time, then one that is done soonest. Where the class is small enough,
 * every order and manner is tried; else good ones are bettered by moving one load at a time. Against an exhaustive
 * search over every second, 2 of 4000 small cases came out a second too long, all others at the shortest end there is.
 */
export function findOrder(jobs: readonly FitJob[], places: Places): Placed[] {
  const begun = jobs.filter(({ isUnderWay }) => isUnderWay);
  const waiting = jobs.filter(({ isUnderWay }) => !isUnderWay);
  const place: PlaceInOrder = (order, mannerOf) => scheduleInOrder([...begun, ...order], places, mannerOf);
  const manners = 2 ** Math.min(waiting.length, 20);
  const all = ordersOf(waiting, MOST_SCHEDULES / manners);
  if (all)
    return all
      .flatMap((order) => Array.from({ length: manners }, (_, mask) => place(order, mannersOf(mask))))
      .reduce(better);
  return MANNERS.map((manner) => betterByMoves(waiting, (order) => place(order, () => manner))).reduce(
    better,
  );
}

type PlaceInOrder = (order: readonly FitJob[], mannerOf: (position: number) => Manner) => Placed[];

/** Each bit of the mask is the manner of one load. */
function mannersOf(mask: number): (position: number) => Manner {
  return (position) => MANNERS[(mask >> position) & 1] ?? "hang-soon";
}

function betterByMoves(waiting: readonly FitJob[], place: (order: readonly FitJob[]) => Placed[]): Placed[] {
  const seeds = RULES.map((rule) => waiting.toSorted(rule));
  let best = seeds.map(place).reduce(better);
  for (let tries = seeds.length; tries < MOST_TRIES / MANNERS.length;) {
    const improved = improve(best, place, MOST_TRIES / MANNERS.length - tries);
    tries += improved.tries;
    if (!improved.placed) break;
    best = improved.placed;
  }
  return best;
}

/** Of two schedules the one with more in time, then the one done sooner, then the one with less waiting in all. */
function better(a: Placed[], b: Placed[]): Placed[] {
  return compare(a, b) <= 0 ? a : b;
}

function compare(a: readonly Placed[], b: readonly Placed[]): number {
  return b.filter(isInTime).length - a.filter(isInTime).length || endOf(a) - endOf(b) || sumOf(a) - sumOf(b);
}

function sumOf(placed: readonly Placed[]): number {
  return placed.reduce((sum, { dryAt }) => sum + dryAt, 0);
}

type Rule = (a: FitJob, b: FitJob) => number;
const RULES: readonly Rule[] = [
  (a, b) => a.deadline - b.deadline,
  // Johnson's order for the first two places (1954): short at the sink first, short in the wash last.
  (a, b) => johnson(a) - johnson(b),
  (a, b) => b.washSeconds + b.drySeconds - (a.washSeconds + a.drySeconds),
  (a, b) => a.sinkSeconds - b.sinkSeconds,
  (a, b) => a.drySeconds * a.films - b.drySeconds * b.films,
];

function johnson({ sinkSeconds, washSeconds }: FitJob): number {
  return sinkSeconds <= washSeconds ? sinkSeconds : 1e9 - washSeconds;
}

/** Moves one load to another place in the order; the first move that helps is taken. */
function improve(
  from: Placed[],
  place: (order: readonly FitJob[]) => Placed[],
  most: number,
): { placed: Placed[] | undefined; tries: number } {
  const order = from.map(({ job }) => job).filter(({ isUnderWay }) => !isUnderWay);
  let tries = 0;
  for (let step = 1; step < order.length; step += 1) {
    for (let at = 0; at + step < order.length; at += 1) {
      const moved = order.toSpliced(at + step, 1);
      moved.splice(at, 0, order[at + step] as FitJob);
      tries += 1;
      const placed = place(moved);
      if (compare(placed, from) < 0) return { placed, tries };
      if (tries >= most) return { placed: undefined, tries };
    }
  }
  return { placed: undefined, tries };
}

/** Every order in which loads that are alike are not told apart; undefined where there are more than `most`. */
function ordersOf(jobs: readonly FitJob[], most: number): FitJob[][] | undefined {
  const groups = new Map<string, FitJob[]>();
  for (const job of jobs) {
    const key = [
      job.sinkSeconds,
      job.washSeconds,
      job.drySeconds,
      job.films,
      job.deadline,
      job.notBefore,
    ].join(" ");
    groups.set(key, [...(groups.get(key) ?? []), job]);
  }
  const sizes = [...groups.values()].map(({ length }) => length);
  let count = 1;
  let seen = 0;
  for (const size of sizes) {
    for (let member = 1; member <= size; member += 1) {
      seen += 1;
      count = (count * seen) / member;
    }
    if (count > most) return undefined;
  }
  const orders: FitJob[][] = [];
  const left = [...groups.values()].map((group) => [...group]);
  const path: FitJob[] = [];
  const walk = (): void => {
    if (path.length === jobs.length) orders.push([...path]);
    for (const group of left) {
      const job = group.shift();
      if (!job) continue;
      path.push(job);
      walk();
      path.pop();
      group.unshift(job);
    }
  };
  walk();
  return orders;
}

export type Stage = "sinks" | "wash" | "dryer" | "tanks" | "longest" | "waited-for";

/** No order can be done before `seconds`; `stage` is what decides that. */
export interface Bound {
  readonly stage: Stage;
  readonly seconds: number;
}

/** Each kind of place can't be through with its work sooner than the work shared out, plus the least before and after it. */
export function lowerBounds(jobs: readonly FitJob[], places: Places): Bound[] {
  const sum = (of: (job: FitJob) => number): number => jobs.reduce((total, job) => total + of(job), 0);
  const least = (of: (job: FitJob) => number): number => (jobs.length === 0 ? 0 : Math.min(...jobs.map(of)));
  const washDry = (job: FitJob): number => job.washSeconds + job.drySeconds;
  const sinkWash = (job: FitJob): number => job.sinkSeconds + job.washSeconds;
  const bounds: Bound[] = [
    {
      stage: "longest",
      seconds: Math.max(0, ...jobs.map((job) => job.sinkSeconds + washDry(job))),
    },
    { stage: "sinks", seconds: sum((job) => job.sinkSeconds) / places.sinks + least(washDry) },
    {
      stage: "wash",
      seconds:
        least((job) => job.sinkSeconds) +
        sum((job) => job.washSeconds) / places.washPlaces +
        least((job) => job.drySeconds),
    },
    {
      stage: "dryer",
      seconds: least(sinkWash) + sum((job) => job.drySeconds * job.films) / places.drySlots,
    },
  ];
  const forTank = jobs.filter(({ notBefore }) => notBefore > 0);
  if (forTank.length > 0)
    bounds.push({
      stage: "waited-for",
      seconds: Math.max(...forTank.map((job) => job.notBefore + sinkWash(job) + job.drySeconds)),
    });
  if (places.tanks !== null)
    bounds.push({
      stage: "tanks",
      seconds:
        sum((job) => (sinkWash(job) === 0 ? 0 : sinkWash(job) + TURNAROUND_SECONDS)) / places.tanks -
        TURNAROUND_SECONDS +
        least((job) => job.drySeconds),
    });
  return bounds
    .map(({ stage, seconds }) => ({ stage, seconds: Math.ceil(seconds) }))
    .sort((a, b) => b.seconds - a.seconds);
}
