import { z } from "zod";
import type { Db } from "./open.ts";

/*
 * Devices that stand at a sink for everybody: who was chosen at each, and what was pressed for whom. A token is kept only as
 * its hash.
 */

const sinkSchema = z
  .object({
    id: z.int(),
    class_id: z.int(),
    device: z.string(),
    is_locked: z.int(),
    opened_at: z.int(),
    seen_at: z.int(),
  })
  .transform((row) => ({
    id: row.id,
    classId: row.class_id,
    device: row.device,
    isLocked: row.is_locked === 1,
    openedAt: row.opened_at,
    seenAt: row.seen_at,
  }));
export type Sink = z.output<typeof sinkSchema>;

export interface SinkPress {
  readonly callId: string;
  readonly sinkId: number;
  readonly device: string;
  readonly classId: number;
  readonly personId: string;
  /** As it was sent, without a slash. */
  readonly line: string;
  readonly at: number;
}

/** Who was chosen so long ago and has no film under way is not shown any more. */
const CHOSEN_MS = 12 * 3600_000;

export interface SinkStore {
  open(classId: number, tokenHash: string, device: string, now: number): void;
  find(tokenHash: string): Sink | undefined;
  touch(id: number, now: number): void;
  list(classId: number): Sink[];
  /** False where this class has no such device. */
  lock(classId: number, id: number, isLocked: boolean): boolean;
  /** The device is nobody's from now on; what was pressed at it stays with the people it was pressed for. */
  close(classId: number, id: number): boolean;
  /** This member works at it. */
  choose({ id, classId }: Pick<Sink, "id" | "classId">, personId: string, now: number): void;
  unchoose(id: number, personId: string): void;
  hasChosen(id: number, personId: string): boolean;
  /** Who works at it, in the order they came. */
  chosen(id: number, now: number): string[];
  /** Once for each call. */
  addPress(press: SinkPress): void;
}

export function createSinkStore(db: Db): SinkStore {
  const columns = "id, class_id, device, is_locked, opened_at, seen_at";
  const insert = db.prepare<[number, string, string, number, number]>(
    "insert into sinks (class_id, token_hash, device, opened_at, seen_at) values (?, ?, ?, ?, ?)",
  );
  const byHash = db.prepare<[string]>(`select ${columns} from sinks where token_hash = ?`);
  const byClass = db.prepare<[number]>(`select ${columns} from sinks where class_id = ? order by id`);
  const touch = db.prepare<[number, number]>("update sinks set seen_at = ? where id = ?");
  const lock = db.prepare<[number, number, number]>(
    "update sinks set is_locked = ? where class_id = ? and id = ?",
  );
  const drop = db.prepare<[number, number]>("delete from sinks where class_id = ? and id = ?");
  const choose = db.prepare<[number, number, string, number]>(
    `insert into sink_people (sink_id, class_id, person_id, chosen_at) values (?, ?, ?, ?)
     on conflict (sink_id, person_id) do update set chosen_at = excluded.chosen_at`,
  );
  const unchoose = db.prepare<[number, string]>(
    "delete from sink_people where sink_id = ? and person_id = ?",
  );
  const has = db.prepare<[number, string]>("select 1 from sink_people where sink_id = ? and person_id = ?");
  const chosen = db.prepare<[number, number], { personId: string }>(
    `select person_id as "personId" from sink_people where sink_id = ? and (chosen_at > ? or exists (
       select 1 from runs where runs.class_id = sink_people.class_id and runs.person_id = sink_people.person_id
         and phase_kind in ('waiting', 'running')))
     order by chosen_at, person_id`,
  );
  const press = db.prepare(
    `insert into sink_presses (call_id, sink_id, device, class_id, person_id, line, at)
     values (@callId, @sinkId, @device, @classId, @personId, @line, @at) on conflict (call_id) do nothing`,
  );
  return {
    open: (classId, tokenHash, device, now) => void insert.run(classId, tokenHash, device, now, now),
    find: (tokenHash) => sinkSchema.optional().parse(byHash.get(tokenHash)),
    touch: (id, now) => void touch.run(now, id),
    list: (classId) => z.array(sinkSchema).parse(byClass.all(classId)),
    lock: (classId, id, isLocked) => lock.run(isLocked ? 1 : 0, classId, id).changes > 0,
    close: (classId, id) => drop.run(classId, id).changes > 0,
    choose: ({ id, classId }, personId, now) => void choose.run(id, classId, personId, now),
    unchoose: (id, personId) => void unchoose.run(id, personId),
    hasChosen: (id, personId) => has.get(id, personId) !== undefined,
    chosen: (id, now) => chosen.all(id, now - CHOSEN_MS).map(({ personId }) => personId),
    addPress: (given) => void press.run(given),
  };
}
