import { z } from "zod";
import type { Db } from "./open.ts";

/* Who is signed in to the room, and what opens its door. A token is kept only as its hash. */

const sessionSchema = z
  .object({
    token_hash: z.string(),
    class_id: z.int(),
    person_id: z.string(),
    device: z.string(),
    created_at: z.int(),
    seen_at: z.int(),
  })
  .transform((row) => ({
    tokenHash: row.token_hash,
    classId: row.class_id,
    personId: row.person_id,
    device: row.device,
    createdAt: row.created_at,
    seenAt: row.seen_at,
  }));
export type RoomSession = z.output<typeof sessionSchema>;

/** `join` is kept as it is, since the teacher shows it; the passphrases only as scrypt hashes. */
export type SecretKind = "join" | "teacher" | "aide";

export interface RoomStore {
  addSession(session: Omit<RoomSession, "createdAt" | "seenAt">, now: number): void;
  findSession(tokenHash: string): RoomSession | undefined;
  /** Signs a device out that may come back by itself, with the class's new code. */
  putToSleep(tokenHash: string): void;
  findAsleep(tokenHash: string): RoomSession | undefined;
  touchSession(tokenHash: string, now: number): void;
  sessionsOf(classId: number): RoomSession[];
  removeSession(tokenHash: string): void;
  /** Signs a person out on every device. */
  removePerson(classId: number, personId: string): void;
  secret(classId: number, kind: SecretKind): string | undefined;
  setSecret(classId: number, kind: SecretKind, value: string, now: number): void;
  classIdByJoinCode(code: string): number | undefined;
  /** What stands in the address of the class's calendar; undefined where it has none. */
  calendarToken(classId: number): string | undefined;
  setCalendarToken(classId: number, token: string | null): void;
  classIdByCalendarToken(token: string): number | undefined;
}

export function createRoomStore(db: Db): RoomStore {
  const insert = db.prepare<[string, number, string, string, number, number]>(
    "insert into room_sessions (token_hash, class_id, person_id, device, created_at, seen_at) values (?, ?, ?, ?, ?, ?)",
  );
  const byHash = db.prepare<[string, number]>(
    "select * from room_sessions where token_hash = ? and is_asleep = ?",
  );
  const sleep = db.prepare<[string]>("update room_sessions set is_asleep = 1 where token_hash = ?");
  const touch = db.prepare<[number, string]>("update room_sessions set seen_at = ? where token_hash = ?");
  const byClass = db.prepare<[number]>(
    "select * from room_sessions where class_id = ? and is_asleep = 0 order by created_at, token_hash",
  );
  const drop = db.prepare<[string]>("delete from room_sessions where token_hash = ?");
  const dropPerson = db.prepare<[number, string]>(
    "delete from room_sessions where class_id = ? and person_id = ?",
  );
  const secret = db.prepare<[number, string], { value: string }>(
    "select value from room_secrets where class_id = ? and kind = ?",
  );
  const saveSecret = db.prepare<[number, string, string, number]>(
    `insert into room_secrets (class_id, kind, value, changed_at) values (?, ?, ?, ?)
     on conflict do update set value = excluded.value, changed_at = excluded.changed_at`,
  );
  const byCode = db.prepare<[string], { class_id: number }>(
    "select class_id from room_secrets where kind = 'join' and value = ?",
  );
  const calendar = db.prepare<[number], { token: string | null }>(
    "select calendar_token as token from classes where id = ?",
  );
  const saveCalendar = db.prepare<[string | null, number]>(
    "update classes set calendar_token = ? where id = ?",
  );
  const byCalendar = db.prepare<[string], { id: number }>("select id from classes where calendar_token = ?");
  return {
    calendarToken: (classId) => calendar.get(classId)?.token ?? undefined,
    setCalendarToken: (classId, token) => void saveCalendar.run(token, classId),
    classIdByCalendarToken: (token) => byCalendar.get(token)?.id,
    addSession: ({ tokenHash, classId, personId, device }, now) =>
      void insert.run(tokenHash, classId, personId, device, now, now),
    findSession: (tokenHash) => sessionSchema.optional().parse(byHash.get(tokenHash, 0)),
    putToSleep: (tokenHash) => void sleep.run(tokenHash),
    findAsleep: (tokenHash) => sessionSchema.optional().parse(byHash.get(tokenHash, 1)),
    touchSession: (tokenHash, now) => void touch.run(now, tokenHash),
    sessionsOf: (classId) => z.array(sessionSchema).parse(byClass.all(classId)),
    removeSession: (tokenHash) => void drop.run(tokenHash),
    removePerson: (classId, personId) => void dropPerson.run(classId, personId),
    secret: (classId, kind) => secret.get(classId, kind)?.value,
    setSecret: (classId, kind, value, now) => void saveSecret.run(classId, kind, value, now),
    classIdByJoinCode: (code) => byCode.get(code)?.class_id,
  };
}
