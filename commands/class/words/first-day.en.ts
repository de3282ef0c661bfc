import type { FirstStep } from "../../../store/shapes/school.ts";
import type { NeededKind } from "../first-day.ts";

/* What is to be done before the first film. Names of people come made harmless. */

export const en = {
  title: "Before the first film",
  titles: {
    name: "Name and time zone",
    tanks: "Tanks",
    times: "Developing times",
    bottles: "Developer and fixer",
    code: "The way in for students",
    trial: "A trial run",
  } satisfies Record<FirstStep, string>,

  name: (name: string, zone: string) =>
    `The class is called ${name}, and its clock is that of ${zone}. Keep both, or change them: \`/class setup name:… zone:…\``,
  keep: "Keep both",
  tanks:
    "Give the numbers that stand on the tanks (a range will do), and how much liquid covers all reels of one. Once for each kind, for example `/tank add numbers:1-12 reels:2 volume:500 ml`",
  enterTanks: "Enter the tanks",
  times:
    "Take them from the maker's data sheet of your film or developer: paste its table, take a file, or enter one time after the other. A table may look like this:\n```\nEI     18 °C   20 °C   24 °C\n400    11:00   9 1/2   6.5 min\n```",
  paste: "Paste a table, or a file",
  oneTime: "Enter one time",
  bottles: (missing: readonly NeededKind[]): string =>
    missing.length === 2
      ? "Label a bottle of each, and I count what they have done. Read what a litre takes off the label. For example `/batch mix kind:fixer product:… volume:1 l dilution:1+4`"
      : "One kind is still missing. Read what a litre takes off the label. For example `/batch mix kind:fixer product:… volume:1 l dilution:1+4`",
  bottleOf: { developer: "Enter a developer", fixer: "Enter a fixer" } satisfies Record<NeededKind, string>,
  code: (code: string) =>
    `Students open this page's address, or point their camera at the picture, and enter the code **${code}** and a name. This is ticked off once the first has come in.`,
  channel: "Choose the channel in which I speak to the whole class: everybody who sees it can use me there.",
  thisChannel: "This channel",
  trial:
    "Go once through a whole run without film or baths. Its clock goes 60 times as fast, so it takes about two minutes; nothing of it is kept. Sound on: you hear every call as your students will.",
  startTrial: "Start the trial run",
  later: "Later",
  all: "Everything before the first film",
};
export type FirstDayWords = typeof en;
