import type { Reply } from "../../../commands/define.ts";
import { createLogWriter, toRecord } from "../../../commands/roll/export/file.ts";
import { LOG_TYPES, logName } from "../../../commands/roll/export/pieces.ts";
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
  const writer = createLogWriter(log.format);
  const pieces = [writer.head];
  let bytes = Buffer.byteLength(writer.head + writer.tail);
  let below = log.below;
  let isWhole = true;
  for await (const { rolls, next } of readLog(log)) {
    const piece = writer.write(rolls.map(toRecord));
    bytes += Buffer.byteLength(piece);
    isWhole = bytes <= mostBytes;
    if (!isWhole) break;
    pieces.push(piece);
    below = next ?? below;
  }
  const content = [...pieces, writer.tail].join("");
  const attachments = [{ name: logName(log), mediaType: LOG_TYPES[log.format], content }];
  if (isWhole) return { ...reply, attachments };
  const line = `${log.line} before:${makeNumber("roll", below)}`;
  const words = discordWords(language);
  return {
    ...reply,
    text: `${reply.text}\n${words.logGoesOn(makeNumber("roll", below), line)}`,
    ...(fitsKey(line) ? { actions: [{ label: words.logRest, line }] } : {}),
    attachments,
  };
}
