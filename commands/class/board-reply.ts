import type { Action, FieldValue, Reply } from "../define.ts";
import { makeLine } from "../line.ts";
import { countOf, instant, plain } from "../wording.ts";
import type { BoardRow } from "./board.ts";

/** A message of the narrower chat holds 2000 characters; instants come out shorter there than they stand here. */
const MOST_CHARACTERS = 1900;

/**
 * The board as one message. Its words change only when a tank does: what counts by itself is an instant, and agitation
 * is left out, so that an edit is owed a few times a step and not every half minute.
 */
export function boardText(rows: readonly BoardRow[]): string {
  if (rows.length === 0) return "**No tank is in use.**";
  const late = rows.filter(({ state }) => state === "late").length;
  const head = `**${countOf(rows.length, "tank")} in use**${late > 0 ? `, **${late} late**` : ""}`;
  const lines = [head];
  let length = head.length;
  for (const [at, row] of rows.entries()) {
    const line = lineOf(row);
    const rest = `and ${rows.length - at} more`;
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
  return `**${tank}** ${plain(row.person)}, ${row.step}: ${stateOf(row)}`;
}

function stateOf({ state, endsAtMs, sinceMs }: BoardRow): string {
  switch (state) {
    case "running":
      return `until ${instant(endsAtMs ?? 0, "time")}, ${instant(endsAtMs ?? 0, "relative")}`;
    case "late":
      return `**LATE**, was due ${instant(sinceMs ?? 0, "relative")}`;
    case "waiting":
      return "next, when ready";
    case "loading":
      return "not poured in yet";
  }
}

export function boardReply(rows: readonly BoardRow[]): Reply {
  const actions: Action[] = [{ label: "Look again", line: makeLine("class board", {}) }];
  return {
    text: boardText(rows),
    fields: { tanks: rows.map((row): FieldValue => ({ ...row })) },
    actions,
  };
}

export const PLACED = "The board stands in this channel from now on: one message, kept up to date.";
export const TAKEN_DOWN =
  "The board is kept up to date no longer. Its last message stays; delete it if you like.";
export const BOARD_HAS_A_PAGE =
  "In the room the board is a page of its own: open it on the computer with the big screen.";
export const BOARD_IS_THE_TEACHERS =
  "Only the teacher says where the board stands. Leave `channel` out to see it.";
export const NO_CHANNEL =
  "This call came from no channel I can speak in. Give the command in the channel that is to show the board.";
