import { z } from "zod";
import { phaseSchema, runSchema, type Run } from "./shapes/run.ts";
import type { Db } from "./open.ts";

/* A run's columns are what SQL must find it by; the rest of it is one JSON body. */

export const runBodySchema = runSchema.omit({
  id: true,
  number: true,
  classId: true,
  personId: true,
  startedAtMs: true,
  phase: true,
});

const columnsSchema = z.object({
  id: z.int(),
  number: z.int(),
  class_id: z.int(),
  person_id: z.string(),
  started_at: z.int(),
  body: z.string(),
  phase: z.string(),
});

function readColumns(row: unknown): Run {
  const { body, phase, class_id, person_id, started_at, id, number } = columnsSchema.parse(row);
  return {
    id,
    number,
    ...runBodySchema.parse(JSON.parse(body)),
    phase: phaseSchema.parse(JSON.parse(phase)),
    classId: class_id,
    personId: person_id,
    startedAtMs: started_at,
  };
}

/** More runs are open at once in no school; where they are, those known longest make room. */
const MOST_KNOWN = 4096;

/**
 * Reads rows as runs, and examines each version of a row once only: it is read again with every call. A version is all of
 * its columns as they stand, so whoever wrote them and whatever was rolled back, what is known is what is there.
 */
function createReader(): (row: unknown) => Run {
  const known = new Map<unknown, { readonly row: unknown; readonly run: Run }>();
  return (row) => {
    const id = (row as { id?: unknown }).id;
    const found = known.get(id);
    if (found && isSameRow(found.row, row)) return found.run;
    // Frozen, since everybody who asks gets this one.
    const run = freeze(readColumns(row));
    known.delete(id);
    known.set(id, { row, run });
    const [oldest] = known.keys();
    if (known.size > MOST_KNOWN) known.delete(oldest);
    return run;
  };
}

function isSameRow(one: unknown, other: unknown): boolean {
  const [a, b] = [one, other] as Readonly<Record<string, unknown>>[];
  for (const column in b) if (a?.[column] !== b[column]) return false;
  return true;
}

function freeze<T>(value: T): T {
  if (typeof value !== "object" || value === null) return value;
  for (const each of Object.values(value)) freeze(each);
  return Object.freeze(value);
}

export interface RunStore {
  add(run: Omit<Run, "id" | "number">): Run;
  save(run: Run): void;
  /** @throws where the row can't be read: whoever asks by id must not take it for gone. All others leave it out. */
  get(id: number): Run | undefined;
  find(classId: number, number: number): Run | undefined;
  /** Runs that are not over, oldest first; of one person, or of the whole class. */
  open(classId: number, personId?: string): Run[];
  latest(classId: number, personId: string): Run | undefined;
  remove(id: number): void;
}

export function createRunStore(db: Db): RunStore {
  const insert = db.prepare<[number, number, number, string, string, string, number]>(
    `insert into runs (class_id, number, person_id, body, phase, started_at)
     values (?, 1 + max(
         (select coalesce(max(number), 0) from runs where class_id = ?),
         (select coalesce(max(number), 0) from erased_numbers where class_id = ? and kind = 'run')), ?, ?, ?, ?) returning *`,
  );
  const update = db.prepare<[string, string, number]>("update runs set body = ?, phase = ? where id = ?");
  const byId = db.prepare<[number]>("select * from runs where id = ?");
  const byNumber = db.prepare<[number, number]>("select * from runs where class_id = ? and number = ?");
  const openOfClass = db.prepare<[number]>(
    "select * from runs where class_id = ? and phase_kind in ('waiting', 'running') order by id",
  );
  const openOfPerson = db.prepare<[number, string]>(
    "select * from runs where class_id = ? and person_id = ? and phase_kind in ('waiting', 'running') order by id",
  );
  const newest = db.prepare<[number, string]>(
    "select * from runs where class_id = ? and person_id = ? order by id desc limit 1",
  );
  const drop = db.prepare<[number]>("delete from runs where id = ?");

  const bodyOf = (run: Omit<Run, "id" | "number">): string => JSON.stringify(runBodySchema.parse(run));
  const readRow = createReader();
  const readIfWhole = (row: unknown): Run[] => {
    try {
      return row === undefined ? [] : [readRow(row)];
    } catch {
      return [];
    }
  };
  return {
    add: (run) =>
      readRow(
        insert.get(
          run.classId,
          run.classId,
          run.classId,
          run.personId,
          bodyOf(run),
          JSON.stringify(run.phase),
          run.startedAtMs,
        ),
      ),
    save: (run) => void update.run(bodyOf(run), JSON.stringify(run.phase), run.id),
    get(id) {
      const row = byId.get(id);
      return row === undefined ? undefined : readRow(row);
    },
    find: (classId, number) => readIfWhole(byNumber.get(classId, number))[0],
    open: (classId, personId) =>
      (personId === undefined ? openOfClass.all(classId) : openOfPerson.all(classId, personId)).flatMap(
        readIfWhole,
      ),
    latest: (classId, personId) => readIfWhole(newest.get(classId, personId))[0],
    remove: (id) => void drop.run(id),
  };
}
