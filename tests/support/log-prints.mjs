// A process that logs prints: calls as chats deliver them, each with its own id and each made again as after a lost answer,
// until all are in. It is started several times at once on one file, begins when it is told to, and is killed in the midst of it.
import { once } from "node:events";
import { createDispatch } from "../../dist/bot/dispatch.js";
import { commands } from "../../dist/commands/index.js";
import { openStores } from "../../dist/store/index.js";

// After `most` it waits for its end: so it can never have done all before it is killed.
const [path = "", seed = "1", at = "0", count = "1", most = "Infinity"] = process.argv.slice(2);
const stores = openStores(path);
const nothing = () => {};
const log = { debug: nothing, info: nothing, warn: nothing, error: nothing };
const dispatch = createDispatch({ commands, stores, clock: { now: () => Number(at) }, log });
let state = Number(seed);
const random = () => {
  state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
  return state / 2 ** 32;
};

/** Where several wait for one file, one may wait too long: nothing was written, and it is tried again. */
function call(id, name, options) {
  for (;;) {
    const { kind, code, reply } = dispatch.run(
      {
        callId: `room:mina:${id}`,
        name,
        options,
        person: { id: "room:mina", name: "Mina" },
        role: "student",
        place: { classKey: "room:1", className: "Harbour workshop (invented)", channelRef: null },
      },
      Number(at),
    );
    if (kind === "done" || kind === "repeat") return;
    if (code !== "SQLITE_BUSY") throw new Error(`${code}: ${reply.text}`);
  }
}

process.stdout.write("r");
await once(process.stdin, "data");
process.stdin.unref();
for (let logged = 0; ; logged += 1) {
  if (logged >= Number(most)) await new Promise(() => setInterval(nothing, 60_000));
  const done = new Set(
    stores.db
      .prepare("select title from prints")
      .all()
      .map(({ title }) => Number(title.slice(1))),
  );
  const open = Array.from({ length: Number(count) }, (_, index) => index + 1).filter(
    (each) => !done.has(each),
  );
  if (open.length === 0) break;
  const each = open[Math.floor(random() * Math.min(open.length, 20))];
  const tries = random() < 0.5 ? 2 : 1;
  for (let time = 0; time < tries; time += 1)
    call(each, "print log", {
      seconds: String(each / 10),
      title: `n${each}`,
      burn: "sky 1/2",
      note: `wave ${each}`,
    });
  process.stdout.write(".");
}
stores.close();
