import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { SinkSheet } from "../../../../bot/chat/room/door-wire.ts";
import type { DoorSheet } from "../../../../bot/chat/room/wire.ts";
import { inventDemo } from "../../../../bot/demo/demo.ts";
import {
  DEMO_KEY,
  type OpenPage,
  openSocket,
  type RoomServer,
  startRoom,
  type Visitor,
} from "../../../support/room-server.ts";

let server: RoomServer;
let teacher: Visitor;
let sink: Visitor;

/** The demo class, of which a teacher has opened a device at the sink, and one more class. */
beforeEach(async () => {
  server = await startRoom({}, (stores, now) => {
    inventDemo(stores, "UTC", now);
    stores.classes.add("room:1", "Tuesday class", "UTC", false, now);
  });
  teacher = server.visitor();
  await teacher.joinDemo("Iris", "teacher");
  sink = server.visitor();
  await sink.joinDemo("Iris", "teacher");
  await sink.post("/api/sink/open", {});
});
afterEach(() => server.stop());

const bodyOf = async <T>(asking: Promise<Response>): Promise<T> => (await (await asking).json()) as T;
const faultOf = async (asking: Promise<Response>): Promise<string> =>
  (await bodyOf<{ error: { code: string } }>(asking)).error.code;
const statusOf = async (asking: Promise<Response>): Promise<number> => (await asking).status;
const sheetOf = (visitor: Visitor): Promise<SinkSheet> => bodyOf(visitor.get("/api/sink"));

async function add(name: string): Promise<string> {
  const { people } = await bodyOf<SinkSheet>(sink.post("/api/sink/add", { name }));
  return people.find((each) => each.name === name)?.id ?? "";
}

/** The device's page for one person. */
async function pageOf(personId: string): Promise<OpenPage> {
  const page = await openSocket(server.url, sink.cookie, server.url, `?as=${personId}`);
  page.send({ type: "hello", after: null });
  await page.hears("events");
  return page;
}

const PLAN = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20";

describe("a device at the sink", () => {
  test("is nobody's: whoever opened it is signed out of it, and it has no teacher's rights", async () => {
    expect(await bodyOf(sink.get("/api/me"))).toEqual({ state: "sink", speed: 1 });
    for (const path of ["/api/door", "/api/door/qr.svg"]) expect(await statusOf(sink.get(path))).toBe(403);
    for (const path of [
      "/api/door/rotate",
      "/api/door/passphrases",
      "/api/door/free",
      "/api/sink/open",
      "/api/sink/lock",
    ])
      expect(await faultOf(sink.post(path, {}))).toBe("ERR_FORBIDDEN");
    for (const path of ["/photos/1", "/pictures/1/0.svg", "/files/1/0"])
      expect(await statusOf(sink.get(path))).toBe(404);
    await expect(openSocket(server.url, sink.cookie)).rejects.toThrow("401");
  });

  test("is opened, locked and closed by a teacher alone", async () => {
    const student = server.visitor();
    await student.joinDemo("Mina");
    for (const who of [student, server.visitor(), sink])
      for (const path of ["/api/sink/open", "/api/sink/lock", "/api/sink/close"])
        expect(await faultOf(who.post(path, { id: 1, isLocked: true }))).toBe("ERR_FORBIDDEN");
    const secrets = server.room.firstSecrets.find(({ classKey }) => classKey === "room:1");
    const other = server.visitor();
    await other.post("/api/staff", {
      code: secrets?.joinCode,
      name: "Mr Rust",
      passphrase: secrets?.teacherPassphrase,
    });
    expect(await faultOf(other.post("/api/sink/close", { id: 1 }))).toBe("ERR_NOT_FOUND");
    expect(await faultOf(other.post("/api/sink/lock", { id: 1, isLocked: true }))).toBe("ERR_NOT_FOUND");
  });

  test("offers students who have no device of their own, and takes a new name", async () => {
    const phone = server.visitor();
    await phone.joinDemo("Mina");
    await add("Bo");
    const { people, names } = await sheetOf(sink);
    expect(people.map(({ name }) => name)).toEqual(["Bo"]);
    expect(names.map(({ name }) => name)).not.toContain("Mina");
    expect(names.map(({ name }) => name)).not.toContain("Iris");
    const mina = server.stores.members.findByName(1, "Mina")?.personId;
    const iris = server.stores.members.findByName(1, "Iris")?.personId;
    for (const personId of [mina, iris, "room:nobody"])
      expect(await faultOf(sink.post("/api/sink/choose", { personId }))).toBe("ERR_NAME_TAKEN");
    expect(await faultOf(sink.post("/api/sink/add", { name: "mina" }))).toBe("ERR_NAME_TAKEN");
    expect(await faultOf(sink.post("/api/sink/add", { name: "<b>" }))).toBe("ERR_NAME");
  });

  test("acts for who is chosen at it and nobody else, of this class or another", async () => {
    const bo = await add("Bo");
    const chosen = await pageOf(bo);
    await chosen.hears("welcome", ({ facts }) => facts.you.name === "Bo" && facts.you.role === "student");
    const stranger = server.stores.members.see(
      2,
      { id: "room:far", name: "Far" },
      "student",
      server.clock.now(),
    );
    const here = server.stores.members.see(
      1,
      { id: "room:near", name: "Near" },
      "student",
      server.clock.now(),
    );
    for (const { personId } of [stranger, here])
      await expect(openSocket(server.url, sink.cookie, server.url, `?as=${personId}`)).rejects.toThrow("401");
    // A phone cannot be somebody else that way.
    const phone = server.visitor();
    await phone.joinDemo("Mina");
    const page = await openSocket(server.url, phone.cookie, server.url, `?as=${bo}`);
    page.send({ type: "hello", after: null });
    expect((await page.hears("welcome")).facts.you.name).toBe("Mina");
  });

  test("calls what one does at a sink, and nothing that shows what others did", async () => {
    const page = await pageOf(await add("Bo"));
    await page.says(PLAN);
    expect(page.feed().at(-1)).toContain("P1");
    for (const line of [
      "/roll find",
      "/class board",
      "/mine erase name:Bo",
      "/batch status",
      "/class say text:hi",
    ]) {
      const before = page.got.length;
      await page.says(line);
      const refused = page.got.slice(before).find((each) => each.type === "refused");
      expect(refused, line).toMatchObject({ refusal: { code: "ERR_UNKNOWN_COMMAND" } });
    }
    page.send({ type: "complete", seq: 1, name: "roll find", option: "person", typed: "", others: {} });
    expect((await page.hears("choices")).choices).toEqual([]);
    page.send({ type: "watch", on: true });
    await page.hears("refused", ({ refusal }) => refusal.code === "ERR_NOT_YOURS");
  });

  test("is told what concerns its people, and nothing else of the class", async () => {
    const page = await pageOf(await add("Bo"));
    const phone = server.visitor();
    await phone.joinDemo("Mina");
    const mina = await phone.open();
    await page.says(`${PLAN} tank:2`);
    const said = {
      key: "k1",
      classKey: DEMO_KEY,
      channelRef: null,
      personId: null,
      mentions: [],
      dueAt: 0,
      text: "Mina spilt the fixer",
      actions: [],
      pictures: [],
      attachments: [],
      runs: [],
    };
    await server.room.send(said);
    await mina.hears("events", ({ events }) => events.some(({ text }) => text === said.text));
    await mina.says(PLAN);
    const again = await pageOf(server.stores.members.findByName(1, "Bo")?.personId ?? "");
    for (const text of [...page.feed(), ...again.feed()]) expect(text).not.toContain("Mina");
  });

  test("writes every press down for the person and the device, once", async () => {
    const bo = await add("Bo");
    const page = await pageOf(bo);
    for (let time = 0; time < 2; time += 1)
      page.send({ type: "line", id: "call-twice-1", text: `${PLAN} tank:2`, label: null });
    await page.hears("taken");
    await page.says("/run start");
    expect(server.stores.mine.gather(1, bo).presses.map(({ device, line }) => [device, line])).toEqual([
      ["Device", `${PLAN.slice(1)} tank:2`],
      ["Device", "run start"],
    ]);
  });

  test("locked, it goes on with films under way and begins nothing; closed, it is nobody's", async () => {
    const bo = await add("Bo");
    const page = await pageOf(bo);
    await page.says(`${PLAN} tank:2`);
    await page.says("/run start");
    const id = (await bodyOf<DoorSheet>(teacher.get("/api/door"))).sinks[0]?.id;
    expect(await statusOf(teacher.post("/api/sink/lock", { id, isLocked: true }))).toBe(200);
    expect(await sheetOf(sink)).toMatchObject({ isLocked: true, names: [], people: [{ name: "Bo" }] });
    expect(await faultOf(sink.post("/api/sink/add", { name: "Ada" }))).toBe("ERR_LOCKED");
    expect(await faultOf(sink.post("/api/sink/choose", { personId: bo }))).toBe("ERR_LOCKED");
    await page.says(PLAN);
    expect(page.got.at(-1)).toMatchObject({ type: "refused", refusal: { code: "ERR_UNKNOWN_COMMAND" } });
    await page.says("/run next run:1 step:0");
    await page.hears("views", ({ views }) => views[0]?.phase === "running");
    expect(await faultOf(sink.post("/api/sink/done", { personId: bo }))).toBe("ERR_RUN_OPEN");
    expect(await statusOf(teacher.post("/api/sink/close", { id }))).toBe(200);
    await page.hears("gone");
    expect(await bodyOf(sink.get("/api/me"))).toMatchObject({ state: "out" });
  });

  test("who becomes an aide, or is erased, is not acted for any more", async () => {
    const bo = await add("Bo");
    const page = await pageOf(bo);
    server.stores.members.setRole(1, bo, "aide");
    page.send({ type: "line", id: "call-aide-01", text: PLAN });
    await page.hears("gone");
    await expect(openSocket(server.url, sink.cookie, server.url, `?as=${bo}`)).rejects.toThrow("401");
  });
});

describe("a word to many at a sink", () => {
  test("reaches everybody chosen there, who have it once they say so; what else is said to all does not", async () => {
    const bo = await pageOf(await add("Bo"));
    const cem = await pageOf(await add("Cem"));
    const iris = await teacher.open();
    await iris.says("class say text:Fixer B4 is spent, use B5");
    await iris.says("class board");
    await server.pass(1);
    const isWord = ({ isWord: is }: { isWord: boolean }): boolean => is;
    const words = await Promise.all(
      [bo, cem].map(async (page) => {
        const { events } = await page.hears("events", (each) => each.events.some(isWord));
        return events.filter(isWord);
      }),
    );
    expect(words.map(([word]) => word?.text)).toEqual(
      Array.from({ length: 2 }, () => "**Iris:** Fixer B4 is spent, use B5"),
    );
    // Of the class's other entries a device that is everybody's shows none.
    expect([...bo.feed(), ...cem.feed()]).toHaveLength(2);

    await iris.says("class said");
    expect(iris.feed().at(-1)).toContain("**0 of 2** reached");
    bo.send({ type: "shown", id: words[0]?.[0]?.id });
    bo.send({ type: "ping", sentAt: 1 });
    await bo.hears("pong");
    await iris.says("class said");
    expect(iris.feed().at(-1)).toContain("**1 of 2** reached");
    expect(iris.feed().at(-1)).toContain("- Bo: has it since ");
    expect(iris.feed().at(-1)).toContain("- Cem: not shown yet");
    // Who comes to the sink afterwards is told as well.
    const dora = await pageOf(await add("Dora"));
    expect(dora.feed()).toEqual(["**Iris:** Fixer B4 is spent, use B5"]);
  });
});
