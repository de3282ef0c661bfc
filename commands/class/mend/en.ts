import type { UnreadableKind } from "../../../store/shapes/unreadable.ts";

const ADVICE: Readonly<Record<UnreadableKind, string>> = {
  tank: "Set it anew with `/tank add`, or set it aside.",
  sheet: "Import it anew, or set it aside.",
  plan: "Its owner makes a new one.",
  run: "No calls come for it: finish this film by the clock.",
  batch: "Nobody is given it. Set it aside once it is empty or mixed anew.",
  roll: "It is left out of the log.",
  shelf: "Note it anew with `/batch restock`.",
  handover: "It is left out of the list.",
  enlarger: "Set it anew with `/print enlarger`, or set it aside.",
  paper: "Set it anew with `/print paper`, or set it aside.",
  print: "It is left out of the log of prints.",
  habit: "Until you set it, the usual value holds: `/class setup`.",
};

export const en = {
  allReadable: "Everything of the class can be read.",
  title: (count: number) =>
    count === 1
      ? "**1 thing of the class can't be read.** Everything else goes on."
      : `**${count} things of the class can't be read.** Everything else goes on.`,
  entry: (name: string, kind: string, why: string, advice: string) =>
    `- **${name}** (${kind}): ${why}. ${advice}`,
  advice: (kind: UnreadableKind) => ADVICE[kind],
  more: (count: number) => `…and ${count} more.`,
  wasAside: "Set aside when this version came, since nothing could read it; what stood there is kept:",
  asideEntry: (name: string, what: string) => `- **${name}**: ${what}. Set it anew.`,
  unknown: (typed: string) => `Everything under ${typed} can be read. \`/class mend\` lists what can't.`,
  toTeachers: (names: string, count: number) =>
    count === 1
      ? `**${names} can't be read.** Everything else goes on. \`/class mend\` says why and sets it aside.`
      : `**${count} things can't be read**: ${names}. Everything else goes on. \`/class mend\` says why and sets them aside.`,
  toOwner: (run: string) =>
    `**No more calls come for ${run}**: its record can't be read. Finish the film by the clock, or ask the teacher.`,
  show: "Show why",
};
export type MendWords = typeof en;
