import { afterEach, describe, expect, test } from "vitest";
import type { ReturnCode } from "../../../../bot/chat/room/door-wire.ts";
import type { DoorSheet } from "../../../../bot/chat/room/wire.ts";
import { startRoom, type RoomServer, type Visitor } from "../../../support/room-server.ts";

let server: RoomServer;
afterEach(() => server.stop());

/** Two classes with a code each, and people in the first. */
async function open() {
  server = await startRoom({}, (stores, now) => {
    stores.classes.add("room:1", "Tuesday class", "UTC", false, now);
    stores.classes.add("room:2", "Friday class", "UTC", false, now);
  });
  const [first, second] = server.room.firstSecrets;
  if (!first || !second) throw new Error("no secrets");
  const staff = async (name: string, passphrase: string, code = first.joinCode): Promise<Visitor> => {
    const visitor = server.visitor();
    await visitor.post("/api/staff", { code, name, passphrase });
    return visitor;
  };
  const join = async (name: string, code = first.joinCode): Promise<Visitor> => {
    const visitor = server.visitor();
    await visitor.post("/api/join", { code, name });
    return visitor;
  };
  return { first, second, staff, join };
}

const bodyOf = async <T>(asking: Promise<Response>): Promise<T> => (await (await asking).json()) as T;
const faultOf = async (asking: Promise<Response>): Promise<string> =>
  (await bodyOf<{ error: { code: string } }>(asking)).error.code;
const whoIs = async (visitor: Visitor): Promise<{ id: string; name: string; role: string } | null> =>
  (await bodyOf<{ facts?: { you: { id: string; name: string; role: string } } }>(visitor.get("/api/me")))
    .facts?.you ?? null;

describe("a new phone", () => {
  test("takes the place of its person with the code that the old one shows, however it is typed", async () => {
    const { join } = await open();
    const old = await join("Amina");
    const { code, name, until } = await bodyOf<ReturnCode>(old.post("/api/return/own", {}));
    expect(name).toBe("Amina");
    expect(until).toBe(server.clock.now() + 600_000);
    const fresh = server.visitor();
    const response = await fresh.post("/api/return", { code: ` ${code.toLowerCase().replace("-", " ")}` });
    expect(response.status).toBe(200);
    expect(await whoIs(fresh)).toEqual(await whoIs(old));
    // Both are in, until one is left.
    expect(await whoIs(old)).not.toBeNull();
  });

  test("gets the code from an aide where the old one is lost, and the aide's role is none of it", async () => {
    const { first, staff, join } = await open();
    const amina = await whoIs(await join("Amina"));
    const aide = await staff("Ole", first.aidePassphrase);
    const { code } = await bodyOf<ReturnCode>(aide.post("/api/return/for", { personId: amina?.id }));
    const fresh = server.visitor();
    await fresh.post("/api/return", { code });
    expect(await whoIs(fresh)).toEqual({ ...amina, role: "student" });
  });

  test("a code works once, not after ten minutes, and not where a newer one was drawn", async () => {
    const { join } = await open();
    const old = await join("Amina");
    const draw = async (): Promise<string> =>
      (await bodyOf<ReturnCode>(old.post("/api/return/own", {}))).code;
    const first = await draw();
    const second = await draw();
    expect(await faultOf(server.visitor().post("/api/return", { code: first }))).toBe("ERR_RETURN_CODE");
    expect((await server.visitor().post("/api/return", { code: second })).status).toBe(200);
    expect(await faultOf(server.visitor().post("/api/return", { code: second }))).toBe("ERR_RETURN_CODE");
    const late = await draw();
    server.clock.advance(600);
    expect(await faultOf(server.visitor().post("/api/return", { code: late }))).toBe("ERR_RETURN_CODE");
  });

  test("nobody gets a code for a teacher, and no student, stranger or other class gives one", async () => {
    const { first, second, staff, join } = await open();
    const student = await join("Amina");
    const id = (await whoIs(student))?.id;
    const teacher = await staff("Ms Teal", first.teacherPassphrase);
    const aide = await staff("Ole", first.aidePassphrase);
    const other = await staff("Mr Rust", second.teacherPassphrase, second.joinCode);
    const forWhom = { personId: id };
    const teacherId = (await whoIs(teacher))?.id;
    expect(await faultOf(server.visitor().post("/api/return/own", {}))).toBe("ERR_SIGNED_OUT");
    expect(await faultOf(server.visitor().post("/api/return/for", forWhom))).toBe("ERR_FORBIDDEN");
    expect(await faultOf(student.post("/api/return/for", forWhom))).toBe("ERR_FORBIDDEN");
    expect(await faultOf(other.post("/api/return/for", forWhom))).toBe("ERR_FORBIDDEN");
    expect(await faultOf(aide.post("/api/return/for", { personId: teacherId }))).toBe("ERR_FORBIDDEN");
    expect(await faultOf(teacher.post("/api/return/for", { personId: teacherId }))).toBe("ERR_BY_PASSPHRASE");
    expect(await faultOf(teacher.post("/api/return/own", {}))).toBe("ERR_BY_PASSPHRASE");
  });

  test("a code of somebody who became a teacher meanwhile opens nothing", async () => {
    const { join } = await open();
    const old = await join("Amina");
    const { code } = await bodyOf<ReturnCode>(old.post("/api/return/own", {}));
    server.stores.members.setRole(1, (await whoIs(old))?.id ?? "", "teacher");
    expect(await faultOf(server.visitor().post("/api/return", { code }))).toBe("ERR_RETURN_CODE");
  });

  test("tries are limited", async () => {
    await open();
    const visitor = server.visitor();
    const met = (await visitor.get("/api/me")).headers.get("set-cookie") ?? "";
    visitor.cookie = met.split(";")[0] ?? "";
    const faults: string[] = [];
    for (let index = 0; index < 12; index += 1)
      faults.push(await faultOf(visitor.post("/api/return", { code: `aaa-b${index}` })));
    expect(faults[9]).toBe("ERR_RETURN_CODE");
    expect(faults[10]).toBe("ERR_TOO_OFTEN");
  });

  test("the device that was somebody else's is that no more", async () => {
    const { join } = await open();
    const old = await join("Amina");
    const shared = await join("Bo");
    const { code } = await bodyOf<ReturnCode>(old.post("/api/return/own", {}));
    const bos = shared.cookie;
    await shared.post("/api/return", { code });
    expect((await whoIs(shared))?.name).toBe("Amina");
    shared.cookie = bos;
    expect(await whoIs(shared)).toBeNull();
  });
});

test("whoever leaves a device while their film runs is asked first", async () => {
  server = await startRoom();
  const mina = server.visitor();
  await mina.joinDemo("Mina");
  const page = await mina.open();
  await page.says("/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1");
  await page.says("/run start");
  expect(await faultOf(mina.post("/api/leave", {}))).toBe("ERR_RUN_OPEN");
  expect(await whoIs(mina)).not.toBeNull();
  expect((await mina.post("/api/leave", { isSure: true })).status).toBe(200);
  const teacher = server.visitor();
  await teacher.joinDemo("Iris", "teacher");
  const sheet = await bodyOf<DoorSheet>(teacher.get("/api/door"));
  expect(sheet.people.find(({ name }) => name === "Mina")?.devices).toEqual([]);
});
