import { eventName } from "./file-words.ts";
import { z } from "zod";
import { type Context, defineCommand, picks, type Reply, UserError } from "../../define.ts";
import type { Result } from "../../result.ts";
import { textIn } from "../../speech/shaped.ts";
import { nextSitting, sittingNow } from "../../plan/bell.ts";
import { sayCalendarFaults, sayCalendarNotes } from "./file-words.ts";
import * as words from "./reply.ts";
import { findClashes, LONGEST_CALENDAR, readCalendar } from "./calendar.ts";
import { periodSchema, type Period, type PeriodFault } from "../../../store/shapes/school.ts";
import { periodFaultWords } from "../period-words.ts";
import { addPeriods, MOST_PERIODS, parseClock, parseDays } from "../periods.ts";
import { answer } from "../setup.ts";
import { whoMay } from "../../who.ts";

export const classPeriods = defineCommand({
  name: "class periods",
  was: ["class bell"],
  summary: "The class's periods; the end of one is the bell every plan is held against",
  options: () => ({
    days: z.string().trim().min(1).max(80).optional().describe("Which days, like mon, wed or mon-fri"),
    from: z.string().trim().min(1).max(12).optional().describe("Start, like 18:00 or 6 pm"),
    to: z.string().trim().min(1).max(12).optional().describe("The bell, like 20:30"),
    name: textIn(periodSchema.shape.name, 0).default("").describe("What it is called, like Evening class"),
    file: z
      .string()
      .min(1)
      .max(LONGEST_CALENDAR)
      .optional()
      .meta(picks("file"))
      .describe("The text of a calendar file (.ics): its weekly events become periods"),
    replace: z
      .enum(["yes", "no"])
      .default("no")
      .describe("The file's periods take the place of all there are"),
    remove: z.coerce
      .number()
      .int()
      .min(1)
      .max(MOST_PERIODS)
      .optional()
      .describe("Takes off the period of this number"),
  }),
  who: whoMay("class periods"),
  visibility: "private",
  handle({ days, from, to, name, file, replace, remove }, context) {
    const { periods } = context.class.habits;
    if (file !== undefined) return takeFile(context, file, replace === "yes" ? [] : periods);
    if (remove !== undefined) {
      const gone = periods[remove - 1];
      if (!gone) throw new UserError("ERR_NO_SUCH_PERIOD", words.noSuchPeriod(remove, periods.length));
      const left = periods.filter((each) => each !== gone);
      return savePeriods(context, left, words.removed(gone));
    }
    if (days === undefined && from === undefined && to === undefined) return show(context, periods, "");
    if (days === undefined || from === undefined || to === undefined)
      throw new UserError("ERR_INCOMPLETE", words.incomplete());
    const startMinute = unwrap(parseClock(from));
    const endMinute = unwrap(parseClock(to));
    const added = unwrap(parseDays(days)).map((weekday) => ({ weekday, startMinute, endMinute, name }));
    return savePeriods(context, unwrap(addPeriods(periods, added)), words.added(added.length));
  },
});

function takeFile(context: Context, file: string, before: readonly Period[]): Reply {
  const read = readCalendar(file, context.class.zone, context.now, eventName);
  if (!read.ok) throw new UserError("ERR_CALENDAR", sayCalendarFaults(read.fault, false));
  const { periods, ...rest } = read.value;
  const notes = sayCalendarNotes(rest);
  if (periods.length === 0) throw new UserError("ERR_NO_WEEKLY", words.noWeekly(notes));
  const clashes = findClashes(before, periods);
  if (clashes.length > 0) throw new UserError("ERR_CALENDAR", sayCalendarFaults(clashes, true));
  const done = [words.added(periods.length), notes].filter(Boolean).join("\n");
  return savePeriods(context, unwrap(addPeriods(before, periods)), done);
}

function savePeriods(context: Context, periods: Period[], done: string): Reply {
  const { stores, class: school } = context;
  stores.classes.setHabits(school.id, answer({ ...school.habits, periods }, ["bell"]));
  return show(context, periods, done);
}

function show({ now, class: { zone } }: Context, periods: readonly Period[], done: string): Reply {
  const facts = { zone, now: sittingNow(periods, zone, now), next: nextSitting(periods, zone, now) };
  return words.bellReply(periods, facts, done);
}

function unwrap<T>(result: Result<T, PeriodFault>): T {
  if (result.ok) return result.value;
  throw new UserError(result.fault.code, periodFaultWords(result.fault));
}
