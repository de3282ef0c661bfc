import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { takeLock } from "../../../bot/disk/lock.ts";
import { openStores } from "../../../store/index.ts";

test("one process owns the store; a second is told who; after that it is free again", () => {
  const path = join(mkdtempSync(join(tmpdir(), "sinkside-")), "a.db");
  const first = openStores(path);
  const second = openStores(path);
  const lock = takeLock(path, first.upkeep, { pid: 4242, address: "http://127.0.0.1:4170", startedAt: 1 });
  expect(() => takeLock(path, second.upkeep, { pid: 4343, address: "x", startedAt: 2 })).toThrow(
    /held by process 4242, whose room is at http:\/\/127.0.0.1:4170/,
  );
  lock.release();
  takeLock(path, second.upkeep, { pid: 4343, address: "x", startedAt: 2 }).release();
});
