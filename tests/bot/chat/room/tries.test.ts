import { afterEach, describe, expect, test } from "vitest";
import { createTries } from "../../../../bot/chat/room/tries.ts";
import { startRoom, type RoomServer, type Visitor } from "../../../support/room-server.ts";

let server: RoomServer;
afterEach(() => server?.stop());

async function open() {
  server = await startRoom({}, (stores, now) => {
    stores.classes.add("room:1", "Tuesday class", "UTC", false, now);
  });
  const [secrets] = server.room.firstSecrets;
  if (!secrets) throw new Error("no secrets");
  const teacher = server.visitor();
  const staff = { code: secrets.joinCode, name: "Ms Teal", passphrase: secrets.teacherPassphrase };
  await teacher.post("/api/staff", staff);
  return { code: secrets.joinCode, staff, teacher };
}

/** A phone that has opened the page. */
async function phone(): Promise<Visitor> {
  const visitor = server.visitor();
  const set = (await visitor.get("/api/me")).headers.get("set-cookie") ?? "";
  visitor.cookie = set.split(";")[0] ?? "";
  return visitor;
}

const guess = async (visitor: Visitor, code = "aaa-aaa"): Promise<number> => {
  const { cookie } = visitor;
  const { status } = await visitor.post("/api/join", { code, name: "Nobody" });
  visitor.cookie = cookie;
  return status;
};

describe("thirty honest students behind one address", () => {
  test("each mistype the code four times, and then all are in", async () => {
    const { code } = await open();
    const entered: number[] = [];
    for (let index = 0; index < 30; index += 1) {
      const student = await phone();
      for (let wrong = 0; wrong < 4; wrong += 1) expect(await guess(student)).toBe(403);
      entered.push((await student.post("/api/join", { code, name: `Student ${index + 1}` })).status);
    }
    expect(entered).toEqual(Array.from({ length: 30 }, () => 200));
  });

  test("are heard while somebody among them guesses without end, and the teacher is told once", async () => {
    const { code, staff } = await open();
    const early = await phone();
    server.clock.advance(1);
    const guesses: number[] = [];
    // It forgets who it is after each try.
    for (let index = 0; index < 300; index += 1) guesses.push(await guess(server.visitor()));
    expect(guesses.slice(0, 121)).toEqual(Array.from({ length: 121 }, () => 403));
    // From then on one a second, and no second passes here.
    expect(guesses.filter((status) => status === 403).length).toBeLessThanOrEqual(122);
    expect((await early.post("/api/join", { code, name: "Amina" })).status).toBe(200);
    server.clock.advance(2);
    expect((await (await phone()).post("/api/staff", staff)).status).toBe(200);
    await server.pass(0);
    const told = server.stores.db
      .prepare("select body ->> 'text' as text from messages where key like 'd:%.storm.%'")
      .all() as { text: string }[];
    expect(told.map(({ text }) => text)).toEqual([
      expect.stringMatching(/\*\*Many wrong codes or passphrases\*\* .* from 127\.0\.0\.1\./),
    ]);
  });

  test("one device that guesses waits longer and longer; the teacher beside it is let in", async () => {
    const { code, staff } = await open();
    const wrong = await phone();
    const answers: (string | null)[] = [];
    for (let index = 0; index < 12; index += 1) {
      const { status, headers } = await wrong.post("/api/staff", { ...staff, passphrase: `guess-${index}` });
      answers.push(status === 429 ? headers.get("retry-after") : null);
      if (status === 429) server.clock.advance(Number(headers.get("retry-after")));
    }
    expect(answers.filter((wait) => wait !== null).length).toBeGreaterThan(0);
    expect((await (await phone()).post("/api/staff", staff)).status).toBe(200);
    expect((await (await phone()).post("/api/join", { code, name: "Amina" })).status).toBe(200);
  }, 30_000);
});

test("anonymous calls use up nobody's share: not the teacher's, not a socket's that comes back", async () => {
  const { teacher } = await open();
  for (let index = 0; index < 10; index += 1)
    expect((await server.visitor().post("/api/door/rotate", {})).status).toBeGreaterThanOrEqual(400);
  expect((await teacher.post("/api/door/rotate", {})).status).toBe(200);
  const load = async (): Promise<number> => (await fetch(`${server.url}/api/me`)).status;
  const loads: number[] = [];
  // Not all at once: a busy machine would take longer to connect them than a client waits.
  while (loads.length < 1600) loads.push(...(await Promise.all(Array.from({ length: 50 }, load))));
  expect(loads).toContain(429);
  await teacher.open();
  expect((await teacher.get("/api/door")).status).toBe(200);
});

test("waits double with each wrong try, up to five minutes, and tries are forgiven with time", () => {
  const tries = createTries(() => {});
  const knock = { device: "d", address: "10.0.0.1" };
  const waits: number[] = [];
  let now = 0;
  for (let index = 0; index < 18; index += 1) {
    waits.push(tries.waitMs(knock, now));
    now += tries.waitMs(knock, now);
    tries.wrong(knock, now);
  }
  expect(waits).toEqual([
    ...Array<number>(10).fill(0),
    5000,
    10_000,
    20_000,
    40_000,
    80_000,
    160_000,
    300_000,
    300_000,
  ]);
  const storms: string[] = [];
  const others = createTries((address) => storms.push(address));
  const stranger = { device: undefined, address: "10.0.0.2" };
  for (let index = 0; index < 130; index += 1) others.wrong(stranger, 0);
  expect(others.waitMs(stranger, 0)).toBe(0);
  expect(others.waitMs(stranger, 0)).toBe(1000);
  expect(others.waitMs({ ...stranger, address: "10.0.0.3" }, 0)).toBe(0);
  // Five minutes later nobody remembers.
  expect([others.waitMs(stranger, 400_000), others.waitMs(stranger, 400_000)]).toEqual([0, 0]);
  expect(storms).toEqual(["10.0.0.2"]);
});
