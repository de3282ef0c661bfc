/*
 * The bot's own engine as it is built: the store, the beat and the deliverer, with the room as it is while its page is still
 * being loaded. A timer is a cue of a run of its own; it counts as fired once it is decided, said and flushed to the disk.
 */
import { join } from "node:path";

const A_CLASS = 30;
const PORTION = 1000;

const PARTS = [
  "store/index.js",
  "bot/beat.js",
  "bot/deliver.js",
  "bot/clock.js",
  "bot/say.js",
  "bot/tidier.js",
];

export const loadParts = (dist) => Promise.all(PARTS.map((path) => import(join(dist, path))));

export async function sinkside({ dist, data, run }) {
  const [
    { openStores },
    { createBeat },
    { createDeliverer },
    { createSteadyClock, systemTime },
    early,
    { createTidier },
  ] = await loadParts(dist);
  const path = join(data, "sinkside.db");
  const stores = openStores(path);
  const tidier = createTidier(path, (detail) => console.error(detail));
  const clock = createSteadyClock({
    sources: systemTime(),
    anchor: stores.time.anchor(),
    onStep(byMs, anchor) {
      stores.time.shift(byMs, anchor);
      return true;
    },
    onAnchor(anchor) {
      stores.time.saveAnchor(anchor);
      return true;
    },
  });
  const quiet = () => {};
  const log = { debug: quiet, info: quiet, warn: quiet, error: (_, message) => console.error(message) };
  const decided = [];
  let beat;

  function begin(fire) {
    stores.outbox.recover(clock.now());
    const room = createRoom(
      early.createEarlyRoom(stores, () => clock.now()),
      fire,
    );
    const deliverer = createDeliverer({
      stores,
      clock,
      log,
      ports: new Map([["room", room]]),
      onOutcome: () => beat.rearm(),
      onSaid: ({ dueAt, decidedAt }) => decided.push(decidedAt - dueAt),
    });
    beat = createBeat({ stores, clock, log, deliverer, onSpoken: quiet, tidy: tidier.tidy });
    beat.start();
  }

  return {
    async arm(dues, fire) {
      for (let from = 0; from < dues.length; from += PORTION)
        stores.atomically(() => dues.slice(from, from + PORTION).forEach((due, at) => add(from + at, due)));
      begin(fire);
    },
    async resume(fire) {
      begin(fire);
    },
    async stop() {
      beat.stop();
      await tidier.stop();
      stores.close();
    },
    figures() {
      decided.sort((a, b) => a - b);
      const at = (share) => decided[Math.min(decided.length - 1, Math.floor(decided.length * share))];
      return { decided: [at(0.5), at(0.99), at(1)] };
    },
  };

  function add(index, dueAtMs) {
    const now = clock.now();
    const { id } = addRun(stores, run, index, now);
    stores.cues.reschedule(id, [{ key: "1", kind: "agitate", step: 0, number: 1, dueAtMs }], 0, now);
  }
}

/** A run of a person of its own. */
export function addRun(stores, run, index, now) {
  const classId = stores.classes.ensure(`room:${Math.floor(index / A_CLASS)}`, "Invented class", now).id;
  const personId = `room:p${index}`;
  stores.members.see(classId, { id: personId, name: `Person ${index}` }, "student", now);
  const phase = { kind: "running", step: 0, startedAtMs: now, endsAtMs: now + 7_200_000 };
  return stores.runs.add({ ...run, classId, personId, phase, startedAtMs: now });
}

/** The room, with what it is told after the commit noted. */
function createRoom(room, fire) {
  return {
    ...room,
    post(delivery, reach) {
      const posted = room.post(delivery, reach);
      return { ...posted, announce: () => void (posted.announce(), fire(delivery.dueAt)) };
    },
  };
}
