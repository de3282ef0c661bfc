import type { Db } from "./open.ts";

/* Calls that nobody heard are told of by the next one of their run. */

export interface Untold {
  /** For what is said in this very transaction: whatever of their runs went unsaid before them is theirs to tell. */
  takeUntold(ids: readonly number[]): void;
  /** The same for a call that is not owed before it is said: how many that is. */
  takeUntoldOf(runId: number, dueAt: number): number;
}

export function createUntold(db: Db): Untold {
  const untold = db.prepare<[number, number], { count: number }>(
    "select sum(untold) as count from outbox where run_id = ? and untold > 0 and due_at <= ? having count > 0",
  );
  // Only the first try: a chat that knows the key would keep what it was told then.
  const first = db.prepare<[number], { runId: number; dueAt: number }>(
    `select run_id as "runId", due_at as "dueAt" from outbox where id = ? and tries = 0 and run_id is not null`,
  );
  const tell = db.prepare<[number, number]>("update outbox set missed = missed + ? where id = ?");
  const told = db.prepare<[number, number]>(
    "update outbox set untold = 0 where run_id = ? and untold > 0 and due_at <= ?",
  );

  function takeUntoldOf(runId: number, dueAt: number): number {
    const count = untold.get(runId, dueAt)?.count ?? 0;
    if (count > 0) told.run(runId, dueAt);
    return count;
  }

  return {
    takeUntoldOf,
    takeUntold(ids) {
      for (const id of ids) {
        const own = first.get(id);
        const count = own ? takeUntoldOf(own.runId, own.dueAt) : 0;
        if (count > 0) tell.run(count, id);
      }
    },
  };
}
