import { makeChatKey, parseChatKey } from "../../../store/shapes/chat-key.ts";

/*
 * The class that a key is about, in front of its line: a press in a direct message tells of no server, and its person may be in
 * another class by then. Pure.
 */

export const LONGEST_KEY = 100;
const SERVER = /^\d{17,20}$/;
/** The server's number to the base of 36: short, for the platform takes few characters. No command begins like this. */
const MARK = /^#([0-9a-z]{1,13}) (.*)$/s;
const BASE = 36;

/** The line alone where there is no class, or no room for it beside the line. */
export function withClass(line: string, classKey: string | undefined): string {
  const { chat, id } = parseChatKey(classKey ?? "");
  if (chat !== "discord" || !SERVER.test(id)) return line;
  const marked = `#${BigInt(id).toString(BASE)} ${line}`;
  return marked.length <= LONGEST_KEY ? marked : line;
}

export function readClass(key: string): { readonly line: string; readonly classKey?: string } {
  const [, digits, line] = MARK.exec(key) ?? [];
  if (digits === undefined || line === undefined) return { line: key };
  const id = [...digits].reduce((sum, digit) => sum * BigInt(BASE) + BigInt(parseInt(digit, BASE)), 0n);
  return { line, classKey: makeChatKey("discord", String(id)) };
}
