import { type Photo, PHOTO_TYPES, type PhotoOf } from "./shapes/photo.ts";
import { z } from "zod";
import type { Db } from "./open.ts";
import type { PrintStore } from "./prints.ts";
import type { RollStore } from "./rolls.ts";

/* Photos of contact sheets; one a roll. They go with their roll, and with its owner. */

const rowSchema = z
  .object({ media_type: z.enum(PHOTO_TYPES), bytes: z.instanceof(Uint8Array) })
  .transform(({ media_type, bytes }): Photo => ({ mediaType: media_type, bytes }));

export interface PhotoStore {
  /** Takes the place of the one there was. Only what `cleanPhoto` gave may be kept. */
  put(rollId: number, photo: Photo, now: number): void;
  find(rollId: number): Photo | undefined;
  has(rollId: number): boolean;
  remove(rollId: number): boolean;
}

export function createPhotoStore(db: Db): PhotoStore {
  const put = db.prepare<[number, string, Uint8Array, number]>(
    `insert into roll_photos (roll_id, media_type, bytes, added_at) values (?, ?, ?, ?)
     on conflict do update set media_type = excluded.media_type, bytes = excluded.bytes, added_at = excluded.added_at`,
  );
  const one = db.prepare<[number]>("select media_type, bytes from roll_photos where roll_id = ?");
  const has = db.prepare<[number]>("select 1 from roll_photos where roll_id = ?");
  const drop = db.prepare<[number]>("delete from roll_photos where roll_id = ?");
  return {
    put: (rollId, { mediaType, bytes }, now) => void put.run(rollId, mediaType, bytes, now),
    find: (rollId) => rowSchema.optional().parse(one.get(rollId)),
    has: (rollId) => has.get(rollId) !== undefined,
    remove: (rollId) => drop.run(rollId).changes > 0,
  };
}

interface PhotoStores {
  readonly rolls: RollStore;
  readonly photos: PhotoStore;
  readonly prints: PrintStore;
}

/** The photo of a roll or a print of this class. */
export function findPhoto(
  { rolls, photos, prints }: PhotoStores,
  classId: number,
  { kind, number }: PhotoOf,
): Photo | undefined {
  if (kind === "print") {
    const print = prints.find(classId, number);
    return print && prints.photoOf(print.id);
  }
  const roll = rolls.find(classId, number);
  return roll && photos.find(roll.id);
}
