import { inEach, speaking } from "../../../commands/speech/language.ts";
import type { Stores } from "../../../store/index.ts";
import { chatOf } from "../../../store/shapes/chat-key.ts";
import { de } from "./words/storm.de.ts";
import { en } from "./words/storm.en.ts";

/* Whoever teaches in the room is told of tries that no class makes. */

const words = inEach({ en, de });

/** Read on its own, after every call. */
const PRIORITY = 3;
/** One storm is told once in so long. */
const TOLD_EACH_MS = 60 * 60_000;

/** Owes a word to each teacher of the room's classes. */
export function tellStorm(stores: Stores, address: string, now: number): void {
  const hour = Math.floor(now / TOLD_EACH_MS).toString(36);
  for (const { id, key, demo } of stores.classes.list()) {
    if (chatOf(key) !== "room" || demo) continue;
    const teachers = stores.members.list(id).filter(({ role }) => role === "teacher");
    for (const [index, { personId }] of teachers.entries()) {
      const language = stores.members.languageOf(id, personId);
      stores.outbox.owe({
        key: `storm.${id.toString(36)}.${hour}.${index.toString(36)}`,
        classId: id,
        personId,
        runId: null,
        priority: PRIORITY,
        dueAt: now,
        decidedAt: now,
        usefulUntil: null,
        body: { text: speaking(language, () => words().storm(address)), language, actions: [], mentions: [] },
      });
    }
  }
}
