import { PermissionFlagsBits } from "discord-api-types/v10";
import { afterEach, beforeEach, expect, test } from "vitest";
import { writeCsv } from "../../commands/sheet/csv.ts";
import { openClassroom } from "../support/gateway/classroom.ts";
import type { SentFile } from "../support/gateway/interactions.ts";
import { STUDENT_PERMISSIONS, type User } from "../support/gateway/world.ts";
import { aSheet } from "../support/make.ts";

/* Tables of times and calendars come as the files they are, with their lines. */

let classroom: Awaited<ReturnType<typeof openClassroom>>;
let teacher: User;

beforeEach(async () => {
  classroom = await openClassroom();
  const permissions = STUDENT_PERMISSIONS | PermissionFlagsBits.ManageGuild;
  teacher = classroom.gateway.addUser("Iris", { permissions });
});
afterEach(async () => {
  const { violations } = classroom.gateway;
  await classroom.stop();
  expect(violations).toEqual([]);
});

const csv = writeCsv([aSheet({ film: "Größe 400" })]);
const send = async (command: string, file: SentFile): Promise<string> =>
  (await classroom.gateway.slash(teacher, command, { file })).text;
const films = () => classroom.stores.sheets.list(classroom.stores.classes.list()[0]?.id ?? 0);

test.each([
  ["UTF-8", Buffer.from(csv)],
  ["UTF-8 with its mark and the line ends of Windows", Buffer.from(`\uFEFF${csv.replaceAll("\n", "\r\n")}`)],
  ["UTF-16", Buffer.from(`\uFEFF${csv}`, "utf16le")],
  ["Windows' own letters", Buffer.from(csv, "latin1")],
])("a table in %s is read", async (_, data) => {
  expect(await send("sheet import", { name: "times.csv", type: "text/csv; charset=utf-8", data })).toContain(
    "1 new",
  );
  expect(films()).toMatchObject([{ sheet: { film: "Größe 400" } }]);
});

test("a fault in it is told with its line, and nothing is kept", async () => {
  const broken = csv.replace(/(\n[^\n]*?),400,/, "$1,fast,");
  expect(broken).not.toBe(csv);
  const text = await send("sheet import", { name: "times.csv", type: "text/csv", data: Buffer.from(broken) });
  expect(text).toMatch(/Line 2/);
  expect(films()).toEqual([]);
});

test.each([
  ["a picture", { name: "a.png", type: "image/png", data: Buffer.from(csv) }, "is no text I can read"],
  [
    "bytes that are no text",
    { name: "a.csv", type: "text/csv", data: Buffer.from([1, 0, 2, 0]) },
    "is no text I can read",
  ],
  [
    "too much",
    { name: "a.csv", type: "text/csv", data: Buffer.from(csv), size: 3 * 1024 * 1024 },
    "The file has 3 MB; at most 1",
  ],
  [
    "a file that lies elsewhere",
    { name: "a.csv", type: "text/csv", data: Buffer.from(csv), url: "http://127.0.0.1:9/a.csv" },
    "could not be fetched",
  ],
])("%s is refused in a sentence", async (_, file, words) => {
  expect(await send("sheet import", file)).toContain(words);
  expect(films()).toEqual([]);
});

test("a calendar's weekly events become periods", async () => {
  const ics = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//invented//calendar//EN",
    "BEGIN:VEVENT",
    "UID:1@invented.example",
    "DTSTART:20260105T180000",
    "DTEND:20260105T203000",
    "RRULE:FREQ=WEEKLY;BYDAY=MO",
    "SUMMARY:Evening class",
    "END:VEVENT",
    "END:VCALENDAR",
    "",
  ].join("\r\n");
  const file = { name: "class.ics", type: "text/calendar", data: Buffer.from(ics) };
  expect(await send("class periods", file)).toContain("Monday 18:00-20:30");
});
