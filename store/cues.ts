import type { Cue, DueCue } from "./shapes/cue.ts";
import { createDueReader, CUE_COLUMNS, type DueRun } from "./due.ts";
import type { Db } from "./open.ts";
import type { RunStore } from "./runs.ts";

export type CueState = "said" | "merged";

interface ComingRow {
  readonly due_at: number;
  readonly last_at: number;
  readonly decide_at: number;
  readonly count: number;
}

/** Messages that cues due from `dueAt` to `lastAt` will become. */
export interface Coming {
  readonly dueAt: number;
  readonly lastAt: number;
  readonly count: number;
  /** From here on all of them are decided by their own lead. */
  readonly decideAt: number;
}

/** Coming cues are counted by so long. */
const COUNTED_BY_MS = 250;

export interface CueStore {
  /**
   * Makes `cues` the pending ones of this run, each to be decided `leadMs` before it is due: others that wait are dropped, a
   * key that is known stays as it is.
   */
  reschedule(runId: number, cues: readonly Cue[], leadMs: number, now: number): void;
  /**
   * By run, the `limit` most overdue cues to be decided by `now`, the most overdue first; with them those due by `ahead` where
   * their chat has a lead, ends of steps excepted. Of the last runs more may be due.
   */
  due(now: number, limit: number, ahead?: number): Map<number, DueRun>;
  /** The same of one run, all of it. */
  dueOf(runId: number, now: number, ahead?: number): DueCue[];
  /**
   * What cues due by `until` in classes of this chat will become, in order: one message each, or one for all of a class
   * where its people aren't spoken to alone.
   */
  coming(chat: string, now: number, until: number): Coming[];
  /** How much a chat's delay asks for; 0 where it is quick. */
  leadMs(chat: string): number;
  /** From now on, and for what is pending in its classes: decided so long ahead, or `leastMs` where that is longer. */
  setLead(chat: string, leadMs: number, leastMs: number): void;
  pending(runId: number): DueCue[];
  /** The instant at which the next pending cue of all runs is to be decided. */
  nextDecideAt(): number | undefined;
  /** How many cues of a run came too late to be said on their own. */
  mergedOf(runId: number): number;
  settle(ids: readonly number[], state: CueState, now: number): void;
  /** Takes a run that can't be read out of the way, so that it doesn't hold up the others for ever. */
  putOff(runId: number, until: number): void;
}

export function createCueStore(db: Db, runs: Pick<RunStore, "read">): CueStore {
  const drop = db.prepare<[number, number]>(
    "update cues set state = 'dropped', settled_at = ? where run_id = ? and state = 'pending'",
  );
  const insert = db.prepare<[number, string, string, number, number, number, number, number]>(
    `insert into cues (id, run_id, key, kind, step, number, due_at, decide_at, made_at)
     values ((select coalesce(max(id), 0) + 1 from cues), ?, ?, ?, ?, ?, ?, ?, ?)
     on conflict (run_id, key) do nothing`,
  );
  const due = createDueReader(db, runs);
  const coming = db.prepare<[{ now: number; until: number; by: number; chat: string }], ComingRow>(
    `select min(cues.due_at) as due_at, max(cues.due_at) as last_at, max(cues.decide_at) as decide_at,
       count(distinct case
         when thread.ref is null and (direct.channel_ref is null or direct.refused_until > @now) then -runs.class_id
         else cues.id end) as count
     from cues indexed by cues_due
       join runs on runs.id = cues.run_id
       join classes on classes.id = runs.class_id
       left join direct_channels direct on direct.person_id = runs.person_id
       left join run_threads thread on thread.run_id = runs.id and thread.state = 'open'
     where cues.state = 'pending' and cues.decide_at > @now and cues.decide_at <= @until and cues.decide_at < cues.due_at
       and classes.key like @chat || ':%'
     group by cues.due_at / @by order by 1`,
  );
  const pendingOfRun = db.prepare<[number], DueCue>(
    `select ${CUE_COLUMNS} from cues where run_id = ? and state = 'pending' order by due_at, id`,
  );
  const next = db.prepare<[], { at: number | null }>(
    "select min(decide_at) as at from cues where state = 'pending'",
  );
  const merged = db.prepare<[number], { count: number }>(
    "select count(*) as count from cues where run_id = ? and state = 'merged'",
  );
  const mark = db.prepare<[CueState, number, string]>(
    "update cues set state = ?, settled_at = ? where id in (select value from json_each(?)) and state = 'pending'",
  );
  const delay = db.prepare<[number, number, number]>(
    "update cues set decide_at = ? where run_id = ? and state = 'pending' and decide_at <= ?",
  );
  const leads = new Map<string, number>();
  // What is decided by now stays decided; what never had a lead gets none.
  const move = db.prepare<[{ chat: string; lead: number }]>(
    `update cues set decide_at = due_at - @lead where state = 'pending' and decide_at < due_at and run_id in (
       select runs.id from runs join classes on classes.id = runs.class_id where classes.key like @chat || ':%')`,
  );
  return {
    leadMs: (chat) => leads.get(chat) ?? 0,
    setLead(chat, leadMs, leastMs) {
      leads.set(chat, leadMs);
      move.run({ chat, lead: Math.max(leadMs, leastMs) });
    },
    reschedule(runId, cues, leadMs, now) {
      drop.run(now, runId);
      for (const { key, kind, step, number, dueAtMs } of cues) {
        insert.run(runId, key, kind, step, number, dueAtMs, dueAtMs - leadMs, now);
      }
    },
    due: (now, limit, ahead = now) => due.next({ now, most: Math.max(now, ahead), limit }),
    dueOf: (runId, now, ahead = now) => due.allOf({ now, most: Math.max(now, ahead), runId }),
    coming: (chat, now, until) =>
      coming
        .all({ chat, now, until, by: COUNTED_BY_MS })
        .map(({ due_at: dueAt, last_at: lastAt, decide_at: decideAt, count }) => ({
          dueAt,
          lastAt,
          decideAt,
          count,
        })),
    pending: (runId) => pendingOfRun.all(runId),
    nextDecideAt: () => next.get()?.at ?? undefined,
    mergedOf: (runId) => merged.get(runId)?.count ?? 0,
    settle(ids, state, now) {
      if (ids.length > 0) mark.run(state, now, JSON.stringify(ids));
    },
    putOff: (runId, until) => void delay.run(until, runId, until),
  };
}
