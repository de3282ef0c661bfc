import { spawn, type ChildProcess } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { openStores } from "../../store/index.ts";
import { aBatch, aDeveloper, mixed } from "../support/batch.ts";
import { aPlan, aRun, aStep, START } from "../support/make.ts";

/*
 * A thousand uses written by three processes at once on one file, killed without warning, over and over; every tap is
 * tried by whoever comes by, and half of all changes are kept a second time.
 */

const RUNS = 500;
const KILLS = 27;
/** Bottles of each kind; the developers are B1 to B5, the fixers B6 to B10. */
const BOTTLES = 5;
const POUR = join(import.meta.dirname, "..", "support", "pour.mjs");

/** What each run takes, worked out here from its number alone. */
const rollsOf = (run: number): number => 1 + (run % 3);
const mlOf = (run: number): number => 240 + (run % 7) * 11;
const developerOf = (run: number): number => 1 + (run % BOTTLES);
const fixerOf = (run: number): number => developerOf(run) + BOTTLES;

function setUp(path: string): void {
  const stores = openStores(path);
  const classId = stores.classes.add("room:1", "Harbour workshop (invented)", "UTC", false, START).id;
  stores.members.see(classId, { id: "room:mina", name: "Mina" }, "student", START);
  const large = { classId, volumeMl: 200_000, bottleMl: 200_000 };
  const each = Array.from({ length: BOTTLES });
  const bottles = [
    ...each.map(() => stores.batches.add(aDeveloper(large))),
    ...each.map(() => stores.batches.add(aBatch(large))),
  ];
  stores.atomically(() => {
    for (const { id, volumeMl } of bottles)
      stores.batches.append({
        batchId: id,
        key: null,
        runId: null,
        atMs: START,
        person: { id: null, name: "Aida" },
        about: null,
        body: mixed(volumeMl, null),
      });
    for (let run = 1; run <= RUNS; run += 1) {
      const { id: _id, number: _number, ...draft } = aRun({ classId });
      const ml = mlOf(run);
      const steps = [
        aStep({ kind: "develop", seconds: 540, ml, concentrateMl: ml, batch: `B${developerOf(run)}` }),
        aStep({ kind: "fix", seconds: 300, ml, batch: `B${fixerOf(run)}` }),
      ];
      stores.runs.add({ ...draft, plan: aPlan({ steps, rolls: rollsOf(run), volumeMl: ml }) });
    }
  });
  stores.close();
}

interface Pourer {
  readonly child: ChildProcess;
  /** Once it has told so much, or has ended. */
  told(letters: number): Promise<unknown>;
}

/** Ready to pour, but not told to yet. */
async function start(path: string, seed: number): Promise<Pourer> {
  const child = spawn(process.execPath, [POUR, path, String(seed), String(START)], {
    stdio: ["pipe", "pipe", "inherit"],
  });
  let count = 0;
  let look = (): void => undefined;
  child.stdout.on("data", (letters: Buffer) => {
    count += letters.length;
    look();
  });
  const ended = once(child, "exit");
  const pourer: Pourer = {
    child,
    told: (letters) =>
      Promise.race([
        ended,
        new Promise<void>((resolve) => {
          look = () => count >= letters && resolve();
          look();
        }),
      ]),
  };
  await pourer.told(1);
  return pourer;
}

/** Three that begin together, so that none has done the work before another is there. */
async function startThree(path: string, seed: number): Promise<Pourer[]> {
  const three = await Promise.all([0, 1, 2].map((each) => start(path, seed + each)));
  for (const { child } of three) child.stdin?.write("go");
  return three;
}

/** False where it had ended by itself. */
async function kill({ child }: Pourer): Promise<boolean> {
  if (child.exitCode !== null || child.signalCode !== null) return false;
  const gone = once(child, "exit");
  child.kill("SIGKILL");
  await gone;
  return child.signalCode === "SIGKILL";
}

test(
  `${2 * RUNS} uses by three processes over ${KILLS} kills: no line lost, none doubled`,
  { timeout: 300_000 },
  async () => {
    const path = join(mkdtempSync(join(tmpdir(), "sinkside-ledger-")), "sinkside.db");
    setUp(path);
    let hits = 0;
    for (let killed = 0; killed < KILLS; killed += 3) {
      const three = await startThree(path, killed + 1);
      const kills = three.map(async (pourer, at) => {
        await pourer.told(2 + (((killed + at) * 7) % 20));
        return kill(pourer);
      });
      for (const isHit of await Promise.all(kills)) if (isHit) hits += 1;
    }
    await Promise.all((await startThree(path, KILLS + 1)).map(({ told }) => told(Infinity)));

    const stores = openStores(path);
    expect(stores.db.pragma("integrity_check", { simple: true })).toBe("ok");
    expect(hits, "kills that hit a process at work").toBe(KILLS);
    const count = (where: string): number =>
      (stores.db.prepare(`select count(*) as count from ledger where ${where}`).get() as { count: number })
        .count;
    expect(count("kind = 'used'")).toBe(2 * RUNS);
    expect(count("kind <> 'used'")).toBe(2 * BOTTLES);

    const runs = Array.from({ length: RUNS }, (_, index) => index + 1);
    const used = stores.db
      .prepare(
        "select run_id as run, batch_id as bottle, body from ledger where kind = 'used' order by run_id, id",
      )
      .all() as { run: number; bottle: number; body: string }[];
    expect(used.map(({ run, bottle, body }) => ({ run, bottle, ...JSON.parse(body) }))).toMatchObject(
      runs.flatMap((run) => [
        { run, bottle: developerOf(run), ml: mlOf(run), step: 0 },
        { run, bottle: fixerOf(run), ml: 0, areaSqIn: rollsOf(run) * 80, step: 1 },
      ]),
    );
    const sum = (of: (run: number) => number): number => runs.reduce((total, run) => total + of(run), 0);
    const { ml } = stores.db
      .prepare("select sum(body ->> 'ml') as ml from ledger where kind = 'used'")
      .get() as { ml: number };
    expect(ml).toBe(sum(mlOf));
    console.log(
      `killed ${hits} processes at work; ${2 * RUNS} lines, ${ml} ml and ${sum(rollsOf)} rolls, as they should be`,
    );
    stores.close();
  },
);
