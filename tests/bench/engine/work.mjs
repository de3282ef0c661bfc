/*
 * The work of the bot's cue, for a queue whose handler only notes the instant: the run is read and what it says is kept in the
 * room, in one transaction on a store as durable as the bot's own. It is a little less than the
 * bot does: the words are given, and the queue itself keeps what is still to come.
 */
import { join } from "node:path";
import { addRun, loadParts } from "./ours.mjs";

const PORTION = 1000;
const TEXT = "**Agitate for 10 s.** Invert it slowly, 4 times. 1:00 of 120:00";

export const NO_WORK = { step() {}, together: (work) => work() };

export async function createWork({ dist, data, run, count }) {
  const [{ openStores }, , , , { sayInRoom }] = await loadParts(dist);
  const stores = openStores(join(data, "work.db"));
  const runs = [];
  while (runs.length < count)
    stores.atomically(() => {
      for (let at = 0; at < PORTION && runs.length < count; at += 1)
        runs.push(addRun(stores, run, runs.length, Date.now()).id);
    });

  function say(dueAt) {
    const now = Date.now();
    const { id, classId, personId, number } = stores.runs.get(runs.pop());
    const language = stores.members.languageOf(classId, personId);
    const key = `${id.toString(36)}.0.0a1`;
    const body = { text: TEXT, language, run: { number, tank: null }, actions: [], mentions: [] };
    stores.outbox.takeUntoldOf(id, dueAt);
    const classKey = stores.classes.addressOf(classId).key;
    const told = { runs: [body.run], pictures: [], attachments: [], usefulUntil: null };
    sayInRoom(stores, { ...body, ...told, classKey, key, personId, dueAt }, now);
  }

  return {
    step: (dueAt) => stores.atomically(() => say(dueAt)),
    /** Several at once share one flush of the disk. */
    together: (work) => stores.atomically(work),
  };
}
