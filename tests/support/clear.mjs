// A process that clears what is finished, portion by portion, while it also makes something new; killed in the midst of it.
import { openStores } from "../../dist/store/index.js";

const [path = "", now = "0", beforeText = "0"] = process.argv.slice(2);
const at = Number(now);
const before = Number(beforeText);
const kinds = [
  "cues",
  "says",
  "outbox",
  "messages",
  "presses",
  "plans",
  "runs",
  "erasures",
  "calls",
  "sessions",
];
const cutoffs = Object.fromEntries(kinds.map((kind) => [kind, before]));
const stores = openStores(path);

let made = 0;
for (const kind of kinds) {
  let after = 0;
  while (after !== undefined) {
    after = stores.atomically(() => stores.retention.clear(kind, after, cutoffs, at, 20).next);
    made += 1;
    const key = `new.${process.pid}.${made}`;
    stores.atomically(() =>
      stores.messages.add({ classId: 1, personId: null, authorId: null, key, at, body: { made } }),
    );
    process.stdout.write(`${key}\n`);
  }
}
stores.close();
