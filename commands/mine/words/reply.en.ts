import { countOf, joinAnd } from "../../speech/wording.ts";
import type { HeldCounts } from "../held.ts";

/** What stays, without a name; empty where nothing does. */
function keptOf(rolls: number, prints: number, whose: string): string {
  const kept = [
    ...(rolls > 0 ? [countOf(rolls, "roll")] : []),
    ...(prints > 0 ? [countOf(prints, "print")] : []),
  ];
  const stay = rolls + prints === 1 ? "stays" : "stay";
  return kept.length === 0 ? "" : `${joinAnd(kept)}${whose} ${stay} in the log, nameless. `;
}

export const en = {
  statement: [
    "**What I keep about you:** the name you gave, the language you read and what you are to the class (student, aide, teacher); your plans, runs, rolls and prints with their times, temperatures, ratings, notes and photos, and your last test strip; which lines of a bottle's ledger are yours; in the room, what you typed and were told, what was pressed for you at a shared device, which devices are signed in, and which of them are called while their page is closed.",
    "**What I don't keep:** birth dates, addresses, where you are, or anything from your phone but what you type.",
    "**Who sees it:** your class sees the log with your name, and nobody else does. Backups hold the same until they are replaced.",
  ],
  held: (held: HeldCounts, name: string, since: string) =>
    `**Of you, ${name},** since ${since}: ${joinAnd([
      countOf(held.plans, "plan"),
      countOf(held.runs, "run"),
      countOf(held.rolls, "roll"),
      countOf(held.photos, "photo"),
      countOf(held.prints, "print"),
      countOf(held.messages, "message"),
      `${countOf(held.ledgerLines, "line")} in ledgers`,
      countOf(held.devices, "device"),
    ])}.`,
  takeAlong: "Take it along",
  eraseIt: "Erase it",
  exported: "Here is everything I keep of you in this class, as one file.",
  wrongName: "**That is not your name as I have it. Nothing is erased.**",
  finalErase:
    "**This can't be taken back.** Your plans, runs, messages, notes and photos go at once, and so do the answers in which others were shown them. Your rolls and prints stay in the log without your name, so that the class's figures still add up; so do a bottle's lines. What the chat itself keeps is not mine to erase, and older backups go when they are replaced.",
  toErase: (name: string) => `To do it, type \`/mine erase name:${name}\`.`,
  takeAlongFirst: "Take it along first",
  erased: (rolls: number, prints: number) =>
    `**Done.** I know you no more. ${keptOf(rolls, prints, " of yours")}The file itself is swept clean within the next quiet minutes.`,
  forgotten: (rolls: number, prints: number) =>
    `**Done.** That person is out of this class's store. ${keptOf(rolls, prints, "")}`.trim(),
  askForget: (name: string) =>
    `**This can't be taken back.** Everything of ${name} goes, but for nameless rolls and prints in the log. To do it, type \`/class forget person:${name} sure:yes\`.`,
  runGoing: (runs: readonly string[]) =>
    `${joinAnd(runs)} ${runs.length === 1 ? "is" : "are"} still under way: a film needs its calls. Finish or stop it first.`,
  lastTeacher:
    "You are the class's only teacher. Make somebody else a teacher first, or erase the class: `/class erase`.",
  unknownPerson: (name: string) => `Nobody in this class is called ${name}.`,
  language:
    "From now on I speak **English** with you: answers, calls and reminders. The class's channel keeps its own language.",
};
export type MineWords = typeof en;
