import { createHash } from "node:crypto";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { describe, expect, test } from "vitest";
import { MIGRATIONS } from "../../store/migrations.ts";
import { migrate, openDb, StoreError } from "../../store/open.ts";

const LANDED: readonly string[] = [
  "8a70796b1b26",
  "1eb998c7b175",
  "1d6f48075a2c",
  "013c359e4696",
  "5dc0a1148def",
  "1d5271d0fdfd",
  "c756f685d958",
  "254df74cbb47",
  "3b1338f991f7",
  "58aaa12ec2fb",
  "0ba3dc4d646c",
  "3adb13514ade",
  "513938ac215c",
  "83552260d940",
  "d7782ccf2859",
  "0c2eaa6b3f85",
  "49817925bdca",
  "bc3518ec5d07",
  "9d88e31f4221",
  "c1f2e74eedb5",
  "09cd21c1b9f4",
  "3678fb3a4a18",
  "6eb381a5f9e5",
  "515a6cdfec1a",
  "af264ceb3a5f",
  "1e3a984a31b3",
  "35d65b590458",
  "b0d1b54c5ca1",
  "0d56ea9283eb",
  "f25ef2ca8027",
  "2e2c56fcf95e",
  "fee96ed81de2",
  "7ac827129b24",
];

const folder = (): string => mkdtempSync(join(tmpdir(), "sinkside-"));

describe("opening", () => {
  test("the store is kept safe against a power cut: WAL, FULL, foreign keys", () => {
    const db = openDb(join(folder(), "a.db"));
    expect(db.pragma("journal_mode", { simple: true })).toBe("wal");
    expect(db.pragma("synchronous", { simple: true })).toBe(2);
    expect(db.pragma("foreign_keys", { simple: true })).toBe(1);
    db.close();
  });

  test("every table is strict", () => {
    const db = openDb(":memory:");
    const loose = db
      .prepare(
        "select name from pragma_table_list where type = 'table' and strict = 0 and name not like 'sqlite_%'",
      )
      .all();
    // The search index's own tables are made by the index.
    expect(loose.filter(({ name }: any) => !/^(rolls|prints)_text/.test(String(name)))).toEqual([]);
  });

  test("a file that is no database is named, with what to do", () => {
    const path = join(folder(), "b.db");
    writeFileSync(path, "this is a shopping list, and a rather long one at that".repeat(200));
    expect(() => openDb(path)).toThrow(/damaged.*restore the newest backup/);
  });

  test("a folder that isn't there is named", () => {
    expect(() => openDb("/nowhere/at/all/c.db")).toThrow(StoreError);
  });
});

describe("migrations", () => {
  test("a second call does no harm", () => {
    const db = openDb(":memory:");
    migrate(db, MIGRATIONS);
    expect(db.pragma("user_version", { simple: true })).toBe(MIGRATIONS.length);
  });

  test("a failing one leaves neither table nor number", () => {
    const db = new Database(":memory:");
    expect(() => migrate(db, ["create table a (x)", "create table b (x); create table a (x)"])).toThrow();
    expect(db.pragma("user_version", { simple: true })).toBe(1);
    expect(db.prepare("select name from sqlite_master").all()).toEqual([{ name: "a" }]);
  });

  test("a newer store is refused with a sentence", () => {
    const db = new Database(":memory:");
    db.pragma("user_version = 999");
    expect(() => migrate(db, MIGRATIONS)).toThrow(/newer Sinkside.*version 999/);
  });

  test("landed entries never change", () => {
    const hashes = MIGRATIONS.map((sql) => createHash("sha256").update(sql).digest("hex").slice(0, 12));
    // A line is appended when an entry lands; a line that no longer fits means that stores in the field would differ.
    expect(hashes.slice(0, LANDED.length)).toEqual(LANDED);
  });
});
