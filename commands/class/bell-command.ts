import { z } from "zod";
import { defineCommand, UserError, type Context, type Reply } from "../define.ts";
import type { Result } from "../result.ts";
import { nextSitting, sittingNow } from "./bell.ts";
import * as words from "./bell-reply.ts";
import type { Period } from "./habits.ts";
import { addPeriods, parseClock, parseDays, type PeriodFault } from "./periods.ts";
import { answer } from "./setup.ts";
import { whoMay } from "./who.ts";

export const classBell = defineCommand({
  name: "class bell",
  summary: "The class's periods; the end of one is the bell every plan is held against",
  options: z.object({
    days: z.string().trim().min(1).max(80).optional().describe("Which days, like mon, wed or mon-fri"),
    from: z.string().trim().min(1).max(12).optional().describe("Start, like 18:00 or 6 pm"),
    to: z.string().trim().min(1).max(12).optional().describe("The bell, like 20:30"),
    name: z.string().trim().max(60).default("").describe("What it is called, like Evening class"),
    remove: z.coerce.number().int().min(1).max(60).optional().describe("Takes off the period of this number"),
  }),
  who: whoMay("class bell"),
  visibility: "private",
  handle({ days, from, to, name, remove }, context) {
    const { periods } = context.class.habits;
    if (remove !== undefined) {
      const gone = periods[remove - 1];
      if (!gone) throw new UserError("ERR_NO_SUCH_PERIOD", words.NO_SUCH_PERIOD(remove, periods.length));
      const left = periods.filter((each) => each !== gone);
      return keep(context, left, words.REMOVED(gone));
    }
    if (days === undefined && from === undefined && to === undefined) return show(context, periods, "");
    if (days === undefined || from === undefined || to === undefined)
      throw new UserError("ERR_INCOMPLETE", words.INCOMPLETE);
    const startMinute = unwrap(parseClock(from));
    const endMinute = unwrap(parseClock(to));
    const added = unwrap(parseDays(days)).map((weekday) => ({ weekday, startMinute, endMinute, name }));
    return keep(context, unwrap(addPeriods(periods, added)), words.ADDED(added.length));
  },
});

function keep(context: Context, periods: Period[], done: string): Reply {
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
  throw new UserError(result.fault.code, words.periodFaultWords(result.fault));
}
