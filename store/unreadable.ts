import type { z } from "zod";
import type { Db } from "./open.ts";
import type { RowFault, SetAside, Unreadable, UnreadableKind } from "./shapes/unreadable.ts";
import { SOURCES, type Source } from "./unreadable-sources.ts";

/* What can't be read in a class's rows, and what was put out of the way for it. */

export interface UnreadableStore {
  /** Rows of these kinds that can't be read and are still in the way, in order. Reads all of them: not for each call. */
  list(classId: number, kinds: readonly UnreadableKind[]): Unreadable[];
  /**
   * Puts rows out of the way, as many as this number or name stands for: what stood there is kept, a run is over and its
   * calls are dropped, a tank's number is free, a habit stands at its default. Inside `atomically` only.
   */
  setAside(classId: number, rows: readonly Unreadable[], now: number): void;
  /** The class of a run that can't be read; undefined for one that can. */
  classOfRun(runId: number): number | undefined;
  /** What was put out of the way and nobody has been told of: by a change of version. */
  untold(classId: number): SetAside[];
  markTold(classId: number): void;
}

interface Row extends Omit<Unreadable, "kind" | "faults" | "isOpen"> {
  readonly isOpen: number;
  readonly body: string;
}

export function createUnreadableStore(db: Db): UnreadableStore {
  // Made when they are first asked for: a start that finds all in order needs none of them.
  const made = new Map<Source, ReturnType<typeof make>>();
  const make = (source: Source) => db.prepare<[number], Row>(source.sql);
  function statementOf(source: Source) {
    const statement = made.get(source) ?? make(source);
    made.set(source, statement);
    return statement;
  }
  const known = db.prepare<[number], { kind: string; row_id: number; name: string | null }>(
    "select kind, row_id, name from set_aside where class_id = ?",
  );
  const keep = db.prepare(
    `insert into set_aside (class_id, kind, row_id, number, name, person_id, body, at, is_told)
     values (@classId, @kind, @id, @number, @name, @personId, @body, @now, 1)`,
  );
  const untold = db.prepare<[number], SetAside>(
    `select kind, number, name, person_id as "personId", body, at as "atMs" from set_aside
     where class_id = ? and is_told = 0 order by id`,
  );
  const runClass = db.prepare<[number], { classId: number }>(
    'select class_id as "classId" from runs where id = ?',
  );
  const told = db.prepare<[number]>("update set_aside set is_told = 1 where class_id = ? and is_told = 0");
  const drops = {
    tank: db.prepare<[number]>("delete from tanks where id = ?"),
    enlarger: db.prepare<[number]>("delete from enlargers where id = ?"),
    paper: db.prepare<[number]>("delete from papers where id = ?"),
  };
  const dropCues = db.prepare<[number, number]>(
    "update cues set state = 'dropped', settled_at = ? where run_id = ? and state = 'pending'",
  );
  const dropOwed = db.prepare<[number, number]>(
    "update outbox set state = 'stale', detail = 'its run can''t be read', sent_at = ? where run_id = ? and state = 'owed'",
  );
  const stop = db.prepare<[number, number]>(
    "update runs set phase = json_object('kind', 'stopped', 'step', 0, 'atMs', ?, 'reason', '') where id = ?",
  );
  const dropHabit = db.prepare<[string, number]>(
    "update classes set habits = json_remove(habits, ?) where id = ?",
  );

  function* found(
    classId: number,
    kinds: readonly UnreadableKind[],
  ): Generator<Row & { readonly kind: UnreadableKind; readonly faults: RowFault[] }> {
    for (const source of SOURCES) {
      if (!kinds.includes(source.kind)) continue;
      for (const row of statementOf(source).all(classId)) {
        const body: unknown = JSON.parse(row.body);
        const read = source.shape.safeParse(body);
        if (!read.success)
          yield { ...row, kind: source.kind, faults: read.error.issues.map((issue) => faultOf(issue, body)) };
      }
    }
  }

  const keyOf = (kind: string, id: number, name: string | null): string =>
    `${kind} ${id} ${kind === "habit" ? name : ""}`;

  return {
    list(classId, kinds) {
      const aside = new Set(known.all(classId).map(({ kind, row_id, name }) => keyOf(kind, row_id, name)));
      const rows = new Map<string, Unreadable>();
      for (const { body: _, isOpen, ...row } of found(classId, kinds)) {
        const key = keyOf(row.kind, row.id, row.name);
        const faults = [...(rows.get(key)?.faults ?? []), ...row.faults];
        // A habit is out of the way once it is gone; it may come again.
        if (row.kind === "habit" || !aside.has(key)) rows.set(key, { ...row, isOpen: isOpen === 1, faults });
      }
      return [...rows.values()];
    },
    setAside(classId, rows, now) {
      const bodies = new Map(
        [
          ...found(
            classId,
            rows.map(({ kind }) => kind),
          ),
        ].map((row) => [keyOf(row.kind, row.id, row.name), row.body]),
      );
      for (const { kind, id, number, name, personId } of rows) {
        const body = bodies.get(keyOf(kind, id, name)) ?? "null";
        keep.run({ classId, kind, id, number, name, personId, body, now });
        if (kind === "tank" || kind === "enlarger" || kind === "paper") drops[kind].run(id);
        if (kind === "habit") dropHabit.run(`$.${name}`, id);
        if (kind !== "run") continue;
        dropCues.run(now, id);
        dropOwed.run(now, id);
        stop.run(now, id);
      }
    },
    classOfRun(runId) {
      const classId = runClass.get(runId)?.classId;
      if (classId === undefined) return undefined;
      return [...found(classId, ["run"])].some(({ id }) => id === runId) ? classId : undefined;
    },
    untold: (classId) => untold.all(classId),
    markTold: (classId) => void told.run(classId),
  };
}

/** Where in the row, what stands there, and the limit it breaks. */
function faultOf(issue: z.core.$ZodIssue, body: unknown): RowFault {
  let value = body;
  for (const step of issue.path)
    value = (value as Readonly<Record<PropertyKey, unknown>> | null | undefined)?.[step];
  const isPlain = typeof value === "string" || typeof value === "number" || typeof value === "boolean";
  return {
    field: String(issue.path.findLast((step) => typeof step === "string") ?? ""),
    value: isPlain ? (value as string | number | boolean) : null,
    least: issue.code === "too_small" && issue.origin !== "array" ? Number(issue.minimum) : null,
    most: issue.code === "too_big" && issue.origin !== "array" ? Number(issue.maximum) : null,
  };
}
