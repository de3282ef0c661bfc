import type { FieldValue, Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { titleInText } from "../../sheet/step-words.ts";
import { instant, plain } from "../../speech/wording.ts";
import { parseAudience, type Audience } from "./audience.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

/** What people hear. */
export function saidText(text: string, by: string): string {
  return words().said(plain(by), plain(text));
}

export function audienceWords(audience: Audience): string {
  switch (audience.kind) {
    case "everyone":
      return words().everyone;
    case "working":
      return words().working;
    case "trays":
      return words().trays;
    case "at":
    case "before":
      return words()[audience.kind](titleInText({ kind: audience.step, ordinal: 0 }));
  }
}

export function saidReply(number: number, audience: Audience, people: readonly string[]): Reply {
  return {
    text: audience.kind === "everyone" ? words().toEveryone : words().toPeople(people.map(plain)),
    fields: { say: number, audience: audience.kind, people: [...people] },
    actions: [{ label: words().whoHasIt, line: makeLine("class said", { say: number }) }],
  };
}

export interface ReachedPerson {
  /** null: the whole class, in its channel. */
  readonly name: string | null;
  readonly state: "has it" | "on its way" | "unseen" | "not reached";
  readonly atMs: number | null;
  /** Said in the class's channel by name, since this person can't be reached alone. */
  readonly byMention: boolean;
}

export function reachReply(
  say: { readonly number: number; readonly audience: string; readonly body: string; readonly saidAt: number },
  reached: readonly ReachedPerson[],
): Reply {
  const has = reached.filter(({ state }) => state === "has it").length;
  const meant = parseAudience(say.audience);
  const audience = meant === undefined ? say.audience : audienceWords(meant);
  return {
    text: [
      words().reached(has, reached.length, plain(say.body), audience, instant(say.saidAt, "time")),
      ...reached.map((person) => `- ${reachedWords(person)}`),
    ].join("\n"),
    fields: {
      say: say.number,
      reached: has,
      of: reached.length,
      people: reached.map((each): FieldValue => ({ ...each, name: each.name ?? en.theClass })),
    },
    actions:
      has < reached.length
        ? [{ label: words().again, line: makeLine("class said", { say: say.number }) }]
        : [],
  };
}

function reachedWords({ name, state, atMs, byMention }: ReachedPerson): string {
  const person = name === null ? words().theClass : plain(name);
  const line = {
    "has it": () => words().hasIt(person, atMs === null ? null : instant(atMs, "time")),
    "on its way": () => words().onItsWay(person),
    unseen: () => words().notShown(person),
    "not reached": () => words().notReached(person),
  }[state]();
  return byMention ? words().byMention(line) : line;
}

export const somebody = (): string => words().somebody;
export const sayToEveryone = (): string => words().sayToEveryone;
export const noStep = (): string => words().noStep;
export const nobody = (audience: Audience): string => words().nobody(audienceWords(audience));
export const noSay = (): string => words().noSay;
export const unknownSay = (number: number): string => words().unknownSay(number);
