import { z } from "zod";
import { makeDilution, type Sheet, sheetSchema } from "./shapes/sheet.ts";
import { json } from "./json.ts";
import type { Db } from "./open.ts";
import { readable } from "./readable.ts";

const rowSchema = z
  .object({ id: z.int(), class_id: z.int(), body: json(sheetSchema) })
  .transform(({ id, class_id, body }) => ({ id, classId: class_id, sheet: body }));
export type StoredSheet = z.output<typeof rowSchema>;

export interface SheetStore {
  list(classId: number): StoredSheet[];
  /** By names, any case; without a dilution every sheet of the pair. */
  find(classId: number, film: string, developer: string, dilution?: string): StoredSheet[];
  /** Adds the sheet, or replaces the one of the same film, developer and dilution. */
  save(classId: number, sheet: Sheet, personId: string | null, now: number): StoredSheet;
  remove(classId: number, id: number): void;
}

export function createSheetStore(db: Db): SheetStore {
  const all = db.prepare<[number]>(
    "select * from sheets where class_id = ? order by film, developer, dilution",
  );
  const byNames = db.prepare<[number, string, string]>(
    "select * from sheets where class_id = ? and film = ? and developer = ? order by dilution",
  );
  const upsert = db.prepare<[number, string, string, string, string, string | null, number]>(
    `insert into sheets (class_id, film, developer, dilution, body, added_by, added_at) values (?, ?, ?, ?, ?, ?, ?)
     on conflict (class_id, film, developer, dilution) do update
     set body = excluded.body, added_by = excluded.added_by, added_at = excluded.added_at
     returning *`,
  );
  const drop = db.prepare<[number, number]>("delete from sheets where class_id = ? and id = ?");
  return {
    list: (classId) => readable(rowSchema, all.all(classId)),
    find(classId, film, developer, dilution) {
      const found = readable(rowSchema, byNames.all(classId, film, developer));
      return dilution === undefined
        ? found
        : found.filter(({ sheet }) => makeDilution(sheet.dilution) === dilution);
    },
    save(classId, sheet, personId, now) {
      const dilution = makeDilution(sheet.dilution);
      return rowSchema.parse(
        upsert.get(classId, sheet.film, sheet.developer, dilution, JSON.stringify(sheet), personId, now),
      );
    },
    remove: (classId, id) => void drop.run(classId, id),
  };
}
