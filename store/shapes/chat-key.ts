/* Classes and people carry their chat in front: `discord:81384788765712384`, `room:amina`. */

export interface ChatKey {
  readonly chat: string;
  /** How the chat itself calls it. */
  readonly id: string;
}

export function makeChatKey(chat: string, id: string | number): string {
  return `${chat}:${id}`;
}

export function parseChatKey(key: string): ChatKey {
  const at = key.indexOf(":");
  return at < 0 ? { chat: "", id: key } : { chat: key.slice(0, at), id: key.slice(at + 1) };
}

export const chatOf = (key: string): string => parseChatKey(key).chat;
