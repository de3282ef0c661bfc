import type { Db } from "./open.ts";
import { owedBodySchema } from "./outbox-body.ts";
import type { NewOwed, Owed, Ready } from "./owed.ts";
import { makeMessageKey } from "./shapes/message-key.ts";
import { PRIORITIES } from "./shapes/priority.ts";

/* Columns of a strict table hold what was written; they are not examined with every message. A body is. */
const WHOSE = `id, key, class_id as "classId", person_id as "personId", run_id as "runId", due_at as "dueAt", tries`;
const READY_COLUMNS = `${WHOSE}, priority, useful_until as "usefulUntil", bundle`;
/** Of chats whose messages are found by channel and number, as the index of them has it. */
const SAID_IN = "ref = ? and instr(ref, '/') > 0";
const OWED_COLUMNS = `${WHOSE}, decided_at as "decidedAt", body, state, first_try_at as "firstTryAt", missed, useful_until as "usefulUntil", sent_at as "sentAt", ref`;
type OwedRow = Omit<Owed, "body"> & { readonly body: string };
/** One whose body can't be read must not hold up the others it would be said with. */
const readIfWhole = (row: OwedRow): Owed[] => {
  const { data } = owedBodySchema.safeParse(JSON.parse(row.body));
  return data ? [Object.assign(row, { body: data })] : [];
};

export interface OutboxStore {
  /** With `said` it was said in this very transaction. A key that is there already changes nothing. */
  owe(message: NewOwed, said?: { readonly ref: string; readonly at: number }): void;
  /** What may be tried by `now`, in order of its moment. */
  ready(now: number, limit: number): Ready[];
  load(ids: readonly number[]): Owed[];
  /** When the next message that waits may be tried. */
  nextReadyAt(now: number): number | undefined;
  /**
   * Before anything leaves: a process killed now knows that these may have been said, and under which key. Whatever of their
   * runs went unsaid before them is theirs to tell from now on.
   */
  markSending(ids: readonly number[], bundle: string | null, now: number): void;
  markSent(ids: readonly number[], ref: string, now: number): void;
  /** The runs that the message found by this `ref` speaks of. */
  runsSaidIn(ref: string): number[];
  /** The classes that it was for. */
  classesSaidIn(ref: string): number[];
  /** Tried again from `nextAt` on. */
  markLater(ids: readonly number[], nextAt: number, detail: string): void;
  /** The same where nothing was said this time: if it was the first time, it is as if it had never been tried. */
  markUnsaid(ids: readonly number[], nextAt: number, detail: string): void;
  markEnded(ids: readonly number[], state: "failed" | "stale", detail: string, now: number): void;
  /** Speaks to the class instead, since this person can't be reached alone. */
  redirectToClass(id: number, mention: string): void;
  /** At the start of a process: what was being said when the last one ended is ready again, with the same key. */
  recover(now: number): number;
  /** For what is said in this very transaction: whatever of their runs went unsaid before them is theirs to tell. */
  takeUntold(ids: readonly number[]): void;
  /** The same for a call that is not owed before it is said: how many that is. */
  takeUntoldOf(runId: number, dueAt: number): number;
  /**
   * Takes back what was not begun to be said for a run that has moved on; what was is not tried again. What was late already,
   * by `lateMs` or more, was missed.
   */
  withdraw(runId: number, now: number, lateMs: number): void;
  /** Takes back the one with this key, where it was not begun to be said. */
  withdrawKey(key: string, now: number): void;
  /** How many cues of a run reached their person later than `ms` after their moment. */
  lateOf(runId: number, ms: number): number;
  /** How many cues of a run were decided, and then went unsaid until they were late by `ms` or of no use. */
  unsaidOf(runId: number, ms: number): number;
  /** Gives up all that is owed; returns how many. */
  dropAll(why: string, now: number): number;
  findByKey(key: string): Owed | undefined;
  /** How many are not said yet. */
  depth(): number;
}

/** While a message is being said it is not ready; should its outcome never come, it is again after this long. */
const SENDING_MS = 60_000;

export function createOutboxStore(db: Db): OutboxStore {
  const insert = db.prepare<(string | number | null)[]>(
    `insert into outbox (key, class_id, person_id, run_id, priority, due_at, decided_at, useful_until, next_at, missed, body, state, ref, sent_at)
     values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) on conflict (key) do nothing`,
  );
  const ready = db.prepare<[number, number], Ready>(
    `select ${READY_COLUMNS} from outbox
     where state in ('owed', 'sending') and next_at <= ? order by priority >= ${PRIORITIES.news}, due_at, priority, id limit 0 + ?`,
  );
  const one = db.prepare<[number], OwedRow>(`select ${OWED_COLUMNS} from outbox where id = ?`);
  const next = db.prepare<[number], { next_at: number | null }>(
    "select min(next_at) as next_at from outbox where state in ('owed', 'sending') and next_at > ?",
  );
  const inIds = "where id in (select value from json_each(@ids))";
  const sending = db.prepare<[number, number, string | null, number]>(
    `update outbox set state = 'sending', tries = tries + 1, first_try_at = coalesce(first_try_at, ?), next_at = ?, bundle = ?
     where id = ?`,
  );
  const sent = db.prepare<[string, number, number]>(
    "update outbox set state = 'sent', ref = ?, sent_at = ?, detail = null where id = ?",
  );
  const saidIn = db.prepare<[string], { run_id: number }>(
    `select distinct run_id from outbox where ${SAID_IN} and run_id is not null`,
  );
  const saidTo = db.prepare<[string], { class_id: number }>(
    `select distinct class_id from outbox where ${SAID_IN}`,
  );
  // No later than it is of use: then it is given up in time for the next one to tell of it.
  const nextTry = "next_at = min(@nextAt, coalesce(useful_until, @nextAt))";
  const later = db.prepare(`update outbox set ${nextTry}, detail = @detail ${inIds}`);
  const notSaid = db.prepare(
    `update outbox set ${nextTry}, detail = @detail, tries = max(tries - 1, 0),
       state = iif(tries > 1, state, 'owed'), bundle = iif(tries > 1, bundle, null),
       first_try_at = iif(tries > 1, first_try_at, null) ${inIds}`,
  );
  // The outcome of a try may never have come: then nobody knows, and the record must not say more.
  const ended = db.prepare(
    `update outbox set state = @state, sent_at = @now, untold = iif(run_id is null, 0, missed + 1),
       detail = iif(@state = 'stale' and tries > 0, @detail || '; it may have been said before', @detail) ${inIds}`,
  );
  const redirect = db.prepare<[string, number]>(
    "update outbox set person_id = null, body = json_insert(body, '$.mentions[#]', ?) where id = ?",
  );
  const recover = db.prepare<[number]>("update outbox set next_at = ? where state = 'sending'");
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
  const withdraw = db.prepare<[{ runId: number; now: number; lateMs: number }]>(
    `update outbox set state = 'stale', detail = 'the run moved on', sent_at = @now,
       untold = missed + (due_at <= @now - @lateMs) where run_id = @runId and state = 'owed'`,
  );
  // What may have been said already is not said again: it would send its person back to the bath before.
  const expire = db.prepare(
    "update outbox set useful_until = min(coalesce(useful_until, @now), @now) where run_id = @runId and state = 'sending'",
  );
  const withdrawKey = db.prepare<[number, string]>(
    "update outbox set state = 'stale', detail = 'no longer so', sent_at = ? where key = ? and state = 'owed'",
  );
  // What was said as it was decided may have no row here: its cue tells when that was.
  const late = db.prepare<[{ runId: number; ms: number; stem: string }], { count: number }>(
    `select (select count(*) from outbox where run_id = @runId and state in ('sent', 'failed')
         and coalesce(sent_at, decided_at) - due_at > @ms)
       + (select count(*) from cues where run_id = @runId and state = 'said' and settled_at - max(due_at, made_at) > @ms
         and not exists (select 1 from outbox where outbox.key = @stem || cues.key)) as count`,
  );
  const unsaid = db.prepare<[number, number], { count: number }>(
    `select count(*) as count from outbox where run_id = ? and state in ('stale', 'failed')
     and (sent_at >= useful_until or sent_at - due_at >= ?)`,
  );
  const dropAll = db.prepare<[string, number]>(
    "update outbox set state = 'stale', detail = ?, sent_at = ? where state in ('owed', 'sending')",
  );
  const byKey = db.prepare<[string], OwedRow>(`select ${OWED_COLUMNS} from outbox where key = ?`);
  const depth = db.prepare<[], { count: number }>(
    "select count(*) as count from outbox where state in ('owed', 'sending')",
  );

  function takeUntoldOf(runId: number, dueAt: number): number {
    const count = untold.get(runId, dueAt)?.count ?? 0;
    if (count > 0) told.run(runId, dueAt);
    return count;
  }

  function takeUntold(ids: readonly number[]): void {
    for (const id of ids) {
      const own = first.get(id);
      const count = own ? takeUntoldOf(own.runId, own.dueAt) : 0;
      if (count > 0) tell.run(count, id);
    }
  }

  const markEach = (mark: typeof later, ids: readonly number[], detail: string, how: object): void =>
    void mark.run({ ids: JSON.stringify(ids), detail: detail.slice(0, 500), ...how });

  return {
    owe(message, said) {
      const { key, classId, personId, runId, priority, dueAt, decidedAt, usefulUntil, missed = 0 } = message;
      const nextAt = Math.max(decidedAt, message.notBefore ?? 0);
      const row = [key, classId, personId, runId, priority, dueAt, decidedAt, usefulUntil, nextAt, missed];
      const state = said ? ["sent", said.ref, said.at] : ["owed", null, null];
      insert.run(...row, JSON.stringify(message.body), ...state);
    },
    takeUntold,
    takeUntoldOf,
    ready: (now, limit) => ready.all(now, limit),
    load: (ids) =>
      ids
        .flatMap((id) => one.get(id) ?? [])
        .sort((a, b) => a.dueAt - b.dueAt || a.id - b.id)
        .flatMap(readIfWhole),
    nextReadyAt: (now) => next.get(now)?.next_at ?? undefined,
    markSending(ids, bundle, now) {
      takeUntold(ids);
      for (const id of ids) sending.run(now, now + SENDING_MS, bundle, id);
    },
    classesSaidIn: (ref) => saidTo.all(ref).map(({ class_id: classId }) => classId),
    runsSaidIn: (ref) => saidIn.all(ref).map(({ run_id: runId }) => runId),
    markSent(ids, ref, now) {
      for (const id of ids) sent.run(ref, now, id);
    },
    markLater: (ids, nextAt, detail) => markEach(later, ids, detail, { nextAt: Math.round(nextAt) }),
    markUnsaid: (ids, nextAt, detail) => markEach(notSaid, ids, detail, { nextAt: Math.round(nextAt) }),
    markEnded: (ids, state, detail, now) => markEach(ended, ids, detail, { state, now }),
    redirectToClass: (id, mention) => void redirect.run(mention, id),
    recover: (now) => recover.run(now).changes,
    withdraw(runId, now, lateMs) {
      withdraw.run({ runId, now, lateMs });
      expire.run({ runId, now });
    },
    withdrawKey: (key, now) => void withdrawKey.run(now, key),
    lateOf(runId, ms) {
      const stem = makeMessageKey({ kind: "cue", run: runId, cue: "" });
      return late.get({ runId, ms, stem })?.count ?? 0;
    },
    unsaidOf: (runId, ms) => unsaid.get(runId, ms)?.count ?? 0,
    dropAll: (why, now) => dropAll.run(why, now).changes,
    findByKey(key) {
      const row = byKey.get(key);
      return row && readIfWhole(row)[0];
    },
    depth: () => depth.get()?.count ?? 0,
  };
}
