import { z } from "zod";
import { CUE_KINDS, type Cue } from "../commands/run/cues.ts";
import type { DueCue } from "../commands/run/settle.ts";
import type { Db } from "./open.ts";

const rowSchema = z
  .object({
    id: z.int(),
    key: z.string(),
    kind: z.enum(CUE_KINDS),
    step: z.int(),
    number: z.int(),
    due_at: z.int(),
    made_at: z.int(),
  })
  .transform(({ due_at, made_at, ...row }): DueCue => ({ ...row, dueAtMs: due_at, madeAtMs: made_at }));

export type CueState = "said" | "merged";

export interface CueStore {
  /**
   * Makes `cues` the pending ones of this run, each to be decided `leadMs` before it is due: others that wait are dropped, a
   * key that is known stays as it is.
   */
  reschedule(runId: number, cues: readonly Cue[], leadMs: number, now: number): void;
  /**
   * The runs of the `limit` most overdue cues to be decided by `now`, the most overdue first. Ids only: one bad row must not hide
   * the rest.
   */
  dueRuns(now: number, limit: number): number[];
  due(runId: number, now: number): DueCue[];
  pending(runId: number): DueCue[];
  /** The instant at which the next pending cue of all runs is to be decided. */
  nextDecideAt(): number | undefined;
  /** How many cues of a run came too late to be said on their own. */
  mergedOf(runId: number): number;
  settle(id: number, state: CueState, now: number): void;
  /** Takes a run that can't be read out of the way, so that it doesn't hold up the others for ever. */
  putOff(runId: number, until: number): void;
}

export function createCueStore(db: Db): CueStore {
  const drop = db.prepare<[number, number]>(
    "update cues set state = 'dropped', settled_at = ? where run_id = ? and state = 'pending'",
  );
  const insert = db.prepare<[number, string, string, number, number, number, number, number]>(
    `insert into cues (run_id, key, kind, step, number, due_at, decide_at, made_at) values (?, ?, ?, ?, ?, ?, ?, ?)
     on conflict (run_id, key) do nothing`,
  );
  // Named, since the planner would else walk another index past every cue that is not due.
  const dueRuns = db.prepare<[number, number], { run_id: number }>(
    "select run_id from cues indexed by cues_due where state = 'pending' and decide_at <= ? order by decide_at, id limit ?",
  );
  const dueOfRun = db.prepare<[number, number]>(
    "select * from cues where run_id = ? and state = 'pending' and decide_at <= ? order by due_at, id",
  );
  const pendingOfRun = db.prepare<[number]>(
    "select * from cues where run_id = ? and state = 'pending' order by due_at, id",
  );
  const next = db.prepare<[], { at: number | null }>(
    "select min(decide_at) as at from cues where state = 'pending'",
  );
  const merged = db.prepare<[number], { count: number }>(
    "select count(*) as count from cues where run_id = ? and state = 'merged'",
  );
  const mark = db.prepare<[CueState, number, number]>(
    "update cues set state = ?, settled_at = ? where id = ? and state = 'pending'",
  );
  const delay = db.prepare<[number, number, number]>(
    "update cues set decide_at = ? where run_id = ? and state = 'pending' and decide_at <= ?",
  );
  return {
    reschedule(runId, cues, leadMs, now) {
      drop.run(now, runId);
      for (const { key, kind, step, number, dueAtMs } of cues) {
        insert.run(runId, key, kind, step, number, dueAtMs, dueAtMs - leadMs, now);
      }
    },
    dueRuns: (now, limit) => [...new Set(dueRuns.all(now, limit).map(({ run_id }) => run_id))],
    due: (runId, now) => z.array(rowSchema).parse(dueOfRun.all(runId, now)),
    pending: (runId) => z.array(rowSchema).parse(pendingOfRun.all(runId)),
    nextDecideAt: () => next.get()?.at ?? undefined,
    mergedOf: (runId) => merged.get(runId)?.count ?? 0,
    settle: (id, state, now) => void mark.run(state, now, id),
    putOff: (runId, until) => void delay.run(until, runId, until),
  };
}
