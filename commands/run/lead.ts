import { chatOf } from "../../store/shapes/chat-key.ts";

/**
 * How long before its moment a cue is decided, ms, by the chat its class is in. A chat that takes only so many messages a
 * second must begin early when a class starts together; each message carries its true moment. The room needs no lead.
 */
const LEAD_MS: Readonly<Record<string, number>> = { discord: 2000 };

export function leadMsOf(classKey: string): number {
  return LEAD_MS[chatOf(classKey)] ?? 0;
}
