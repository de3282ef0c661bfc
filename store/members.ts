import type { Role } from "./shapes/person.ts";
import { type Language, languageRead } from "./shapes/language.ts";
import type { Db } from "./open.ts";

export interface Member {
  readonly classId: number;
  readonly personId: string;
  readonly name: string;
  readonly role: Role;
  readonly joinedAt: number;
  readonly seenAt: number;
}

/** Columns of a strict table hold what was written, and its check knows the roles; they are not examined with every call. */
const COLUMNS = `class_id as "classId", person_id as "personId", name, role, joined_at as "joinedAt", seen_at as "seenAt"`;

export interface MemberStore {
  /**
   * The member, made on first sight, with the name and role this call came with. A name somebody else of the class
   * has gets a number behind it, so that two people are never one.
   */
  see(classId: number, person: { id: string; name: string }, role: Role, now: number): Member;
  /** The language this person reads: the one they chose, else their chat's, else the default. */
  languageOf(classId: number, personId: string): Language;
  /** What this person's chat says of their language; changes nothing where they chose one themselves. */
  hearLanguage(classId: number, personId: string, language: Language): void;
  /** null: as their chat says. */
  chooseLanguage(classId: number, personId: string, language: Language | null): void;
  find(classId: number, personId: string): Member | undefined;
  findByName(classId: number, name: string): Member | undefined;
  list(classId: number): Member[];
  /** Where this person was last seen: which class a private message speaks of. */
  lastClass(personId: string): number | undefined;
  /** All classes this person is in, where they were seen last in front. */
  classesOf(personId: string): { readonly classId: number; readonly seenAt: number }[];
  setRole(classId: number, personId: string, role: Role): void;
  remove(classId: number, personId: string): void;
  directChannel(personId: string): string | null;
  saveDirectChannel(personId: string, channelRef: string): void;
  /** Until when this person is not tried alone, after a refusal. */
  directRefusedUntil(personId: string): number;
  saveDirectRefused(personId: string, until: number): void;
}

export function createMemberStore(db: Db): MemberStore {
  const one = db.prepare<[number, string], Member>(
    `select ${COLUMNS} from members where class_id = ? and person_id = ?`,
  );
  const byName = db.prepare<[number, string], Member>(
    `select ${COLUMNS} from members where class_id = ? and lower(name) = lower(?)`,
  );
  const all = db.prepare<[number], Member>(
    `select ${COLUMNS} from members where class_id = ? order by joined_at, person_id`,
  );
  const insert = db.prepare<[number, string, string, string, number, number]>(
    "insert into members (class_id, person_id, name, role, joined_at, seen_at) values (?, ?, ?, ?, ?, ?)",
  );
  const touch = db.prepare<[string, string, number, number, string]>(
    "update members set name = ?, role = ?, seen_at = ? where class_id = ? and person_id = ?",
  );
  const language = db.prepare<[number, string], { tag: string | null }>(
    "select coalesce(chosen_language, language) as tag from members where class_id = ? and person_id = ?",
  );
  const hear = db.prepare<[string, number, string, string]>(
    "update members set language = ? where class_id = ? and person_id = ? and language is not ?",
  );
  const choose = db.prepare<[string | null, number, string]>(
    "update members set chosen_language = ? where class_id = ? and person_id = ?",
  );
  const role = db.prepare<[string, number, string]>(
    "update members set role = ? where class_id = ? and person_id = ?",
  );
  const drop = db.prepare<[number, string]>("delete from members where class_id = ? and person_id = ?");
  const last = db.prepare<[string], { class_id: number }>(
    "select class_id from members where person_id = ? order by seen_at desc limit 1",
  );
  const each = db.prepare<[string], { classId: number; seenAt: number }>(
    "select class_id as classId, seen_at as seenAt from members where person_id = ? order by seen_at desc, class_id",
  );
  const direct = db.prepare<[string], { channel_ref: string | null; refused_until: number }>(
    "select channel_ref, refused_until from direct_channels where person_id = ?",
  );
  const saveChannel = db.prepare<[string, string]>(
    "insert into direct_channels (person_id, channel_ref) values (?, ?) on conflict do update set channel_ref = excluded.channel_ref",
  );
  const saveRefused = db.prepare<[string, number]>(
    "insert into direct_channels (person_id, refused_until) values (?, ?) on conflict do update set refused_until = excluded.refused_until",
  );

  const find: MemberStore["find"] = (classId, personId) => one.get(classId, personId);
  const findByName: MemberStore["findByName"] = (classId, name) => byName.get(classId, name);

  function freeName(classId: number, personId: string, wanted: string): string {
    const base = wanted.slice(0, 60) || "Somebody";
    for (let number = 1; ; number += 1) {
      const name = number === 1 ? base : `${base} ${number}`;
      const holder = findByName(classId, name);
      if (!holder || holder.personId === personId) return name;
    }
  }

  return {
    find,
    findByName,
    see(classId, person, asRole, now) {
      const known = find(classId, person.id);
      const same = known && (known.name === person.name || known.name.startsWith(`${person.name} `));
      const name = same ? known.name : freeName(classId, person.id, person.name);
      if (known) touch.run(name, asRole, now, classId, person.id);
      else insert.run(classId, person.id, name, asRole, now, now);
      return {
        classId,
        personId: person.id,
        name,
        role: asRole,
        joinedAt: known?.joinedAt ?? now,
        seenAt: now,
      };
    },
    languageOf: (classId, personId) => languageRead(language.get(classId, personId)?.tag),
    hearLanguage: (classId, personId, heard) => void hear.run(heard, classId, personId, heard),
    chooseLanguage: (classId, personId, chosen) => void choose.run(chosen, classId, personId),
    list: (classId) => all.all(classId),
    lastClass: (personId) => last.get(personId)?.class_id,
    classesOf: (personId) => each.all(personId),
    setRole: (classId, personId, to) => void role.run(to, classId, personId),
    remove: (classId, personId) => void drop.run(classId, personId),
    directChannel: (personId) => direct.get(personId)?.channel_ref ?? null,
    saveDirectChannel: (personId, channelRef) => void saveChannel.run(personId, channelRef),
    directRefusedUntil: (personId) => direct.get(personId)?.refused_until ?? 0,
    saveDirectRefused: (personId, until) => void saveRefused.run(personId, until),
  };
}
