import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { instant, saySeconds } from "../../speech/wording.ts";
import type { Sitting } from "../../plan/bell.ts";
import type { Habits } from "../../../store/shapes/school.ts";
import { formatMinute } from "../periods.ts";
import { weekdayWord } from "../period-words.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export function digestReply(habits: Habits, zone: string, next: Sitting | null, isChanged: boolean): Reply {
  const upcoming = next
    ? words().nextComes(instant(next.startsAtMs - habits.digestLeadMinutes * 60_000, "relative"))
    : words().noPeriods;
  const isQuiet = habits.silenceFrom !== habits.silenceTo;
  const lines = [
    isChanged ? words().noted : "",
    words().before(saySeconds(habits.digestLeadMinutes * 60), upcoming),
    words().week(weekdayWord(habits.weekDigestWeekday), formatMinute(habits.weekDigestMinute)),
    isQuiet
      ? words().quiet(formatMinute(habits.silenceFrom), formatMinute(habits.silenceTo))
      : words().neverQuiet,
    words().clock(zone),
  ];
  return {
    text: lines.filter(Boolean).join("\n"),
    fields: {
      digestLeadMinutes: habits.digestLeadMinutes,
      weekDigestWeekday: habits.weekDigestWeekday,
      weekDigestMinute: habits.weekDigestMinute,
      silenceFromMinute: habits.silenceFrom,
      silenceToMinute: habits.silenceTo,
      zone,
    },
    actions: [
      { label: words().periods, line: makeLine("class periods", {}) },
      { label: words().setup, line: makeLine("class setup", {}) },
    ],
  };
}

export const leadRange = (minutes: number): string => words().leadRange(saySeconds(minutes * 60));
