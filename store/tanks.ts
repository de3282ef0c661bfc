import { z } from "zod";
import { tankSchema, type Tank } from "./shapes/tank.ts";
import { json } from "./json.ts";
import type { Db } from "./open.ts";
import { readable, readableOne } from "./readable.ts";

const rowSchema = z.object({ body: json(tankSchema) }).transform(({ body }) => body);

export interface TankStore {
  list(classId: number): Tank[];
  find(classId: number, number: number): Tank | undefined;
  /** Adds the tank, or replaces what is known of its number. */
  save(classId: number, tank: Tank): void;
  remove(classId: number, number: number): void;
}

export function createTankStore(db: Db): TankStore {
  const all = db.prepare<[number]>("select body from tanks where class_id = ? order by number");
  const one = db.prepare<[number, number]>("select body from tanks where class_id = ? and number = ?");
  const upsert = db.prepare<[number, number, string]>(
    "insert into tanks (class_id, number, body) values (?, ?, ?) on conflict (class_id, number) do update set body = excluded.body",
  );
  const drop = db.prepare<[number, number]>("delete from tanks where class_id = ? and number = ?");
  return {
    list: (classId) => readable(rowSchema, all.all(classId)),
    find: (classId, number) => readableOne(rowSchema, one.get(classId, number)),
    save: (classId, tank) => void upsert.run(classId, tank.number, JSON.stringify(tankSchema.parse(tank))),
    remove: (classId, number) => void drop.run(classId, number),
  };
}
