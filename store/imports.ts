import { z } from "zod";
import { json } from "./json.ts";
import type { Db } from "./open.ts";
import { readableOne } from "./readable.ts";
import { type Change, importBodySchema } from "./shapes/import.ts";

const rowSchema = z
  .object({
    id: z.int(),
    number: z.int(),
    at: z.int(),
    body: json(importBodySchema),
    taken_back_at: z.int().nullable(),
  })
  .transform(({ body, taken_back_at, ...row }) => ({ ...row, ...body, takenBackAt: taken_back_at }));
export type StoredImport = z.output<typeof rowSchema>;

/** What came into a class's sheets from outside, import by import, for it to be taken back. */
export interface ImportStore {
  add(classId: number, changes: readonly Change[], personId: string, now: number): StoredImport;
  find(classId: number, number: number): StoredImport | undefined;
  /** The newest that is not taken back. */
  newest(classId: number): StoredImport | undefined;
  markTakenBack(id: number, now: number): void;
}

export function createImportStore(db: Db): ImportStore {
  const insert = db.prepare<[number, number, string, number, string]>(
    `insert into sheet_imports (class_id, number, person_id, at, body)
     values (?, (select coalesce(max(number), 0) + 1 from sheet_imports where class_id = ?), ?, ?, ?) returning *`,
  );
  const one = db.prepare<[number, number]>("select * from sheet_imports where class_id = ? and number = ?");
  const newest = db.prepare<[number]>(
    "select * from sheet_imports where class_id = ? and taken_back_at is null order by number desc limit 1",
  );
  const mark = db.prepare<[number, number]>("update sheet_imports set taken_back_at = ? where id = ?");
  return {
    add: (classId, changes, personId, now) =>
      rowSchema.parse(insert.get(classId, classId, personId, now, JSON.stringify({ changes }))),
    find: (classId, number) => readableOne(rowSchema, one.get(classId, number)),
    newest: (classId) => readableOne(rowSchema, newest.get(classId)),
    markTakenBack: (id, now) => void mark.run(now, id),
  };
}
