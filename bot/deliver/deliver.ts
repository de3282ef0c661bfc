import type { Owed } from "../../store/owed.ts";
import type { Stores } from "../../store/index.ts";
import { createAhead } from "./ahead.ts";
import { type NewCall, type Say, sayAtOnce } from "./at-once.ts";
import type { ChatPort, Outcome, Posted } from "../chat/port.ts";
import type { Clock } from "../process/clock.ts";
import { compose } from "./compose.ts";
import { type Addresses, createAddresses, type GatherDeps, gatherReady, type Outgoing } from "./gather.ts";
import type { Log } from "../process/log.ts";
import { recordOutcome, retryMs, saidAt, SLOW_RETRY_MS, type Tried } from "./outcomes.ts";
import { pickPaced } from "./pick.ts";
import { eachApart } from "../../store/each-apart.ts";
import { isStorageFault } from "../../store/open.ts";
import type { Unit } from "./units.ts";

export interface Deliverer {
  /**
   * Says what is owed, in one way for all chats: in one transaction it records what came back, does `first` (deciding what has
   * fallen due), posts what its chat keeps in the store, and notes what leaves; after the commit it shows the one and sends the other.
   * Where there is no commit, nothing was said. Returns the instant to look again.
   */
  pump(now?: number, first?: First): number;
  /** Cues due up to here are to be decided now, so that a burst ahead can begin in time. */
  decideUntil(now: number): number;
  /** Waits until nothing is being said, at most `ms`, and records it. */
  drain(ms: number): Promise<void>;
}

export interface DeliverDeps extends GatherDeps {
  readonly stores: Stores;
  readonly clock: Clock;
  readonly log: Log;
  /** Called after each outcome: there may be room for more. */
  readonly onOutcome: () => void;
  /** Called for each message that was said, for the figures. */
  readonly onSaid?: (owed: Owed, at: number) => void;
}

/** Says with `say` what it decides, and returns what that returned; without, each stands by itself and owes what it says. */
type First = (say?: Say) => readonly (() => void)[] | void;

interface Chosen {
  /** Sent after the commit. */
  readonly leaving: readonly Outgoing[];
  /** Said within it, by being posted. */
  readonly posted: readonly Outgoing[];
  readonly overtaken: readonly number[];
  /** When more may leave. */
  readonly moreAt: number;
}

/** Said at the same time at most; more wait their turn. */
const MOST_AT_ONCE = 500;
/** A chat remembers a key for "a few minutes" only; after this a message of unknown outcome is looked for first. */
const REMEMBERED_MS = 120_000;

export function createDeliverer(deps: DeliverDeps): Deliverer {
  const { stores, clock, log, ports } = deps;
  const ahead = createAhead(stores, ports);
  const inFlight = new Map<number, Promise<void>>();
  /** Paced chats take one message at a time in each channel; since when. */
  const busyChannels = new Map<string, number>();
  let outcomes: Tried[] = [];

  function pump(now = clock.now(), first?: First): number {
    const tried = outcomes;
    const { leaving, announces, moreAt } = takeUp(tried, now, first);
    forget(tried);
    for (const announce of announces) announce();
    for (const each of leaving) {
      const saying = say(each);
      for (const id of each.unit.ids) inFlight.set(id, saying);
    }
    return Math.min(moreAt, stores.outbox.nextReadyAt(now) ?? Infinity, ahead.nextAt(now));
  }

  /** All in one go, since a savepoint copies every page it meets; where anything fails, once more and each by itself. */
  function takeUp(tried: readonly Tried[], now: number, first?: First) {
    try {
      return takeUpBy(tried, now, true, first);
    } catch (error) {
      if (isStorageFault(error)) throw error;
      return takeUpBy(tried, now, false, first);
    }
  }

  function takeUpBy(tried: readonly Tried[], now: number, inOne: boolean, first?: First) {
    let leaving: readonly Outgoing[] = [];
    try {
      return stores.atomically(() => {
        record(tried, now);
        const addressOf = createAddresses(deps);
        const said = first?.(inOne ? (call) => sayNow(call, addressOf, now) : undefined) ?? [];
        const chosen = choose(tried, addressOf, now);
        ({ leaving } = chosen);
        leaving = leaving.map((each) => fit(each, now));
        const posted = inOne ? chosen.posted.map((each) => postOne(each, now)) : postAll(chosen.posted, now);
        if (chosen.overtaken.length > 0)
          stores.outbox.markEnded(chosen.overtaken, "stale", "overtaken by the next", now);
        // Before anything leaves, the store knows that it may have been said, and under which key.
        for (const { unit } of leaving) stores.outbox.markSending(unit.ids, unit.bundle, now);
        return { leaving, announces: [...said, ...posted], moreAt: chosen.moreAt };
      });
    } catch (error) {
      for (const { unit, address } of leaving) release(unit, address.port);
      throw error;
    }
  }

  /** What may be said now: posted, or sent as far as its chat takes it. */
  function choose(tried: readonly Tried[], addressOf: Addresses, now: number): Chosen {
    const leaving: Outgoing[] = [];
    const posted: Outgoing[] = [];
    const overtaken: number[] = [];
    let moreAt = Infinity;
    const free = new Set(tried.flatMap(({ unit }) => unit.ids));
    const underWay = free.size === 0 ? inFlight : new Map([...inFlight].filter(([id]) => !free.has(id)));
    for (const [port, waiting] of gatherReady(deps, addressOf, underWay, now)) {
      const most = Math.max(0, MOST_AT_ONCE - underWay.size - leaving.length);
      if (port.post) posted.push(...waiting);
      else if (port.pace) {
        const picked = pickPaced(waiting, ahead.demand(port.chat, now), port.pace, busyChannels, most, now);
        leaving.push(...picked.leaving);
        overtaken.push(...picked.overtaken);
        moreAt = Math.min(moreAt, picked.lookAt);
      } else leaving.push(...waiting.slice(0, most));
    }
    return { leaving, posted, overtaken, moreAt };
  }

  function release({ target }: Unit, port: ChatPort): void {
    if (!port.pace) return;
    port.pace.settle(target.channel, clock.now());
    busyChannels.delete(target.channel);
  }

  /** As many of a bundle as one message holds with all their buttons; the others go out with the next. */
  function fit(waiting: Outgoing, now: number): Outgoing {
    const { unit, address } = waiting;
    if (unit.bundle === null || unit.isTried || !address.port.fits) return waiting;
    const several = stores.outbox.load(unit.ids);
    let count = several.length;
    while (count > 1 && !address.port.fits(compose(waiting, several.slice(0, count), now))) count -= 1;
    const ids = several.slice(0, count).map(({ id }) => id);
    return { address, unit: { ...unit, ids, bundle: count > 1 ? unit.key : null } };
  }

  async function say({ unit, address }: Outgoing): Promise<void> {
    const { port } = address;
    const now = clock.now();
    let several: Owed[] = [];
    let outcome: Outcome | undefined;
    try {
      several = stores.outbox.load(unit.ids);
      const delivery = compose({ unit, address }, several, now);
      const isForgotten = now - (several[0]?.firstTryAt ?? now) > REMEMBERED_MS;
      if (isForgotten && port.find) {
        const found = await port.find(delivery);
        if (found.kind === "found") outcome = { ...found, kind: "sent" };
        if (found.kind === "unknown") outcome = { kind: "later", afterMs: retryMs(several[0]?.tries ?? 0) };
      }
      outcome ??= await port.send(delivery);
    } catch (error) {
      outcome = { kind: "unknown", detail: String(error) };
    }
    release(unit, port);
    outcomes.push({ unit, several, outcome, knownAt: clock.now() });
    // What comes back in one turn of the loop is recorded with one flush of the disk.
    if (outcomes.length === 1) setImmediate(deps.onOutcome);
  }

  /** Inside a transaction; returns what is to be done after its commit. */
  function postAll(posted: readonly Outgoing[], now: number): (() => void)[] {
    return eachApart(
      stores,
      posted,
      (each) => postOne(each, now),
      ({ unit: { ids, key } }, error) => {
        log.error({ key, err: error }, "a message could not be kept");
        stores.outbox.markLater(ids, now + SLOW_RETRY_MS, String(error));
        return () => {};
      },
    );
  }

  function postOne(waiting: Outgoing, now: number): () => void {
    const { unit, address } = waiting;
    stores.outbox.takeUntold(unit.ids);
    const several = stores.outbox.load(unit.ids);
    const posted = address.port.post?.(compose(waiting, several, now));
    if (!posted) return () => {};
    record([{ unit, several, outcome: posted.outcome, knownAt: now }], now);
    return () => show(several, posted);
  }

  function sayNow(call: NewCall, addressOf: Addresses, now: number): (() => void) | void {
    const said = sayAtOnce(stores, call, addressOf(call.classId, call.place), now);
    if (said) return () => show([said.owed], said.posted);
  }

  /** After the commit. */
  function show(several: readonly Owed[], { outcome, announce }: Posted): void {
    announce();
    tell({ several, outcome, knownAt: clock.now() });
  }

  /** After it is recorded. */
  function tell(tried: Omit<Tried, "unit">): void {
    if (tried.outcome.kind !== "sent") return;
    const at = saidAt(tried);
    for (const owed of tried.several) {
      deps.onSaid?.(owed, at);
      const { key, decidedAt, dueAt } = owed;
      log.debug({ key, decidedMs: decidedAt - dueAt, deliveredMs: at - dueAt }, "said");
    }
  }

  function record(tried: readonly Tried[], now: number): void {
    for (const each of tried) recordOutcome(stores, log, each, now);
  }

  function forget(tried: readonly Tried[]): void {
    outcomes = outcomes.slice(tried.length);
    for (const { unit } of tried) for (const id of unit.ids) inFlight.delete(id);
    for (const each of tried) tell(each);
  }

  /** Without saying anything new. */
  function recordAll(): void {
    const tried = outcomes;
    try {
      stores.atomically(() => record(tried, clock.now()));
    } catch (error) {
      // It stays "sending" and is said again under the same key, which chats recognise.
      return log.error({ err: error }, "what was said could not be recorded");
    }
    forget(tried);
  }

  return {
    pump,
    decideUntil: ahead.decideUntil,
    async drain(ms) {
      const timeout = new Promise<void>((resolve) => setTimeout(resolve, ms).unref());
      await Promise.race([Promise.allSettled(inFlight.values()), timeout]);
      recordAll();
    },
  };
}
