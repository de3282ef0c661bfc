import { createHash } from "node:crypto";
import { z } from "zod";
import type { Db } from "./open.ts";

/* What is to be erased, and what was: without a name. */

const rowSchema = z
  .object({
    id: z.int(),
    kind: z.enum(["person", "class"]),
    class_id: z.int().nullable(),
    asked_at: z.int(),
    due_at: z.int(),
  })
  .transform((row) => ({
    id: row.id,
    kind: row.kind,
    classId: row.class_id,
    askedAt: row.asked_at,
    dueAt: row.due_at,
  }));
export type Erasure = z.output<typeof rowSchema>;

export interface ErasedPerson {
  readonly classKey: string;
  readonly personId: string;
}

function hashOf({ classKey, personId }: ErasedPerson): string {
  return createHash("sha256").update(`${classKey} ${personId}`).digest("hex");
}

export interface ErasureStore {
  /** A class is taken out at `dueAt`; until then it can be kept after all. */
  planClass(classId: number, now: number, dueAt: number): void;
  plannedOf(classId: number): Erasure | undefined;
  spareClass(classId: number): boolean;
  /** Classes whose time has come. */
  due(now: number): Erasure[];
  markDone(id: number, now: number): void;
  /** A person was taken out just now: the file is still to be swept, and no backup may bring them back unasked. */
  addPerson(person: ErasedPerson, now: number): void;
  /** Hashes of those who were taken out, and have not come in anew since. */
  people(): string[];
  /** Of these hashes, the people who are members here. */
  membersAmong(hashes: readonly string[]): { classId: number; personId: string }[];
  /** Remembers those of another store as well. */
  remember(hashes: readonly string[]): void;
  /** Since when something erased waits for the file to be swept; undefined: nothing does. */
  unsweptSince(): number | undefined;
  markSwept(now: number): void;
}

export function createErasureStore(db: Db): ErasureStore {
  const insert = db.prepare<[string, number | null, number, number, number | null]>(
    "insert into erasures (kind, class_id, asked_at, due_at, done_at) values (?, ?, ?, ?, ?)",
  );
  const planned = db.prepare<[number]>(
    "select * from erasures where kind = 'class' and class_id = ? and done_at is null",
  );
  const spare = db.prepare<[number]>(
    "delete from erasures where kind = 'class' and class_id = ? and done_at is null",
  );
  const due = db.prepare<[number]>(
    "select * from erasures where kind = 'class' and done_at is null and due_at <= ? order by due_at",
  );
  const done = db.prepare<[number, number]>("update erasures set done_at = ? where id = ?");
  const unswept = db.prepare<[], { since: number | null }>(
    "select min(done_at) as since from erasures where done_at is not null and swept_at is null",
  );
  const swept = db.prepare<[number, number]>(
    "update erasures set swept_at = ? where done_at <= ? and swept_at is null",
  );
  const addHash = db.prepare<[string]>("insert into erased_people (hash) values (?) on conflict do nothing");
  const hashes = db.prepare<[], { hash: string }>("select hash from erased_people order by hash");
  const members = db.prepare<[], ErasedPerson & { classId: number }>(
    `select classes.key as classKey, person_id as personId, class_id as classId
     from members join classes on classes.id = members.class_id`,
  );
  return {
    planClass: (classId, now, dueAt) => void insert.run("class", classId, now, dueAt, null),
    plannedOf: (classId) => rowSchema.optional().parse(planned.get(classId)),
    spareClass: (classId) => spare.run(classId).changes > 0,
    due: (now) => z.array(rowSchema).parse(due.all(now)),
    markDone: (id, now) => void done.run(now, id),
    addPerson(person, now) {
      insert.run("person", null, now, now, now);
      addHash.run(hashOf(person));
    },
    people() {
      const all = hashes.all().map(({ hash }) => hash);
      if (all.length === 0) return [];
      const here = new Set(members.all().map(hashOf));
      return all.filter((hash) => !here.has(hash));
    },
    membersAmong(given) {
      const wanted = new Set(given);
      return members
        .all()
        .filter((member) => wanted.has(hashOf(member)))
        .map(({ classId, personId }) => ({ classId, personId }));
    },
    remember(given) {
      for (const hash of given) addHash.run(hash);
    },
    unsweptSince: () => unswept.get()?.since ?? undefined,
    markSwept: (now) => void swept.run(now, now),
  };
}
