import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { openDriver } from "../../store/driver.ts";
import { MIGRATIONS } from "../../store/migrations.ts";
import { createFakeClock } from "../support/clock.ts";
import { START } from "../support/make.ts";
import { createRoom, type Room } from "../support/room.ts";

/*
 * A store as the first version left it, in the middle of an evening: Mina of the invented class has a film in tank 1, 70 s into
 * nine minutes of developer. Written by that version's own code (157c014, 25 November 2026) and dumped; never made anew.
 */

const FIRST = join(import.meta.dirname, "first-store.sql");
const POURED_AT = START + 5000;
const LEFT_AT = START + 75_000;

let folder: string;
let path: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "sinkside-upgrade-"));
  path = join(folder, "sinkside.db");
  const first = openDriver(path);
  first.exec(readFileSync(FIRST, "utf8"));
  first.close();
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** This version's program on that store, `seconds` after the other one was ended. */
function takeOver(seconds: number): Room {
  return createRoom(path, createFakeClock(LEFT_AT + seconds * 1000));
}

test("it is of the first version, and comes up to this one whole", () => {
  const before = openDriver(path);
  const version = before.pragma("user_version", { simple: true }) as number;
  before.close();
  expect(version).toBeLessThan(MIGRATIONS.length);
  const { stores } = takeOver(0);
  expect(stores.db.pragma("user_version", { simple: true })).toBe(MIGRATIONS.length);
  expect(stores.db.pragma("integrity_check", { simple: true })).toBe("ok");
  expect(stores.db.pragma("foreign_key_check")).toEqual([]);
  stores.close();
});

test("the film in the tank is called on, to the second, through to the next bath", async () => {
  const room = takeOver(10);
  const heard: number[] = [];
  for (let second = 0; second < 455; second += 1) {
    await room.pass(1);
    if (room.news("Mina").length > 0) heard.push((room.clock.now() - POURED_AT) / 1000);
  }
  // The sheet's scheme: each minute; ready 15 s before pour-out, which begins 10 s before the end.
  expect(heard).toEqual([120, 180, 240, 300, 360, 420, 480, 515, 530]);
  expect(room.press("Mina", "Water is in")).toMatch(/rinse/i);
  room.stores.close();
});

test("what fell due between the two versions is told, and how late it is", async () => {
  const room = takeOver(60);
  await room.pass(1);
  const [text = ""] = room.news("Mina");
  expect(text).toMatch(/late/);
  room.stores.close();
});

test("everybody and everything of the class is still there", () => {
  const room = takeOver(0);
  expect(room.says("Mina", "/run status")).toMatch(/R1.*tank 1|tank 1.*R1/is);
  expect(room.stores.members.list(1).map(({ name }) => name)).toContain("Mina");
  expect(room.says("Mina", "/sheet list")).toContain("Lantern 400");
  expect(room.says("Ms Teal", "/tank list", "teacher")).toContain("Tank 1");
  room.stores.close();
});
