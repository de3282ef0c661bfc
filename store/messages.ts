import { z } from "zod";
import { json } from "./json.ts";
import { isOfClass, NEWEST_FIRST, OLDEST_FIRST } from "./messages-of-class.ts";
import type { Db } from "./open.ts";
import type { Reach } from "./shapes/reach.ts";

/** One entry of the room's feed. `body` is whatever the room shows; the store keeps it as it is. */
export interface Message {
  readonly id: number;
  readonly classId: number;
  /** null: everyone in the class sees it. */
  readonly personId: string | null;
  readonly authorId: string | null;
  readonly at: number;
  readonly body: unknown;
}

const rowSchema = z
  .object({
    id: z.int(),
    class_id: z.int(),
    person_id: z.string().nullable(),
    author_id: z.string().nullable(),
    at: z.int(),
    body: json(z.unknown()),
  })
  .transform((row): Message => ({
    id: row.id,
    classId: row.class_id,
    personId: row.person_id,
    authorId: row.author_id,
    at: row.at,
    body: row.body,
  }));

export interface MessageStore {
  /** Undefined where there is no such class. */
  reach(classKey: string, personId: string | null): Reach | undefined;
  /** `fresh` is false where a message of this key was there already: it is not said again. */
  add(message: Omit<Message, "id"> & { readonly key: string | null }): { id: number; fresh: boolean };
  /** What this person may see after `lastId`, oldest first. */
  after(classId: number, personId: string, lastId: number, limit: number): Message[];
  /** The newest of what this person may see, oldest first; of what came before an entry where its number is given. */
  newest(classId: number, personId: string, limit: number, before?: number): Message[];
}

interface Asked {
  readonly classId: number;
  readonly personId: string;
  readonly limit: number;
}

export function createMessageStore(db: Db): MessageStore {
  const ofPerson = "where class_id = classes.id and person_id = @personId";
  const reach = db.prepare<[{ classKey: string; personId: string | null }], Reach>(
    `select id as "classId", exists (select 1 from members ${ofPerson}) as "isMember",
       exists (select 1 from push_subscriptions ${ofPerson}) as "hasPhone" from classes where key = @classKey`,
  );
  const insert = db.prepare<[number, string | null, string | null, string | null, number, string]>(
    `insert into messages (class_id, person_id, author_id, key, at, body) values (?, ?, ?, ?, ?, ?)
     on conflict (key) do nothing`,
  );
  const byKey = db.prepare<[string | null], { id: number }>("select id from messages where key = ?");
  const isShown = "(person_id is null or person_id = @personId)";
  const after = db.prepare<[Asked & { lastId: number }]>(
    `select * from messages where ${isOfClass("@classId", "@lastId")} and id > @lastId and ${isShown}
     order by ${OLDEST_FIRST} limit 0 + @limit`,
  );
  const newest = db.prepare<[Asked & { before: number }]>(
    `select * from (select * from messages where ${isOfClass("@classId", "0", "@before")} and id < @before and ${isShown}
     order by ${NEWEST_FIRST} limit 0 + @limit) order by id`,
  );
  return {
    reach: (classKey, personId) => reach.get({ classKey, personId }),
    add({ classId, personId, authorId, key, at, body }) {
      const row = [classId, personId, authorId, key, at, JSON.stringify(body)] as const;
      const { changes, lastInsertRowid } = insert.run(...row);
      const fresh = changes > 0;
      return { id: fresh ? Number(lastInsertRowid) : (byKey.get(key)?.id ?? 0), fresh };
    },
    after: (classId, personId, lastId, limit) =>
      z.array(rowSchema).parse(after.all({ classId, personId, limit, lastId })),
    newest: (classId, personId, limit, before = Number.MAX_SAFE_INTEGER) =>
      z.array(rowSchema).parse(newest.all({ classId, personId, limit, before })),
  };
}
