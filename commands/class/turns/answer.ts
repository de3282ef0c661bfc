import { isInTime, type FitJob, type Placed, type Places } from "./fit.ts";
import { latestInOrder } from "./latest.ts";
import { findOrder, lowerBounds } from "./order.ts";
import type { FitAnswer, FitLine } from "./reply.ts";
import type { Stages } from "../../plan/stages.ts";

/* From loads and a bell to the answer: the order, the latest pour-ins, who must wait. Pure. */

export interface Load {
  readonly id: string;
  readonly label: string;
  readonly stages: Stages;
  readonly films: number;
  readonly isUnderWay: boolean;
  /** When its own tank, which another film is in, may be poured into; absent: it waits for none. */
  readonly soonestMs?: number | undefined;
}

type Goal = FitAnswer["goal"];

/** `bellAtMs` null: nothing to be in time for. */
export function answerFit(
  loads: readonly Load[],
  places: Places,
  fromMs: number,
  bellAtMs: number | null,
): FitAnswer {
  const bell = bellAtMs === null ? Infinity : Math.floor((bellAtMs - fromMs) / 1000);
  const jobsFor = (goal: Goal): FitJob[] => loads.map((load) => jobOf(load, goal, bell, fromMs));
  const done = findOrder(jobsFor("done"), places);
  const doneByBell = done.filter(isInTime).length;
  const goal: Goal = doneByBell === loads.length ? "done" : "hung";
  const placed = goal === "done" ? done : findOrder(jobsFor("hung"), places);
  const inTime = placed.filter(isInTime);
  // Whoever can't be in time doesn't pour in at all, and so leaves their places to the others.
  const kept = placed.filter((each) => isInTime(each) || each.job.isUnderWay);
  const latest = bellAtMs === null ? undefined : latestFor(inTime, places);
  const labels = new Map(loads.map(({ id, label }) => [id, label]));
  const at = (seconds: number): number => fromMs + seconds * 1000;
  const lineOf = (each: Placed): FitLine => ({
    label: labels.get(each.job.id) ?? each.job.id,
    pourInAtMs: each.job.isUnderWay ? null : at(each.pourIn),
    latestAtMs: latestOf(each, latest, bellAtMs, at),
    hungAtMs: at(each.hungAt),
    dryAtMs: at(each.dryAt),
    isInTime: isInTime(each),
  });
  const waiting = placed.filter((each) => !kept.includes(each));
  return {
    bellAtMs,
    goal,
    lines: [...kept.toSorted((a, b) => a.pourIn - b.pourIn || a.dryAt - b.dryAt), ...waiting].map(lineOf),
    doneByBell,
    hungByBell: goal === "done" ? loads.length : inTime.length,
    bound: lowerBounds(jobsFor(goal), places)[0],
    places,
  };
}

function jobOf(load: Load, goal: Goal, bell: number, fromMs: number): FitJob {
  const { id, stages, films, isUnderWay, soonestMs = fromMs } = load;
  const { sinkSeconds, washSeconds, drySeconds, cutSeconds } = stages;
  const notBefore = Math.max(0, Math.ceil((soonestMs - fromMs) / 1000));
  const deadline = goal === "done" ? bell - cutSeconds : bell + drySeconds;
  return { id, sinkSeconds, washSeconds, drySeconds, films, isUnderWay, deadline, notBefore };
}

/** One set of latest pour-ins for all; the proposed ones where the way backwards has nothing later for everybody. */
function latestFor(inTime: readonly Placed[], places: Places): ReadonlyMap<string, Placed> | undefined {
  const latest = latestInOrder(inTime, places);
  const isLater = inTime.every(
    ({ job, pourIn }) => job.isUnderWay || (latest?.get(job.id)?.pourIn ?? -1) >= pourIn,
  );
  return isLater ? latest : undefined;
}

function latestOf(
  { job, pourIn, dryAt }: Placed,
  latest: ReadonlyMap<string, Placed> | undefined,
  bellAtMs: number | null,
  at: (seconds: number) => number,
): number | null {
  if (job.isUnderWay || bellAtMs === null || dryAt > job.deadline) return null;
  return at(latest?.get(job.id)?.pourIn ?? pourIn);
}
