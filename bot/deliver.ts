import type { Owed, Ready } from "../store/outbox.ts";
import type { Stores } from "../store/index.ts";
import { latestStart } from "./chat/pace.ts";
import type { ChatPort, Outcome, Target } from "./chat/port.ts";
import type { Clock } from "./clock.ts";
import { composeBundle, composeOne } from "./compose.ts";
import type { Log } from "./log.ts";
import { groupReady, type Unit } from "./units.ts";

export interface Deliverer {
  /** Begins to say what is owed and may leave now; returns at once, with the instant to look again. */
  pump(): number;
  /** Waits until nothing is being said, at most `ms`. */
  drain(ms: number): Promise<void>;
}

export interface DeliverDeps {
  readonly stores: Stores;
  readonly clock: Clock;
  readonly log: Log;
  /** By the word in front of a class's key. */
  readonly ports: ReadonlyMap<string, ChatPort>;
  /** Called after each outcome: there may be room for more. */
  readonly onSettled: () => void;
  /** Called for each message that was said, for the figures. */
  readonly onSaid?: (owed: Owed, now: number) => void;
}

/** A class's chat, and where in it the class is spoken to. */
interface Place {
  readonly port: ChatPort;
  readonly classKey: string;
  readonly channelRef: string | null;
}

/** Said at the same time at most; more wait their turn. */
const MOST_AT_ONCE = 500;
const MOST_LOOKED_AT = 2000;
/** Waits between tries after an unknown outcome: short at first, since a cue ages quickly. */
const RETRY_MS = [500, 1000, 2000, 5000, 10_000, 30_000] as const;
/** A person who can't be reached alone is not tried again for this long. */
const REFUSED_FOR_MS = 60 * 60 * 1000;
/** A chat remembers a key for "a few minutes" only; after this a message of unknown outcome is looked for first. */
const REMEMBERED_MS = 120_000;
const NO_CHAT_MS = 60_000;
const LAST_CUE_PRIORITY = 2;

export function createDeliverer(deps: DeliverDeps): Deliverer {
  const { stores, clock, log, ports } = deps;
  const inFlight = new Map<number, Promise<void>>();
  /** Paced chats take one message at a time in each channel. */
  const busyChannels = new Set<string>();
  let outcomes: { unit: Unit; several: readonly Owed[]; outcome: Outcome }[] = [];

  function pump(): number {
    const now = clock.now();
    const waiting = stores.outbox
      .ready(now, MOST_LOOKED_AT + inFlight.size)
      .filter(({ id }) => !inFlight.has(id));
    const places = new Map<number, Place>();
    const byChat = new Map<ChatPort, Ready[]>();
    for (const each of dropStale(waiting, now)) {
      const place = places.get(each.classId) ?? placeOf(each.classId);
      if (!place) {
        stores.outbox.markLater([each.id], now + NO_CHAT_MS, "no chat for this class is running");
        continue;
      }
      places.set(each.classId, place);
      const same = byChat.get(place.port);
      if (same) same.push(each);
      else byChat.set(place.port, [each]);
    }
    const looks = [...byChat].map(([port, ready]) => startAll(port, ready, places, now));
    return Math.min(stores.outbox.nextReadyAt(now) ?? Infinity, ...looks);
  }

  function placeOf(classId: number): Place | undefined {
    const classKey = stores.classes.get(classId)?.key;
    const port = ports.get(classKey?.split(":")[0] ?? "");
    if (classKey === undefined || !port) return undefined;
    return { port, classKey, channelRef: stores.classes.channelRef(classId) };
  }

  function dropStale(waiting: readonly Ready[], now: number): Ready[] {
    const isStale = ({ usefulUntil }: Ready): boolean => usefulUntil !== null && usefulUntil <= now;
    const stale = waiting.filter(isStale).map(({ id }) => id);
    if (stale.length > 0) stores.outbox.markEnded(stale, "stale", "too late to be of use", now);
    return waiting.filter((each) => !isStale(each));
  }

  /** Starts what may leave now, in order of its moment; the instant at which more may. */
  function startAll(
    port: ChatPort,
    ready: readonly Ready[],
    places: ReadonlyMap<number, Place>,
    now: number,
  ): number {
    const units = groupReady(ready, (each) => targetOf(each, places.get(each.classId)));
    const { pace } = port;
    const cues = units.filter(({ priority }) => priority <= LAST_CUE_PRIORITY);
    // Held until its moment, and let go ahead of it only as far as the burst it is part of demands.
    const beginAt = pace
      ? latestStart(
          cues.map(({ dueAt }) => dueAt),
          pace.perSecond,
        )
      : now;
    let lookAt = Infinity;
    const leaving: { unit: Unit; place: Place }[] = [];
    for (const [position, unit] of units.entries()) {
      const place = places.get(unit.classId);
      // Whatever is under way looks again when it is settled.
      if (!place || inFlight.size + leaving.length >= MOST_AT_ONCE) break;
      if (pace) {
        if (busyChannels.has(unit.target.channel)) continue;
        const heldUntil =
          unit.priority > LAST_CUE_PRIORITY ? now : beginAt + (position * 1000) / pace.perSecond;
        const leaveAt = Math.max(heldUntil, pace.readyAt(unit.target.channel, now));
        if (leaveAt > now) {
          lookAt = Math.min(lookAt, leaveAt);
          continue;
        }
        pace.take(unit.target.channel, now);
        busyChannels.add(unit.target.channel);
      }
      leaving.push({ unit, place });
    }
    // One flush of the disk for all of them, and before any of them leaves.
    stores.atomically(() => {
      for (const { unit } of leaving) stores.outbox.markSending(unit.ids, unit.bundle, now);
    });
    for (const { unit, place } of leaving) start(unit, place);
    return lookAt;
  }

  function start(unit: Unit, place: Place): void {
    const saying = say(unit, place).catch((error: unknown) =>
      log.error({ key: unit.key, err: error }, "saying broke"),
    );
    for (const id of unit.ids) inFlight.set(id, saying);
  }

  async function say(unit: Unit, { port, ...where }: Place): Promise<void> {
    const now = clock.now();
    const several = stores.outbox.load(unit.ids);
    const [first] = several;
    if (!first) throw new Error("a message that was ready is gone");
    const delivery =
      unit.bundle === null ? composeOne(first, where, now) : composeBundle(unit.bundle, several, where, now);
    let outcome: Outcome | undefined;
    try {
      const isForgotten = now - (first.firstTryAt ?? now) > REMEMBERED_MS;
      if (isForgotten && port.find) {
        const found = await port.find(delivery);
        if (found.kind === "found") outcome = { kind: "sent", ref: found.ref };
        if (found.kind === "unknown") outcome = { kind: "later", afterMs: retryMs(first.tries) };
      }
      outcome ??= await port.send(delivery);
    } catch (error) {
      outcome = { kind: "unknown", detail: String(error) };
    }
    if (outcomes.length === 0) setImmediate(recordAll);
    outcomes.push({ unit, several, outcome });
  }

  /** What came back in one turn of the loop is recorded with one flush of the disk. */
  function recordAll(): void {
    const settled = outcomes;
    outcomes = [];
    try {
      stores.atomically(() => {
        for (const { unit, several, outcome } of settled) record(unit, several, outcome);
      });
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

  function record(unit: Unit, several: readonly Owed[], outcome: Outcome): void {
    const now = clock.now();
    const tries = several[0]?.tries ?? 1;
    switch (outcome.kind) {
      case "sent":
        stores.outbox.markSent(unit.ids, outcome.ref, now);
        for (const owed of several) {
          deps.onSaid?.(owed, now);
          log.info(
            { key: owed.key, decidedMs: owed.decidedAt - owed.dueAt, deliveredMs: now - owed.dueAt },
            "said",
          );
        }
        return;
      case "later":
        stores.outbox.markLater(unit.ids, now + outcome.afterMs, "the chat asked to wait");
        return;
      case "unknown":
        stores.outbox.markLater(unit.ids, now + retryMs(tries - 1), outcome.detail);
        log.warn({ key: unit.key, tries, detail: outcome.detail }, "not known whether it was said");
        return;
      case "refused":
        refuse(unit, several, outcome.detail, now);
    }
  }

  function refuse(unit: Unit, several: readonly Owed[], detail: string, now: number): void {
    log.warn({ key: unit.key, detail }, "refused by the chat");
    const only = several.length === 1 ? several[0] : undefined;
    if (!only || only.personId === null) {
      stores.outbox.markEnded(unit.ids, "failed", detail, now);
      return;
    }
    stores.members.saveDirectRefused(only.personId, now + REFUSED_FOR_MS);
    stores.outbox.redirectToClass(only.id, only.personId);
    stores.outbox.markLater(unit.ids, now, detail);
  }

  return {
    pump,
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

function targetOf({ key, personId }: Ready, place: Place | undefined): Target {
  return place?.port.targetOf?.(personId, place.channelRef) ?? { channel: key, isShared: false };
}

function retryMs(tries: number): number {
  return RETRY_MS[Math.min(tries, RETRY_MS.length - 1)] ?? 30_000;
}
