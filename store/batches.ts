import { z } from "zod";
import {
  batchBodySchema,
  batchSchema,
  FILM_BATHS,
  isForPaper,
  type Batch,
  type NewBatch,
} from "./shapes/batch.ts";
import { lineBodySchema, type LedgerLine, type LineBody } from "./shapes/ledger.ts";
import { json } from "./json.ts";
import type { Db } from "./open.ts";
import { readable, readableOne } from "./readable.ts";

const batchRow = z
  .object({
    id: z.int(),
    class_id: z.int(),
    number: z.int(),
    kind: z.enum(FILM_BATHS),
    medium: z.enum(["film", "paper"]),
    product: z.string(),
    mixed_at: z.int(),
    body: json(batchBodySchema),
  })
  .transform(({ class_id, mixed_at, body, kind, medium, ...row }) => ({
    ...row,
    kind: medium === "paper" ? `paper-${kind}` : kind,
    ...body,
    classId: class_id,
    mixedAtMs: mixed_at,
  }))
  .pipe(batchSchema);

const lineRow = z
  .object({
    id: z.int(),
    batch_id: z.int(),
    run_id: z.int().nullable(),
    at: z.int(),
    person_id: z.string().nullable(),
    person_name: z.string(),
    about_id: z.string().nullable(),
    about_name: z.string().nullable(),
    body: json(lineBodySchema),
  })
  .transform((row): LedgerLine => ({
    id: row.id,
    batchId: row.batch_id,
    runId: row.run_id,
    atMs: row.at,
    personId: row.person_id,
    personName: row.person_name,
    aboutId: row.about_id,
    aboutName: row.about_name,
    body: row.body,
  }));

export interface NewLedgerLine {
  readonly batchId: number;
  /** A line whose key is there already is not written again; null: always written. */
  readonly key: string | null;
  readonly runId: number | null;
  readonly atMs: number;
  readonly person: { readonly id: string | null; readonly name: string };
  readonly about: { readonly id: string; readonly name: string } | null;
  readonly body: LineBody;
}

export interface BatchStore {
  /** Gives the batch its label, the next of its class. */
  add(batch: NewBatch): Batch;
  get(id: number): Batch | undefined;
  find(classId: number, number: number): Batch | undefined;
  /** All of the class, the newest first. */
  list(classId: number): Batch[];
  /** Those not discarded, in the order of their labels. */
  standing(classId: number): Batch[];
  /** Their ids only: one bad row must not hide the rest. */
  standingIds(classId: number): number[];
  /** The newest of a product. */
  latestOf(classId: number, product: string): Batch | undefined;
  lines(batchId: number): LedgerLine[];
  line(id: number): LedgerLine | undefined;
  hasLine(key: string): boolean;
  /** undefined: a line of this key is there already, and nothing was written. */
  append(line: NewLedgerLine): LedgerLine | undefined;
  /** Lines of one kind of all the class's batches since an instant, in the order they were written. */
  linesSince(classId: number, kind: LineBody["kind"], sinceMs: number): LedgerLine[];
  isMarked(batchId: number, mark: string, arm: number): boolean;
  mark(batchId: number, mark: string, arm: number, now: number): void;
}

export function createBatchStore(db: Db): BatchStore {
  const insert = db.prepare<[number, number, string, string, string, number, string]>(
    `insert into batches (class_id, number, kind, medium, product, mixed_at, body)
     values (?, (select coalesce(max(number), 0) + 1 from batches where class_id = ?), ?, ?, ?, ?, ?) returning *`,
  );
  const byId = db.prepare<[number]>("select * from batches where id = ?");
  const byNumber = db.prepare<[number, number]>("select * from batches where class_id = ? and number = ?");
  const all = db.prepare<[number]>("select * from batches where class_id = ? order by number desc");
  const standing = db.prepare<[number]>(
    `select * from batches where class_id = ? and not exists (
       select 1 from ledger gone where gone.batch_id = batches.id and gone.kind = 'discarded' and gone.body ->> 'isAll'
       and not exists (select 1 from ledger back where back.batch_id = batches.id and back.kind = 'corrected'
         and back.body ->> 'reverses' = gone.id)
     ) order by number`,
  );
  const latest = db.prepare<[number, string]>(
    "select * from batches where class_id = ? and product = ? order by number desc limit 1",
  );
  const lines = db.prepare<[number]>("select * from ledger where batch_id = ? order by id");
  const line = db.prepare<[number]>("select * from ledger where id = ?");
  const keyed = db.prepare<[string]>("select 1 from ledger where key = ?");
  const append = db.prepare(
    `insert into ledger (batch_id, kind, key, run_id, at, person_id, person_name, about_id, about_name, body)
     values (@batchId, @kind, @key, @runId, @atMs, @personId, @personName, @aboutId, @aboutName, @body)
     on conflict (key) do nothing returning *`,
  );
  const since = db.prepare<[number, string, number]>(
    `select ledger.* from ledger join batches on batches.id = ledger.batch_id
     where batches.class_id = ? and ledger.kind = ? and ledger.at >= ? order by ledger.id`,
  );
  const marked = db.prepare<[number, string, number]>(
    "select 1 from batch_marks where batch_id = ? and mark = ? and arm = ?",
  );
  const mark = db.prepare<[number, string, number, number]>(
    "insert into batch_marks (batch_id, mark, arm, at) values (?, ?, ?, ?) on conflict do nothing",
  );
  /** Batches all of whose lines have been read: none is kept that can't be. */
  const whole = new Set<number>();
  /** Without a line of its ledger nobody knows what is left in a bottle: then it is not to be had at all. */
  function isWhole(id: number): boolean {
    if (whole.has(id)) return true;
    const isRead = lines.all(id).every((row) => lineRow.safeParse(row).success);
    if (isRead) whole.add(id);
    return isRead;
  }
  const readWhole = (row: unknown): Batch[] => {
    const batch = readableOne(batchRow, row);
    return batch && isWhole(batch.id) ? [batch] : [];
  };
  const one = (row: unknown): Batch | undefined => readWhole(row)[0];
  return {
    add({ classId, kind, product, mixedAtMs, ...body }) {
      const text = JSON.stringify(batchBodySchema.parse(body));
      const [medium, does] = isForPaper(kind) ? ["paper", kind.slice("paper-".length)] : ["film", kind];
      return batchRow.parse(insert.get(classId, classId, does, medium, product, mixedAtMs, text));
    },
    get: (id) => one(byId.get(id)),
    find: (classId, number) => one(byNumber.get(classId, number)),
    list: (classId) => all.all(classId).flatMap(readWhole),
    standing: (classId) => standing.all(classId).flatMap(readWhole),
    standingIds: (classId) => (standing.all(classId) as { id: number }[]).map(({ id }) => id),
    latestOf: (classId, product) => one(latest.get(classId, product)),
    lines: (batchId) => z.array(lineRow).parse(lines.all(batchId)),
    line: (id) => readableOne(lineRow, line.get(id)),
    hasLine: (key) => keyed.get(key) !== undefined,
    append: ({ body, person, about, ...rest }) =>
      lineRow.optional().parse(
        append.get({
          ...rest,
          kind: body.kind,
          personId: person.id,
          personName: person.name,
          aboutId: about?.id ?? null,
          aboutName: about?.name ?? null,
          body: JSON.stringify(body),
        }),
      ),
    linesSince: (classId, kind, sinceMs) => readable(lineRow, since.all(classId, kind, sinceMs)),
    isMarked: (batchId, name, arm) => marked.get(batchId, name, arm) !== undefined,
    mark: (batchId, name, arm, now) => void mark.run(batchId, name, arm, now),
  };
}
