// A process that pours: takes every run of a store through its two baths, tapping each twice, until all are in. It is
// started several times at once on one file, begins when it is told to, and is killed in the midst of it.
import { once } from "node:events";
import { keepRun } from "../../dist/commands/run/keep.js";
import { advance } from "../../dist/commands/run/machine.js";
import { openStores } from "../../dist/store/index.js";

const [path = "", seed = "1", at = "0"] = process.argv.slice(2);
const stores = openStores(path);
let state = Number(seed);
const random = () => {
  state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
  return state / 2 ** 32;
};

/** Where three wait for one file, one may wait too long: nothing was written, and it is tried again. */
function patiently(work) {
  for (;;) {
    try {
      return stores.atomically(work);
    } catch (error) {
      if (error.code !== "SQLITE_BUSY") throw error;
    }
  }
}

function tap(id) {
  patiently(() => {
    const run = stores.runs.get(id);
    if (!run || run.phase.kind === "finished") return;
    const step = run.phase.kind === "running" ? run.phase.step + 1 : run.phase.step;
    const event = { kind: "next", step, sure: true, atMs: Number(at) + run.marks.length * 1000 };
    const changed = advance(run, event);
    if (changed.ok) keepRun(stores, changed.value, event.atMs);
  });
}

/** The same change kept once more, as after an answer that was lost. */
function keepAgain(id) {
  patiently(() => {
    const run = stores.runs.get(id);
    if (run) keepRun(stores, run, Number(at));
  });
}

process.stdout.write("r");
await once(process.stdin, "data");
process.stdin.unref();
for (;;) {
  const open = stores.db
    .prepare("select id from runs where phase_kind in ('waiting', 'running') order by id")
    .all()
    .map(({ id }) => id);
  if (open.length === 0) break;
  const id = open[Math.floor(random() * Math.min(open.length, 40))];
  tap(id);
  if (random() < 0.5) keepAgain(id);
  process.stdout.write(".");
}
stores.close();
