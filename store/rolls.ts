import { z } from "zod";
import { createWalk, createWays } from "./rolls-ways.ts";
import {
  type MarkedFrame,
  type NewRoll,
  OUTCOMES,
  type Roll,
  rollBodySchema,
  type RollFilter,
  type RollSum,
  rollSumBodySchema,
} from "./shapes/roll.ts";
import type { LogSlice } from "./shapes/log-file.ts";
import { json } from "./json.ts";
import type { Db } from "./open.ts";
import { bodyRead, readable, readableOne } from "./readable.ts";

export const rollRowSchema = z
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

const totalsSchema = z.object({
  counted: z.int(),
  stopped: z.int(),
  late: z.int(),
  faulty: z.int(),
  rated: z.int(),
  ratingSum: z.int(),
});
/** Of the newest matches, at most a thousand: `counted` says how many. */
export type RollTotals = z.output<typeof totalsSchema>;

/** Counting stops here: an answer must not wait for it. */
const MOST_COUNTED = 1000;

export interface RollStore {
  add(roll: NewRoll): Roll;
  find(classId: number, number: number): Roll | undefined;
  ofRun(runId: number): Roll[];
  /** The newest first. Of very many, `total` counts only so far and `isCapped` says so. */
  search(classId: number, filter: RollFilter, limit: number, offset: number): FoundRolls;
  /** What those that ended within a time come to, at most so many; the newest first. */
  sums(classId: number, fromMs: number, untilMs: number, limit: number): RollSum[];
  /** Whether the log holds any. */
  hasAny(classId: number): boolean;
  /** How many there are; of very many, `most`. */
  count(classId: number, filter: RollFilter, most: number): number;
  /** The newest roll's; 0 where there is none. */
  lastNumber(classId: number): number;
  /** For a walk through all that the log holds, from the newest on; each slice is as soon read, however far it has come. */
  slice(classId: number, filter: RollFilter, below: number, limit: number): LogSlice<Roll>;
  note(id: number, note: string): void;
  rate(id: number, rating: number): void;
  /** What was seen on the negatives, and the cause it was put down to. */
  blame(id: number, fault: string, cause: string | null): void;
  /** What was found on its frames, in place of all before. */
  markFrames(id: number, marks: readonly MarkedFrame[]): void;
  /** Those with a mark on a frame, the newest first. */
  marked(classId: number, limit: number): Roll[];
  /** Values the log holds, the most used first. */
  values(classId: number, kind: ValueKind, limit: number): { value: string; uses: number }[];
}

export interface FoundRolls {
  readonly rolls: Roll[];
  readonly total: number;
  readonly isCapped: boolean;
  readonly totals: RollTotals;
}

export type ValueKind = "film" | "developer" | "person" | "fault";

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
  const blame = db.prepare<[string, string | null, number]>(
    "update rolls set fault = ?, body = json_set(body, '$.cause', ?) where id = ?",
  );
  const markFrames = db.prepare<[string, number]>(
    "update rolls set body = json_set(body, '$.frameMarks', json(?)) where id = ?",
  );
  const marked = db.prepare<[number, number]>(
    `select * from rolls where class_id = ? and json_array_length(body, '$.frameMarks') > 0 order by id desc limit ?`,
  );
  const values = db.prepare<[number, string, number], { value: string; uses: number }>(
    "select value, uses from roll_values where class_id = ? and kind = ? order by uses desc, value limit ?",
  );
  const byIds = db.prepare<[string]>(
    "select * from rolls where id in (select value from json_each(?)) order by id desc",
  );
  const totals = db.prepare<[string]>(
    `select count(*) as counted, coalesce(sum(outcome = 'stopped'), 0) as stopped,
       coalesce(sum(late_cues > 0), 0) as late, coalesce(sum(fault <> ''), 0) as faulty,
       count(rating) as rated, coalesce(sum(rating), 0) as ratingSum
     from rolls indexed by rolls_facts where id in (select value from json_each(?))`,
  );
  const sums = db.prepare<[number, number, number, number], Omit<RollSum, "body"> & { body: string }>(
    `select number, person_name as "personName", film, developer, dilution, outcome, ended_at as "endedAt",
       late_cues as "lateCues", rating, fault, ${SUM_BODY} as body
     from rolls where class_id = ? and ended_at >= ? and ended_at < ? order by ended_at desc, id desc limit ?`,
  );
  const any = db.prepare<[number]>("select 1 from rolls where class_id = ? limit 1");
  const ways = createWays(db);
  const walk = createWalk(db, ways);
  const last = db.prepare<[number], { number: number }>(
    "select coalesce(max(number), 0) as number from rolls where class_id = ?",
  );

  return {
    add: (roll) => rollRowSchema.parse(insert.get({ ...roll, body: JSON.stringify(roll.body) })),
    find: (classId, number) => readableOne(rollRowSchema, one.get(classId, number)),
    ofRun: (runId) => readable(rollRowSchema, ofRun.all(runId)),
    search(classId, filter, limit, offset) {
      const asked = ways.ask(classId, filter);
      const way = ways.of(filter);
      // One pass over the index: the page and the totals come from the numbers it gave.
      const ids = way.ids.all({ ...asked, limit: MOST_COUNTED + 1, offset: 0 }).map(({ id }) => id);
      const shown =
        offset + limit <= ids.length || ids.length <= MOST_COUNTED
          ? ids.slice(offset, offset + limit)
          : way.ids.all({ ...asked, limit, offset }).map(({ id }) => id);
      const counted = ids.slice(0, MOST_COUNTED);
      return {
        rolls: readable(rollRowSchema, byIds.all(JSON.stringify(shown))),
        total: counted.length,
        isCapped: ids.length > MOST_COUNTED,
        totals: totalsSchema.parse(totals.get(JSON.stringify(counted))),
      };
    },
    sums: (classId, fromMs, untilMs, limit) =>
      sums.all(classId, fromMs, untilMs, limit).flatMap(bodyRead(rollSumBodySchema)),
    count: (classId, filter, most) =>
      ways.of(filter).count.get({ ...ways.ask(classId, filter), limit: most })?.total ?? 0,
    lastNumber: (classId) => last.get(classId)?.number ?? 0,
    slice(classId, filter, below, limit) {
      const { rows, next } = walk(classId, filter, below, limit);
      return { list: rows.flatMap(bodyRead(rollBodySchema)), next };
    },
    hasAny: (classId) => any.get(classId) !== undefined,
    note: (id, text) => void note.run(text, id),
    rate: (id, rating) => void rate.run(rating, id),
    blame: (id, fault, cause) => void blame.run(fault, cause, id),
    markFrames: (id, marks) => void markFrames.run(JSON.stringify(marks), id),
    marked: (classId, limit) => readable(rollRowSchema, marked.all(classId, limit)),
    values: (classId, kind, limit) => values.all(classId, kind, limit),
  };
}

/** The steps are most of a body: they stay where they are. */
const SUM_BODY = `json_object(${Object.keys(rollSumBodySchema.shape)
  .map((name) => `'${name}', body -> '$.${name}'`)
  .join(", ")})`;
