import { afterEach, describe, expect, test } from "vitest";
import { inventDemo } from "../../../../bot/demo/demo.ts";
import { nameDevice } from "../../../../bot/chat/room/door.ts";
import { cleanName, isStaffWord, lookOf } from "../../../../bot/chat/room/names.ts";
import type { DoorSheet } from "../../../../bot/chat/room/wire.ts";
import { startRoom, type RoomServer, type Visitor } from "../../../support/room-server.ts";

let server: RoomServer | undefined;
afterEach(async () => {
  await server?.stop();
  server = undefined;
});

/** The demo and one more class, with what opens the latter. */
async function open() {
  const room = await startRoom({}, (stores, now) => {
    inventDemo(stores, "UTC", now);
    stores.classes.add("room:1", "Tuesday class", "UTC", false, now);
  });
  server = room;
  const secrets = room.room.firstSecrets.find(({ classKey }) => classKey === "room:1");
  if (!secrets) throw new Error("no secrets");
  const code = secrets.joinCode;
  const teacher = room.visitor();
  await teacher.post("/api/staff", { code, name: "Ms Teal", passphrase: secrets.teacherPassphrase });
  return { room, secrets, code, teacher };
}

async function codeOf(response: Response): Promise<string> {
  return ((await response.json()) as { error: { code: string } }).error.code;
}

async function whoIs(visitor: Visitor): Promise<unknown> {
  const me = (await (await visitor.get("/api/me")).json()) as { facts?: { you: unknown } };
  return me.facts?.you ?? null;
}

describe("the door", () => {
  test("the class code and a name let a student in, however the code is typed", async () => {
    const { room, code } = await open();
    const student = room.visitor();
    const typed = ` ${code.toLowerCase().replace("-", " ")} `;
    expect((await student.post("/api/join", { code: typed, name: "Amina" })).status).toBe(200);
    expect(await whoIs(student)).toMatchObject({ name: "Amina", role: "student" });
  });

  test("the cookie can be read by no script and is sent by no other site", async () => {
    const { room, code } = await open();
    const response = await room.visitor().post("/api/join", { code, name: "Amina" });
    const cookie = response.headers.get("set-cookie") ?? "";
    expect(cookie).toContain("HttpOnly");
    expect(cookie).toContain("SameSite=Strict");
  });

  test("a wrong code, a wrong passphrase and a name with signs in it stay outside", async () => {
    const { room, code } = await open();
    const visitor = room.visitor();
    expect(await codeOf(await visitor.post("/api/join", { code: "AAA-AAA", name: "Amina" }))).toBe(
      "ERR_CODE",
    );
    expect(await codeOf(await visitor.post("/api/join", { code, name: "<script>" }))).toBe("ERR_NAME");
    const wrong = { code, name: "Amina", passphrase: "aaaa-bbbb-cccc" };
    expect(await codeOf(await visitor.post("/api/staff", wrong))).toBe("ERR_PASSPHRASE");
    expect(visitor.cookie).toBe("");
  });

  test("the aide's passphrase makes an aide, the teacher's a teacher", async () => {
    const { room, code, secrets, teacher } = await open();
    const aide = room.visitor();
    await aide.post("/api/staff", { code, name: "Ole", passphrase: secrets.aidePassphrase });
    expect(await whoIs(aide)).toMatchObject({ role: "aide" });
    expect(await whoIs(teacher)).toMatchObject({ role: "teacher" });
  });

  test("a name is its owner's for good: signed out everywhere, they come back by a code, and nobody else does", async () => {
    const { room, code, teacher } = await open();
    const amina = room.visitor();
    await amina.post("/api/join", { code, name: "Amina" });
    const other = room.visitor();
    expect(await codeOf(await other.post("/api/join", { code, name: "aMINA" }))).toBe("ERR_NAME_TAKEN");

    const sheet = (await (await teacher.get("/api/door")).json()) as DoorSheet;
    const id = sheet.people.find(({ name }) => name === "Amina")?.id;
    const page = await amina.open();
    await teacher.post("/api/door/free", { personId: id });
    await page.hears("gone");
    expect(await whoIs(amina)).toBeNull();
    // A classmate who has the class's code has not the name, nor what is kept under it.
    expect(await codeOf(await other.post("/api/join", { code, name: "Amina" }))).toBe("ERR_NAME_TAKEN");
    const given = await teacher.post("/api/return/for", { personId: id });
    const own = ((await given.json()) as { code: string }).code;
    await other.post("/api/return", { code: own });
    expect(await whoIs(other)).toMatchObject({ id });
  });

  test.each(["Ms. Teal", "MsTeal", "Ms Téal", "Мѕ Теаl", "Ms Tea1", "ms  teal"])(
    "%s is read as Ms Teal, and refused",
    async (name) => {
      const { room, code } = await open();
      const answer = await codeOf(await room.visitor().post("/api/join", { code, name }));
      expect(["ERR_NAME_TAKEN", "ERR_NAME"]).toContain(answer);
    },
  );

  test("nobody but staff is called what staff are called", async () => {
    const { room, code } = await open();
    for (const name of ["Teacher", "Die Lehrkraft", "Аdmin", "aide-2"])
      expect(await codeOf(await room.visitor().post("/api/join", { code, name }))).toMatch(/^ERR_NAME/);
    expect((await room.visitor().post("/api/join", { code, name: "Tea" })).status).toBe(200);
  });

  test("a student cannot come back as the teacher by taking the teacher's name", async () => {
    const { room, code, teacher } = await open();
    await teacher.post("/api/leave", {});
    const student = room.visitor();
    expect(await codeOf(await student.post("/api/join", { code, name: "Ms Teal" }))).toBe("ERR_NAME_TAKEN");
  });

  test("a new code closes the old one and keeps those who are in", async () => {
    const { room, code, teacher } = await open();
    const amina = room.visitor();
    await amina.post("/api/join", { code, name: "Amina" });
    const sheet = (await (await teacher.post("/api/door/rotate", {})).json()) as DoorSheet;
    expect(sheet.joinCode).not.toBe(code);
    expect(await codeOf(await room.visitor().post("/api/join", { code, name: "Bo" }))).toBe("ERR_CODE");
    expect(await whoIs(amina)).toMatchObject({ name: "Amina" });
    expect((await room.visitor().post("/api/join", { code: sheet.joinCode, name: "Bo" })).status).toBe(200);
  });

  test("a new code signs out who came by the old one, if the teacher wants it; on the same device they come back", async () => {
    const { room, code, teacher } = await open();
    const amina = room.visitor();
    await amina.post("/api/join", { code, name: "Amina" });
    const id = (await whoIs(amina)) as { id: string };
    const page = await amina.open();
    const sheet = (await (await teacher.post("/api/door/rotate", { signOut: true })).json()) as DoorSheet;
    await page.hears("gone");
    expect(await whoIs(amina)).toBeNull();
    expect(await whoIs(teacher)).toMatchObject({ role: "teacher" });
    expect(sheet.people.find(({ name }) => name === "Amina")?.devices).toEqual([]);
    // Neither with the old code, nor anybody else with the new one.
    const back = { code: sheet.joinCode, name: "Amina" };
    expect(await codeOf(await amina.post("/api/join", { code, name: "Amina" }))).toBe("ERR_CODE");
    expect(await codeOf(await room.visitor().post("/api/join", back))).toBe("ERR_NAME_TAKEN");
    expect((await amina.post("/api/join", back)).status).toBe(200);
    expect(await whoIs(amina)).toMatchObject({ id: id.id });
  });

  test("new passphrases sign out other staff devices, if the teacher wants it", async () => {
    const { room, code, secrets, teacher } = await open();
    const aide = room.visitor();
    await aide.post("/api/staff", { code, name: "Ole", passphrase: secrets.aidePassphrase });
    const student = room.visitor();
    await student.post("/api/join", { code, name: "Amina" });
    await teacher.post("/api/door/passphrases", {});
    expect(await whoIs(aide)).toMatchObject({ role: "aide" });
    await teacher.post("/api/door/passphrases", { signOut: true });
    expect(await whoIs(aide)).toBeNull();
    expect(await whoIs(teacher)).toMatchObject({ role: "teacher" });
    expect(await whoIs(student)).toMatchObject({ name: "Amina" });
  });

  test("tries of the passphrase are limited", async () => {
    const { room, code } = await open();
    const visitor = room.visitor();
    const met = (await visitor.get("/api/me")).headers.get("set-cookie") ?? "";
    visitor.cookie = met.split(";")[0] ?? "";
    const answers: string[] = [];
    for (let index = 0; index < 12; index += 1) {
      const body = { code, name: "Amina", passphrase: `guess-${index}` };
      answers.push(await codeOf(await visitor.post("/api/staff", body)));
    }
    expect(answers[0]).toBe("ERR_PASSPHRASE");
    expect(answers[11]).toBe("ERR_TOO_OFTEN");
  });

  test("leaving ends the session for good", async () => {
    const { room, code } = await open();
    const amina = room.visitor();
    await amina.post("/api/join", { code, name: "Amina" });
    const kept = amina.cookie;
    await amina.post("/api/leave", {});
    amina.cookie = kept;
    expect(await whoIs(amina)).toBeNull();
  });

  test("the demo has no code on loopback, and none of its open doors beyond it", async () => {
    const { room } = await open();
    expect((await room.visitor().joinDemo("Mina")).status).toBe(200);
    await server?.stop();
    const open2 = await startRoom({ host: "0.0.0.0" });
    server = open2;
    const url = open2.url.replace(/\/\/[^:]+/, "//127.0.0.1");
    const me = await fetch(`${url}/api/me`);
    expect(await me.json()).toEqual({ state: "out", demo: null });
  });
});

describe("names", () => {
  test.each(["Amina", "Zoë", "O'Neil", "Jean-Luc P.", "李雷", "Ана", "Student 7"])("%s is a name", (name) => {
    expect(cleanName(name)).toBe(name);
  });
  test.each(["\u3164", "Ben\u115f", "Ben\u200d", "Bеn", "Βen", "Z\u0300\u0301\u0302\u0303oe"])(
    "%j shows nothing, or mixes alphabets, or hides in accents",
    (name) => expect(cleanName(name)).toBeUndefined(),
  );
  test("two that look alike have one look, and two that don't have two", () => {
    expect(new Set(["Ola", "o l a", "О1а", "Ola."].map(lookOf)).size).toBe(1);
    expect(new Set(["Ian", "Lan", "Anna B", "Anna C", "Student 1", "Student 11"].map(lookOf)).size).toBe(6);
    expect(["Teal", "Botha", "Stefan"].filter(isStaffWord)).toEqual([]);
  });
  test.each(["", "  ", "<b>x</b>", "a@b", "x\u202ey", "x".repeat(41), "**bold**", "a\nb".repeat(30), ".dot"])(
    "%j is none",
    (name) => {
      expect(cleanName(name)).toBeUndefined();
    },
  );
});

test("a device is named in a word, not by its browser's whole story", () => {
  expect(nameDevice("Mozilla/5.0 (iPhone; CPU iPhone OS 18_0 like Mac OS X)")).toBe("iPhone");
  expect(nameDevice("Mozilla/5.0 (Linux; Android 14; K) Chrome/130 Mobile Safari/537.36")).toBe(
    "Android phone",
  );
  expect(nameDevice("<script>alert(1)</script>")).toBe("Device");
});
