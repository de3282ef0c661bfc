const NAMES: Readonly<Record<string, string>> = { discord: "Discord" };
export const nameOfChat = (chat: string): string => NAMES[chat] ?? chat;

export const en = {
  /** `why` is the log's own English sentence. */
  lost: (chat: string, why: string) =>
    `**${nameOfChat(chat)} is off: nobody is called there any more.** The room goes on. Reason: “${why}”`,
};
export type LostWords = typeof en;
