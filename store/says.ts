import { z } from "zod";
import type { Db } from "./open.ts";
import { sayKeys } from "./shapes/message-key.ts";

/* What a teacher said to many at once. Whom it reached, and when, stands in the outbox under the say's keys. */

const sayRow = z
  .object({ id: z.int(), number: z.int(), audience: z.string(), body: z.string(), said_at: z.int() })
  .transform(({ said_at, ...row }) => ({ ...row, saidAt: said_at }));
export type Say = z.output<typeof sayRow>;

const reachRow = z
  .object({
    person_id: z.string().nullable(),
    state: z.enum(["owed", "sending", "sent", "failed", "stale"]),
    sent_at: z.int().nullable(),
    detail: z.string().nullable(),
    mentions: z.string(),
    by: z.string().nullable(),
    on_page: z.int(),
  })
  .transform(({ person_id, sent_at, mentions, on_page, ...row }) => ({
    ...row,
    personId: person_id,
    sentAt: sent_at,
    mentions: z.array(z.string()).parse(JSON.parse(mentions)),
    /** Said on the room's page, which tells to whom it was shown; of other chats it is known only that they took it. */
    isOnPage: on_page === 1,
  }));
/** What became of it for one person, or for the class (`personId` null). */
export type Reach = z.output<typeof reachRow>;

export interface SayStore {
  add(classId: number, audience: string, body: string, now: number): Say;
  find(classId: number, number: number): Say | undefined;
  newest(classId: number): Say | undefined;
  reached(say: Pick<Say, "id">): Reach[];
  /** Their page showed it to them; the first time counts. */
  markShown(sayId: number, personId: string, now: number): void;
  /** To whom it was shown, and when. */
  shownTo(say: Pick<Say, "id">): ReadonlyMap<string, number>;
}

export function createSayStore(db: Db): SayStore {
  const insert = db.prepare<[number, number, string, string, number]>(
    `insert into says (class_id, number, audience, body, said_at)
     values (?, (select coalesce(max(number), 0) + 1 from says where class_id = ?), ?, ?, ?) returning *`,
  );
  const one = db.prepare<[number, number]>("select * from says where class_id = ? and number = ?");
  const newest = db.prepare<[number]>("select * from says where class_id = ? order by id desc limit 1");
  // Messages of before had no moment in their keys.
  const reached = db.prepare<[string, string]>(
    `select person_id, state, sent_at, detail, body ->> '$.mentions' as mentions, body ->> '$.say.by' as by,
       exists (select 1 from messages
         where messages.key in ('d:' || outbox.due_at || '.' || outbox.key, 'd:' || outbox.key)) as on_page
     from outbox where key >= ? and key < ? order by id`,
  );
  const shown = db.prepare<[number, string, number]>(
    "insert into says_shown (say_id, person_id, shown_at) values (?, ?, ?) on conflict do nothing",
  );
  const shownTo = db.prepare<[number], { person_id: string; shown_at: number }>(
    "select person_id, shown_at from says_shown where say_id = ?",
  );
  return {
    add: (classId, audience, body, now) => sayRow.parse(insert.get(classId, classId, audience, body, now)),
    find: (classId, number) => sayRow.optional().parse(one.get(classId, number)),
    newest: (classId) => sayRow.optional().parse(newest.get(classId)),
    reached({ id }) {
      const { from, until } = sayKeys(id);
      return z.array(reachRow).parse(reached.all(from, until));
    },
    markShown: (sayId, personId, now) => void shown.run(sayId, personId, now),
    shownTo: ({ id }) => new Map(shownTo.all(id).map(({ person_id, shown_at }) => [person_id, shown_at])),
  };
}
