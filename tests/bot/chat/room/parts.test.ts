import { get } from "node:http";
import { gunzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { FeedEvent, ToPage } from "../../../../bot/chat/room/wire.ts";
import { startRoom, type OpenPage, type RoomServer, type Visitor } from "../../../support/room-server.ts";

/* What a slow network is asked to carry: the newest first, what has changed, and nothing twice. */

let room: RoomServer;
beforeAll(async () => {
  room = await startRoom();
});
afterAll(() => room.stop());

async function enter(name: string, role: "student" | "teacher" = "student"): Promise<Visitor> {
  const visitor = room.visitor();
  await visitor.joinDemo(name, role);
  return visitor;
}

const of = <T extends ToPage["type"]>(page: OpenPage, type: T): Extract<ToPage, { type: T }>[] =>
  page.got.filter((each): each is Extract<ToPage, { type: T }> => each.type === type);

describe("a long feed", () => {
  const ENTRIES = 70;
  let visitor: Visitor;
  beforeAll(async () => {
    visitor = await enter("Lene");
    const { personId = "" } = room.stores.members.findByName(1, "Lene") ?? {};
    const body = { kind: "notice", text: "invented" };
    for (let at = 0; at < ENTRIES; at += 1)
      room.stores.messages.add({
        classId: 1,
        personId,
        authorId: null,
        key: null,
        at: room.clock.now(),
        body,
      });
  });

  test("comes from its end, and part after part as the page asks, each entry once and in order", async () => {
    const page = await visitor.open();
    const newest = await page.hears("events", ({ isReset }) => isReset);
    expect(newest.events.length).toBeLessThan(ENTRIES / 2);
    let shown: readonly FeedEvent[] = newest.events;
    for (let before = newest.earlier; before !== null;) {
      const asked = of(page, "earlier").length;
      page.send({ type: "earlier", before });
      const part = await page.hears("earlier", (each) => of(page, "earlier").indexOf(each) >= asked);
      shown = [...part.events, ...shown];
      before = part.earlier;
    }
    const all = room.stores.messages.newest(
      1,
      room.stores.members.findByName(1, "Lene")?.personId ?? "",
      1000,
    );
    expect(shown.map(({ id }) => id)).toEqual(all.map(({ id }) => id));
    expect(shown.length).toBeGreaterThanOrEqual(ENTRIES);
  });

  test("that is missed for a while comes whole and without a reset", async () => {
    const all = room.stores.messages.newest(
      1,
      room.stores.members.findByName(1, "Lene")?.personId ?? "",
      1000,
    );
    const page = await visitor.open(all[all.length - 61]?.id);
    const { events, isReset, earlier } = await page.hears("events");
    expect([events.length, isReset, earlier]).toEqual([60, false, null]);
  });
});

test("the wall is told once, and then only of the run that has changed, or that one has gone", async () => {
  for (const [name, tank] of [
    ["Mina", 1],
    ["Jo", 2],
  ] as const) {
    const own = await (await enter(name)).open();
    await own.says(`/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:${tank}`);
    await own.says("/run start");
  }
  const teacher = await (await enter("Demo teacher", "teacher")).open();
  teacher.send({ type: "watch", on: true });
  const { order } = await teacher.hears("wall", ({ rows }) => rows.length === 2);

  const jo = await room.stores.members.findByName(1, "Jo");
  const [joRun] = room.stores.runs.open(1, jo?.personId ?? "");
  const page = await (await enter("Kim")).open();
  await teacher.says("/run status");
  expect(of(teacher, "wall")).toHaveLength(1);

  await teacher.says(`/run next run:${joRun?.number} step:0`);
  const changed = await teacher.hears("wall", (each) => of(teacher, "wall").indexOf(each) === 1);
  expect(changed.order).toEqual(order);
  expect(changed.rows.map(({ owner, phase }) => [owner, phase])).toEqual([["Jo", "running"]]);

  await teacher.says(`/run stop run:${joRun?.number} sure:yes`);
  const gone = await teacher.hears("wall", (each) => each.order.length === 1);
  expect(gone.rows).toEqual([]);
  page.socket.close();
});

describe("the cards of the commands", () => {
  /** Without the client's own unpacking. */
  const fetchRaw = (visitor: Visitor, headers: Record<string, string>) =>
    new Promise<{ status: number; headers: NodeJS.Dict<string | string[]>; body: Buffer }>(
      (resolve, reject) => {
        get(
          `${room.url}/api/commands?language=de`,
          { headers: { cookie: visitor.cookie, ...headers } },
          (response) => {
            const parts: Buffer[] = [];
            response.on("data", (part: Buffer) => parts.push(part));
            response.on("end", () =>
              resolve({
                status: response.statusCode ?? 0,
                headers: response.headers,
                body: Buffer.concat(parts),
              }),
            );
          },
        ).on("error", reject);
      },
    );

  test("go out compressed, a seventh of their size, to whoever reads that", async () => {
    const teacher = await enter("Iris", "teacher");
    const plain = await fetchRaw(teacher, {});
    const packed = await fetchRaw(teacher, { "accept-encoding": "gzip, deflate" });
    expect(packed.headers["content-encoding"]).toBe("gzip");
    expect(plain.headers["content-encoding"]).toBeUndefined();
    expect(gunzipSync(packed.body).equals(plain.body)).toBe(true);
    expect(packed.body.length * 6).toBeLessThan(plain.body.length);
  });

  test("are not sent again to a page that has them; a teacher's are not a student's", async () => {
    const [teacher, student] = [await enter("Ada", "teacher"), await enter("Ben")];
    const first = await fetchRaw(teacher, {});
    const again = await fetchRaw(teacher, { "if-none-match": String(first.headers["etag"]) });
    expect([again.status, again.body.length]).toEqual([304, 0]);
    const other = await fetchRaw(student, { "if-none-match": String(first.headers["etag"]) });
    expect(other.status).toBe(200);
    expect(other.body.length).toBeLessThan(first.body.length);
  });
});
