import { renderInstants } from "../../../commands/speech/wording.ts";

/* Text as Discord takes it. Pure. */

/** Counted in UTF-16 units, which is never less than what the platform counts. */
export const MESSAGE_CHARACTERS = 2000;

const STYLES = { time: "T", date: "D", relative: "R" } as const;

/** Instants become the platform's own marks: each reader sees them in their own zone, the relative one counts. */
export function showInstants(text: string): string {
  return renderInstants(text, (atMs, style) => `<t:${Math.floor(atMs / 1000)}:${STYLES[style]}>`);
}

/** The text itself, or its beginning with an ellipsis; never half a character. */
export function shorten(text: string, limit: number): string {
  return text.length <= limit ? text : `${text.slice(0, wholeCharacters(text, limit - 1))}…`;
}

/**
 * Cuts text into parts of at most `limit`: at line ends where it can, at a space in a line that is too long, never
 * inside a mark (`<t:…>`, `<@…>`) or a character. A code block that is cut is closed, and opened again in the next part.
 */
export function splitText(text: string, limit = MESSAGE_CHARACTERS): string[] {
  const parts: string[] = [];
  let current: string | undefined;
  let fence: string | undefined;
  const room = limit - FENCE.length - 1;
  const close = (): void => {
    if (current !== undefined) parts.push(fence === undefined ? current : `${current}\n${FENCE}`);
    current = fence;
  };
  for (const line of text.split("\n")) {
    const isFence = line.startsWith(FENCE);
    for (const [index, piece] of cutLine(line, room - LONGEST_FENCE).entries()) {
      if (index > 0 || (current !== undefined && current.length + 1 + piece.length > room)) close();
      current = current === undefined ? piece : `${current}\n${piece}`;
    }
    if (isFence) fence = fence === undefined ? line.slice(0, LONGEST_FENCE - 1) : undefined;
  }
  if (current !== undefined) parts.push(current);
  return text.length <= limit ? [text].filter(hasWords) : parts.filter(hasWords);
}

const FENCE = "```";
const LONGEST_FENCE = 20;

const hasWords = (part: string): boolean => part.trim() !== "";

function cutLine(line: string, limit: number): string[] {
  const pieces: string[] = [];
  let rest = line;
  while (rest.length > limit) {
    const at = findCut(rest, limit);
    pieces.push(rest.slice(0, at));
    rest = rest.slice(at).trimStart();
  }
  return [...pieces, rest];
}

function findCut(line: string, limit: number): number {
  const space = line.lastIndexOf(" ", limit);
  if (space > limit / 2) return space;
  const mark = line.lastIndexOf("<", limit - 1);
  const isInsideMark =
    mark > 0 && /^<[^<>\s]{1,60}>/.test(line.slice(mark)) && line.indexOf(">", mark) >= limit;
  return isInsideMark ? mark : wholeCharacters(line, limit);
}

function wholeCharacters(text: string, at: number): number {
  const unit = text.charCodeAt(at - 1);
  return unit >= 0xd800 && unit <= 0xdbff ? at - 1 : at;
}
