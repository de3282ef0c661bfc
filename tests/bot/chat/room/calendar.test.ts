import { afterEach, beforeEach, expect, test } from "vitest";
import { inventDemo } from "../../../../bot/demo/demo.ts";
import type { DoorSheet } from "../../../../bot/chat/room/wire.ts";
import { startRoom, type RoomServer, type Visitor } from "../../../support/room-server.ts";

/* Who may open the class's calendar to the world, and who reads it. */

let room: RoomServer;
let teacher: Visitor;
let student: Visitor;

beforeEach(async () => {
  room = await startRoom({}, (stores, now) => inventDemo(stores, "UTC", now));
  [teacher, student] = [room.visitor(), room.visitor()];
  await teacher.joinDemo("Iris", "teacher");
  await student.joinDemo("Mina");
});
afterEach(() => room.stop());

async function set(visitor: Visitor, isOn: boolean): Promise<string> {
  const answer = await visitor.post("/api/door/calendar", { isOn });
  expect(answer.status).toBe(200);
  return ((await answer.json()) as DoorSheet).calendarUrl ?? "";
}

test("none is open until the teacher opens it; then whoever has the address reads it, without a session", async () => {
  expect((await student.post("/api/door/calendar", { isOn: true })).status).toBe(403);
  expect(room.stores.db.prepare("select calendar_token as token from classes").get()).toEqual({
    token: null,
  });
  const calendarUrl = await set(teacher, true);
  const answer = await fetch(calendarUrl);
  expect(answer.status).toBe(200);
  expect(answer.headers.get("content-type")).toBe("text/calendar; charset=utf-8");
  const text = await answer.text();
  expect(text).toMatch(/^BEGIN:VCALENDAR\r\n/);
  expect(text).not.toMatch(/Iris|Mina/);
});

test("another address ends the first; closed, there is none", async () => {
  const first = await set(teacher, true);
  const second = await set(teacher, true);
  expect((await fetch(first)).status).toBe(404);
  expect((await fetch(second)).status).toBe(200);
  expect(await set(teacher, false)).toBe("");
  expect((await fetch(second)).status).toBe(404);
});

test.each(["", "x", "a".repeat(43), "%27%20or%201=1", "..%2f..%2fetc"])(
  "a guess (%s) finds nothing, and many are stopped",
  async (guess) => {
    await set(teacher, true);
    const statuses = [];
    for (let tries = 0; tries < 25; tries += 1)
      statuses.push((await fetch(`${room.url}/calendar/${guess}.ics`)).status);
    expect(new Set(statuses.slice(0, 20))).toEqual(new Set([404]));
    expect(statuses.at(-1)).toBe(429);
  },
);
