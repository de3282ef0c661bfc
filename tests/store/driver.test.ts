import { afterEach, beforeEach, expect, test } from "vitest";
import { countKept, openDriver, type Db } from "../../store/driver.ts";
import { openStores } from "../../store/index.ts";
import { createRoom } from "../support/room.ts";

let db: Db;
beforeEach(() => void (db = openDriver(":memory:")));
afterEach(() => void db.close());

test("a statement is made once, and asked again gives what is there now", () => {
  db.exec("create table bottles (name text)");
  const first = db.prepare("select name from bottles");
  db.prepare("insert into bottles values (?)").run("House Fix");
  expect(db.prepare("select name from bottles")).toBe(first);
  expect(first.all()).toEqual([{ name: "House Fix" }]);
});

test("a statement is made when it is first used, and every one of the store's can be made", () => {
  const late = db.prepare("select name from nowhere");
  expect(() => late.all()).toThrow(/no such table: nowhere/);
  db.exec("create table nowhere (name text)");
  expect(late.all()).toEqual([]);

  const stores = openStores(":memory:");
  expect([...stores.makeReady()].length).toBeGreaterThan(200);
  stores.close();
});

test("a statement that gives lists is one of its own, and made once as well", () => {
  db.exec("create table bottles (name text, ml integer); insert into bottles values ('House Fix', 500)");
  const named = db.prepare("select name, ml from bottles");
  const lists = named.raw();
  expect(lists.all()).toEqual([["House Fix", 500]]);
  expect(named.all()).toEqual([{ name: "House Fix", ml: 500 }]);
  expect(db.prepare("select name, ml from bottles").raw()).toBe(lists);
});

test("a pragma answers as the driver does: rows, one value, or nothing", () => {
  expect(db.pragma("user_version")).toEqual([{ user_version: 0 }]);
  expect(db.pragma("user_version", { simple: true })).toBe(0);
  expect(db.pragma("user_version = 7")).toBeUndefined();
  expect(db.pragma("user_version", { simple: true })).toBe(7);
});

test("a setting that is set, changed and set again holds each time", () => {
  for (const isOn of [1, 0, 1]) {
    db.pragma(`foreign_keys = ${isOn === 1 ? "ON" : "OFF"}`);
    expect(db.pragma("foreign_keys", { simple: true })).toBe(isOn);
  }
});

test("what is kept does not grow with what is done", async () => {
  const room = createRoom();
  const evening = async (): Promise<void> => {
    await room.says("Mina", "/help");
    await room.says("Mina", "/roll find Lantern");
    await room.says("Mina", "/mine show");
    await room.pass(5);
  };
  await evening();
  await evening();
  const before = countKept();
  await evening();
  await evening();
  expect(countKept()).toBe(before);
});
