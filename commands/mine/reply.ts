import { inEach, spokenLanguage } from "../language.ts";
import type { Reply } from "../define.ts";
import { makeLine } from "../line.ts";
import { countOf, instant, joinAnd, makeNumber, plain } from "../wording.ts";

/** What is kept and what is not, in plain words. The same is said to everyone. */
export const STATEMENT = [
  "**What I keep of you:** the name you gave and what you are to the class (student, aide, teacher); your plans, runs and rolls with their times, temperatures, ratings, notes and photos; which lines of a bottle's ledger are yours; in the room, what you typed and were told, and which devices are signed in.",
  "**What I don't keep:** birth dates, addresses, where you are, or anything from your phone but what you type.",
  "**Who sees it:** your class sees the log with your name, and nobody else does. Backups hold the same until they are replaced.",
].join("\n");

export interface HeldCounts {
  readonly name: string;
  readonly joinedAt: number;
  readonly plans: number;
  readonly runs: number;
  readonly rolls: number;
  readonly photos: number;
  readonly messages: number;
  readonly ledgerLines: number;
  readonly devices: number;
}

export function showReply(held: HeldCounts): Reply {
  const counts = [
    countOf(held.plans, "plan"),
    countOf(held.runs, "run"),
    countOf(held.rolls, "roll"),
    countOf(held.photos, "photo"),
    countOf(held.messages, "message"),
    `${countOf(held.ledgerLines, "line")} in ledgers`,
    countOf(held.devices, "device"),
  ];
  return {
    text: [
      STATEMENT,
      `**Of you, ${plain(held.name)},** since ${instant(held.joinedAt, "date")}: ${joinAnd(counts)}.`,
    ].join("\n"),
    fields: { ...held },
    actions: [
      { label: "Take it along", line: makeLine("mine export", {}) },
      { label: "Erase it", line: makeLine("mine erase", {}), weight: "danger" },
    ],
  };
}

export function exportReply(content: string): Reply {
  return {
    text: "Here is everything I keep of you in this class, as one file.",
    attachments: [{ name: "mine.json", mediaType: "application/json", content }],
  };
}

export function askErase(name: string, isWrong: boolean): Reply {
  return {
    text: [
      isWrong ? "**That is not your name as I have it. Nothing is erased.**" : "",
      `**This can't be taken back.** Your plans, runs, messages, notes and photos go at once. Your rolls stay in the log without your name, so that the class's figures still add up; so do a bottle's lines. What the chat itself keeps is not mine to erase, and older backups go when they are replaced.`,
      `To do it, type \`/mine erase name:${plain(name)}\`.`,
    ]
      .filter(Boolean)
      .join("\n"),
    actions: [{ label: "Take it along first", line: makeLine("mine export", {}) }],
    fields: { erased: false },
  };
}

export function erasedReply(rolls: number): Reply {
  return {
    text: `**Done.** I know you no more. ${rolls === 0 ? "" : `${countOf(rolls, "roll")} of yours ${rolls === 1 ? "stays" : "stay"} in the log, nameless. `}The file itself is swept clean within the next quiet minutes.`,
    fields: { erased: true, rollsKept: rolls },
  };
}

export function forgottenReply(rolls: number): Reply {
  return {
    text: `**Done.** That person is out of this class's store. ${countOf(rolls, "roll")} ${rolls === 1 ? "stays" : "stay"} in the log, nameless.`,
    fields: { erased: true, rollsKept: rolls },
  };
}

export function askForget(name: string): Reply {
  return {
    text: `**This can't be taken back.** Everything of ${plain(name)} goes, but for nameless rolls in the log. To do it, type \`/class forget person:${plain(name)} sure:yes\`.`,
    fields: { erased: false },
  };
}

export const RUN_GOING = (numbers: readonly number[]): string =>
  `${joinAnd(numbers.map((number) => makeNumber("run", number)))} ${numbers.length === 1 ? "is" : "are"} still under way: a film needs its calls. Finish or stop it first.`;
export const LAST_TEACHER =
  "You are the class's only teacher. Make somebody else a teacher first, or erase the class: `/class erase`.";
export const UNKNOWN_PERSON = (name: string): string => `I know nobody called ${plain(name)} in this class.`;

const LANGUAGE = inEach({
  en: "From now on I speak **English** with you: answers, calls and reminders. The class's channel keeps its own language.",
  de: "Ab jetzt spreche ich **Deutsch** mit dir: Antworten, Ansagen und Erinnerungen. Der Kanal der Klasse behält seine eigene Sprache.",
});

export function languageReply(): Reply {
  return { text: LANGUAGE(), fields: { language: spokenLanguage() } };
}
