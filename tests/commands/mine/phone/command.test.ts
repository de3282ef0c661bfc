import { describe, expect, it } from "vitest";
import { createRoom, type Room } from "../../../support/room.ts";

function codeOf(room: Room, person: string, line: string, role?: "aide" | "teacher"): string {
  const { reply } = room.asks(person, line, role);
  return String(reply.fields?.["code"]).toLowerCase().replace("-", "");
}

describe("a code for another device", () => {
  it("is the person's own, and says until when it can be used", () => {
    const room = createRoom();
    const text = room.says("Mina", "/mine phone");
    expect(text).toMatch(/^\*\*[A-Z0-9]{3}-[A-Z0-9]{3}\*\* is your code until 18:10:00, for one use\./);
    const code = codeOf(room, "Mina", "/mine phone");
    expect(room.stores.returnCodes.take(code, room.clock.now())).toEqual({
      classId: 1,
      personId: "room:mina",
    });
  });

  it("is given by an aide to a student, and by no student to anybody", () => {
    const room = createRoom();
    room.says("Mina", "/help");
    const code = codeOf(room, "Ole", "/class phone person:mina", "aide");
    expect(room.stores.returnCodes.take(code, room.clock.now())?.personId).toBe("room:mina");
    expect(room.asks("Bo", "/class phone person:Mina").code).toBe("ERR_ROLE");
    expect(room.asks("Ole", "/class phone person:Nobody", "aide").code).toBe("ERR_UNKNOWN_PERSON");
  });

  it("opens no teacher's door: a teacher has the passphrase", () => {
    const room = createRoom();
    room.says("Iris", "/help", "teacher");
    expect(room.asks("Iris", "/mine phone", "teacher").code).toBe("ERR_BY_PASSPHRASE");
    expect(room.asks("Ole", "/class phone person:Iris", "aide").code).toBe("ERR_NOT_YOURS");
    expect(room.asks("Tom", "/class phone person:Iris", "teacher").code).toBe("ERR_BY_PASSPHRASE");
  });

  it("is worded in German for whoever reads German", () => {
    const room = createRoom();
    room.says("Mina", "/mine language language:de");
    expect(room.says("Mina", "/mine phone")).toMatch(
      /ist dein Code, bis 18:10:00 und für ein einziges Mal\./,
    );
  });
});

describe("the store's codes", () => {
  it("work once, only the newest of a person, and for ten minutes", () => {
    const { stores, says, clock } = createRoom();
    says("Mina", "/help");
    const now = clock.now();
    const old = stores.returnCodes.give(1, "room:mina", now);
    const { code, until } = stores.returnCodes.give(1, "room:mina", now);
    expect(stores.returnCodes.take(old.code, now)).toBeUndefined();
    expect(stores.returnCodes.take(code, until)).toBeUndefined();
    expect(stores.returnCodes.take(code, until - 1)?.personId).toBe("room:mina");
    expect(stores.returnCodes.take(code, until - 1)).toBeUndefined();
  });

  it("are kept as hashes only, and go with the person", () => {
    const { stores, says, clock } = createRoom();
    says("Mina", "/help");
    const { code } = stores.returnCodes.give(1, "room:mina", clock.now());
    expect(JSON.stringify(stores.db.prepare("select * from return_codes").all())).not.toContain(code);
    says("Mina", "/mine erase name:Mina");
    expect(stores.db.prepare("select * from return_codes").all()).toEqual([]);
    expect(stores.returnCodes.take(code, clock.now())).toBeUndefined();
  });
});
