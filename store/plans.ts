import { z } from "zod";
import { anyPlanSchema, type AnyPlan } from "./shapes/tray.ts";
import { json } from "./json.ts";
import type { Db } from "./open.ts";
import { readable, readableOne } from "./readable.ts";

const rowSchema = z
  .object({ number: z.int(), person_id: z.string(), body: json(anyPlanSchema), made_at: z.int() })
  .transform((row) => ({ number: row.number, personId: row.person_id, plan: row.body, madeAt: row.made_at }));
export type StoredPlan = z.output<typeof rowSchema>;

export interface PlanStore {
  add(classId: number, personId: string, plan: AnyPlan, now: number): StoredPlan;
  find(classId: number, number: number): StoredPlan | undefined;
  /** The newest plan this person made. */
  latest(classId: number, personId: string): StoredPlan | undefined;
  /** Of each kind (a film's, prints', a lamp's, a strip's) the newest this person made since then, the newest first. */
  newestOfEach(classId: number, personId: string, sinceMs: number): StoredPlan[];
}

export function createPlanStore(db: Db): PlanStore {
  const insert = db.prepare<[number, number, number, string, string, number]>(
    `insert into plans (class_id, number, person_id, body, made_at)
     values (?, 1 + max(
         (select coalesce(max(number), 0) from plans where class_id = ?),
         (select coalesce(max(number), 0) from erased_numbers where class_id = ? and kind = 'plan')), ?, ?, ?) returning *`,
  );
  const one = db.prepare<[number, number]>("select * from plans where class_id = ? and number = ?");
  const newest = db.prepare<[number, string]>(
    "select * from plans where class_id = ? and person_id = ? order by id desc limit 1",
  );
  // With max() the other columns are those of its row.
  const newestOfEach = db.prepare<[number, string, number]>(
    `select *, max(id) from plans where class_id = ? and person_id = ? and made_at >= ?
     group by body ->> '$.prints' is null, body ->> '$.lamp' is null, body ->> '$.strip' is null order by id desc`,
  );
  return {
    add: (classId, personId, plan, now) =>
      rowSchema.parse(insert.get(classId, classId, classId, personId, JSON.stringify(plan), now)),
    find: (classId, number) => readableOne(rowSchema, one.get(classId, number)),
    latest: (classId, personId) => readableOne(rowSchema, newest.get(classId, personId)),
    newestOfEach: (classId, personId, sinceMs) =>
      readable(rowSchema, newestOfEach.all(classId, personId, sinceMs)),
  };
}
