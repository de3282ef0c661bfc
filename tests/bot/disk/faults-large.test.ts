import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { openStores, type OpenedStores } from "../../../store/index.ts";
import { beginRun, prepare, refuses, STORE } from "../../support/faults.ts";
import { startProcess, type BotProcess } from "../../support/process.ts";

/* A store that takes a while to be examined: whoever waits is called first, and damage is found all the same. */

const start = (data: string): BotProcess => startProcess(data, { BACKUP_CRON: "off" });

describe("a large store that was damaged inside", () => {
  let data: string;
  beforeEach(() => void (data = mkdtempSync(join(tmpdir(), "sinkside-faults-"))));
  afterEach(() => rmSync(data, { recursive: true, force: true }));

  /** Its older half is damaged, which no call touches. */
  function spoilOldPages(): void {
    const path = join(data, "sinkside.db");
    const bytes = readFileSync(path);
    const middle = Math.floor(bytes.length / 2);
    writeFileSync(path, bytes.fill(0x55, middle, middle + 65_536));
  }

  test("is refused as it is while nobody waits to be called", async () => {
    prepare(data, fill);
    spoilOldPages();
    await refuses(start(data), STORE, /damaged.*Nothing was changed.*npm run restore/s);
  });

  test("calls who waits, is found damaged a moment later, and ends", async () => {
    prepare(data, (stores, classId) => {
      fill(stores, classId);
      // Its first call is overdue.
      beginRun(stores, classId, Date.now() - 3000);
    });
    spoilOldPages();
    await refuses(start(data), STORE, /damaged \((?!SQLITE).*npm run restore/s);
    const stores = openStores(join(data, "sinkside.db"));
    const said = stores.db.prepare("select count(*) as n from outbox").get();
    stores.close();
    expect(said).not.toEqual({ n: 0 });
  });
});

/** So much was said that looking at every page of it takes a while. */
function fill(stores: OpenedStores, classId: number): void {
  const text = "invented ".repeat(1000);
  stores.atomically(() => {
    for (let at = 0; at < 2000; at += 1)
      stores.messages.add({ classId, personId: null, authorId: null, key: null, at, body: { text } });
  });
}
