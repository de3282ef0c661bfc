import { z } from "zod";
import { packSchema, type Pack, type Shelved } from "./shapes/shelf.ts";
import { json } from "./json.ts";
import type { Db } from "./open.ts";
import { readable, readableOne } from "./readable.ts";

const rowSchema = z
  .object({ product: z.string(), body: json(packSchema), left_ml: z.int() })
  .transform(({ product, body, left_ml }): Shelved => ({ product, pack: body, leftMl: left_ml }));

export interface ShelfStore {
  /** Every product that was ever put there, with what is left; by name. */
  list(classId: number): Shelved[];
  find(classId: number, product: string): Shelved | undefined;
  /** Lines are only added; the newest says what a pack is. */
  change(
    classId: number,
    product: string,
    pack: Pack,
    changeMl: number,
    person: { readonly id: string; readonly name: string },
    now: number,
  ): void;
}

export function createShelfStore(db: Db): ShelfStore {
  const columns = `product, sum(change_ml) as left_ml,
    (select body from shelf newest where newest.class_id = shelf.class_id and newest.product = shelf.product
     order by id desc limit 1) as body`;
  const all = db.prepare<[number]>(
    `select ${columns} from shelf where class_id = ? group by product order by product`,
  );
  const one = db.prepare<[number, string]>(
    `select ${columns} from shelf where class_id = ? and product = ? group by product`,
  );
  const insert = db.prepare<[number, string, number, string, string, number, string]>(
    "insert into shelf (class_id, product, at, person_id, person_name, change_ml, body) values (?, ?, ?, ?, ?, ?, ?)",
  );
  return {
    list: (classId) => readable(rowSchema, all.all(classId)),
    find: (classId, product) => readableOne(rowSchema, one.get(classId, product)),
    change: (classId, product, pack, changeMl, person, now) =>
      void insert.run(
        classId,
        product,
        now,
        person.id,
        person.name,
        changeMl,
        JSON.stringify(packSchema.parse(pack)),
      ),
  };
}
