import type { Owed } from "../store/outbox.ts";
import type { Stores } from "../store/index.ts";
import { createAhead } from "./ahead.ts";
import type { ChatPort, Delivery, Outcome } from "./chat/port.ts";
import type { Clock } from "./clock.ts";
import { composeBundle, composeOne } from "./compose.ts";
import { gatherReady, type GatherDeps, type Waiting } from "./gather.ts";
import type { Log } from "./log.ts";
import { recordOutcome, retryMs, type Settled } from "./outcomes.ts";
import { pickPaced } from "./pick.ts";
import { isStorageFault } from "./tick.ts";

export interface Deliverer {
  /** Begins to say what is owed and may leave now; returns at once, with the instant to look again. */
  pump(): number;
  /** Cues due up to here are to be decided now, so that a burst ahead can begin in time. */
  decideUntil(now: number): number;
  /** Says what is owed in chats kept in this store, in the caller's transaction; what it returns is for after the commit. */
  keep(now: number): () => void;
  /** Waits until nothing is being said, at most `ms`. */
  drain(ms: number): Promise<void>;
}

export interface DeliverDeps extends GatherDeps {
  readonly stores: Stores;
  readonly clock: Clock;
  readonly log: Log;
  /** Called after each outcome: there may be room for more. */
  readonly onSettled: () => void;
  /** Called for each message that was said, for the figures. */
  readonly onSaid?: (owed: Owed, now: number) => void;
}

/** Said at the same time at most; more wait their turn. */
const MOST_AT_ONCE = 500;
/** A chat remembers a key for "a few minutes" only; after this a message of unknown outcome is looked for first. */
const REMEMBERED_MS = 120_000;

export function createDeliverer(deps: DeliverDeps): Deliverer {
  const { stores, clock, log, ports } = deps;
  const ahead = createAhead(stores, ports);
  const inFlight = new Map<number, Promise<void>>();
  /** Paced chats take one message at a time in each channel. */
  const busyChannels = new Set<string>();
  let outcomes: Settled[] = [];

  function pump(): number {
    const now = clock.now();
    const looks = [...gatherReady(deps, inFlight, now)].map(([port, waiting]) => {
      if (!port.keep) return startAll(port, waiting, now);
      stores.atomically(() => keepAll(port, waiting, now))();
      return Infinity;
    });
    return Math.min(stores.outbox.nextReadyAt(now) ?? Infinity, ahead.nextAt(now), ...looks);
  }

  function keep(now: number): () => void {
    const announces = [...gatherReady(deps, inFlight, now)].map(([port, waiting]) =>
      port.keep ? keepAll(port, waiting, now) : undefined,
    );
    return () => announces.forEach((announce) => announce?.());
  }

  /** Starts what may leave now, in order of its moment; the instant at which more may. */
  function startAll(port: ChatPort, waiting: readonly Waiting[], now: number): number {
    const most = Math.max(0, MOST_AT_ONCE - inFlight.size);
    const { leaving, lookAt } = port.pace
      ? pickPaced(waiting, ahead.demand(port.chat, now), port.pace, busyChannels, most, now)
      : { leaving: waiting.slice(0, most), lookAt: Infinity };
    if (leaving.length === 0) return lookAt;
    const fitting = leaving.map((each) => fit(each, now));
    // One flush of the disk for all of them, and before any of them leaves.
    stores.atomically(() => {
      for (const { unit } of fitting) stores.outbox.markSending(unit.ids, unit.bundle, now);
    });
    for (const each of fitting) {
      const saying = say(each);
      for (const id of each.unit.ids) inFlight.set(id, saying);
    }
    return lookAt;
  }

  /** As many of a bundle as one message holds with all their buttons; the others go out with the next. */
  function fit(waiting: Waiting, now: number): Waiting {
    const { unit, place } = waiting;
    if (unit.bundle === null || unit.isTried || !place.port.fits) return waiting;
    const several = stores.outbox.load(unit.ids);
    let count = several.length;
    while (count > 1 && !place.port.fits(compose(waiting, several.slice(0, count), now))) count -= 1;
    const ids = several.slice(0, count).map(({ id }) => id);
    return { place, unit: { ...unit, ids, bundle: count > 1 ? unit.key : null } };
  }

  async function say({ unit, place }: Waiting): Promise<void> {
    const { port } = place;
    const now = clock.now();
    let several: Owed[] = [];
    let outcome: Outcome | undefined;
    try {
      several = stores.outbox.load(unit.ids);
      const delivery = compose({ unit, place }, several, now);
      const isForgotten = now - (several[0]?.firstTryAt ?? now) > REMEMBERED_MS;
      if (isForgotten && port.find) {
        const found = await port.find(delivery);
        if (found.kind === "found") outcome = { kind: "sent", ref: found.ref };
        if (found.kind === "unknown") outcome = { kind: "later", afterMs: retryMs(several[0]?.tries ?? 0) };
      }
      outcome ??= await port.send(delivery);
    } catch (error) {
      outcome = { kind: "unknown", detail: String(error) };
    }
    port.pace?.settle(unit.target.channel, clock.now());
    if (outcomes.length === 0) setImmediate(recordAll);
    outcomes.push({ unit, several, outcome });
  }

  /** What came back in one turn of the loop is recorded with one flush of the disk. */
  function recordAll(): void {
    const settled = outcomes;
    outcomes = [];
    const now = clock.now();
    try {
      stores.atomically(() => {
        for (const each of settled) recordOutcome(stores, log, each, now);
      });
      for (const each of settled) tell(each, now);
    } catch (error) {
      // Not recorded: it stays "sending" and is said again under the same key, which chats recognise.
      log.error({ err: error }, "what was said could not be recorded");
    }
    for (const { unit } of settled) {
      for (const id of unit.ids) inFlight.delete(id);
      busyChannels.delete(unit.target.channel);
    }
    deps.onSettled();
  }

  /** Inside a transaction; returns what is to be done after its commit. */
  function keepAll(port: ChatPort, waiting: readonly Waiting[], now: number): () => void {
    const announces: (() => void)[] = [];
    for (const each of waiting) {
      try {
        // A savepoint of its own: one that can't be kept must not hold up the others.
        stores.atomically(() => announces.push(keepOne(port, each, now)));
      } catch (error) {
        if (isStorageFault(error)) throw error;
        log.error({ key: each.unit.key, err: error }, "a message could not be kept");
        stores.outbox.markLater(each.unit.ids, now + retryMs(RETRY_SLOWLY), String(error));
      }
    }
    return () => announces.forEach((announce) => announce());
  }

  function keepOne(port: ChatPort, waiting: Waiting, now: number): () => void {
    const { unit } = waiting;
    const several = stores.outbox.load(unit.ids);
    const kept = port.keep?.(compose(waiting, several, now));
    if (!kept) return () => {};
    const settled = { unit, several, outcome: kept.outcome };
    recordOutcome(stores, log, settled, now);
    return () => {
      kept.announce();
      tell(settled, clock.now());
    };
  }

  /** After it is recorded. */
  function tell({ several, outcome }: Settled, now: number): void {
    if (outcome.kind !== "sent") return;
    for (const owed of several) {
      deps.onSaid?.(owed, now);
      const { key, decidedAt, dueAt } = owed;
      log.info({ key, decidedMs: decidedAt - dueAt, deliveredMs: now - dueAt }, "said");
    }
  }

  return {
    pump,
    keep,
    decideUntil: ahead.decideUntil,
    async drain(ms) {
      const timeout = new Promise<void>((resolve) => setTimeout(resolve, ms).unref());
      // What has come back is recorded one turn of the loop later.
      const settled = Promise.allSettled(inFlight.values()).then(
        () => new Promise<void>((resolve) => setImmediate(resolve)),
      );
      await Promise.race([settled, timeout]);
    },
  };
}

/** A message that breaks the chat's own code will do so again. */
const RETRY_SLOWLY = 4;

function compose({ unit, place }: Waiting, several: readonly Owed[], now: number): Delivery {
  const [first] = several;
  if (!first) throw new Error("a message that was ready is gone");
  const { classKey, channelRef } = place;
  const where = { classKey, channelRef };
  return unit.bundle === null
    ? composeOne(first, where, now)
    : composeBundle(unit.bundle, several, where, now);
}
