import type { PeriodFault } from "../../../store/shapes/school.ts";

/* What was typed comes cut and harmless, minutes of the day as `18:00`, periods as `sayPeriod` has them. */

export const en = {
  weekdays: [
    "Monday",
    "Tuesday",
    "Wednesday",
    "Thursday",
    "Friday",
    "Saturday",
    "Sunday",
  ] as readonly string[],
  period: (day: string, from: string, to: string) => `${day} ${from}-${to}`,
  named: (period: string, name: string) => `${period}, ${name}`,
  faults: {
    ERR_NO_DAYS: (typed: string) => `I can't read "${typed}" as days. Write them like mon, wed or mon-fri.`,
    ERR_NO_CLOCK: (typed: string) => `I can't read "${typed}" as a time of day. Write it like 18:00 or 6 pm.`,
    ERR_BELL_BEFORE_START: (from: string, to: string) =>
      `From ${from} to ${to}: the bell must come after the start, on the same day. Midnight is 24:00.`,
    ERR_OVERLAP: (other: string) =>
      `That runs into ${other}. Take that one off first, or choose other times.`,
    ERR_TOO_MANY_PERIODS: (most: number) => `A class has at most ${most} periods a week.`,
  } satisfies Record<PeriodFault["code"], unknown>,
  /** Where one day or a time of every day is asked for. */
  noDay: (typed: string) => `I can't read "${typed}" as a day. Write it like monday.`,
  noClock: (typed: string) => `I can't read "${typed}" as a time of day. Write it like 22:00 or 8 am.`,
};
export type PeriodsWords = typeof en;
