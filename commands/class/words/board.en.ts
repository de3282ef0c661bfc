import { joinAnd } from "../../speech/wording.ts";
import { countOf } from "../../speech/wording.ts";

/* Names come harmless, steps titled, instants marked. */

export const en = {
  somebody: "somebody",
  none: "**No tank is in use.**",
  head: (tanks: number, late: number) =>
    `**${countOf(tanks, "tank")} in use**${late > 0 ? `, **${late} late**` : ""}`,
  more: (count: number) => `and ${count} more`,
  row: (tank: string, person: string, step: string, state: string) =>
    `**${tank}** ${person}, ${step}: ${state}`,
  unreached: "(**calls don't reach them**)",
  until: (time: string, relative: string) => `until ${time}, ${relative}`,
  late: (since: string) => `**LATE**, was due ${since}`,
  waiting: "next, when ready",
  loading: "not poured in yet",
  waitsForTank: (tank: number) => `waits for tank ${tank}`,
  again: "Refresh",
  placed: "The board stands in this channel from now on: one message, kept up to date.",
  takenDown: "The board is kept up to date no longer. Its last message stays; delete it if you like.",
  hasAPage: "In the room the board is a page of its own: open it on the computer with the big screen.",
  isTheTeachers: "Only the teacher says where the board stands. Leave `channel` out to see it.",
  noChannel:
    "This call came from no channel I can speak in. Give the command in the channel that is to show the board.",
  lacks: (missing: readonly string[], channel: string | null) =>
    `**I lack ${joinAnd(missing)} in ${channel ?? "this channel"}.** Open the channel's settings, then Permissions, choose my role, and turn on ${joinAnd(missing)}.`,
};
export type BoardWords = typeof en;
