import { beforeEach, expect, test } from "vitest";
import { englishIn } from "../../support/english.ts";
import { createRoom, type Room } from "../../support/room.ts";

/* White light: who has paper open? */

let room: Room;
/** Everything said to one person alone. */
const heardBy = (person: string): string =>
  room.heard
    .filter(({ personId }) => personId === `room:${person.toLowerCase()}`)
    .map(({ text }) => text)
    .join("\n");
const start = (person: string): void => {
  room.says(person, "/tray plan paper:resin-coated temp:20C");
  room.says(person, "/run start");
};

beforeEach(() => {
  room = createRoom();
  room.says("Tess", "/help", "teacher");
});

test("prints that are not fixed are named, with when they will be, and nobody is warned", async () => {
  start("Mina");
  room.says("Mina", "/run next");
  const refused = room.asks("Tess", "/tray lights", "teacher");
  expect(refused.code).toBe("ERR_PAPER_OPEN");
  // 60 s developer, 30 s stop, 60 s fixer.
  expect(refused.reply.text).toMatch(/\*\*Not yet: a print is not fixed\.\*\*.*\n- R1, Mina: fixed at/);
  await room.pass(1);
  expect(heardBy("Mina")).not.toContain("White light");
});

test("all at the trays are warned, those who have only planned as well; others are left alone", async () => {
  start("Mina");
  room.says("Ben", "/tray plan paper:fibre temp:20C");
  room.says("Kim", "/help");
  expect(room.says("Tess", "/tray lights in:30 s", "teacher")).toContain(
    "**2 people at the trays warned: white light at",
  );
  await room.pass(1);
  for (const person of ["Mina", "Ben"]) expect(heardBy(person)).toContain("**White light in 30 s, at");
  expect(heardBy("Kim")).toBe("");
});

test("whoever has paper open calls to wait, and whoever asked hears it at once, and once", async () => {
  start("Mina");
  room.says("Tess", "/tray lights", "teacher");
  await room.pass(1);
  expect(room.says("Mina", "/tray wait")).toContain("Tess has been told.");
  room.says("Mina", "/tray wait");
  await room.pass(1);
  const told = room.heard.filter(
    ({ personId, text }) => personId === "room:tess" && text.includes("Leave the light off"),
  );
  expect(told.map(({ text }) => text)).toEqual(["**Leave the light off: Mina has paper open.**"]);
});

test("seen for oneself, it is announced although a print is not fixed", () => {
  start("Mina");
  room.says("Mina", "/run next");
  expect(room.asks("Tess", "/tray lights sure:yes", "teacher").kind).toBe("done");
});

test("nobody to wait for: it says so", () => {
  expect(room.asks("Mina", "/tray wait").code).toBe("ERR_NO_LIGHTS");
});

test("prints in the wash don't mind", async () => {
  start("Mina");
  for (const seconds of [60, 30, 60]) {
    room.says("Mina", "/run next");
    await room.pass(seconds);
  }
  room.says("Mina", "/run next");
  expect(room.asks("Tess", "/tray lights", "teacher").kind).toBe("done");
});

test("a word of one's own reaches those with prints", async () => {
  start("Mina");
  room.says("Ben", "/help");
  room.says("Tess", "/class say to:trays text:The fixer is fresh now", "teacher");
  await room.pass(1);
  expect(heardBy("Mina")).toContain("The fixer is fresh now");
  expect(heardBy("Ben")).toBe("");
});

test("in German", async () => {
  for (const person of ["Mina", "Tess"])
    room.says(person, "/mine language language:de", person === "Tess" ? "teacher" : "student");
  start("Mina");
  const said = [room.says("Tess", "/tray lights", "teacher"), room.says("Mina", "/run next")];
  said.push(room.says("Tess", "/tray lights", "teacher"), room.says("Mina", "/tray wait"));
  await room.pass(1);
  said.push(room.says("Tess", "/caution about:printing", "teacher"));
  expect(englishIn(...said, heardBy("Mina"), heardBy("Tess"))).toEqual([]);
});
