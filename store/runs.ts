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

/** Columns of a strict table hold what was written; they are not examined with every call. A body is. */
const COLUMNS = `id, number, class_id as "classId", person_id as "personId", started_at as "startedAtMs", body, phase`;

/** What is read of a run's row. */
export interface RunRow extends Pick<Run, "id" | "number" | "classId" | "personId" | "startedAtMs"> {
  readonly body: string;
  readonly phase: string;
}

/** More runs are open at once in no school; where they are, so many texts make room at once for those asked for since. */
const MOST_KNOWN = 2048;
/** So many texts are examined without code made for it: to make that takes longer, and after a start a class waits for it. */
const EXAMINED_BARE = 100;

/** Texts as long that end alike are compared: to make a number of all of one, as a map would, takes longer than to read it. */
const END = 64;
type Known<T> = Map<string, { readonly text: string; readonly value: T }[]>;

/**
 * Reads a text as what it holds, and examines each text once only: a run is read again with every call. Whoever wrote the row
 * and whatever was rolled back, what is known is what it says. Frozen, since everybody who asks gets the same.
 */
function createReader<T>(schema: z.ZodType<T>): (text: string) => T {
  let known: Known<T> = new Map();
  let count = 0;
  // To drop the oldest alone is slow: all places left empty before it are walked past each time.
  let knownBefore: Known<T> = new Map();
  let examined = 0;

  function examine(text: string): T {
    examined += 1;
    const json: unknown = JSON.parse(text);
    // Told anything else, the examining itself takes ten times as long.
    return freeze(examined > EXAMINED_BARE ? schema.parse(json) : schema.parse(json, { jitless: true }));
  }
  return (text) => {
    const name = `${text.length} ${text.slice(-END)}`;
    const isIt = (each: { readonly text: string }): boolean => each.text === text;
    const found = known.get(name)?.find(isIt);
    if (found) return found.value;
    const { value } = knownBefore.get(name)?.find(isIt) ?? { value: examine(text) };
    if (count === MOST_KNOWN) {
      knownBefore = known;
      known = new Map();
      count = 0;
    }
    const alike = known.get(name);
    if (alike) alike.push({ text, value });
    else known.set(name, [{ text, value }]);
    count += 1;
    return value;
  };
}

function freeze<T>(value: T): T {
  if (typeof value !== "object" || value === null) return value;
  for (const each of Object.values(value)) freeze(each);
  return Object.freeze(value);
}

export interface RunStore {
  add(run: Omit<Run, "id" | "number">): Run;
  save(run: Run): void;
  /** A row that was read with something else. @throws where it can't be read. */
  read(row: RunRow): Run;
  /** @throws where the row can't be read: whoever asks by id must not take it for gone. All others leave it out. */
  get(id: number): Run | undefined;
  find(classId: number, number: number): Run | undefined;
  /** Runs that are not over, oldest first; of one person, or of the whole class. */
  open(classId: number, personId?: string): Run[];
  /** Runs whose first bath is not in yet, oldest first. */
  toBegin(classId: number): Run[];
  /** The newest that is no trial. */
  latest(classId: number, personId: string): Run | undefined;
  /** Of each kind (a film's, prints', a lamp's, a strip's) the newest this person started since then that is no trial. */
  newestOfEach(classId: number, personId: string, sinceMs: number): Run[];
  /** Whether somebody has gone through a trial to its end. */
  hasTrial(classId: number): boolean;
  remove(id: number): void;
}

export function createRunStore(db: Db): RunStore {
  const insert = db.prepare<[number, number, number, string, string, string, number], RunRow>(
    `insert into runs (class_id, number, person_id, body, phase, started_at)
     values (?, 1 + max(
         (select coalesce(max(number), 0) from runs where class_id = ?),
         (select coalesce(max(number), 0) from erased_numbers where class_id = ? and kind = 'run')), ?, ?, ?, ?) returning ${COLUMNS}`,
  );
  const update = db.prepare<[string, string, number]>("update runs set body = ?, phase = ? where id = ?");
  const byId = db.prepare<[number], RunRow>(`select ${COLUMNS} from runs where id = ?`);
  const byNumber = db.prepare<[number, number], RunRow>(
    `select ${COLUMNS} from runs where class_id = ? and number = ?`,
  );
  const openOfClass = db.prepare<[number], RunRow>(
    `select ${COLUMNS} from runs where class_id = ? and phase_kind in ('waiting', 'running') order by id`,
  );
  const openOfPerson = db.prepare<[number, string], RunRow>(
    `select ${COLUMNS} from runs where class_id = ? and person_id = ? and phase_kind in ('waiting', 'running') order by id`,
  );
  const toBegin = db.prepare<[number], RunRow>(
    `select ${COLUMNS} from runs indexed by runs_to_begin
     where class_id = ? and phase_kind = 'waiting' and phase ->> 'step' = 0 order by id`,
  );
  const newest = db.prepare<[number, string], RunRow>(
    `select ${COLUMNS} from runs where class_id = ? and person_id = ? and body ->> '$.speed' is null order by id desc limit 1`,
  );
  // With max() the other columns are those of its row.
  const newestOfEach = db.prepare<[number, string, number], RunRow>(
    `select ${COLUMNS}, max(id) from runs where class_id = ? and person_id = ? and started_at >= ? and body ->> '$.speed' is null
     group by body ->> '$.plan.prints' is null, body ->> '$.plan.lamp' is null, body ->> '$.plan.strip' is null`,
  );
  const trial = db.prepare<[number]>(
    "select 1 from runs where class_id = ? and phase_kind = 'finished' and body ->> '$.speed' is not null limit 1",
  );
  const drop = db.prepare<[number]>("delete from runs where id = ?");

  const bodyOf = (run: Omit<Run, "id" | "number">): string => JSON.stringify(runBodySchema.parse(run));
  const readBody = createReader(runBodySchema);
  const readPhase = createReader(phaseSchema);
  const readRow = ({ id, number, classId, personId, startedAtMs, body, phase }: RunRow): Run =>
    Object.assign({ id, number, classId, personId, startedAtMs, phase: readPhase(phase) }, readBody(body));
  const readIfWhole = (row: RunRow | undefined): Run[] => {
    try {
      return row === undefined ? [] : [readRow(row)];
    } catch {
      return [];
    }
  };
  return {
    add(run) {
      const { classId, personId, startedAtMs } = run;
      const of = [classId, classId, classId, personId] as const;
      return readRow(insert.get(...of, bodyOf(run), JSON.stringify(run.phase), startedAtMs) as RunRow);
    },
    read: readRow,
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
    toBegin: (classId) => toBegin.all(classId).flatMap(readIfWhole),
    latest: (classId, personId) => readIfWhole(newest.get(classId, personId))[0],
    newestOfEach: (classId, personId, sinceMs) =>
      newestOfEach.all(classId, personId, sinceMs).flatMap(readIfWhole),
    hasTrial: (classId) => trial.get(classId) !== undefined,
    remove: (id) => void drop.run(id),
  };
}
