import { chatOf } from "../../store/shapes/chat-key.ts";
import type { Stores } from "../../store/index.ts";

/**
 * How long before its moment a cue is decided, ms, by the chat its class is in. A chat that takes only so many messages a
 * second must begin early when a class starts together; each message carries its true moment. The room needs no lead. Where a
 * chat turns out slow, its lead has grown with what was measured.
 */
const LEAST_MS: Readonly<Record<string, number>> = { discord: 2000 };

export const leastLeadMs = (chat: string): number => LEAST_MS[chat] ?? 0;

export function leadMsOf({ cues }: Pick<Stores, "cues">, classKey: string): number {
  const chat = chatOf(classKey);
  return Math.max(leastLeadMs(chat), cues.leadMs(chat));
}
