import { chatOf } from "../../../store/shapes/chat-key.ts";
import type { Language } from "../../../store/shapes/language.ts";
import type { Role } from "../../../store/shapes/person.ts";
import type { SchoolClass } from "../../../store/shapes/school.ts";
import { returnsByCode } from "../../../commands/mine/return.ts";
import { fail, ok, type Result } from "../../../commands/result.ts";
import type { Stores } from "../../../store/index.ts";
import type { RoomStore } from "../../../store/room.ts";
import { cleanName, isStaffWord, lookOf } from "./names.ts";
import { drawPersonId, drawToken, foldCode, hashToken, isPassphrase } from "./secrets.ts";
import type { DoorCode } from "./wire.ts";

/* Who comes in, and as whom. */

export interface Entry {
  /** For the cookie; the store has only its hash. */
  readonly token: string;
  readonly classId: number;
  readonly personId: string;
}

export interface DoorRequest {
  readonly name: string;
  readonly device: string;
  /** Who this browser is signed in as already, if anybody: their own name is free to them. */
  readonly current: { readonly classId: number; readonly personId: string } | null;
  /** Who was signed out on it together with the class's old code: with the new one their own name is free to them. */
  readonly slept?: { readonly classId: number; readonly personId: string } | null;
  readonly now: number;
}

export interface Door {
  join(request: DoorRequest & { readonly code: string }): Result<Entry, DoorCode>;
  joinAsStaff(
    request: DoorRequest & { readonly code: string; readonly passphrase: string },
  ): Promise<Result<Entry, DoorCode>>;
  /** Whoever comes in first has it speak their language. */
  joinDemo(
    request: DoorRequest & { readonly role: "student" | "teacher"; readonly language: Language },
  ): Result<Entry, DoorCode>;
  /** Somebody of the class on another device, with the code they were given for it. */
  returnTo(
    request: Omit<DoorRequest, "name" | "current"> & { readonly code: string },
  ): Result<Entry, DoorCode>;
  /** For whoever has shown already that they may: no code is asked. */
  enter(classId: number, role: Role, request: DoorRequest): Result<Entry, DoorCode>;
}

export interface DoorParts {
  readonly stores: Stores;
  readonly rooms: RoomStore;
  /** The demo class where its door stands open, on loopback only. */
  openDemo(): SchoolClass | undefined;
}

/**
 * Why a name can't be a new person's: it is somebody's, or would be read as somebody's, or is what staff are called.
 * undefined: it can.
 */
export function nameFault(
  { members }: Stores,
  classId: number,
  name: string,
  role: Role,
): DoorCode | undefined {
  if (role === "student" && isStaffWord(name)) return "ERR_NAME_ROLE";
  const look = lookOf(name);
  return members.list(classId).some((member) => lookOf(member.name) === look) ? "ERR_NAME_TAKEN" : undefined;
}

/** So many passphrases wait their turn; some 0.1 s each. */
const MOST_WAITING = 100;

export function createDoor({ stores, rooms, openDemo }: DoorParts): Door {
  function enter(classId: number, role: Role, request: DoorRequest): Result<Entry, DoorCode> {
    const name = cleanName(request.name);
    if (name === undefined) return fail("ERR_NAME");
    return stores.atomically(() => {
      const holder = stores.members.findByName(classId, name);
      const isOwn = [request.current, request.slept].some(
        (own) => own?.classId === classId && own.personId === holder?.personId,
      );
      if (holder && !isOwn && !mayTakeBack(classId, holder, role)) return fail<DoorCode>("ERR_NAME_TAKEN");
      const fault = holder ? undefined : nameFault(stores, classId, name, role);
      if (fault) return fail(fault);
      const personId = holder?.personId ?? drawPersonId();
      stores.members.see(classId, { id: personId, name }, role, request.now);
      return ok(admit(classId, personId, request));
    });
  }

  function admit(
    classId: number,
    personId: string,
    { device, now }: Pick<DoorRequest, "device" | "now">,
  ): Entry {
    const token = drawToken();
    rooms.addSession({ tokenHash: hashToken(token), classId, personId, device }, now);
    return { token, classId, personId };
  }

  /**
   * A name is its holder's for good: who comes back shows a code of their own, from an old device or from staff. A staff name
   * needs the passphrase, which was asked for already, and opens further devices of the same person. In the invented class
   * there is nothing to keep, and a name that is signed in nowhere is anybody's.
   */
  function mayTakeBack(classId: number, holder: { personId: string; role: Role }, role: Role): boolean {
    if (chatOf(holder.personId) !== "room") return false;
    if (holder.role !== "student") return holder.role === role;
    if (!stores.classes.get(classId)?.demo) return false;
    return !rooms.sessionsOf(classId).some(({ personId }) => personId === holder.personId);
  }

  let waiting = 0;
  let last: Promise<unknown> = Promise.resolve();
  /** One passphrase after the other: each takes a processor for a while, and calls must not wait for a crowd of them. */
  async function inTurn<T>(work: () => Promise<T>): Promise<T> {
    waiting += 1;
    const mine = last.then(work);
    last = mine.catch(() => {}).finally(() => (waiting -= 1));
    return mine;
  }

  const classOf = (code: string): number | undefined => rooms.classIdByJoinCode(foldCode(code));

  return {
    enter,
    join(request) {
      const classId = classOf(request.code);
      return classId === undefined ? fail("ERR_CODE") : enter(classId, "student", request);
    },
    async joinAsStaff(request) {
      const classId = classOf(request.code);
      if (classId === undefined) return fail("ERR_CODE");
      if (waiting >= MOST_WAITING) return fail("ERR_TOO_OFTEN");
      const [isTeacher, isAide] = await inTurn(() =>
        Promise.all(
          (["teacher", "aide"] as const).map((role) =>
            isPassphrase(request.passphrase, rooms.secret(classId, role)),
          ),
        ),
      );
      if (!isTeacher && !isAide) return fail("ERR_PASSPHRASE");
      return enter(classId, isTeacher ? "teacher" : "aide", request);
    },
    returnTo(request) {
      return stores.atomically(() => {
        const whose = stores.returnCodes.take(foldCode(request.code), request.now);
        const member = whose && stores.members.find(whose.classId, whose.personId);
        // Made a teacher since the code was given: a short code opens no teacher's door.
        if (!member || returnsByCode(member) !== "yes") return fail<DoorCode>("ERR_RETURN_CODE");
        return ok(admit(member.classId, member.personId, request));
      });
    },
    joinDemo(request) {
      const demo = openDemo();
      if (!demo) return fail("ERR_NO_DEMO");
      const isFirst = rooms.sessionsOf(demo.id).length === 0 && !demo.habits.answered.includes("language");
      return stores.atomically(() => {
        const entry = enter(demo.id, request.role, request);
        const { language } = request;
        if (entry.ok && isFirst) stores.classes.setHabits(demo.id, { ...demo.habits, language });
        return entry;
      });
    },
  };
}

/** What a browser says of itself, in a word a teacher understands. */
export function nameDevice(userAgent: string): string {
  if (/iPhone/.test(userAgent)) return "iPhone";
  if (/iPad/.test(userAgent)) return "iPad";
  if (/Android/.test(userAgent)) return /Mobile/.test(userAgent) ? "Android phone" : "Android tablet";
  if (/Windows/.test(userAgent)) return "Windows computer";
  if (/CrOS/.test(userAgent)) return "Chromebook";
  if (/Mac OS X/.test(userAgent)) return "Mac";
  return /Linux/.test(userAgent) ? "Linux computer" : "Device";
}
