import { z } from "zod";
import type { Db } from "./open.ts";

/* The one message in which a chat shows a class's board. */

const rowSchema = z
  .object({
    class_id: z.int(),
    channel_ref: z.string(),
    ref: z.string().nullable(),
    shown: z.string(),
    shown_at: z.int(),
  })
  .transform((row) => ({
    classId: row.class_id,
    channelRef: row.channel_ref,
    /** null: not said yet, or gone. */
    ref: row.ref,
    shown: row.shown,
    shownAt: row.shown_at,
  }));
export type BoardMessage = z.output<typeof rowSchema>;

export interface BoardStore {
  list(): BoardMessage[];
  find(classId: number): BoardMessage | undefined;
  /** A board in another channel is a new message. */
  place(classId: number, channelRef: string): void;
  remove(classId: number): void;
  saveShown(classId: number, ref: string, shown: string, now: number): void;
  /** The message is gone: the next board is said anew. */
  forgetRef(classId: number): void;
}

export function createBoardStore(db: Db): BoardStore {
  const all = db.prepare("select * from boards order by class_id");
  const one = db.prepare<[number]>("select * from boards where class_id = ?");
  const place = db.prepare<[number, string]>(
    `insert into boards (class_id, channel_ref) values (?, ?)
     on conflict do update set channel_ref = excluded.channel_ref, ref = null, shown = '', shown_at = 0`,
  );
  const drop = db.prepare<[number]>("delete from boards where class_id = ?");
  const shown = db.prepare<[string, string, number, number]>(
    "update boards set ref = ?, shown = ?, shown_at = ? where class_id = ?",
  );
  const forget = db.prepare<[number]>("update boards set ref = null, shown = '' where class_id = ?");
  return {
    list: () => z.array(rowSchema).parse(all.all()),
    find: (classId) => rowSchema.optional().parse(one.get(classId)),
    place: (classId, channelRef) => void place.run(classId, channelRef),
    remove: (classId) => void drop.run(classId),
    saveShown: (classId, ref, text, now) => void shown.run(ref, text, now, classId),
    forgetRef: (classId) => void forget.run(classId),
  };
}
