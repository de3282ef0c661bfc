import type { Reply } from "../define.ts";
import { makeLine } from "../line.ts";
import { instant, plain, saySeconds } from "../wording.ts";
import type { Sitting } from "./bell.ts";
import type { Habits } from "./habits.ts";
import { formatMinute, WEEKDAYS, type PeriodFault } from "./periods.ts";

export function digestReply(habits: Habits, zone: string, next: Sitting | null, isChanged: boolean): Reply {
  const lead = saySeconds(habits.digestLeadMinutes * 60);
  const upcoming = next
    ? ` The next one comes ${instant(next.startsAtMs - habits.digestLeadMinutes * 60_000, "relative")}.`
    : " The class has no periods yet: `/class bell`.";
  const isQuiet = habits.silenceFrom !== habits.silenceTo;
  const lines = [
    isChanged ? "Noted." : "",
    `**${lead}** before each period: what is ready, what is tired, what to mix.${upcoming}`,
    `**${WEEKDAYS[habits.weekDigestWeekday - 1]} ${formatMinute(habits.weekDigestMinute)}**: the week's rolls, litres and waste.`,
    isQuiet
      ? `**${formatMinute(habits.silenceFrom)}-${formatMinute(habits.silenceTo)}** quiet: warnings that can wait do. Calls at the sink never do.`
      : "Never quiet: warnings come at once.",
    `All by the class's own clock (${zone}).`,
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
      { label: "Periods", line: makeLine("class bell", {}) },
      { label: "Set-up", line: makeLine("class setup", {}) },
    ],
  };
}

export const LEAD_RANGE = (minutes: number): string =>
  `At most ${saySeconds(minutes * 60)} before a period. Write it like \`before:60 min\`.`;

export function clockFaultWords(fault: PeriodFault): string {
  const typed = "typed" in fault ? plain(fault.typed.slice(0, 40)) : "";
  return fault.code === "ERR_NO_DAYS"
    ? `I can't read "${typed}" as a day. Write it like monday.`
    : `I can't read "${typed}" as a time of day. Write it like 22:00 or 8 am.`;
}
