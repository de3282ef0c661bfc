import { PRIORITIES } from "./shapes/priority.ts";
import type { Db } from "./open.ts";

/* How it stands with runs and messages as a whole. */

export interface FigureStore {
  /** Runs that are not over. */
  openRuns(): number;
  /** Open runs of a class whose newest call reached nobody, by their ids. */
  unreached(classId: number): ReadonlySet<number>;
  /** The moment of the oldest message that can't wait and is not said yet. */
  oldestUrgentAt(): number | null;
}

export function createFigureStore(db: Db): FigureStore {
  const open = db.prepare<[], { n: number }>(
    "select count(*) as n from runs where phase_kind in ('waiting', 'running')",
  );
  const urgent = db.prepare<[], { at: number | null }>(
    `select min(due_at) as at from outbox where state in ('owed', 'sending') and priority < ${PRIORITIES.news}`,
  );
  const unreached = db.prepare<[number], { id: number }>(
    `select id from runs where class_id = ? and phase_kind in ('waiting', 'running')
     and (select state from outbox where run_id = runs.id and state in ('sent', 'failed') order by id desc limit 1) = 'failed'`,
  );
  return {
    unreached: (classId) => new Set(unreached.all(classId).map(({ id }) => id)),
    openRuns: () => open.get()?.n ?? 0,
    oldestUrgentAt: () => urgent.get()?.at ?? null,
  };
}
