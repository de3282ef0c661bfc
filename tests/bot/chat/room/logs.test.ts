import { get, type IncomingMessage } from "node:http";
import { once } from "node:events";
import { afterEach, beforeEach, expect, test } from "vitest";
import { readCsv, readJson } from "../../../../commands/roll/export/file.ts";
import { readJson as readPrints } from "../../../../commands/print/export/file.ts";
import { aPrint } from "../../../support/print.ts";
import { aNewRoll } from "../../../support/rolls.ts";
import { startRoom, type RoomServer, type Visitor } from "../../../support/room-server.ts";

/* The log as a file, fetched from the page over real HTTP. */

/** Together more than is made ahead and than the connection holds. */
const MANY = 1000;
const AT_LENGTH = "thin ".repeat(4000);

let room: RoomServer;
let teacher: Visitor;
beforeEach(async () => {
  room = await startRoom();
  teacher = room.visitor();
  await teacher.joinDemo("Iris", "teacher");
});
afterEach(async () => {
  await room.stop();
});

function log(count: number, reason: string | null = null): void {
  const { stores } = room;
  const classId = stores.classes.list()[0]?.id ?? 0;
  stores.atomically(() => {
    for (let at = 0; at < count; at += 1)
      stores.rolls.add(aNewRoll({ classId, runId: null as never }, { reason }));
  });
}

async function asksFor(line: string): Promise<string> {
  const page = await teacher.open();
  const before = page.got.length;
  await page.says(line);
  const { events } = await page.hears(
    "events",
    (each) => page.got.indexOf(each) >= before && each.events.some(({ files }) => files.length > 0),
  );
  page.socket.close();
  return events.findLast(({ files }) => files.length > 0)?.files[0]?.href ?? "";
}

const numbers = (text: string): number[] => readCsv(text).map(({ roll }) => roll);
const downTo = (newest: number): number[] => Array.from({ length: newest }, (_, at) => newest - at);

async function begin(href: string): Promise<IncomingMessage> {
  const [response] = (await once(
    get(room.url + href, { headers: { cookie: teacher.cookie } }),
    "response",
  )) as [IncomingMessage];
  await once(response, "readable");
  return response;
}

test("comes whole, as what it is, and as often as it is fetched", async () => {
  log(120);
  const href = await asksFor("roll export");
  for (let time = 0; time < 2; time += 1) {
    const response = await teacher.get(href);
    expect(response.headers.get("content-disposition")).toBe('attachment; filename="log.csv"');
    expect(response.headers.get("content-type")).toBe("text/csv; charset=utf-8");
    expect(response.headers.get("cache-control")).toBe("private, no-store");
    expect(numbers(await response.text())).toEqual(downTo(120));
    log(1);
  }
  const json = await teacher.get(await asksFor("roll export as:json"));
  expect(json.headers.get("content-type")).toBe("application/json; charset=utf-8");
  expect(readJson(await json.text()).map(({ roll }) => roll)).toEqual(downTo(122));
});

test("of prints comes the same way, and as its own", async () => {
  const classId = room.stores.classes.list()[0]?.id ?? 0;
  for (let at = 0; at < 60; at += 1) room.stores.prints.add(aPrint({ classId, title: `${at}` }));
  const response = await teacher.get(await asksFor("print export as:json"));
  expect(response.headers.get("content-disposition")).toBe('attachment; filename="prints.json"');
  expect(readPrints(await response.text()).map((each) => each.print)).toEqual(downTo(60));
});

test("is there where nothing fits for a long stretch, and where nothing fits at all", async () => {
  log(300);
  const href = await asksFor("roll export from:2031-01-01");
  expect(numbers(await (await teacher.get(href)).text())).toEqual([]);
});

test("is made no faster than it is taken, and a fetch that breaks off loses nothing", async () => {
  log(MANY, AT_LENGTH);
  let slices = 0;
  const { slice } = room.stores.rolls;
  Object.assign(room.stores.rolls, {
    slice: (...asked: Parameters<typeof slice>) => {
      slices += 1;
      return slice(...asked);
    },
  });
  const href = await asksFor("roll export");
  expect(numbers(await (await teacher.get(href)).text())).toEqual(downTo(MANY));
  const all = slices;
  const stuck = await begin(href);
  // Another reader passes by the one that takes nothing more.
  expect(numbers(await (await teacher.get(href)).text())).toEqual(downTo(MANY));
  expect(slices).toBeGreaterThan(2 * all);
  expect(slices).toBeLessThan(3 * all);
  stuck.destroy();
  expect(numbers(await (await teacher.get(href)).text())).toEqual(downTo(MANY));
  expect(slices).toBeLessThan(4 * all);
});

test("is never taken for whole where the room stops in the middle", async () => {
  log(MANY, AT_LENGTH);
  const response = await begin(await asksFor("roll export"));
  const broken = once(response, "error");
  const stopped = room.room.stop();
  response.resume();
  expect(((await broken)[0] as NodeJS.ErrnoException).code).toBe("ECONNRESET");
  expect(response.complete).toBe(false);
  await stopped;
});

test("is for whom it was made, as long as they are a teacher", async () => {
  log(3);
  const href = await asksFor("roll export");
  for (const role of ["student", "teacher"] as const) {
    const other = room.visitor();
    await other.joinDemo("Ben", role);
    expect((await other.get(href)).status).toBe(404);
  }
  expect((await room.visitor().get(href)).status).toBe(404);
  expect((await teacher.get(href.replace(/\d+$/, "0"))).status).toBe(404);
  room.stores.db.exec("update members set role = 'aide' where name = 'Iris'");
  expect((await teacher.get(href)).status).toBe(404);
});
