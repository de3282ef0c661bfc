import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { EVERY_PRINT } from "../../store/shapes/print.ts";
import { openStores } from "../../store/index.ts";
import { START } from "../support/make.ts";

/* Prints logged by two processes at once on one file, killed without warning, over and over; half of the calls come twice. */

/** More than those that are killed can log together. */
const PRINTS = 400;
const KILLS = 16;
const MOST = 20;
const WORKER = join(import.meta.dirname, "..", "support", "log-prints.mjs");

/** Begins at once; `told` resolves once it has logged so many, or has ended. */
async function start(path: string, seed: number, most = Infinity) {
  const args = [WORKER, path, seed, START, PRINTS, most].map(String);
  const child = spawn(process.execPath, args, { stdio: ["pipe", "pipe", "inherit"] });
  let count = 0;
  let look = (): void => undefined;
  child.stdout.on("data", (letters: Buffer) => {
    count += letters.length;
    look();
  });
  const ended = once(child, "exit");
  const told = (letters: number): Promise<unknown> =>
    Promise.race([
      ended,
      new Promise<void>((resolve) => {
        look = () => count >= letters && resolve();
        look();
      }),
    ]);
  await told(1);
  child.stdin.write("go");
  return { child, told, ended };
}

test(
  `${PRINTS} prints by two processes over ${KILLS} kills: none lost, none doubled, each found by its words`,
  { timeout: 300_000 },
  async () => {
    const path = join(mkdtempSync(join(tmpdir(), "sinkside-prints-")), "sinkside.db");
    const first = openStores(path);
    first.classes.add("room:1", "Harbour workshop (invented)", "UTC", false, START);
    first.close();
    let hits = 0;
    for (let killed = 0; killed < KILLS; killed += 2) {
      const two = await Promise.all([start(path, killed + 1, MOST), start(path, killed + 2, MOST)]);
      await Promise.all(
        two.map(async ({ child, told, ended }, at) => {
          await told(2 + (((killed + at) * 7) % 12));
          if (child.exitCode !== null) return;
          child.kill("SIGKILL");
          await ended;
          if (child.signalCode === "SIGKILL") hits += 1;
        }),
      );
    }
    await (await start(path, KILLS + 1)).told(Infinity);

    const stores = openStores(path);
    expect(stores.db.pragma("integrity_check", { simple: true })).toBe("ok");
    stores.db.exec("insert into prints_text (prints_text, rank) values ('integrity-check', 1)");
    expect(hits, "kills that hit a process at work").toBe(KILLS);
    const { prints, total } = stores.prints.search(1, EVERY_PRINT, PRINTS + 1, 0);
    expect(total).toBe(PRINTS);
    const numbers = (of: readonly number[]): number[] => of.toSorted((a, b) => a - b);
    const all = Array.from({ length: PRINTS }, (_, at) => at + 1);
    expect(numbers(prints.map(({ number }) => number))).toEqual(all);
    expect(numbers(prints.map(({ body }) => body.exposureTenths))).toEqual(all);
    for (const { title, note, body } of prints) {
      expect(title).toBe(`n${body.exposureTenths}`);
      expect(note).toBe(`wave ${body.exposureTenths}`);
    }
    expect(stores.prints.search(1, { ...EVERY_PRINT, words: ["wave 299"] }, 9, 0).total).toBe(1);
    stores.close();
  },
);
