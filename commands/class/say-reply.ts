import type { FieldValue, Reply } from "../define.ts";
import { makeLine } from "../line.ts";
import { titleOf } from "../plan/step-words.ts";
import { countOf, instant, joinAnd, plain } from "../wording.ts";
import type { Audience } from "./audience.ts";

/** What people hear. */
export function saidText(text: string, by: string): string {
  return `**${plain(by)}:** ${plain(text)}`;
}

export function audienceWords(audience: Audience): string {
  switch (audience.kind) {
    case "everyone":
      return "the whole class";
    case "working":
      return "everybody with a run under way";
    case "at":
      return `everybody at: ${titleOf({ kind: audience.step, ordinal: 0 }).toLowerCase()}`;
    case "before":
      return `everybody with this still to come: ${titleOf({ kind: audience.step, ordinal: 0 }).toLowerCase()}`;
  }
}

export function saidReply(number: number, audience: Audience, people: readonly string[]): Reply {
  const whom = audience.kind === "everyone" ? "the whole class" : joinAnd(people.map(plain));
  const count = audience.kind === "everyone" ? "" : `**${countOf(people.length, "person", "people")}**: `;
  return {
    text: `On its way to ${count}${whom}.`,
    fields: { say: number, audience: audience.kind, people: [...people] },
    actions: [{ label: "Who has it?", line: makeLine("class said", { say: number }) }],
  };
}

export interface ReachedPerson {
  readonly name: string;
  readonly state: "has it" | "on its way" | "not reached";
  readonly atMs: number | null;
  /** Said in the class's channel by name, since this person can't be reached alone. */
  readonly byMention: boolean;
}

export function reachReply(
  say: { readonly number: number; readonly audience: string; readonly body: string; readonly saidAt: number },
  reached: readonly ReachedPerson[],
): Reply {
  const has = reached.filter(({ state }) => state === "has it").length;
  const lines = reached.map(({ name, state, atMs, byMention }) => {
    const when = state === "has it" && atMs !== null ? ` since ${instant(atMs, "time")}` : "";
    return `- ${plain(name)}: ${state}${when}${byMention ? " (called by name in the class's channel)" : ""}`;
  });
  return {
    text: [
      `**${has} of ${reached.length}** reached. "${plain(say.body)}", to ${say.audience}, ${instant(say.saidAt, "time")}.`,
      ...lines,
    ].join("\n"),
    fields: {
      say: say.number,
      reached: has,
      of: reached.length,
      people: reached.map((each): FieldValue => ({ ...each })),
    },
    actions:
      has < reached.length
        ? [{ label: "Look again", line: makeLine("class said", { say: say.number }) }]
        : [],
  };
}

export const NO_STEP =
  "Say which step: `to:at step:fix` for those at the fixer now, `to:before step:fix` for those who have it still to come.";
export const NOBODY = (audience: Audience): string =>
  `Nobody is meant by that now (${audienceWords(audience)}), so nothing was said. Say it to everyone?`;
export const NO_SAY = "Nothing has been said to the class yet: `/class say text:…`.";
export const UNKNOWN_SAY = (number: number): string => `I know no word ${number} to the class.`;
export const THE_CLASS = "the class, in its channel";
