import type { Reply } from "../define.ts";
import { makeLine } from "../line.ts";
import { countOf, instant, plain } from "../wording.ts";
import type { Sitting } from "./bell.ts";
import type { Period } from "./habits.ts";
import { formatMinute, formatPeriod, type PeriodFault } from "./periods.ts";

export interface BellFacts {
  readonly zone: string;
  readonly now: Sitting | null;
  readonly next: Sitting | null;
}

export function bellReply(periods: readonly Period[], facts: BellFacts, done: string): Reply {
  const lines =
    periods.length === 0
      ? ["The class has no periods yet: `/class bell days:mon, wed from:18:00 to:20:30 name:Evening class`."]
      : [
          `**${countOf(periods.length, "period")}** a week (${facts.zone}):`,
          ...periods.map((period, at) => `${at + 1}. ${plain(formatPeriod(period))}`),
        ];
  return {
    text: [done, ...lines, whenWords(facts)].filter(Boolean).join("\n"),
    fields: {
      periods: periods.map((period) => ({ ...period })),
      bellAtMs: facts.now?.endsAtMs ?? null,
      nextStartsAtMs: facts.next?.startsAtMs ?? null,
    },
    actions: [{ label: "Set-up", line: makeLine("class setup", {}) }],
  };
}

function whenWords({ now, next }: BellFacts): string {
  if (now) return `The bell rings at ${instant(now.endsAtMs, "time")}, ${instant(now.endsAtMs, "relative")}.`;
  if (next)
    return `The next one begins ${instant(next.startsAtMs, "relative")}: ${plain(formatPeriod(next.period))}.`;
  return "";
}

export const ADDED = (count: number): string => `Noted: ${countOf(count, "period")}.`;
export const REMOVED = (period: Period): string => `Taken off: ${plain(formatPeriod(period))}.`;
export const NO_WEEKLY = (notes: string): string =>
  `**Nothing is taken from the file:** no event in it is there every week.\n${notes}`;
export const INCOMPLETE = "Say all three: `days:mon, wed from:18:00 to:20:30`.";
export const NO_SUCH_PERIOD = (number: number, count: number): string =>
  count === 0
    ? "There is no period to take off."
    : `There is no period ${number}. They are numbered 1 to ${count}: see \`/class bell\`.`;

type Words = { [Fault in PeriodFault as Fault["code"]]: (fault: Fault) => string };
const FAULT_TEXT: Words = {
  ERR_NO_DAYS: ({ typed }) =>
    `I can't read "${plain(typed.slice(0, 40))}" as days. Write them like mon, wed or mon-fri.`,
  ERR_NO_CLOCK: ({ typed }) =>
    `I can't read "${plain(typed.slice(0, 40))}" as a time of day. Write it like 18:00 or 6 pm.`,
  ERR_BELL_BEFORE_START: ({ from, to }) =>
    `From ${formatMinute(from)} to ${formatMinute(to)}: the bell must come after the start, on the same day. Midnight is 24:00.`,
  ERR_OVERLAP: ({ other }) =>
    `That runs into ${plain(formatPeriod(other))}. Take that one off first, or choose other times.`,
  ERR_TOO_MANY_PERIODS: ({ most }) => `A class has at most ${most} periods a week.`,
};

export function periodFaultWords(fault: PeriodFault): string {
  const word = FAULT_TEXT[fault.code] as (fault: PeriodFault) => string;
  return word(fault);
}
