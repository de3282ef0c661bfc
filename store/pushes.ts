import { z } from "zod";
import { json } from "./json.ts";
import type { Db } from "./open.ts";
import { type PushBody, pushBodySchema } from "./shapes/push.ts";

/* Phones that are called while their page is closed, and the calls that are still to reach them. */

const keysSchema = z.object({ publicKey: z.string(), privateKey: z.string() });
/** The process's own pair, by which push services know it (VAPID, RFC 8292). */
export type PushKeys = z.output<typeof keysSchema>;

export interface Subscription {
  readonly classId: number;
  readonly personId: string;
  /** Of the device's session: signed out, it is called no more. */
  readonly tokenHash: string;
  readonly endpoint: string;
  readonly p256dh: string;
  readonly auth: string;
}

const owedSchema = z
  .object({
    id: z.int(),
    subscription_id: z.int(),
    endpoint: z.string(),
    p256dh: z.string(),
    auth: z.string(),
    topic: z.string(),
    body: json(pushBodySchema),
    useful_until: z.int(),
    tries: z.int(),
  })
  .transform(({ subscription_id: subscriptionId, useful_until: usefulUntil, ...row }) => ({
    ...row,
    subscriptionId,
    usefulUntil,
  }));
export type OwedPush = z.output<typeof owedSchema>;

/** A person has a phone, perhaps a tablet, and the one before. */
export const MOST_OF_A_PERSON = 4;

export interface PushStore {
  keys(): PushKeys | undefined;
  saveKeys(keys: PushKeys): void;
  /**
   * A device has one: a newer takes over what is still to reach it. The oldest of a person's makes room where there are too
   * many.
   */
  subscribe(subscription: Subscription, now: number): void;
  /** Of this device. */
  unsubscribe(tokenHash: string): void;
  isSubscribed(tokenHash: string): boolean;
  /** Its push service knows it no more. */
  forget(id: number): void;
  forgetClass(classId: number): void;
  /**
   * Owes a call to each device of a person that asked for it; part of the transaction that says it. An older one of the same
   * topic that has not left is of no use any more.
   */
  owe(classId: number, personId: string, body: PushBody, usefulUntil: number, now: number): void;
  /** What may be tried by `now`, oldest first. */
  ready(now: number, limit: number): OwedPush[];
  nextAt(): number | undefined;
  /** A push service has it, or it helps nobody any more. */
  settle(id: number): void;
  later(id: number, nextAt: number): void;
  dropStale(now: number): number;
}

export function createPushStore(db: Db): PushStore {
  const readKeys = db.prepare<[], { value: string }>("select value from settings where name = 'push keys'");
  const writeKeys = db.prepare<[string]>(
    "insert into settings (name, value) values ('push keys', ?) on conflict (name) do nothing",
  );
  const dropOfOthers = db.prepare<[string, string]>(
    "delete from push_subscriptions where endpoint = ? and token_hash <> ?",
  );
  const insert = db.prepare<[Subscription & { readonly now: number }], { id: number }>(
    `insert into push_subscriptions (class_id, person_id, token_hash, endpoint, p256dh, auth, created_at)
     values (@classId, @personId, @tokenHash, @endpoint, @p256dh, @auth, @now)
     on conflict (endpoint) do update set p256dh = excluded.p256dh, auth = excluded.auth returning id`,
  );
  const takeOver = db.prepare<{ id: number; tokenHash: string }>(
    `update push_owed set subscription_id = @id
     where subscription_id in (select id from push_subscriptions where token_hash = @tokenHash and id <> @id)`,
  );
  const dropEarlier = db.prepare<{ id: number; tokenHash: string }>(
    "delete from push_subscriptions where token_hash = @tokenHash and id <> @id",
  );
  const trim = db.prepare<[number, string, number]>(
    `delete from push_subscriptions where id in (select id from push_subscriptions
     where class_id = ? and person_id = ? order by id desc limit -1 offset ?)`,
  );
  const dropToken = db.prepare<[string]>("delete from push_subscriptions where token_hash = ?");
  const hasToken = db.prepare<[string]>("select 1 from push_subscriptions where token_hash = ?");
  const dropId = db.prepare<[number]>("delete from push_subscriptions where id = ?");
  const dropClass = db.prepare<[number]>("delete from push_subscriptions where class_id = ?");
  const overtake = db.prepare(
    `delete from push_owed where topic = @topic and subscription_id in
       (select id from push_subscriptions where class_id = @classId and person_id = @personId)`,
  );
  const owe = db.prepare(
    `insert into push_owed (subscription_id, key, topic, body, due_at, useful_until, next_at)
     select id, @key, @topic, @body, @dueAt, @usefulUntil, @now from push_subscriptions
     where class_id = @classId and person_id = @personId
     on conflict (subscription_id, key) do nothing`,
  );
  const ready = db.prepare<[number, number]>(
    `select push_owed.id, subscription_id, endpoint, p256dh, auth, topic, body, useful_until, tries
     from push_owed join push_subscriptions on push_subscriptions.id = subscription_id
     where next_at <= ? order by due_at, push_owed.id limit ?`,
  );
  const next = db.prepare<[], { at: number | null }>("select min(next_at) as at from push_owed");
  const drop = db.prepare<[number]>("delete from push_owed where id = ?");
  const later = db.prepare<[number, number]>(
    "update push_owed set next_at = ?, tries = tries + 1 where id = ?",
  );
  const stale = db.prepare<[number]>("delete from push_owed where useful_until <= ?");
  return {
    keys() {
      const row = readKeys.get();
      return row && keysSchema.parse(JSON.parse(row.value));
    },
    saveKeys: (keys) => void writeKeys.run(JSON.stringify(keys)),
    subscribe(subscription, now) {
      const { tokenHash } = subscription;
      dropOfOthers.run(subscription.endpoint, tokenHash);
      const kept = insert.get({ ...subscription, now });
      if (!kept) throw new Error("a subscription was not kept");
      takeOver.run({ id: kept.id, tokenHash });
      dropEarlier.run({ id: kept.id, tokenHash });
      trim.run(subscription.classId, subscription.personId, MOST_OF_A_PERSON);
    },
    unsubscribe: (tokenHash) => void dropToken.run(tokenHash),
    isSubscribed: (tokenHash) => hasToken.get(tokenHash) !== undefined,
    forget: (id) => void dropId.run(id),
    forgetClass: (classId) => void dropClass.run(classId),
    owe(classId, personId, body, usefulUntil, now) {
      const { key, tag: topic, dueAt } = body;
      overtake.run({ topic, classId, personId });
      owe.run({ classId, personId, key, topic, body: JSON.stringify(body), dueAt, usefulUntil, now });
    },
    ready: (now, limit) => z.array(owedSchema).parse(ready.all(now, limit)),
    nextAt: () => next.get()?.at ?? undefined,
    settle: (id) => void drop.run(id),
    later: (id, nextAt) => void later.run(Math.round(nextAt), id),
    dropStale: (now) => stale.run(now).changes,
  };
}
