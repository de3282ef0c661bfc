import { oweTeachers } from "../../commands/owe.ts";
import { inEach } from "../../commands/speech/language.ts";
import { chatOf } from "../../store/shapes/chat-key.ts";
import type { Stores } from "../../store/index.ts";
import type { ChatPort } from "../chat/port.ts";
import type { Clock } from "../process/clock.ts";
import type { Log } from "../process/log.ts";
import { de } from "./words/lost.de.ts";
import { en } from "./words/lost.en.ts";

/** The chat that needs nobody else's service. */
export const OWN_CHAT = "room";

const words = inEach({ en, de });

/* A chat that can go on no longer, as where its token is rejected: it is turned off, and the others go on. */

export interface LostChats {
  /** Takes it out of use, and says so in the log and to the teachers of the classes in the room. */
  lose(port: ChatPort, sentence: string): void;
  /** What happened to each that is off, by the chat's word. */
  all(): Readonly<Record<string, string>>;
}

export interface LostChatsDeps {
  readonly stores: Stores;
  readonly clock: Clock;
  readonly log: Log;
  readonly ports: Map<string, ChatPort>;
  /** There is something to say. */
  readonly onOwed: () => void;
}

export function createLostChats({ stores, clock, log, ports, onOwed }: LostChatsDeps): LostChats {
  const lost = new Map<string, string>();

  function tellTeachers(chat: string, sentence: string, now: number): void {
    for (const { id, key } of stores.classes.list()) {
      if (chatOf(key) !== OWN_CHAT) continue;
      // A process that is started again and again says it again, once a minute at most.
      const minute = Math.floor(now / 60_000);
      const of = (teacher: number) => ({ kind: "chat-off" as const, class: id, teacher, minute });
      oweTeachers(stores, { classId: id, of, say: () => ({ text: words().lost(chat, sentence) }) }, now);
    }
  }

  return {
    lose(port, sentence) {
      if (lost.has(port.chat)) return;
      lost.set(port.chat, sentence);
      ports.delete(port.chat);
      log.error({ chat: port.chat }, `${sentence} This chat is off; the others go on.`);
      port
        .stop()
        .catch((error: unknown) => log.warn({ chat: port.chat, err: error }, "a chat did not end well"));
      try {
        stores.atomically(() => tellTeachers(port.chat, sentence, clock.now()));
        onOwed();
      } catch (error) {
        log.error({ err: error }, "the teachers could not be told of a chat that is off");
      }
    },
    all: () => Object.fromEntries(lost),
  };
}
