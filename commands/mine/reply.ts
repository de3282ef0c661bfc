import type { Reply } from "../define.ts";
import { inEach, spokenLanguage } from "../speech/language.ts";
import { makeLine } from "../speech/line.ts";
import { instant, makeNumber, plain } from "../speech/wording.ts";
import { de } from "./words/reply.de.ts";
import { en } from "./words/reply.en.ts";
import type { HeldCounts } from "./held.ts";

const words = inEach({ en, de });

/** What is kept and what is not, in plain words. The same is said to everyone. */
export function statement(): string {
  return words().statement.join("\n");
}

export function showReply(held: HeldCounts): Reply {
  const since = instant(held.joinedAt, "date");
  return {
    text: [statement(), words().held(held, plain(held.name), since)].join("\n"),
    fields: { ...held },
    actions: [
      { label: words().takeAlong, line: makeLine("mine export", {}) },
      { label: words().eraseIt, line: makeLine("mine erase", {}), weight: "danger" },
    ],
  };
}

export function exportReply(content: string): Reply {
  return {
    text: words().exported,
    attachments: [{ name: "mine.json", mediaType: "application/json", content }],
  };
}

export function askErase(name: string, isWrong: boolean): Reply {
  return {
    text: [isWrong ? words().wrongName : "", words().finalErase, words().toErase(plain(name))]
      .filter(Boolean)
      .join("\n"),
    actions: [{ label: words().takeAlongFirst, line: makeLine("mine export", {}) }],
    fields: { erased: false },
  };
}

export function erasedReply(rolls: number, prints = 0): Reply {
  return {
    text: words().erased(rolls, prints),
    fields: { erased: true, rollsKept: rolls, printsKept: prints },
  };
}

export function forgottenReply(rolls: number, prints = 0): Reply {
  return {
    text: words().forgotten(rolls, prints),
    fields: { erased: true, rollsKept: rolls, printsKept: prints },
  };
}

export function askForget(name: string): Reply {
  return {
    text: words().askForget(plain(name)),
    fields: { erased: false },
  };
}

export const runGoing = (numbers: readonly number[]): string =>
  words().runGoing(numbers.map((number) => makeNumber("run", number)));
export const lastTeacher = (): string => words().lastTeacher;
export const unknownPerson = (name: string): string => words().unknownPerson(plain(name));

export function languageReply(): Reply {
  return { text: words().language, fields: { language: spokenLanguage() } };
}
