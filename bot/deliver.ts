import { deliveredLate } from "../commands/run/cue-words.ts";
import { LATE_FROM_MS } from "../commands/run/settle.ts";
import type { Owed } from "../store/outbox.ts";
import type { Stores } from "../store/index.ts";
import type { ChatPort, Delivery, Outcome } from "./chat/port.ts";
import type { Clock } from "./clock.ts";
import type { Log } from "./log.ts";

export interface Deliverer {
  /** Begins to say whatever is owed and not being said already; returns at once. */
  pump(): void;
  /** Waits until nothing is being said, at most `ms`. */
  drain(ms: number): Promise<void>;
}

export interface DeliverDeps {
  readonly stores: Stores;
  readonly clock: Clock;
  readonly log: Log;
  /** By the word in front of a class's key. */
  readonly ports: ReadonlyMap<string, ChatPort>;
  readonly onSettled: () => void;
}

/** Said at the same time at most; more wait their turn in order of urgency. */
const MOST_AT_ONCE = 100;
/** Waits between tries after an unknown outcome: short at first, since a cue ages quickly. */
const RETRY_MS = [500, 1000, 2000, 5000, 10_000, 30_000] as const;
/** A person who can't be reached alone is not tried again for this long. */
const REFUSED_FOR_MS = 60 * 60 * 1000;

export function createDeliverer({ stores, clock, log, ports, onSettled }: DeliverDeps): Deliverer {
  const inFlight = new Map<number, Promise<void>>();

  function deliveryOf(owed: Owed, now: number): Delivery | undefined {
    const found = stores.classes.get(owed.classId);
    if (!found) return undefined;
    const decidedOnTime = owed.decidedAt - owed.dueAt < LATE_FROM_MS;
    const lateMs = now - owed.dueAt;
    const late = decidedOnTime && lateMs >= LATE_FROM_MS ? `${deliveredLate(lateMs, owed.dueAt)}\n` : "";
    return {
      key: owed.key,
      classKey: found.key,
      channelRef: stores.classes.channelRef(owed.classId),
      personId: owed.personId,
      mentions: owed.body.mentions,
      text: late + owed.body.text,
      actions: owed.body.actions.map(({ weight, ...action }) => (weight ? { ...action, weight } : action)),
      pictures: owed.body.pictures ?? [],
      attachments: [],
      dueAt: owed.dueAt,
    };
  }

  async function say(owed: Owed): Promise<void> {
    const delivery = deliveryOf(owed, clock.now());
    const port = delivery && ports.get(delivery.classKey.split(":")[0] ?? "");
    if (!delivery || !port) {
      stores.outbox.markLater(owed.id, clock.now() + 60_000, "no chat for this class is running");
      return;
    }
    stores.outbox.markSending(owed.id, clock.now());
    let outcome: Outcome;
    try {
      outcome = await port.send(delivery);
    } catch (error) {
      outcome = { kind: "unknown", detail: String(error) };
    }
    record(owed, outcome);
  }

  function record(owed: Owed, outcome: Outcome): void {
    const now = clock.now();
    switch (outcome.kind) {
      case "sent":
        stores.outbox.markSent(owed.id, outcome.ref, now);
        log.info(
          { key: owed.key, decidedMs: owed.decidedAt - owed.dueAt, deliveredMs: now - owed.dueAt },
          "said",
        );
        return;
      case "later":
        stores.outbox.markLater(owed.id, now + outcome.afterMs, "the chat asked to wait");
        return;
      case "unknown":
        stores.outbox.markLater(owed.id, now + retryMs(owed.tries), outcome.detail);
        log.warn(
          { key: owed.key, tries: owed.tries + 1, detail: outcome.detail },
          "not known whether it was said",
        );
        return;
      case "refused":
        refuse(owed, outcome.detail, now);
    }
  }

  function refuse(owed: Owed, detail: string, now: number): void {
    log.warn({ key: owed.key, detail }, "refused by the chat");
    if (owed.personId === null) {
      stores.outbox.markEnded(owed.id, "failed", detail, now);
      return;
    }
    stores.members.saveDirectRefused(owed.personId, now + REFUSED_FOR_MS);
    stores.outbox.redirectToClass(owed.id, owed.personId);
    stores.outbox.markLater(owed.id, now, detail);
  }

  function pump(): void {
    const now = clock.now();
    const room = MOST_AT_ONCE - inFlight.size;
    if (room <= 0) return;
    const ready = stores.outbox
      .ready(now, MOST_AT_ONCE + inFlight.size)
      .filter(({ id }) => !inFlight.has(id));
    for (const owed of ready.slice(0, room)) {
      if (owed.usefulUntil !== null && owed.usefulUntil <= now) {
        stores.outbox.markEnded(owed.id, "stale", "too late to be of use", now);
        continue;
      }
      const saying = say(owed)
        .catch((error: unknown) => log.error({ key: owed.key, err: error }, "saying broke"))
        .finally(() => {
          inFlight.delete(owed.id);
          onSettled();
        });
      inFlight.set(owed.id, saying);
    }
  }

  return {
    pump,
    async drain(ms) {
      const timeout = new Promise<void>((resolve) => setTimeout(resolve, ms).unref());
      await Promise.race([Promise.allSettled(inFlight.values()), timeout]);
    },
  };
}

function retryMs(tries: number): number {
  return RETRY_MS[Math.min(tries, RETRY_MS.length - 1)] ?? 30_000;
}
