import { createHash, randomInt } from "node:crypto";
import { z } from "zod";
import type { Db } from "./open.ts";

/*
 * Codes with which a person takes their place on another device: drawn here, since only their hash is kept and each must
 * be nobody else's. One a person, used once, for a few minutes.
 */

export const RETURN_CODE_MS = 10 * 60_000;

/** No sign that is read as another one. */
const SIGNS = "abcdefghjkmnpqrstvwxyz23456789";
/** 7e8 of them: with tries limited, nobody meets one of a class's few within its ten minutes. */
const SIGN_COUNT = 6;

const whoSchema = z
  .object({ class_id: z.int(), person_id: z.string() })
  .transform((row) => ({ classId: row.class_id, personId: row.person_id }));

export interface ReturnCodeStore {
  /** A new code for this member, `k3mt7p`; one given to them before opens nothing any more. */
  give(classId: number, personId: string, now: number): { readonly code: string; readonly until: number };
  /** Whose it is; it opens nothing any more after this. undefined: wrong, used, or over its time. */
  take(code: string, now: number): z.output<typeof whoSchema> | undefined;
}

export function createReturnCodeStore(db: Db): ReturnCodeStore {
  const isKnown = db.prepare<[string]>("select 1 from return_codes where code_hash = ?");
  const save = db.prepare<[number, string, string, number]>(
    `insert into return_codes (class_id, person_id, code_hash, until_at) values (?, ?, ?, ?)
     on conflict (class_id, person_id) do update set code_hash = excluded.code_hash, until_at = excluded.until_at`,
  );
  const dropOver = db.prepare<[number]>("delete from return_codes where until_at <= ?");
  const take = db.prepare<[string, number]>(
    "delete from return_codes where code_hash = ? and until_at > ? returning class_id, person_id",
  );

  function drawFree(): string {
    for (;;) {
      const code = Array.from({ length: SIGN_COUNT }, () => SIGNS[randomInt(SIGNS.length)]).join("");
      if (!isKnown.get(hash(code))) return code;
    }
  }

  return {
    give(classId, personId, now) {
      dropOver.run(now);
      const code = drawFree();
      const until = now + RETURN_CODE_MS;
      save.run(classId, personId, hash(code), until);
      return { code, until };
    },
    take: (code, now) => whoSchema.optional().parse(take.get(hash(code), now)),
  };
}

const hash = (code: string): string => createHash("sha256").update(code).digest("hex");
