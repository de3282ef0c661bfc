import { isFilmRun, isTrial, type FilmRun, type Run, waitsToBegin } from "../../../store/shapes/run.ts";
import { stagesLeft } from "../../plan/stages.ts";
import { leavesTankAtMs } from "../../plan/taken.ts";
import { holderOf } from "../../tank/holder.ts";
import { TURNAROUND_SECONDS } from "./fit.ts";

/* Who waits for one certain tank, and who has it. Pure. */

export interface TankWait {
  readonly tank: number;
  readonly holder: Run;
  /** In order; none of their films is in a tank yet. */
  readonly waiting: readonly FilmRun[];
}

/** Of a class's runs that are not over, oldest first; by the tanks' numbers. */
export function tankWaitsOf(open: readonly Run[]): TankWait[] {
  const films = open.filter(isFilmRun).filter((run) => !isTrial(run));
  const tanks = [...new Set(films.flatMap(({ plan }) => plan.tank ?? []))].sort((a, b) => a - b);
  return tanks.flatMap((tank) => {
    const holder = holderOf(films, tank);
    const waiting = films.filter(
      (run) => run.plan.tank === tank && run.id !== holder?.id && waitsToBegin(run),
    );
    return holder && waiting.length > 0 ? [{ tank, holder, waiting }] : [];
  });
}

/** By run, the soonest that it may be poured in: once each before it in its tank hangs, and the tank is loaded anew. */
export function soonestOf(waits: readonly TankWait[], nowMs: number): Map<number, number> {
  const soonest = new Map<number, number>();
  for (const { holder, waiting } of waits) {
    let freeAtMs = leavesTankAtMs(holder, nowMs) ?? nowMs + inTankMs(holder, nowMs);
    for (const run of waiting) {
      const atMs = freeAtMs + TURNAROUND_SECONDS * 1000;
      soonest.set(run.id, atMs);
      freeAtMs = atMs + inTankMs(run, nowMs);
    }
  }
  return soonest;
}

function inTankMs(run: Run, nowMs: number): number {
  const { sinkSeconds, washSeconds } = stagesLeft(run, nowMs);
  return (sinkSeconds + washSeconds) * 1000;
}
