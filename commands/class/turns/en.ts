import { countOf, joinAnd } from "../../speech/wording.ts";
import type { Stage } from "./order.ts";
import type { Places } from "./fit.ts";

/* Labels come harmless, instants marked, durations as `saySeconds` has them. */

export const en = {
  somebody: "somebody",
  load: (number: number) => `Tank load ${number}`,
  loads: (numbers: string) => `Tank loads ${numbers}`,
  /** Several loads may go through one tank, one after the other. */
  noBell: (loads: number, last: string) =>
    `**${countOf(loads, "tank load")}**: all dry at ${last}. The class has no bell to hold this against: \`/class periods\`.`,
  allDone: (loads: number, bell: string) =>
    `${allOf(loads)} can be dry, cut and sleeved by the bell at ${bell}.`,
  allHung: (loads: number, bell: string, done: number) =>
    `${allOf(loads)} can hang by the bell at ${bell} and dry overnight. ${doneBy(done)}`,
  someHung: (hung: number, loads: number, bell: string, done: number) =>
    `**The films of ${hung} of ${countOf(loads, "tank load")}** can hang by the bell at ${bell}. ${doneBy(done)}`,
  stages: {
    sinks: ({ sinks }: Places) => `the sinks (${countOf(sinks, "place")})`,
    wash: ({ washPlaces }: Places) => `the wash (${countOf(washPlaces, "place")})`,
    dryer: ({ drySlots }: Places) => `the drying (${countOf(drySlots, "film")} at once)`,
    tanks: ({ tanks }: Places) =>
      `the tanks (${countOf(tanks ?? 0, "usable one")}, each rinsed and loaded again in between)`,
    "waited-for": () => "a tank that somebody waits for",
    longest: () => "the longest plan alone: nobody has to wait for a place",
  } satisfies Record<Stage, (places: Places) => string>,
  bottleneck: (stage: string, least: string) =>
    `Bottleneck: ${stage}. No order is done in less than ${least}.`,
  mustWait: (labels: readonly string[]) => `**Must wait for next time:** ${joinAnd(labels)}.`,
  begunLate: (labels: readonly string[]) =>
    `Under way and late: ${joinAnd(labels)}. After the fixer these may lie in clean water until the teacher says.`,
  dry: (time: string) => `dry ${time}`,
  hung: (time: string) => `hung ${time}`,
  underWay: (label: string, end: string) => `${label}: under way, ${end}`,
  pourIn: (label: string, time: string, latest: string | null, end: string) =>
    `${label}: pour in ${time}${latest === null ? "" : `, at the latest **${latest}**`}; ${end}`,
  nothing:
    "No film has a plan or a run now. Ask for so many tank loads: `/class turns loads:12 developing:9:00`.",
  /** Films that go into one certain tank; people come as `Mina (R9)`. */
  waitsForTank: (tank: number, holder: string, until: string | null, waiting: readonly string[]) =>
    `**Tank ${tank}**: ${holder} has it${until === null ? "" : ` until about ${until}`}. Waiting for it: ${joinAnd(waiting)}.`,
  /** Prints, by the places of the trays; people come as `Mina (R9)`. */
  trays: {
    head: (line: number, there: readonly string[]) =>
      `**Trays ${line}**: ${there.length === 0 ? "empty" : `${joinAnd(there)} in them`}.`,
    waits: (label: string, when: string, isAfterBell: boolean) =>
      `${label}: ${when}${isAfterBell ? ", **washed only after the bell**" : ""}`,
    when: {
      now: "put in now",
      at: (time: string) => `put in ${time}`,
      never: "the trays are too small for so many sheets",
    },
  },
  bellPast: (typed: string) =>
    `${typed} is over already. Name a later bell, or leave it out for the class's own.`,
};
export type FitWords = typeof en;

const allOf = (loads: number): string => `**All films of ${countOf(loads, "tank load")}**`;

function doneBy(done: number): string {
  return `${done === 0 ? "None" : done} can be dry and sleeved by then.`;
}
