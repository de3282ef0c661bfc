import type { Reply } from "../define.ts";
import { formatNumbers } from "../tank/numbers.ts";
import { countOf, instant, joinAnd, plain, saySeconds } from "../wording.ts";
import type { Bound, Stage } from "./fit-order.ts";
import type { Places } from "./fit.ts";

export interface FitLine {
  readonly label: string;
  /** null: under way already. */
  readonly pourInAtMs: number | null;
  /** null: no bell, or this load can't be in time. */
  readonly latestAtMs: number | null;
  readonly hungAtMs: number;
  readonly dryAtMs: number;
  readonly isInTime: boolean;
}

export interface FitAnswer {
  readonly bellAtMs: number | null;
  /** What the order aims at: everything done by the bell, or every film hung up by then. */
  readonly goal: "done" | "hung";
  /** In the order of pour-in. */
  readonly lines: readonly FitLine[];
  readonly doneByBell: number;
  readonly hungByBell: number;
  readonly bound: Bound | undefined;
  readonly places: Places;
}

export function fitReply(answer: FitAnswer): Reply {
  const { lines } = answer;
  const late = lines.filter(({ isInTime }) => !isInTime);
  const waiting = late.filter(({ pourInAtMs }) => pourInAtMs !== null).map(({ label }) => plain(label));
  const begun = late.filter(({ pourInAtMs }) => pourInAtMs === null).map(({ label }) => plain(label));
  return {
    text: [
      headOf(answer),
      bottleneckOf(answer),
      waiting.length > 0 ? `**Must wait for next time:** ${joinAnd(waiting)}.` : "",
      begun.length > 0
        ? `Under way and late: ${joinAnd(begun)}. After the fixer these may lie in clean water until the teacher says.`
        : "",
      ...groupsOf(lines.filter(({ isInTime, pourInAtMs }) => isInTime || pourInAtMs === null)).map(
        (group, at) => `${at + 1}. ${lineOf(group, answer)}`,
      ),
    ]
      .filter(Boolean)
      .join("\n"),
    fields: {
      bellAtMs: answer.bellAtMs,
      goal: answer.goal,
      tanks: lines.length,
      doneByBell: answer.doneByBell,
      hungByBell: answer.hungByBell,
      bottleneck: answer.bound?.stage ?? null,
      loads: lines.map((line) => ({ ...line })),
    },
  };
}

function headOf({ bellAtMs, lines, goal, doneByBell, hungByBell }: FitAnswer): string {
  const count = lines.length;
  if (bellAtMs === null) {
    const last = Math.max(...lines.map(({ dryAtMs }) => dryAtMs));
    return `**${countOf(count, "tank")}**: all dry at ${instant(last, "time")}. The class has no bell to hold this against: \`/class bell\`.`;
  }
  const bell = `the bell at ${instant(bellAtMs, "time")}`;
  const all = count === 1 ? "**The one tank**" : `**All ${count} tanks**`;
  if (goal === "done") return `${all} can be dry, cut and sleeved by ${bell}.`;
  const done = `${doneByBell === 0 ? "None" : doneByBell} can be dry and sleeved by then.`;
  if (hungByBell === count) return `${all} can hang by ${bell} and dry overnight. ${done}`;
  return `**${hungByBell} of ${count}** tanks can hang by ${bell}. ${done}`;
}

const STAGES = {
  sinks: ({ sinks }) => `the sinks (${countOf(sinks, "place")})`,
  wash: ({ washPlaces }) => `the wash (${countOf(washPlaces, "place")})`,
  dryer: ({ drySlots }) => `the dryer (${countOf(drySlots, "film")} at once)`,
  tanks: ({ tanks }) =>
    `the tanks (${countOf(tanks ?? 0, "sound one")}, each rinsed and loaded anew in between)`,
  longest: () => "the longest plan alone: nobody has to wait for a place",
} as const satisfies Record<Stage, (places: Places) => string>;

function bottleneckOf({ bound, places }: FitAnswer): string {
  if (!bound) return "";
  return `Bottleneck: ${STAGES[bound.stage](places)}. No order is done in less than ${saySeconds(Math.ceil(bound.seconds / 60) * 60)}.`;
}

/** Loads with the same times in a row are one line. */
function groupsOf(lines: readonly FitLine[]): FitLine[] {
  const groups: { line: FitLine; labels: string[] }[] = [];
  for (const line of lines) {
    const last = groups.at(-1);
    if (last && hasSameTimes(last.line, line)) last.labels.push(line.label);
    else groups.push({ line, labels: [line.label] });
  }
  return groups.map(({ line, labels }) => ({ ...line, label: joinLabels(labels) }));
}

function hasSameTimes(a: FitLine, b: FitLine): boolean {
  return (
    a.pourInAtMs === b.pourInAtMs &&
    a.latestAtMs === b.latestAtMs &&
    a.hungAtMs === b.hungAtMs &&
    a.dryAtMs === b.dryAtMs
  );
}

/** `Tank loads 1-5`; `Mina (P1) and Ben (P2)`. */
function joinLabels(labels: readonly string[]): string {
  const numbers = labels.map((label) => Number(/^Tank load (\d+)$/.exec(label)?.[1] ?? Number.NaN));
  if (labels.length > 1 && numbers.every((number) => !Number.isNaN(number)))
    return `Tank loads ${formatNumbers(numbers)}`;
  return joinAnd(labels);
}

function lineOf(line: FitLine, { goal }: FitAnswer): string {
  const end =
    goal === "done" ? `dry ${instant(line.dryAtMs, "time")}` : `hung ${instant(line.hungAtMs, "time")}`;
  if (line.pourInAtMs === null) return `${plain(line.label)}: under way, ${end}`;
  const latest = line.latestAtMs === null ? "" : `, at the latest **${instant(line.latestAtMs, "time")}**`;
  return `${plain(line.label)}: pour in ${instant(line.pourInAtMs, "time")}${latest}; ${end}`;
}

export const NOTHING_TO_FIT =
  "Nobody has a plan or a run now. Ask for so many tanks: `/class fit loads:12 developing:9:00`.";
export const BELL_PAST = (typed: string): string =>
  `${plain(typed)} is over already. Name a later bell, or leave it out for the class's own.`;
export const LOAD = (number: number): string => `Tank load ${number}`;
