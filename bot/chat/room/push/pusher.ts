import type { Agent } from "node:https";
import type { OwedPush, PushKeys } from "../../../../store/pushes.ts";
import type { Stores } from "../../../../store/index.ts";
import type { Log } from "../../../process/log.ts";

/*
 * Says what is owed to phones whose page is closed. A row is owed in the transaction that says the call in the room, and goes
 * once a push service has taken it: a process killed in between sends it again, under the same topic and key, and the phone
 * knows it by them.
 */

export interface Pusher {
  /** Something may be owed. */
  wake(): void;
  /** Made at first need, and kept: with another pair no phone would be reached any more. */
  keys(): Promise<PushKeys>;
  stop(): Promise<void>;
}

export interface PusherDeps {
  readonly stores: Pick<Stores, "pushes">;
  readonly log: Pick<Log, "warn">;
  /** How a push service reaches whoever runs this, as its protocol asks. */
  subject(): string;
  agentOf(endpoint: string): Agent;
  now(): number;
}

const AT_ONCE = 40;
const TIMEOUT_MS = 10_000;
/** Waits between tries: short at first, since a call ages quickly. */
const RETRY_MS = [500, 1000, 2000, 5000, 10_000, 30_000] as const;
const MOST_WAIT_MS = 10 * 60_000;

type Outcome = "taken" | "gone" | "refused" | { readonly againAfterMs: number };

export function createPusher({ stores: { pushes }, log, subject, agentOf, now }: PusherDeps): Pusher {
  const underWay = new Map<number, Promise<void>>();
  let timer: NodeJS.Timeout | undefined;
  let isStopped = false;
  /** Many calls of one turn of the loop are looked at once. */
  let isLookPending = false;

  const load = async () => (await import("web-push")).default;

  async function keys(): Promise<PushKeys> {
    const known = pushes.keys();
    if (known) return known;
    pushes.saveKeys((await load()).generateVAPIDKeys());
    return pushes.keys() ?? keys();
  }

  function wake(): void {
    if (isLookPending) return;
    isLookPending = true;
    setImmediate(pump);
  }

  function pump(): void {
    isLookPending = false;
    clearTimeout(timer);
    if (isStopped) return;
    try {
      look();
    } catch (error) {
      log.warn({ err: error }, "what is to be pushed could not be read");
      timer = setTimeout(pump, RETRY_MS[1]).unref();
    }
  }

  function look(): void {
    // In most rounds nothing is owed to anybody: then nothing is written either.
    if (pushes.nextAt() === undefined) return;
    pushes.dropStale(now());
    const free = AT_ONCE - underWay.size;
    const ready = free > 0 ? pushes.ready(now(), AT_ONCE * 2).filter(({ id }) => !underWay.has(id)) : [];
    for (const owed of ready.slice(0, free)) {
      const saying = say(owed).finally(() => {
        underWay.delete(owed.id);
        pump();
      });
      underWay.set(owed.id, saying);
    }
    const nextAt = pushes.nextAt();
    if (nextAt !== undefined && underWay.size === 0)
      timer = setTimeout(pump, Math.min(MOST_WAIT_MS, Math.max(50, nextAt - now()))).unref();
  }

  async function say(owed: OwedPush): Promise<void> {
    try {
      record(owed, await send(owed));
    } catch (error) {
      // The store would not take it: what was said stays owed, and is known by its key when it comes again.
      log.warn({ err: error }, "what became of a push could not be kept");
      await new Promise((resolve) => setTimeout(resolve, RETRY_MS[1]).unref());
    }
  }

  async function send({ endpoint, p256dh, auth, topic, body, usefulUntil }: OwedPush): Promise<Outcome> {
    const webPush = await load();
    const { publicKey, privateKey } = await keys();
    try {
      await webPush.sendNotification({ endpoint, keys: { p256dh, auth } }, JSON.stringify(body), {
        vapidDetails: { subject: subject(), publicKey, privateKey },
        // Kept by the push service for as long as the call is of use, and no longer.
        TTL: Math.max(0, Math.floor((usefulUntil - now()) / 1000)),
        topic,
        urgency: "high",
        timeout: TIMEOUT_MS,
        agent: agentOf(endpoint),
      });
      return "taken";
    } catch (error) {
      const { statusCode, headers } = error as { statusCode?: number; headers?: Record<string, string> };
      if (statusCode === 404 || statusCode === 410) return "gone";
      if (statusCode !== undefined && statusCode < 500 && statusCode !== 429) {
        log.warn({ statusCode }, "a push service refused a call");
        return "refused";
      }
      return { againAfterMs: Number(headers?.["retry-after"] ?? 0) * 1000 || 0 };
    }
  }

  function record({ id, subscriptionId, tries }: OwedPush, outcome: Outcome): void {
    if (outcome === "gone") pushes.forget(subscriptionId);
    else if (typeof outcome === "string") pushes.settle(id);
    else {
      const waitMs = RETRY_MS[Math.min(tries, RETRY_MS.length - 1)] ?? 30_000;
      pushes.later(id, now() + Math.max(waitMs, Math.min(outcome.againAfterMs, MOST_WAIT_MS)));
    }
  }

  return {
    keys,
    wake,
    async stop() {
      isStopped = true;
      clearTimeout(timer);
      await Promise.race([
        Promise.allSettled(underWay.values()),
        new Promise((resolve) => setTimeout(resolve, 2000).unref()),
      ]);
    },
  };
}
