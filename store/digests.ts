import type { Db } from "./open.ts";

export interface JudgedRow {
  readonly batches: string;
  readonly fault: string;
}

export interface DigestStore {
  /** Up to when the class's digests have been looked after; undefined: never. */
  checkedAt(classId: number): number | undefined;
  setChecked(classId: number, at: number): void;
  /** How many rolls of the log ended since an instant. */
  rollsSince(classId: number, sinceMs: number): { readonly finished: number; readonly stopped: number };
  /** The newest rolls since an instant, at most two thousand: the labels of their batches and the fault each shows, empty for none. */
  judgedRolls(classId: number, sinceMs: number): JudgedRow[];
}

/** What a bottle does shows in far fewer; all of a long log would fill the memory. */
const MOST_JUDGED = 2000;

export function createDigestStore(db: Db): DigestStore {
  const one = db.prepare<[number], { checked_at: number }>(
    "select checked_at from digests where class_id = ?",
  );
  const save = db.prepare<[number, number]>(
    "insert into digests (class_id, checked_at) values (?, ?) on conflict do update set checked_at = excluded.checked_at",
  );
  const counts = db.prepare<[number, number], { finished: number; stopped: number }>(
    `select count(*) filter (where outcome = 'finished') as finished, count(*) filter (where outcome = 'stopped') as stopped
     from rolls where class_id = ? and ended_at >= ?`,
  );
  const judged = db.prepare<[number, number], JudgedRow>(
    `select batches, fault from rolls where class_id = ? and ended_at >= ? and outcome = 'finished'
     order by ended_at desc, id desc limit ${MOST_JUDGED}`,
  );
  return {
    checkedAt: (classId) => one.get(classId)?.checked_at,
    setChecked: (classId, at) => void save.run(classId, at),
    rollsSince: (classId, sinceMs) => counts.get(classId, sinceMs) ?? { finished: 0, stopped: 0 },
    judgedRolls: (classId, sinceMs) => judged.all(classId, sinceMs),
  };
}
