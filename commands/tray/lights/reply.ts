import type { Reply } from "../../define.ts";
import { nameWords } from "../../speech/name-words.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { instant, saySeconds } from "../../speech/wording.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export interface OpenPaper {
  readonly run: string;
  readonly person: string;
  /** When it is through its first fixing bath; null: it waits to be moved on. */
  readonly untilMs: number | null;
}

export function paperOpen(open: readonly OpenPaper[]): string {
  const lines = open.map(({ run, person, untilMs }) =>
    words().openLine(run, nameWords(person), untilMs === null ? null : instant(untilMs, "time")),
  );
  return [words().notYet(open.length), ...lines, words().andBoxes].join("\n");
}

export const allCovered = (): string => words().allCovered;
export const waitLabel = (): string => words().waitLabel;
export const nobodyAsked = (): string => words().nobodyAsked;
/** As it is kept beside other words to many. */
export const warningBody = (seconds: number): string => words().body(saySeconds(seconds));
export const warning = (atMs: number, seconds: number): string =>
  words().warning(saySeconds(seconds), instant(atMs, "time"));
export const waitText = (person: string): string => words().wait(nameWords(person));

export function lightsReply(say: number, people: number, seconds: number, now: number): Reply {
  return {
    text: [
      people === 0 ? words().nobodyThere : words().warned(people, instant(now + seconds * 1000, "time")),
      words().look,
    ].join("\n"),
    fields: { say, people, lightAtMs: now + seconds * 1000 },
    actions: people === 0 ? [] : [{ label: words().whoHasIt, line: makeLine("class said", { say }) }],
  };
}

export function waitReply(person: string): Reply {
  return { text: words().told(nameWords(person)), fields: { told: true } };
}
