import { writeSync } from "node:fs";
import { setImmediate as turn } from "node:timers/promises";
import { pathToFileURL } from "node:url";

/*
 * What the bot does all evening: one transaction after another, each told on the standard output once it is committed, while
 * a thread beside it moves what was written into the store. Run under a tracer on the built store:
 * node workload.mjs BUILD STORE COMMITS SYNCHRONOUS
 */

const [build, path, commits, synchronous] = process.argv.slice(2);
const { openStores } = await import(pathToFileURL(`${build}/store/index.js`).href);
const { createTidier } = await import(pathToFileURL(`${build}/bot/tidier.js`).href);

const stores = openStores(path);
const tidier = createTidier(path, (detail) => {
  throw new Error(detail);
});
if (synchronous !== "") stores.db.pragma(`synchronous = ${synchronous}`);
const { id: classId } = stores.classes.ensure("room:class", "Harbour workshop (invented)", 1);
writeSync(1, "ack 0\n");
for (let number = 1; number <= Number(commits); number += 1) {
  stores.atomically(() =>
    stores.outbox.owe({
      key: `k${number}`,
      classId,
      personId: null,
      runId: null,
      priority: 0,
      dueAt: number,
      decidedAt: number,
      usefulUntil: null,
      body: { text: "x".repeat((number * 37) % 900), actions: [], mentions: [] },
    }),
  );
  writeSync(1, `ack ${number}\n`);
  tidier.tidy();
  await turn();
}
// As after a power cut: nothing is closed.
process.kill(process.pid, "SIGKILL");
