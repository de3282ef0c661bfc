import { copyFileSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { afterEach, beforeEach, expect, test } from "vitest";
import { createTidier, type Tidier } from "../../../bot/disk/tidier.ts";
import { openStores, type OpenedStores } from "../../../store/index.ts";

/* The built thread on a real file. */

let folder: string;
let path: string;
let stores: OpenedStores;
let tidier: Tidier;
let faults: string[];

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "sinkside-tidier-"));
  path = join(folder, "sinkside.db");
  stores = openStores(path);
  faults = [];
  tidier = createTidier(path, (detail) => faults.push(detail));
});
afterEach(async () => {
  await tidier.stop();
  stores.close();
  rmSync(folder, { recursive: true });
});

/** Classes in the store's file by itself, without what is still in the log of writes beside it. */
function inFileAlone(): number {
  const copy = join(folder, "copy.db");
  copyFileSync(path, copy);
  const db = new Database(copy);
  try {
    return (db.prepare("select count(*) as n from classes").get() as { n: number }).n;
  } catch {
    return 0;
  } finally {
    db.close();
    rmSync(copy);
  }
}

test("what was written is in the store's own file before long", async () => {
  stores.classes.ensure("room:1", "Invented class", 1);
  expect(inFileAlone()).toBe(0);
  tidier.tidy();
  await expect.poll(inFileAlone).toBe(1);
  expect(faults).toEqual([]);
});

test("words while it works are one more round at most, and none of the writing waits", async () => {
  for (let number = 0; number < 200; number += 1) {
    stores.classes.ensure(`room:${number}`, "Invented class", 1);
    tidier.tidy();
    if (number % 20 === 0) await new Promise(setImmediate);
  }
  await expect
    .poll(() => {
      tidier.tidy();
      return inFileAlone();
    })
    .toBe(200);
  expect(faults).toEqual([]);
  expect(stores.db.pragma("integrity_check", { simple: true })).toBe("ok");
});

test("a store that is not there is told, and looked for anew the next time", async () => {
  const missing = join(folder, "later.db");
  const other = createTidier(missing, (detail) => faults.push(detail));
  other.tidy();
  await expect.poll(() => faults.length).toBe(1);
  expect(faults[0]).toContain("unable to open database file");
  const late = openStores(missing);
  await expect
    .poll(() => {
      other.tidy();
      return late.db.pragma("wal_checkpoint(NOOP)") as unknown;
    })
    .toMatchObject([{ busy: 0 }]);
  await other.stop();
  late.close();
  expect(faults).toHaveLength(1);
});

test("it stops at once, whether it has begun or not", async () => {
  await tidier.stop();
  tidier.tidy();
  await tidier.stop();
  expect(faults).toEqual([]);
});

test("whoever wants to know hears once that it has been tried, well or not", async () => {
  let tried = 0;
  const other = createTidier(
    path,
    (detail) => faults.push(detail),
    () => (tried += 1),
  );
  for (let round = 0; round < 3; round += 1) {
    stores.classes.ensure(`room:${round}`, "Invented class", 1);
    await expect
      .poll(() => {
        other.tidy();
        return inFileAlone();
      })
      .toBe(round + 1);
  }
  await other.stop();
  const vain = createTidier(
    join(folder, "missing", "store.db"),
    (detail) => faults.push(detail),
    () => (tried += 10),
  );
  vain.tidy();
  await expect.poll(() => faults.length).toBe(1);
  await vain.stop();
  expect(tried).toBe(11);
});
