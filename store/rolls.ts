import { z } from "zod";
import type { RollFilter } from "../commands/roll/query.ts";
import { OUTCOMES, rollBodySchema, type NewRoll, type Roll } from "../commands/roll/roll.ts";
import { json } from "./json.ts";
import type { Db } from "./open.ts";

const rowSchema = z
  .object({
    id: z.int(),
    class_id: z.int(),
    number: z.int(),
    run_id: z.int().nullable(),
    person_id: z.string().nullable(),
    person_name: z.string(),
    film: z.string(),
    developer: z.string(),
    dilution: z.string(),
    tank: z.int().nullable(),
    batches: z.string(),
    outcome: z.enum(OUTCOMES),
    ended_at: z.int(),
    late_cues: z.int(),
    rating: z.int().nullable(),
    fault: z.string(),
    note: z.string(),
    body: json(rollBodySchema),
  })
  .transform(({ class_id, run_id, person_id, person_name, ended_at, late_cues, ...row }): Roll => ({
    ...row,
    classId: class_id,
    runId: run_id,
    personId: person_id,
    personName: person_name,
    endedAt: ended_at,
    lateCues: late_cues,
  }));

export interface RollStore {
  add(roll: NewRoll): Roll;
  find(classId: number, number: number): Roll | undefined;
  ofRun(runId: number): Roll[];
  search(
    classId: number,
    filter: RollFilter,
    limit: number,
    offset: number,
  ): { rolls: Roll[]; total: number };
  note(id: number, note: string): void;
  rate(id: number, rating: number): void;
  /** Distinct values of a column that begin with what was typed, the most used first. */
  values(
    classId: number,
    column: "film" | "developer" | "person_name",
    typed: string,
    limit: number,
  ): string[];
}

export function createRollStore(db: Db): RollStore {
  const insert = db.prepare(
    `insert into rolls (class_id, number, run_id, person_id, person_name, film, developer, dilution, tank, batches, outcome,
       ended_at, late_cues, body)
     values (@classId, (select coalesce(max(number), 0) + 1 from rolls where class_id = @classId), @runId, @personId,
       @personName, @film, @developer, @dilution, @tank, @batches, @outcome, @endedAt, @lateCues, @body) returning *`,
  );
  const one = db.prepare<[number, number]>("select * from rolls where class_id = ? and number = ?");
  const ofRun = db.prepare<[number]>("select * from rolls where run_id = ? order by number");
  const note = db.prepare<[string, number]>("update rolls set note = ? where id = ?");
  const rate = db.prepare<[number, number]>("update rolls set rating = ? where id = ?");
  return {
    add: (roll) => rowSchema.parse(insert.get({ ...roll, body: JSON.stringify(roll.body) })),
    find: (classId, number) => rowSchema.optional().parse(one.get(classId, number)),
    ofRun: (runId) => z.array(rowSchema).parse(ofRun.all(runId)),
    search(classId, filter, limit, offset) {
      const { where, values } = toSql(classId, filter);
      const rows = db.prepare(
        `select * from rolls where ${where} order by ended_at desc, id desc limit ? offset ?`,
      );
      const count = db.prepare<unknown[], { total: number }>(
        `select count(*) as total from rolls where ${where}`,
      );
      return {
        rolls: z.array(rowSchema).parse(rows.all(...values, limit, offset)),
        total: count.get(...values)?.total ?? 0,
      };
    },
    note: (id, text) => void note.run(text, id),
    rate: (id, rating) => void rate.run(rating, id),
    values(classId, column, typed, limit) {
      const rows = db.prepare<[number, string, number], { value: string }>(
        `select ${column} as value from rolls where class_id = ? and ${column} like ? escape '\\' group by ${column} order by count(*) desc limit ?`,
      );
      return rows.all(classId, `${typed.replace(/[\\%_]/g, "\\$&")}%`, limit).map(({ value }) => value);
    },
  };
}

/** The only place where a filter becomes SQL. Each word is quoted for the index, so none of it is syntax. */
function toSql(classId: number, filter: RollFilter): { where: string; values: unknown[] } {
  const parts = ["class_id = ?"];
  const values: unknown[] = [classId];
  const narrow = (sql: string, value: unknown): void => {
    if (value === null) return;
    parts.push(sql);
    values.push(value);
  };
  if (filter.words.length > 0) {
    const match = filter.words.map((word) => `"${word.replaceAll('"', '""')}"*`).join(" ");
    narrow("id in (select rowid from rolls_text where rolls_text match ?)", match);
  }
  narrow("person_id = ?", filter.personId);
  narrow("film = ? collate nocase", filter.film);
  narrow("developer = ? collate nocase", filter.developer);
  narrow("' ' || batches || ' ' like '% ' || ? || ' %'", filter.batch);
  narrow("tank = ?", filter.tank);
  narrow("rating = ?", filter.rating);
  narrow("outcome = ?", filter.outcome);
  return { where: parts.join(" and "), values };
}
