import type { SchoolClass } from "../../../store/shapes/school.ts";
import type { RoomStore } from "../../../store/room.ts";
import { drawJoinCode, drawPassphrase, hashPassphrase, showJoinCode } from "./secrets.ts";

/** What opens a class's door. The passphrases can be shown only now: the store has their hashes. */
export interface FirstSecrets {
  readonly classKey: string;
  readonly className: string;
  /** `K3M-T7P`. */
  readonly joinCode: string;
  readonly teacherPassphrase: string;
  readonly aidePassphrase: string;
}

/** Makes what a class lacks; undefined where it has everything already. */
export async function ensureSecrets(
  rooms: RoomStore,
  schoolClass: SchoolClass,
  now: number,
): Promise<FirstSecrets | undefined> {
  if (rooms.secret(schoolClass.id, "join") === undefined)
    rooms.setSecret(schoolClass.id, "join", freeJoinCode(rooms), now);
  const hasPassphrases = (["teacher", "aide"] as const).every(
    (kind) => rooms.secret(schoolClass.id, kind) !== undefined,
  );
  return hasPassphrases ? undefined : resetPassphrases(rooms, schoolClass, now);
}

export async function resetPassphrases(
  rooms: RoomStore,
  schoolClass: SchoolClass,
  now: number,
): Promise<FirstSecrets> {
  const teacherPassphrase = drawPassphrase();
  const aidePassphrase = drawPassphrase();
  rooms.setSecret(schoolClass.id, "teacher", await hashPassphrase(teacherPassphrase), now);
  rooms.setSecret(schoolClass.id, "aide", await hashPassphrase(aidePassphrase), now);
  const joinCode = showJoinCode(rooms.secret(schoolClass.id, "join") ?? "");
  return {
    classKey: schoolClass.key,
    className: schoolClass.name,
    joinCode,
    teacherPassphrase,
    aidePassphrase,
  };
}

/** A code no other class has. */
export function freeJoinCode(rooms: RoomStore): string {
  for (;;) {
    const code = drawJoinCode();
    if (rooms.classIdByJoinCode(code) === undefined) return code;
  }
}
