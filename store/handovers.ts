import { z } from "zod";
import { type Collected, collectedSchema } from "./shapes/shelf.ts";
import { json } from "./json.ts";
import type { Db } from "./open.ts";
import { readable } from "./readable.ts";

export const handoverBodySchema = collectedSchema
  .omit({ ml: true })
  .extend({ to: z.string(), note: z.string() });
const rowSchema = z
  .object({ id: z.int(), at: z.int(), person_name: z.string(), ml: z.int(), body: json(handoverBodySchema) })
  .transform(({ at, person_name, body, ...row }) => ({ ...row, ...body, atMs: at, personName: person_name }));
export type Handover = z.output<typeof rowSchema>;

export interface HandoverStore {
  add(
    classId: number,
    handed: Collected & { readonly to: string; readonly note: string },
    person: { readonly id: string; readonly name: string },
    atMs: number,
  ): void;
  /** Oldest first. */
  list(classId: number): Handover[];
}

export function createHandoverStore(db: Db): HandoverStore {
  const insert = db.prepare<[number, number, string, string, number, string]>(
    "insert into handovers (class_id, at, person_id, person_name, ml, body) values (?, ?, ?, ?, ?, ?)",
  );
  const all = db.prepare<[number]>("select * from handovers where class_id = ? order by at, id");
  return {
    add: (classId, { ml, ...body }, person, atMs) =>
      void insert.run(
        classId,
        atMs,
        person.id,
        person.name,
        ml,
        JSON.stringify(handoverBodySchema.parse(body)),
      ),
    list: (classId) => readable(rowSchema, all.all(classId)),
  };
}
