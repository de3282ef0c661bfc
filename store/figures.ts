import { PRIORITIES } from "./shapes/priority.ts";
import type { Db } from "./open.ts";

/* What an operator's figures are read from. */

export interface FigureStore {
  /** Runs that are not over. */
  openRuns(): number;
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
  return {
    openRuns: () => open.get()?.n ?? 0,
    oldestUrgentAt: () => urgent.get()?.at ?? null,
  };
}
