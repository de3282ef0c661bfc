import { oweTeachers } from "../../commands/owe.ts";
import { inEach } from "../../commands/speech/language.ts";
import { chatOf } from "../../store/shapes/chat-key.ts";
import { type LostChatsDeps, OWN_CHAT } from "./lost-chats.ts";
import { de } from "./words/lost.de.ts";
import { en } from "./words/lost.en.ts";

const words = inEach({ en, de });

/* A chat whose messages take longer than a call can leave ahead of its moment: calls come late there, and that is said. */

export interface SlowChats {
  start(): void;
  /** Tells the teachers of what is slow now; each chat once an hour at most. */
  look(): void;
  /** Seconds a message takes, by the chat's word. */
  all(): Readonly<Record<string, number>>;
  stop(): void;
}

const LOOK_EACH_MS = 10_000;
const HOUR_MS = 60 * 60_000;

export function createSlowChats({ stores, clock, log, ports, onOwed }: LostChatsDeps): SlowChats {
  const toldAt = new Map<string, number>();
  let timer: NodeJS.Timeout | undefined;

  const slowNow = (): [chat: string, tookMs: number][] =>
    [...ports.values()].flatMap(({ chat, pace }) => {
      const tookMs = pace?.tooSlowMs(clock.now()) ?? null;
      return tookMs === null ? [] : [[chat, tookMs] as [string, number]];
    });

  /** In the slow chat itself, and in the room, where it comes at once. */
  function tellTeachers(chat: string, tookMs: number, hour: number): void {
    const now = clock.now();
    for (const { id, key } of stores.classes.list()) {
      if (![chat, OWN_CHAT].includes(chatOf(key))) continue;
      const of = (teacher: number) => ({ kind: "chat-slow" as const, class: id, teacher, hour });
      oweTeachers(stores, { classId: id, of, say: () => ({ text: words().slow(chat, tookMs) }) }, now);
    }
  }

  function look(): void {
    for (const [chat, tookMs] of slowNow()) {
      const hour = Math.floor(clock.now() / HOUR_MS);
      if (toldAt.get(chat) === hour) continue;
      toldAt.set(chat, hour);
      log.warn({ chat, tookMs }, "a chat takes so long for a message that calls come late there");
      try {
        stores.atomically(() => tellTeachers(chat, tookMs, hour));
        onOwed();
      } catch (error) {
        log.error({ err: error }, "the teachers could not be told of a chat that is slow");
      }
    }
  }

  return {
    start: () => void (timer = setInterval(look, LOOK_EACH_MS).unref()),
    look,
    all: () => Object.fromEntries(slowNow().map(([chat, tookMs]) => [chat, tookMs / 1000])),
    stop: () => clearInterval(timer),
  };
}
