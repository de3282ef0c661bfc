import type { Action, FieldValue, Reply } from "../define.ts";
import { inEach } from "../speech/language.ts";
import { makeLine } from "../speech/line.ts";
import { instant, plain } from "../speech/wording.ts";
import type { BoardRow } from "./board.ts";
import { de } from "./words/board.de.ts";
import { en } from "./words/board.en.ts";

const words = inEach({ en, de });

/** A message of the narrower chat holds 2000 characters; instants come out shorter there than they stand here. */
const MOST_CHARACTERS = 1900;

/**
 * The board as one message. Its words change only when a tank does: what counts by itself is an instant, and agitation
 * is left out, so that an edit is owed a few times a step and not every half minute.
 */
export function boardText(rows: readonly BoardRow[]): string {
  if (rows.length === 0) return words().none;
  const late = rows.filter(({ state }) => state === "late").length;
  const inUse = rows.filter(({ waitsForTank }) => waitsForTank === null).length;
  const head = words().head(inUse, late);
  const lines = [head];
  let length = head.length;
  for (const [at, row] of rows.entries()) {
    const line = lineOf(row);
    const rest = words().more(rows.length - at);
    if (length + 1 + line.length + 1 + rest.length > MOST_CHARACTERS) {
      lines.push(rest);
      break;
    }
    lines.push(line);
    length += 1 + line.length;
  }
  return lines.join("\n");
}

function lineOf(row: BoardRow): string {
  const tank = row.tank === null ? row.run : `T${row.tank}`;
  const line = words().row(tank, plain(row.person), row.step, stateOf(row));
  return row.isUnreached ? `${line} ${words().unreached}` : line;
}

function stateOf({ state, endsAtMs, sinceMs, waitsForTank }: BoardRow): string {
  if (waitsForTank !== null) return words().waitsForTank(waitsForTank);
  switch (state) {
    case "running":
      return words().until(instant(endsAtMs ?? 0, "time"), instant(endsAtMs ?? 0, "relative"));
    case "late":
      return words().late(instant(sinceMs ?? 0, "relative"));
    case "waiting":
      return words().waiting;
    case "loading":
      return words().loading;
  }
}

/** `data`: the same rows in the language that programs read. */
export function boardReply(rows: readonly BoardRow[], data: readonly BoardRow[]): Reply {
  const actions: Action[] = [{ label: words().again, line: makeLine("class board", {}) }];
  return {
    text: boardText(rows),
    fields: { tanks: data.map((row): FieldValue => ({ ...row })) },
    actions,
  };
}

/** How the server's owner gives what the bot lacks in `channel`, null: this one; the names are the platform's own. */
export function permissionWords(missing: readonly string[], channel: string | null = null): string {
  return missing.length === 0 ? "" : words().lacks(missing, channel === null ? null : plain(channel));
}

export const placed = (): string => words().placed;
export const takenDown = (): string => words().takenDown;
export const boardHasAPage = (): string => words().hasAPage;
export const boardIsTheTeachers = (): string => words().isTheTeachers;
export const noChannel = (): string => words().noChannel;
