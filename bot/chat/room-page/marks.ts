import { renderInstants, type InstantStyle } from "../../../commands/speech/wording.ts";

/* The small markdown of replies, read into plain data; nothing in it can become HTML. */

export type Markup =
  | { readonly kind: "text"; readonly text: string }
  | { readonly kind: "bold" | "slanted"; readonly parts: readonly Markup[] }
  | { readonly kind: "code"; readonly text: string }
  | { readonly kind: "instant"; readonly atMs: number; readonly style: InstantStyle };

export type Block =
  | { readonly kind: "line"; readonly parts: readonly Markup[] }
  | { readonly kind: "list"; readonly isNumbered: boolean; readonly items: readonly (readonly Markup[])[] }
  | { readonly kind: "code"; readonly text: string };

const FENCE = /^```\w*\s*$/;
const ITEM = /^\s*(?:[-*•]|\d+\.)\s+(.*)$/;

export function readBlocks(text: string): Block[] {
  const blocks: Block[] = [];
  const lines = text.split("\n");
  for (let index = 0; index < lines.length; index += 1) {
    const line = lines[index] ?? "";
    if (FENCE.test(line)) {
      const end = lines.findIndex((each, at) => at > index && FENCE.test(each));
      const stop = end === -1 ? lines.length : end;
      blocks.push({ kind: "code", text: lines.slice(index + 1, stop).join("\n") });
      index = stop;
      continue;
    }
    const item = ITEM.exec(line)?.[1];
    if (item !== undefined) {
      const isNumbered = /^\s*\d/.test(line);
      const last = blocks[blocks.length - 1];
      if (last?.kind === "list" && last.isNumbered === isNumbered)
        blocks[blocks.length - 1] = { ...last, items: [...last.items, readMarks(item)] };
      else blocks.push({ kind: "list", isNumbered, items: [readMarks(item)] });
      continue;
    }
    if (line.trim() !== "") blocks.push({ kind: "line", parts: readMarks(line.replace(/^#{1,3}\s+/, "")) });
  }
  return blocks;
}

const INSTANT = /^\u27e6(-?\d+):(time|date|relative)\u27e7/;

/** Bold `**`, slanted `_` or `*`, code, escapes and instants of one line. An unclosed mark is text. */
export function readMarks(line: string): Markup[] {
  const marks: Markup[] = [];
  let plain = "";
  const flush = (): void => {
    if (plain !== "") marks.push({ kind: "text", text: plain });
    plain = "";
  };
  for (let at = 0; at < line.length;) {
    const rest = line.slice(at);
    const instant = INSTANT.exec(rest);
    const wrapped = wrappedAt(line, at);
    if (rest[0] === "\\" && rest.length > 1) {
      plain += rest[1] ?? "";
      at += 2;
    } else if (instant) {
      flush();
      marks.push({ kind: "instant", atMs: Number(instant[1]), style: instant[2] as InstantStyle });
      at += instant[0].length;
    } else if (wrapped) {
      flush();
      marks.push(wrapped.mark);
      at = wrapped.end;
    } else {
      // A word joiner only keeps other chats from reading a mention; here it would confuse copying.
      if (rest[0] !== "\u2060") plain += rest[0] ?? "";
      at += 1;
    }
  }
  flush();
  return marks;
}

function wrappedAt(line: string, at: number): { mark: Markup; end: number } | undefined {
  for (const sign of ["**", "__", "`", "_", "*"] as const) {
    if (!line.startsWith(sign, at)) continue;
    // Inside a word an underscore is an underscore.
    if (sign === "_" && /[\p{L}\p{N}]/u.test(line[at - 1] ?? "")) return undefined;
    const close = closingAt(line, sign, at + sign.length);
    if (close === -1) continue;
    const inner = line.slice(at + sign.length, close);
    const end = close + sign.length;
    if (sign === "`") return { mark: { kind: "code", text: inner }, end };
    return { mark: { kind: sign.length === 2 ? "bold" : "slanted", parts: readMarks(inner) }, end };
  }
  return undefined;
}

function closingAt(line: string, sign: string, from: number): number {
  for (let at = from; at < line.length; at += 1) {
    if (line[at] === "\\" && sign !== "`") at += 1;
    else if (at > from && line.startsWith(sign, at)) return at;
  }
  return -1;
}

/** The text as one line of words, for names of buttons and titles. */
export function readAsWords(text: string): string {
  return renderInstants(text, () => "")
    .replace(/\\([\\*_~`|>#[\]])/g, "$1")
    .replace(/[*_`]{1,2}/g, "")
    .replace(/\s+/g, " ")
    .trim();
}
