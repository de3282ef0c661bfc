import { MOST_AHEAD_MS } from "../../chat/delays.ts";
const NAMES: Readonly<Record<string, string>> = { discord: "Discord" };
export const nameOfChat = (chat: string): string => NAMES[chat] ?? chat;

export const en = {
  /** `why` is the log's own English sentence. */
  lost: (chat: string, why: string) =>
    `**${nameOfChat(chat)} is off: nobody is called there any more.** The room goes on. Reason: “${why}”`,
  /** `tookMs`: what one message takes. */
  slow: (chat: string, tookMs: number) =>
    `**${nameOfChat(chat)} is slow: a message takes ${Math.round(tookMs / 1000)} s.** Calls leave up to ${MOST_AHEAD_MS / 1000} s ahead, and still come late there; each says how late. Have a clock run beside the tanks, and have the network looked at.`,
};
export type LostWords = typeof en;
