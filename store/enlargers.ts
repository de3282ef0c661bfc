import { z } from "zod";
import { json } from "./json.ts";
import type { Db } from "./open.ts";
import { readable, readableOne } from "./readable.ts";
import { type Enlarger, enlargerSchema } from "./shapes/enlarger.ts";
import { type Paper, paperSchema } from "./shapes/paper.ts";

/* What a class prints with: enlargers and papers, each by its number. */

export interface Numbered<T> {
  list(classId: number): T[];
  find(classId: number, number: number): T | undefined;
  /** Adds it, or replaces what is known of its number. */
  save(classId: number, one: T): void;
  remove(classId: number, number: number): boolean;
}

export type EnlargerStore = Numbered<Enlarger>;
export type PaperStore = Numbered<Paper>;

function createNumbered<T extends { readonly number: number }>(
  db: Db,
  table: "enlargers" | "papers",
  shape: z.ZodType<T>,
): Numbered<T> {
  const row = z.object({ body: json(shape) }).transform(({ body }) => body);
  const all = db.prepare<[number]>(`select body from ${table} where class_id = ? order by number`);
  const one = db.prepare<[number, number]>(`select body from ${table} where class_id = ? and number = ?`);
  const upsert = db.prepare<[number, number, string]>(
    `insert into ${table} (class_id, number, body) values (?, ?, ?)
     on conflict (class_id, number) do update set body = excluded.body`,
  );
  const drop = db.prepare<[number, number]>(`delete from ${table} where class_id = ? and number = ?`);
  return {
    list: (classId) => readable(row, all.all(classId)) as T[],
    find: (classId, number) => readableOne(row, one.get(classId, number)) as T | undefined,
    save: (classId, each) => void upsert.run(classId, each.number, JSON.stringify(shape.parse(each))),
    remove: (classId, number) => drop.run(classId, number).changes > 0,
  };
}

export const createEnlargerStore = (db: Db): EnlargerStore => createNumbered(db, "enlargers", enlargerSchema);
export const createPaperStore = (db: Db): PaperStore => createNumbered(db, "papers", paperSchema);
