import { createPace } from "../../bot/chat/pace.ts";
import type { ChatPort, Delivery, Found, Posted, Outcome } from "../../bot/chat/port.ts";
import { sayInRoom } from "../../bot/chat/room/say.ts";
import type { OpenedStores } from "../../store/index.ts";
import type { Random } from "./random.ts";
import type { VirtualTime } from "./virtual-time.ts";

/*
 * A chat as bad as chats are: answers come late, are lost after the work was done, or the work is done long after the
 * answer was given up. It outlives the bot. Every message it ever showed is in `shown`.
 */

export interface Shown {
  readonly key: string;
  readonly personId: string | null;
  readonly mentions: readonly string[];
  readonly text: string;
  readonly dueAt: number;
  /** When the bot asked for it, and when it was there to be read. */
  readonly askedMs: number;
  readonly shownMs: number;
}

interface Message {
  readonly key: string;
  readonly at: number;
}

/** Shares of the sends that go wrong, each 0 to 1. */
export interface Weather {
  readonly later: number;
  /** The message is there, its answer is lost. */
  readonly lostAnswer: number;
  readonly lostRequest: number;
  /** Given up as unknown, and shown some seconds after that. */
  readonly lateWork: number;
  readonly meanMs: number;
}

export const FAIR: Weather = { later: 0, lostAnswer: 0, lostRequest: 0, lateWork: 0, meanMs: 60 };
export const FOUL: Weather = { later: 0.08, lostAnswer: 0.1, lostRequest: 0.1, lateWork: 0.04, meanMs: 300 };

export interface SimulatedChat {
  readonly name: "room" | "discord";
  readonly shown: Shown[];
  /** People who take no messages of their own. */
  readonly closed: Set<string>;
  weather: Weather;
  /** Set: what is said is kept in the bot's own store, with the decision. */
  isKept: boolean;
  /** A connection of one bot; nothing comes back over it once it is cut. */
  connect(stores: OpenedStores): ChatPort & { cut(): void };
  /** Reads what was kept in the store into `shown`. */
  collect(stores: OpenedStores): void;
}

/** How long a chat of the second kind recognises a repeat; published only as “the past few minutes”. */
const REMEMBERS_MS = 120_000;
const GIVES_UP_MS = 4000;

export function createChat(name: "room" | "discord", time: VirtualTime, random: Random): SimulatedChat {
  const shown: Shown[] = [];
  const closed = new Set<string>();
  const kept = new Map<string, Shown>();

  function show(
    { key, personId, mentions, text, dueAt }: Delivery,
    askedMs: number,
    shownMs = time.trueMs(),
  ): void {
    const isKnown = shown.some(
      (each) => each.key === key && (name === "room" || Math.abs(shownMs - each.shownMs) <= REMEMBERS_MS),
    );
    if (!isKnown) shown.push({ key, personId, mentions, text, dueAt, askedMs, shownMs });
  }

  /** How old a message is the platform tells in whole seconds, as the real one does. */
  function whereIs({ key }: Delivery): { ref: string; agoMs: number } {
    const shownMs = shown.findLast((each) => each.key === key)?.shownMs ?? time.trueMs();
    return { ref: key, agoMs: Math.floor((time.trueMs() - shownMs) / 1000) * 1000 };
  }

  const chat: SimulatedChat = {
    name,
    shown,
    closed,
    weather: FAIR,
    isKept: false,
    collect({ db }) {
      const rows = db.prepare("select key, at from messages where key like 'd:%'").all() as Message[];
      for (const { key, at } of rows) {
        const one = kept.get(`${key.slice(key.indexOf(".") + 1)}@${at}`);
        if (!one) throw new Error(`the room shows ${key}, which nobody said`);
        shown.push(one);
      }
    },
    connect(stores) {
      let isCut = false;
      const answer = <T>(ms: number, make: () => T): Promise<T> =>
        new Promise((resolve) =>
          time.after(ms, () => {
            const value = make();
            if (!isCut) resolve(value);
          }),
        );

      function send(delivery: Delivery): Promise<Outcome> {
        if (isCut) throw new Error("a dead bot speaks");
        const { weather } = chat;
        const askedMs = time.trueMs();
        const there = random.wait(weather.meanMs / 2);
        const back = random.wait(weather.meanMs / 2);
        const sent = (): Outcome => ({ kind: "sent", ...whereIs(delivery) });
        const unknown: Outcome = { kind: "unknown", detail: "no answer" };
        if (random.chance(weather.later))
          return answer(there + back, () => ({ kind: "later", afterMs: 700 }));
        if (random.chance(weather.lostRequest)) return answer(GIVES_UP_MS, () => unknown);
        if (random.chance(weather.lostAnswer)) {
          time.afterElsewhere(there, (atMs) => show(delivery, askedMs, atMs));
          return answer(GIVES_UP_MS, () => unknown);
        }
        if (random.chance(weather.lateWork)) {
          time.afterElsewhere(GIVES_UP_MS + random.wait(3000), (atMs) => show(delivery, askedMs, atMs));
          return answer(GIVES_UP_MS, () => unknown);
        }
        if (delivery.personId !== null && closed.has(delivery.personId))
          return answer(there + back, () => ({ kind: "refused", detail: "takes no messages" }));
        time.afterElsewhere(there, (atMs) => show(delivery, askedMs, atMs));
        return answer(there + back, sent);
      }

      function find(delivery: Delivery): Promise<Found> {
        return answer(random.wait(chat.weather.meanMs), () => {
          if (random.chance(chat.weather.lostRequest)) return { kind: "unknown", detail: "no answer" };
          const isThere = shown.some(({ key }) => key === delivery.key);
          return isThere ? { kind: "found", ...whereIs(delivery) } : { kind: "absent" };
        });
      }

      const port = {
        chat: name,
        start: async () => {},
        stop: async () => {},
        send,
        cut: () => void (isCut = true),
      };
      const post = (delivery: Delivery): Posted => {
        const now = time.wallMs();
        const { key, personId, mentions, text, dueAt } = delivery;
        const trueMs = time.trueMs();
        const one = { key, personId, mentions, text, dueAt, askedMs: trueMs, shownMs: trueMs };
        kept.set(`${key}@${now}`, one);
        return { outcome: sayInRoom(stores, delivery, now).outcome, announce: () => {} };
      };
      if (name === "room") return chat.isKept ? { ...port, post } : port;
      return {
        ...port,
        find,
        pace: createPace({ perSecond: 40, channelCount: 4, channelWindowMs: 5000 }),
        targetOf: (personId, channelRef) =>
          personId === null || closed.has(personId)
            ? { channel: channelRef ?? "class", isShared: true }
            : { channel: personId, isShared: false },
      };
    },
  };
  return chat;
}
