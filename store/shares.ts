import type { Db } from "./open.ts";

/* How much of the disk people and classes have filled today. */

export interface Share {
  readonly classKey: string;
  /** null: the class's own. */
  readonly personId: string | null;
  readonly kind: "words" | "photos";
  readonly bytes: number;
}

export interface ShareStore {
  /** `day` counts days since the epoch. */
  of(day: number): Share[];
  /** In place of what stood there; of people and classes that are not there (any more) nothing is kept. */
  put(day: number, share: Share): void;
  /** Nothing stays of days before this one. */
  forgetBefore(day: number): void;
}

export function createShareStore(db: Db): ShareStore {
  const ofDay = db.prepare<[number], Share>(
    `select classes.key as "classKey", nullif(person_id, '') as "personId", kind, bytes
     from shares join classes on classes.id = shares.class_id where day = ?`,
  );
  const upsert = db.prepare<[object]>(
    `insert into shares (day, class_id, person_id, kind, bytes)
     select @day, id, coalesce(@personId, ''), @kind, @bytes from classes
     where key = @classKey and (@personId is null
       or exists (select 1 from members where class_id = classes.id and person_id = @personId))
     on conflict do update set day = excluded.day, bytes = excluded.bytes`,
  );
  const forget = db.prepare<[number]>("delete from shares where day < ?");
  return {
    of: (day) => ofDay.all(day),
    put: (day, share) => void upsert.run({ day, ...share }),
    forgetBefore: (day) => void forget.run(day),
  };
}
