import { z } from "zod";
import { json } from "./json.ts";
import type { Db } from "./open.ts";

/** What is said, as kept: enough to say it again in the same words. */
const bodySchema = z.object({
  text: z.string(),
  actions: z.array(
    z.object({ label: z.string(), line: z.string(), weight: z.enum(["main", "plain", "danger"]).optional() }),
  ),
  mentions: z.array(z.string()),
});
export type OutboxBody = z.output<typeof bodySchema>;

export const OUTBOX_STATES = ["owed", "sending", "sent", "failed", "stale"] as const;
export type OutboxState = (typeof OUTBOX_STATES)[number];

const rowSchema = z
  .object({
    id: z.int(),
    key: z.string(),
    class_id: z.int(),
    person_id: z.string().nullable(),
    run_id: z.int().nullable(),
    priority: z.int(),
    due_at: z.int(),
    decided_at: z.int(),
    useful_until: z.int().nullable(),
    body: json(bodySchema),
    state: z.enum(OUTBOX_STATES),
    tries: z.int(),
    first_try_at: z.int().nullable(),
    sent_at: z.int().nullable(),
    ref: z.string().nullable(),
  })
  .transform((row) => ({
    id: row.id,
    key: row.key,
    classId: row.class_id,
    personId: row.person_id,
    runId: row.run_id,
    priority: row.priority,
    dueAt: row.due_at,
    decidedAt: row.decided_at,
    usefulUntil: row.useful_until,
    body: row.body,
    state: row.state,
    tries: row.tries,
    firstTryAt: row.first_try_at,
    sentAt: row.sent_at,
    ref: row.ref,
  }));
export type Owed = z.output<typeof rowSchema>;

export interface NewOwed {
  readonly key: string;
  readonly classId: number;
  readonly personId: string | null;
  readonly runId: number | null;
  readonly priority: number;
  readonly dueAt: number;
  readonly decidedAt: number;
  /** Later than this it helps nobody and is kept only as a record; null: always useful. */
  readonly usefulUntil: number | null;
  readonly body: OutboxBody;
}

export interface OutboxStore {
  /** A key that is there already changes nothing. */
  owe(message: NewOwed): void;
  /** What may be tried now, the most urgent first. */
  ready(now: number, limit: number): Owed[];
  nextReadyAt(): number | undefined;
  markSending(id: number, now: number): void;
  markSent(id: number, ref: string, now: number): void;
  /** At the start of a process: what was being said when the last one ended is ready again, with the same key. */
  recover(now: number): number;
  /** Takes back what was not begun to be said for a run that has moved on. */
  withdraw(runId: number, now: number): void;
  /** Tried again from `nextAt` on. */
  markLater(id: number, nextAt: number, detail: string): void;
  markEnded(id: number, state: "failed" | "stale", detail: string, now: number): void;
  /** Speaks to the class instead, since this person can't be reached alone. */
  redirectToClass(id: number, mention: string): void;
  /** Lateness of what was said for a run: how many cues were late by more than `ms`. */
  lateOf(runId: number, ms: number): number;
  findByKey(key: string): Owed | undefined;
}

/** While a message is being said it is not ready; should its outcome never come, it is again after this long. */
const SENDING_MS = 60_000;

export function createOutboxStore(db: Db): OutboxStore {
  const insert = db.prepare(
    `insert into outbox (key, class_id, person_id, run_id, priority, due_at, decided_at, useful_until, body, next_at)
     values (@key, @classId, @personId, @runId, @priority, @dueAt, @decidedAt, @usefulUntil, @body, @decidedAt)
     on conflict (key) do nothing`,
  );
  const ready = db.prepare<[number, number]>(
    `select * from outbox where state in ('owed', 'sending') and next_at <= ? order by priority, due_at, id limit ?`,
  );
  const next = db.prepare<[], { next_at: number | null }>(
    "select min(next_at) as next_at from outbox where state in ('owed', 'sending')",
  );
  const sending = db.prepare<[number, number, number]>(
    "update outbox set state = 'sending', tries = tries + 1, first_try_at = coalesce(first_try_at, ?), next_at = ? where id = ?",
  );
  const sent = db.prepare<[string, number, number]>(
    "update outbox set state = 'sent', ref = ?, sent_at = ?, detail = null where id = ?",
  );
  const recover = db.prepare<[number]>("update outbox set next_at = ? where state = 'sending'");
  const withdraw = db.prepare<[number, number]>(
    "update outbox set state = 'stale', detail = 'the run moved on', sent_at = ? where run_id = ? and state = 'owed'",
  );
  const later = db.prepare<[number, string, number]>(
    "update outbox set next_at = ?, detail = ? where id = ?",
  );
  const ended = db.prepare<[string, string, number, number]>(
    "update outbox set state = ?, detail = ?, sent_at = ? where id = ?",
  );
  const redirect = db.prepare<[string, number]>(
    "update outbox set person_id = null, body = json_insert(body, '$.mentions[#]', ?) where id = ?",
  );
  const late = db.prepare<[number, number], { count: number }>(
    `select count(*) as count from outbox where run_id = ? and state in ('sent', 'stale', 'failed')
     and coalesce(sent_at, decided_at) - due_at > ?`,
  );
  const byKey = db.prepare<[string]>("select * from outbox where key = ?");
  return {
    owe: (message) => void insert.run({ ...message, body: JSON.stringify(message.body) }),
    ready: (now, limit) => z.array(rowSchema).parse(ready.all(now, limit)),
    nextReadyAt: () => next.get()?.next_at ?? undefined,
    markSending: (id, now) => void sending.run(now, now + SENDING_MS, id),
    recover: (now) => recover.run(now).changes,
    withdraw: (runId, now) => void withdraw.run(now, runId),
    markSent: (id, ref, now) => void sent.run(ref, now, id),
    markLater: (id, nextAt, detail) => void later.run(nextAt, detail.slice(0, 500), id),
    markEnded: (id, state, detail, now) => void ended.run(state, detail.slice(0, 500), now, id),
    redirectToClass: (id, mention) => void redirect.run(mention, id),
    lateOf: (runId, ms) => late.get(runId, ms)?.count ?? 0,
    findByKey: (key) => rowSchema.optional().parse(byKey.get(key)),
  };
}
