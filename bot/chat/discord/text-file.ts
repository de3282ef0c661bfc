import type { APIAttachment } from "discord-api-types/v10";
import type { Command } from "../../../commands/define.ts";

/* Options that are the text of a file: here people send the file itself, so that its lines arrive as they are. */

/** The option of a command that is the text of a file; undefined where it has none. */
export function textOptionOf(command: Command | undefined): string | undefined {
  return Object.entries(command?.options.shape ?? {}).find(
    ([, option]) => option.meta()?.["picks"] === "file",
  )?.[0];
}

/** More than the longest text in any script; the command's own bound is on letters. */
export const MOST_TEXT_BYTES = 1024 * 1024;

const TEXT_TYPES = /^(text\/|application\/(json|csv|ics|vnd\.ms-excel|octet-stream)\b)/;

/** Whether a file calls itself one of text; a file of no type may be one. */
export const mayBeText = ({ content_type: type }: Pick<APIAttachment, "content_type">): boolean =>
  type === undefined || TEXT_TYPES.test(type);

/** The text in these bytes: UTF-8, UTF-16 with its mark, or else Windows' Western letters; undefined where it is none. */
export function readText(bytes: Uint8Array): string | undefined {
  const [first, second] = bytes;
  const wide =
    first === 0xff && second === 0xfe
      ? "utf-16le"
      : first === 0xfe && second === 0xff
        ? "utf-16be"
        : undefined;
  const text =
    wide === undefined ? (decode("utf-8", bytes) ?? decode("windows-1252", bytes)) : decode(wide, bytes);
  return text === undefined || text.includes("\0") ? undefined : text;
}

function decode(encoding: string, bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}
