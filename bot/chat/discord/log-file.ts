import type { Reply } from "../../../commands/define.ts";
import { LOG_TYPES, logName } from "../../../commands/print/export/pieces.ts";
import { fitsKey } from "../../../commands/speech/line.ts";
import { makeNumber } from "../../../commands/speech/wording.ts";
import type { Language } from "../../../store/shapes/language.ts";
import { FILE_BYTES } from "./message.ts";
import type { Directory } from "./settings.ts";
import { discordWords } from "./words/discord.ts";

/** An answer with the log as a file: as much of it as one file here may hold, the newest first, and a key to the rest. */
export async function withLogFile(
  reply: Reply,
  { readLog }: Pick<Directory, "readLog">,
  language: Language | undefined,
  mostBytes = FILE_BYTES,
): Promise<Reply> {
  const { log } = reply;
  if (!log) return reply;
  const { head, portions, tail } = readLog(log);
  const pieces = [head];
  let bytes = Buffer.byteLength(head + tail);
  let below = log.below;
  let isWhole = true;
  for await (const { text, next } of portions) {
    bytes += Buffer.byteLength(text);
    isWhole = bytes <= mostBytes;
    if (!isWhole) break;
    pieces.push(text);
    below = next ?? below;
  }
  const content = [...pieces, tail].join("");
  const attachments = [{ name: logName(log), mediaType: LOG_TYPES[log.format], content }];
  if (isWhole) return { ...reply, attachments };
  const last = makeNumber(log.of, below);
  const line = `${log.line} before:${last}`;
  const words = discordWords(language);
  return {
    ...reply,
    text: `${reply.text}\n${words.logGoesOn(last, line)}`,
    ...(fitsKey(line) ? { actions: [{ label: words.logRest, line }] } : {}),
    attachments,
  };
}
