import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  truncateSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { keepBallast } from "../../../bot/disk/ballast.ts";
import { openGuarded, refuseEmptied } from "../../../bot/disk/guard.ts";
import { watchStore, type Guard } from "../../../bot/disk/watch.ts";
import { inspectStore } from "../../../store/backup.ts";
import { openStores, type OpenedStores } from "../../../store/index.ts";
import { aPlan, START } from "../../support/make.ts";
import { createMemoryLog } from "../../support/room.ts";

let folder: string;
let path: string;
let backups: string;
let stores: OpenedStores;
let log: ReturnType<typeof createMemoryLog>;
let fatal: string[];
let guard: Guard | undefined;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "sinkside-guard-"));
  path = join(folder, "sinkside.db");
  backups = join(folder, "backups");
  log = createMemoryLog();
  fatal = [];
  guard = undefined;
  ({ stores } = openGuarded(path, backups, log, START));
});
afterEach(() => {
  guard?.stop(START);
  stores.close();
  rmSync(folder, { recursive: true, force: true });
});

function watch(): Guard {
  const onFatal = (sentence: string): void => void fatal.push(sentence);
  guard = watchStore({ path, stores, log, now: () => START, isExamined: true, onFatal });
  return guard;
}

/** A class of one's own, and so something to lose. */
function useIt(plans = 3): void {
  const { id } = stores.classes.ensure("room:own", "Evening class", START);
  for (let index = 0; index < plans; index += 1) stores.plans.add(id, "room:mina", aPlan(), START);
}

/** As a process that is killed leaves it. */
function leave(): void {
  watch().look(START);
  guard?.stop(START);
  stores.close();
}

describe("a store that had something in it", () => {
  test.each([
    ["is missing", () => rmSync(path)],
    ["is empty", () => truncateSync(path)],
    ["is empty", () => writeFileSync(path, readFileSync(path).subarray(0, 0))],
  ])("and %s is not silently replaced", (words, spoil) => {
    useIt();
    leave();
    for (const side of ["-wal", "-shm"]) rmSync(path + side, { force: true });
    spoil();
    expect(() => openGuarded(path, backups, log, START)).toThrow(
      new RegExp(`${words}, though it was in use until 2026-01-15.*npm run restore`),
    );
    // A person's own decision.
    rmSync(`${path}.known`);
    expect(() => openGuarded(path, backups, log, START).stores.close()).not.toThrow();
  });

  test("and was copied without its log, so that no table is left, is not silently replaced", () => {
    // All of a young store is in its log.
    const fresh = join(folder, "fresh.db");
    stores.close();
    stores = openStores(fresh);
    const half = join(folder, "half.db");
    copyFileSync(fresh, half);
    writeFileSync(`${half}.known`, JSON.stringify({ at: START, sequences: {}, held: true }));
    expect(() => refuseEmptied(half, backups)).toThrow(/is empty, though it was in use/);
  });

  test("is missed where only its backups are left", () => {
    stores.close();
    rmSync(path);
    mkdirSync(backups);
    writeFileSync(join(backups, "sinkside-2026-01-15T18-00-00-000Z.db"), "");
    expect(() => openGuarded(path, backups, log, START)).toThrow(/is missing.*move the backups out of/s);
  });

  test("is not missed where there was the invented demo only", () => {
    leave();
    rmSync(path);
    ({ stores } = openGuarded(path, backups, log, START));
    expect(stores.classes.list()).toEqual([]);
  });

  test("and lost its newest entries, since one byte of its log was damaged, says so at the start", () => {
    useIt(1);
    stores.db.pragma("wal_autocheckpoint = 0");
    const { id } = stores.classes.ensure("room:own", "Evening class", START);
    for (let index = 0; index < 40; index += 1) stores.plans.add(id, "room:mina", aPlan(), START);
    watch().look(START);
    // As after a kill: the log was not taken over into the store.
    const killed = join(folder, "killed.db");
    for (const side of ["", "-wal", ".known"]) copyFileSync(path + side, killed + side);
    const bytes = readFileSync(`${killed}-wal`);
    const middle = Math.floor(bytes.length / 2);
    bytes[middle] = (bytes[middle] ?? 0) ^ 1;
    writeFileSync(`${killed}-wal`, bytes);
    const { stores: opened } = openGuarded(killed, backups, log, START);
    // Nothing of the engine's own checks finds it.
    expect(opened.db.pragma("integrity_check", { simple: true })).toBe("ok");
    const told = log.lines.find(({ message }) => message.includes("lost its newest entries"));
    expect(told?.fields["losses"]).toEqual([{ table: "plans", lost: expect.any(Number) }]);
    opened.close();
  });

  test("and is damaged is refused, with what to do", () => {
    useIt(60);
    leave();
    writeFileSync(path, readFileSync(path).fill(0x77, 40_960, 81_920));
    expect(() => openGuarded(path, backups, log, START)).toThrow(/damaged.*npm run restore/s);
  });
});

describe("a store in use", () => {
  test("that is deleted is written back whole, and the process ends with a sentence", () => {
    useIt();
    watch();
    stores.plans.add(1, "room:mina", aPlan(), START);
    for (const side of ["", "-wal", "-shm"]) rmSync(path + side, { force: true });
    guard?.look(START);
    expect(fatal).toEqual([
      expect.stringContaining("was deleted while it was in use. All of it was written back"),
    ]);
    expect(inspectStore(path).classes).toEqual(["Evening class"]);
    const again = openStores(path);
    expect(again.plans.find(1, 4)).toBeDefined();
    again.close();
    // Said once.
    guard?.look(START);
    expect(fatal).toHaveLength(1);
  });

  test("that is replaced by another file is kept beside it", () => {
    useIt();
    watch();
    const other = join(folder, "other.db");
    openStores(other).close();
    renameSync(other, path);
    guard?.look(START);
    expect(fatal[0]).toContain(`npm run restore -- ${path}.rescued`);
    expect(inspectStore(`${path}.rescued`).classes).toEqual(["Evening class"]);
  });

  test("that is emptied ends the process; the next start refuses the empty file", () => {
    useIt();
    stores.db.pragma("wal_checkpoint(TRUNCATE)");
    watch();
    truncateSync(path);
    guard?.look(START);
    expect(fatal[0]).toMatch(/was emptied|damaged/);
    expect(() => refuseEmptied(path, backups)).toThrow(/is empty/);
  });

  test.each([
    ["overwritten inside", () => writeFileSync(path, readFileSync(path).fill(0x55, 40_960, 81_920))],
    ["cut short", () => truncateSync(path, Math.floor(readFileSync(path).length / 2 / 4096) * 4096)],
  ])(
    "that was %s is found at the next look, though nobody reads it, and called damaged",
    async (_, spoil) => {
      useIt(60);
      stores.db.pragma("wal_checkpoint(TRUNCATE)");
      const onFatal = (sentence: string): void => void fatal.push(sentence);
      guard = watchStore({ path, stores, log, now: () => START, isExamined: true, onFatal, lookMs: 20 });
      spoil();
      await vi.waitFor(() => expect(fatal).toHaveLength(1), 10_000);
      expect(fatal[0]).toMatch(/is damaged .*npm run restore/);
      expect(log.lines.map(({ message }) => message).join()).not.toContain("ree some space");
    },
  );

  test("on a disk that fails to read is looked at whole: cut short, it is damaged and not full", async () => {
    useIt(60);
    stores.db.pragma("wal_checkpoint(TRUNCATE)");
    const own = watch();
    truncateSync(path, Math.floor(readFileSync(path).length / 2 / 4096) * 4096);
    own.notice({ code: "SQLITE_IOERR_SHORT_READ" });
    await vi.waitFor(() => expect(fatal).toHaveLength(1), 10_000);
    expect(fatal[0]).toMatch(/is damaged/);
  });

  test("that is whole is looked at over and over and goes on", async () => {
    useIt(60);
    const onFatal = (sentence: string): void => void fatal.push(sentence);
    guard = watchStore({ path, stores, log, now: () => START, isExamined: false, onFatal, lookMs: 20 });
    for (let round = 0; round < 20; round += 1) {
      stores.plans.add(1, "room:mina", aPlan(), START);
      stores.db.pragma("wal_checkpoint(PASSIVE)");
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
    expect(fatal).toEqual([]);
  });

  test("that is found damaged ends the process", () => {
    watch().notice({ code: "SQLITE_CORRUPT" });
    expect(fatal[0]).toMatch(/damaged.*npm run restore/);
  });

  test("on a disk that fills lets its reserve go, once, and goes on", () => {
    watch();
    keepBallast(path);
    expect(existsSync(`${path}.ballast`)).toBe(true);
    guard?.notice(undefined);
    guard?.notice({ code: "SQLITE_FULL" });
    guard?.notice({ code: "SQLITE_FULL" });
    expect(existsSync(`${path}.ballast`)).toBe(false);
    expect(fatal).toEqual([]);
    expect(log.lines.filter(({ message }) => message.includes("reserve"))).toHaveLength(1);
    guard?.look(START);
    expect(existsSync(`${path}.ballast`)).toBe(true);
  });
});
