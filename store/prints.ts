import { z } from "zod";
import type { LogSlice } from "./shapes/log-file.ts";
import { json } from "./json.ts";
import type { Db } from "./open.ts";
import { bodyRead, readable, readableOne } from "./readable.ts";
import { splitWords } from "./rolls-match.ts";
import { type Photo, PHOTO_TYPES } from "./shapes/photo.ts";
import {
  type NewPrint,
  type Print,
  printBodySchema,
  type PrintFilter,
  type Strip,
  stripSchema,
} from "./shapes/print.ts";

/* The log of prints, with a photo each; and the last test strip of each person. */

export const printRowSchema = z
  .object({
    id: z.int(),
    class_id: z.int(),
    number: z.int(),
    person_id: z.string().nullable(),
    person_name: z.string(),
    roll: z.int().nullable(),
    frame: z.string(),
    title: z.string(),
    made_at: z.int(),
    rating: z.int().nullable(),
    fault: z.string(),
    note: z.string(),
    body: json(printBodySchema),
  })
  .transform(({ class_id, person_id, person_name, made_at, ...row }): Print => ({
    ...row,
    classId: class_id,
    personId: person_id,
    personName: person_name,
    madeAt: made_at,
  }));

const stripRowSchema = z.object({ body: json(stripSchema) }).transform(({ body }) => body);
const photoRowSchema = z
  .object({ media_type: z.enum(PHOTO_TYPES), bytes: z.instanceof(Uint8Array) })
  .transform(({ media_type, bytes }): Photo => ({ mediaType: media_type, bytes }));

export interface PrintStore {
  add(print: NewPrint): Print;
  find(classId: number, number: number): Print | undefined;
  /** The newest first, and how many there are in all. */
  search(classId: number, filter: PrintFilter, limit: number, offset: number): FoundPrints;
  /** How many there are; of very many, `most`. */
  count(classId: number, filter: PrintFilter, most: number): number;
  /** The newest print's; 0 where there is none. */
  lastNumber(classId: number): number;
  /** For a walk through all that the log holds, from the newest on; each slice is as soon read, however few of it fit. */
  slice(classId: number, filter: PrintFilter, below: number, limit: number): LogSlice<Print>;
  note(id: number, note: string): void;
  rate(id: number, rating: number): void;
  /** What was seen on the print, and the cause it was put down to. */
  blame(id: number, fault: string, cause: string | null): void;
  /** Takes the place of the photo there was. Only what was cleaned may be kept. */
  putPhoto(id: number, photo: Photo, now: number): void;
  photoOf(id: number): Photo | undefined;
  removePhoto(id: number): boolean;
  /** The last strip of a person, for them to read. */
  strip(classId: number, personId: string): Strip | undefined;
  keepStrip(classId: number, personId: string, strip: Strip, now: number): void;
}

export interface FoundPrints {
  readonly prints: Print[];
  readonly total: number;
}

const FACTS = `made_at >= @fromMs and made_at < @untilMs
  and (@personId is null or person_id = @personId) and (@roll is null or roll = @roll)
  and (@frame is null or lower(frame) = lower(@frame)) and (@rating is null or rating = @rating)
  and (@isFaulty = 0 or fault <> '')`;
const WHERE = `class_id = @classId and ${FACTS}
  and (@match is null or id in (select rowid from prints_text where prints_text match @match))`;

export function createPrintStore(db: Db): PrintStore {
  const insert = db.prepare(
    `insert into prints (class_id, number, person_id, person_name, roll, frame, title, made_at, note, body)
     values (@classId, (select coalesce(max(number), 0) + 1 from prints where class_id = @classId), @personId, @personName,
       @roll, @frame, @title, @madeAt, @note, @body) returning *`,
  );
  const one = db.prepare<[number, number]>("select * from prints where class_id = ? and number = ?");
  const page = db.prepare<[object]>(
    `select * from prints where ${WHERE} order by id desc limit @limit offset @offset`,
  );
  const count = db.prepare<[object], { total: number }>(
    `select count(*) as total from (select 1 from prints where ${WHERE} limit @most)`,
  );
  const last = db.prepare<[number], { number: number }>(
    "select coalesce(max(number), 0) as number from prints where class_id = ?",
  );
  const slice = db.prepare<[object], WalkedRow>(
    `select id, class_id as "classId", number, person_id as "personId", person_name as "personName", roll, frame, title,
       made_at as "madeAt", rating, fault, note, body,
       ${FACTS} and (@match is null or exists (select 1 from prints_text where prints_text match @match and rowid = id)) as fits
     from prints where class_id = @classId and number < @below order by number desc limit @limit`,
  );
  const note = db.prepare<[string, number]>("update prints set note = ? where id = ?");
  const rate = db.prepare<[number, number]>("update prints set rating = ? where id = ?");
  const blame = db.prepare<[string, string | null, number]>(
    "update prints set fault = ?, body = json_set(body, '$.cause', ?) where id = ?",
  );
  const put = db.prepare<[number, string, Uint8Array, number]>(
    `insert into print_photos (print_id, media_type, bytes, added_at) values (?, ?, ?, ?)
     on conflict do update set media_type = excluded.media_type, bytes = excluded.bytes, added_at = excluded.added_at`,
  );
  const photo = db.prepare<[number]>("select media_type, bytes from print_photos where print_id = ?");
  const drop = db.prepare<[number]>("delete from print_photos where print_id = ?");
  const strip = db.prepare<[number, string]>("select body from strips where class_id = ? and person_id = ?");
  const keep = db.prepare<[number, string, number, string]>(
    `insert into strips (class_id, person_id, made_at, body) values (?, ?, ?, ?)
     on conflict (class_id, person_id) do update set made_at = excluded.made_at, body = excluded.body`,
  );
  return {
    add: (print) =>
      printRowSchema.parse(insert.get({ ...print, body: JSON.stringify(printBodySchema.parse(print.body)) })),
    find: (classId, number) => readableOne(printRowSchema, one.get(classId, number)),
    search(classId, filter, limit, offset) {
      const asked = askedOf(classId, filter);
      return {
        prints: readable(printRowSchema, page.all({ ...asked, limit, offset })),
        total: count.get({ ...asked, most: -1 })?.total ?? 0,
      };
    },
    count: (classId, filter, most) => count.get({ ...askedOf(classId, filter), most })?.total ?? 0,
    lastNumber: (classId) => last.get(classId)?.number ?? 0,
    slice(classId, filter, below, limit) {
      const rows = slice.all({ ...askedOf(classId, filter), below, limit });
      return {
        list: rows.flatMap(({ fits, ...row }) => (fits === 1 ? bodyRead(printBodySchema)(row) : [])),
        next: rows.length < limit ? null : (rows.at(-1)?.number ?? null),
      };
    },
    note: (id, text) => void note.run(text, id),
    rate: (id, rating) => void rate.run(rating, id),
    blame: (id, fault, cause) => void blame.run(fault, cause, id),
    putPhoto: (id, { mediaType, bytes }, now) => void put.run(id, mediaType, bytes, now),
    photoOf: (id) => photoRowSchema.optional().parse(photo.get(id)),
    removePhoto: (id) => drop.run(id).changes > 0,
    strip: (classId, personId) => readableOne(stripRowSchema, strip.get(classId, personId)),
    keepStrip: (classId, personId, made, now) =>
      void keep.run(classId, personId, now, JSON.stringify(stripSchema.parse(made))),
  };
}

type WalkedRow = Omit<Print, "body"> & { readonly body: string; readonly fits: number };

const askedOf = (classId: number, filter: PrintFilter) => ({
  classId,
  personId: filter.personId,
  roll: filter.roll,
  frame: filter.frame,
  rating: filter.rating,
  isFaulty: filter.isFaulty ? 1 : 0,
  fromMs: filter.fromMs ?? Number.MIN_SAFE_INTEGER,
  untilMs: filter.untilMs ?? Number.MAX_SAFE_INTEGER,
  match: matchOf(filter.words),
});

/** All of these words, each begun only, in the index's own language; null: none to look for. */
function matchOf(words: readonly string[]): string | null {
  const letters = splitWords(words.join(" "));
  return letters.length === 0 ? null : letters.map((word) => `"${word}" *`).join(" AND ");
}
