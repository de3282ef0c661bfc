import { createUses, TURNAROUND_SECONDS, type FitJob, type Placed, type Places, type Uses } from "./fit.ts";

/* The latest safe pour-in of each load: the same shop, laid out backwards from the deadlines. */

/**
 * The latest pour-ins with which this order is in time, by the same rule backwards from the deadlines; undefined where
 * it can't be kept so. Loads under way keep their places.
 */
export function latestInOrder(placed: readonly Placed[], places: Places): Map<string, Placed> | undefined {
  const waiting = placed.filter(({ job }) => !job.isUnderWay);
  const end = Math.max(0, ...placed.map(({ job, dryAt }) => Math.max(job.deadline, dryAt)));
  const uses = createUses(places);
  for (const each of placed) if (each.job.isUnderWay) takeMirrored(each, uses, end);
  const latest = new Map<string, Placed>();
  for (const { job } of [...waiting].sort((a, b) => b.pourIn - a.pourIn || b.dryAt - a.dryAt)) {
    const last = placeLatest(job, uses, end);
    if (!last || last.pourIn < job.notBefore) return undefined;
    takeMirrored(last, uses, end);
    latest.set(job.id, last);
  }
  return latest;
}

function takeMirrored({ job, pourIn, washIn, hungAt, dryAt }: Placed, uses: Uses, end: number): void {
  uses.sinks.take(end - washIn, end - pourIn, 1);
  uses.wash.take(end - hungAt, end - washIn, 1);
  uses.dryer.take(end - dryAt, end - hungAt, job.films);
  if (hungAt > pourIn) uses.tanks.take(end - hungAt - TURNAROUND_SECONDS, end - pourIn, 1);
}

/** As late as its deadline and the loads after it leave room. Backwards, every instant is `end - at`. */
function placeLatest(job: FitJob, uses: Uses, end: number): Placed | undefined {
  const least = job.drySeconds + job.washSeconds;
  const ready = end - job.deadline;
  const washOuts = new Set([
    ready + least,
    ...uses.sinks.changes(),
    ...uses.wash.changes().map((at) => at + job.washSeconds),
    ...uses.dryer.changes().map((at) => at + least),
    ...uses.tanks.changes().map((at) => at + TURNAROUND_SECONDS + job.washSeconds),
  ]);
  for (const at of [...washOuts].sort((a, b) => a - b)) {
    if (at < ready + least || !uses.sinks.fits(at, at + job.sinkSeconds, 1)) continue;
    const dryFrom = latestDrying(job, at, ready, uses);
    if (dryFrom === undefined) continue;
    const washIn = end - at;
    const dryAt = end - dryFrom;
    return { job, pourIn: washIn - job.sinkSeconds, washIn, hungAt: dryAt - job.drySeconds, dryAt };
  }
  return undefined;
}

function latestDrying(job: FitJob, washOut: number, ready: number, uses: Uses): number | undefined {
  const direct = washOut - job.washSeconds - job.drySeconds;
  const starts = [
    direct,
    ...uses.dryer
      .changes()
      .map((at) => at - job.drySeconds)
      .filter((at) => at < direct)
      .reverse(),
    ready,
  ];
  for (const from of starts) {
    if (from < ready) return undefined;
    const hung = from + job.drySeconds;
    if (!uses.wash.fits(hung, washOut, 1)) return undefined;
    if (!uses.tanks.fits(hung - TURNAROUND_SECONDS, washOut + job.sinkSeconds, 1)) return undefined;
    if (uses.dryer.fits(from, hung, job.films)) return from;
  }
  return undefined;
}
