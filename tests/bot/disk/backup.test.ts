import {
  copyFileSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { makeBackup } from "../../../bot/disk/backup.ts";
import { scheduleBackups } from "../../../bot/disk/backup-schedule.ts";
import { DEMO_KEY, inventDemo } from "../../../bot/demo/demo.ts";
import { DEMO_NAME } from "../../../bot/demo/name.ts";
import { listBackups } from "../../../bot/disk/guard.ts";
import { writeMarker } from "../../../bot/disk/marker.ts";
import { takeLock } from "../../../bot/disk/lock.ts";
import { putBack } from "../../../bot/disk/restore-put.ts";
import { redaction } from "../../../commands/mine/redact.ts";
import { copyBesideCalls, inspectStore } from "../../../store/backup.ts";
import { openStores, type OpenedStores } from "../../../store/index.ts";
import { StoreError } from "../../../store/open.ts";
import { pourIn } from "../../support/developing.ts";
import { aPlan, START } from "../../support/make.ts";
import { createMemoryLog } from "../../support/room.ts";

let folder: string;
let path: string;
let backups: string;
let stores: OpenedStores;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "sinkside-backup-"));
  path = join(folder, "sinkside.db");
  backups = join(folder, "backups");
  stores = openStores(path);
  inventDemo(stores, "UTC", START);
});
afterEach(() => {
  stores.close();
  rmSync(folder, { recursive: true, force: true });
});

const DAY_MS = 24 * 60 * 60_000;

/** A run in the developer, one call of it owed. */
function beginRun(): void {
  stores.members.see(1, { id: "room:mina", name: "Mina" }, "student", START);
  pourIn(stores, { plan: aPlan({ tank: 1 }) }, START);
  stores.outbox.owe({
    key: "1.1.0f0",
    classId: 1,
    personId: "room:mina",
    runId: 1,
    priority: 1,
    dueAt: START,
    decidedAt: START,
    usefulUntil: null,
    body: { text: "Agitate.", actions: [], mentions: [] },
  });
}

const codeOf = (work: () => unknown): string => {
  try {
    work();
  } catch (error) {
    if (error instanceof StoreError) return error.code;
    throw error;
  }
  return "no error";
};

describe("a backup", () => {
  test("is one whole file that holds what was committed, also what is in the log beside the store only", () => {
    beginRun();
    const { path: made, holding, bytes } = makeBackup(path, backups, 3, START);
    expect(made).toBe(join(backups, "sinkside-2026-01-15T18-00-00-000Z.db"));
    expect(holding).toMatchObject({ runs: 1, openRuns: 1, newestAt: START });
    expect(bytes).toBeGreaterThan(50_000);
    expect(existsSync(`${made}-wal`)).toBe(false);
    expect(readdirSync(backups)).toHaveLength(1);
  });

  test("is as of one instant, while others go on writing", () => {
    const other = openStores(path);
    stores.db.exec("begin immediate");
    stores.plans.add(1, "room:mina", aPlan(), START);
    // Not committed: it must not be in the copy, and the copy must not wait for it.
    const { path: made } = makeBackup(path, backups, 3, START);
    stores.db.exec("commit");
    other.close();
    const copy = openStores(made);
    expect(copy.plans.find(1, 1)).toBeUndefined();
    copy.close();
    expect(stores.plans.find(1, 1)).toBeDefined();
  });

  test("is as of the instant at which it began, though calls are committed between its pieces", () => {
    const to = join(folder, "copy.db");
    const before = 200;
    for (let each = 0; each < before; each += 1) stores.plans.add(1, "room:mina", aPlan(), START);
    let pieces = 0;
    copyBesideCalls(path, to, () => {
      pieces += 1;
      stores.plans.add(1, "room:mina", aPlan(), START);
    });
    expect(pieces).toBeGreaterThan(1);
    expect(stores.plans.find(1, before + pieces)).toBeDefined();
    expect(existsSync(`${to}-wal`)).toBe(false);
    expect(inspectStore(to).classes).toEqual([DEMO_NAME]);
    const copy = openStores(to);
    expect(copy.plans.find(1, before)).toBeDefined();
    expect(copy.plans.find(1, before + 1)).toBeUndefined();
    copy.close();
  });

  test("beyond the number to keep the oldest go, never the one just made", () => {
    for (let day = 0; day < 5; day += 1) makeBackup(path, backups, 3, START + day * DAY_MS);
    expect(listBackups(backups).map((name) => name.slice(9, 19))).toEqual([
      "2026-01-19",
      "2026-01-18",
      "2026-01-17",
    ]);
    expect(makeBackup(path, backups, 0, START + 9 * DAY_MS).removed).toHaveLength(3);
    expect(listBackups(backups)).toHaveLength(1);
  });

  test("of no store, an empty or a damaged one is refused; older ones stay, and no half of one is left", () => {
    makeBackup(path, backups, 1, START);
    expect(codeOf(() => makeBackup(join(folder, "nothing.db"), backups, 1, START + 1))).toBe("ERR_NO_STORE");
    const empty = join(folder, "empty.db");
    writeFileSync(empty, "");
    expect(codeOf(() => makeBackup(empty, backups, 1, START + 1))).toBe("ERR_NO_STORE");
    const damaged = join(folder, "damaged.db");
    const bytes = readFileSync(makeBackup(path, join(folder, "x"), 1, START).path);
    writeFileSync(damaged, bytes.fill(0x5a, 8192, 40_960));
    expect(() => makeBackup(damaged, backups, 1, START + 1)).toThrow(
      `The store at ${damaged} is damaged: it was not backed up. Older backups are kept.`,
    );
    expect(readdirSync(backups)).toEqual(["sinkside-2026-01-15T18-00-00-000Z.db"]);
  });
});

describe("bringing one back", () => {
  test("restores what it held; runs long over are ended in the log, and nothing it owed is said", () => {
    beginRun();
    const { path: made } = makeBackup(path, backups, 3, START);
    stores.plans.add(1, "room:mina", aPlan(), START + DAY_MS);
    stores.close();
    const result = putBack(made, path, { replaces: true }, START + DAY_MS);
    expect(result).toMatchObject({ stopped: 1, unsaid: 1, holding: { runs: 1 } });
    stores = openStores(path);
    expect(stores.plans.find(1, 1)).toBeUndefined();
    expect(stores.runs.find(1, 1)?.phase).toMatchObject({ kind: "stopped", reason: /restored/ });
    expect(stores.rolls.ofRun(1)).toHaveLength(1);
    expect(stores.cues.pending(1)).toEqual([]);
    expect(stores.outbox.depth()).toBe(0);
    expect(stores.db.pragma("integrity_check", { simple: true })).toBe("ok");
    // The store that was there is whole where it was moved to.
    expect(inspectStore(result.aside ?? "").runs).toBe(1);
  });

  test("of a moment ago goes on with the class that is running", () => {
    beginRun();
    const { path: made } = makeBackup(path, backups, 3, START + 1000);
    stores.close();
    expect(putBack(made, path, { replaces: true }, START + 60_000)).toMatchObject({ stopped: 0, unsaid: 0 });
    stores = openStores(path);
    expect(stores.runs.find(1, 1)?.phase).toMatchObject({ kind: "running" });
    expect(stores.cues.pending(1).length).toBeGreaterThan(5);
  });

  test("is refused while a bot holds the store, and where a healthy store is there", () => {
    beginRun();
    const { path: made } = makeBackup(path, backups, 3, START);
    const lock = takeLock(path, stores.upkeep, {
      pid: 1,
      address: "http://127.0.0.1:4170",
      startedAt: START,
    });
    expect(codeOf(() => putBack(made, path, { replaces: true }, START))).toBe("ERR_STORE_HELD");
    lock.release();
    expect(codeOf(() => putBack(made, path, { replaces: false }, START))).toBe("ERR_STORE_THERE");
    expect(stores.runs.find(1, 1)?.phase).toMatchObject({ kind: "running" });
  });

  test("needs no leave where the store is empty, damaged or gone", () => {
    beginRun();
    const { path: made } = makeBackup(path, backups, 3, START);
    stores.close();
    for (const side of ["-wal", "-shm"]) rmSync(path + side, { force: true });
    writeFileSync(path, "no store at all, whatever its name");
    expect(putBack(made, path, { replaces: false }, START + DAY_MS).holding.runs).toBe(1);
    rmSync(path);
    expect(putBack(made, path, { replaces: false }, START + DAY_MS).aside).toBeNull();
    stores = openStores(path);
    expect(stores.runs.find(1, 1)).toBeDefined();
  });

  test("that lies there with its log brings back what is in the log, too", () => {
    // As somebody copies all three files of a bot that was killed: the file itself may hold no table yet.
    stores.db.pragma("wal_autocheckpoint = 0");
    beginRun();
    const killed = join(folder, "killed.db");
    for (const side of ["", "-wal"]) copyFileSync(path + side, killed + side);
    const target = join(folder, "target.db");
    const { holding } = putBack(killed, target, { replaces: false }, START + 1000);
    expect(holding).toMatchObject({ runs: 1, classes: [DEMO_NAME] });
    expect(inspectStore(target)).toEqual(holding);
    expect(readdirSync(folder).filter((name) => name.includes(".part"))).toEqual([]);
  });

  test("asks before it brings back somebody who was erased since, also where the store itself is lost", () => {
    beginRun();
    stores.members.see(1, { id: "room:ben", name: "Ben Ruhig" }, "student", START);
    const { path: made } = makeBackup(path, backups, 3, START);
    stores.privacy.erasePerson(1, "room:ben", redaction);
    stores.erasures.addPerson({ classKey: DEMO_KEY, personId: "room:ben" }, START);
    writeMarker(path, stores, START);
    stores.close();
    const before = readFileSync(path);
    expect(codeOf(() => putBack(made, path, { replaces: true }, START + 1000))).toBe("ERR_ERASED_BACK");
    expect(readFileSync(path).equals(before)).toBe(true);
    rmSync(path);
    expect(codeOf(() => putBack(made, path, { replaces: false }, START + 1000))).toBe("ERR_ERASED_BACK");
    const again = putBack(made, path, { replaces: false, erased: "again" }, START + 1000);
    expect(again.erasedAgain).toBe(1);
    expect(readFileSync(path).includes("Ben Ruhig")).toBe(false);
    // It is remembered there as well: the next restore asks again.
    expect(codeOf(() => putBack(made, path, { replaces: true }, START + 2000))).toBe("ERR_ERASED_BACK");
    expect(putBack(made, path, { replaces: true, erased: "bring-back" }, START + 2000).erasedAgain).toBe(0);
    stores = openStores(path);
    expect(stores.members.find(1, "room:ben")?.name).toBe("Ben Ruhig");
    // Whoever is a member is not among the erased any more.
    expect(stores.erasures.people()).toEqual([]);
  });

  test("keeps the stores it put aside for a while only: two of them, for 30 days", () => {
    beginRun();
    const { path: made } = makeBackup(path, backups, 3, START);
    stores.close();
    const asides = (): string[] => readdirSync(folder).filter((name) => name.includes(".before-"));
    for (let day = 0; day < 4; day += 1) putBack(made, path, { replaces: true }, START + day * DAY_MS);
    expect(
      asides()
        .filter((name) => name.endsWith("Z"))
        .map((name) => name.slice(19, 29)),
    ).toEqual(["2026-01-17", "2026-01-18"]);
    makeBackup(path, backups, 3, START + 40 * DAY_MS);
    expect(asides()).toEqual([]);
    stores = openStores(path);
  });

  test("of a damaged, a newer or no backup changes nothing", () => {
    beginRun();
    const { path: made } = makeBackup(path, backups, 3, START);
    const copy = openStores(made);
    copy.db.pragma("user_version = 9999");
    copy.db.pragma("journal_mode = DELETE");
    copy.close();
    expect(codeOf(() => putBack(made, path, { replaces: true }, START))).toBe("ERR_NEWER_STORE");
    writeFileSync(made, readFileSync(made).fill(0, 4096));
    expect(codeOf(() => putBack(made, path, { replaces: true }, START))).toBe("ERR_DAMAGED");
    expect(codeOf(() => putBack(join(backups, "none.db"), path, { replaces: true }, START))).toBe(
      "ERR_NO_STORE",
    );
    expect(stores.runs.find(1, 1)?.phase).toMatchObject({ kind: "running" });
  });
});

describe("backups by the clock", () => {
  beforeEach(() => void vi.useFakeTimers({ now: START }));
  afterEach(() => void vi.useRealTimers());

  test("are made at their time on the class's own clock, one after another", async () => {
    const make = vi.fn(async () => "made");
    const onMade = vi.fn();
    const log = createMemoryLog();
    // Half past three in Lisbon is half past three UTC in winter.
    const schedule = scheduleBackups({ cron: "30 3 * * *", zone: "Europe/Lisbon", log, onMade, make });
    await vi.advanceTimersByTimeAsync(9 * 3_600_000);
    expect(make).not.toHaveBeenCalled();
    await vi.advanceTimersByTimeAsync(40 * 60_000);
    expect(make).toHaveBeenCalledTimes(1);
    await vi.advanceTimersByTimeAsync(DAY_MS);
    expect(onMade.mock.calls).toEqual([[true], [true]]);
    await schedule.stop();
    await vi.advanceTimersByTimeAsync(3 * DAY_MS);
    expect(make).toHaveBeenCalledTimes(2);
  });

  test("one that fails is told in the log, and the next is made all the same", async () => {
    const make = vi.fn(async () => "made").mockRejectedValueOnce(new Error("There is no room for a backup."));
    const onMade = vi.fn();
    const log = createMemoryLog();
    const schedule = scheduleBackups({ cron: "0 * * * *", zone: "UTC", log, onMade, make });
    await vi.advanceTimersByTimeAsync(2 * 3_600_000 + 1000);
    expect(onMade.mock.calls).toEqual([[false], [true]]);
    expect(log.lines.filter(({ level }) => level === "error")).toHaveLength(1);
    await schedule.stop();
  });

  test("told to stop, it breaks off the one that is being made, and calls that no failure", async () => {
    const log = createMemoryLog();
    const onMade = vi.fn();
    const make = (signal: AbortSignal): Promise<string> =>
      new Promise((_, reject) => signal.addEventListener("abort", () => reject(new Error("broken off"))));
    const schedule = scheduleBackups({ cron: "0 * * * *", zone: "UTC", log, onMade, make });
    await vi.advanceTimersByTimeAsync(3_600_000);
    await schedule.stop();
    expect(onMade).not.toHaveBeenCalled();
    expect(log.lines).toEqual([]);
  });

  test("one that was missed is made soon after the start; none where they are off", async () => {
    const make = vi.fn(async () => "made");
    const log = createMemoryLog();
    const given = { zone: "UTC", log, onMade: () => {}, make, isMissed: true };
    const off = scheduleBackups({ ...given, cron: undefined });
    await vi.advanceTimersByTimeAsync(2 * DAY_MS);
    expect(make).not.toHaveBeenCalled();
    await off.stop();
    const on = scheduleBackups({ ...given, cron: "30 3 * * *" });
    await vi.advanceTimersByTimeAsync(61_000);
    expect(make).toHaveBeenCalledTimes(1);
    await on.stop();
  });
});
