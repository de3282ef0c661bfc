import { inEach } from "../speech/language.ts";
import { plain } from "../speech/wording.ts";
import { formatMinute } from "./periods.ts";
import type { Period, PeriodFault } from "../../store/shapes/school.ts";
import { de } from "./words/periods.de.ts";
import { en } from "./words/periods.en.ts";

/* Why days and times of day that were typed can't be taken. */

const words = inEach({ en, de });

export function periodFaultWords(fault: PeriodFault): string {
  const { faults } = words();
  switch (fault.code) {
    case "ERR_NO_DAYS":
    case "ERR_NO_CLOCK":
      return faults[fault.code](cut(fault.typed));
    case "ERR_BELL_BEFORE_START":
      return faults[fault.code](formatMinute(fault.from), formatMinute(fault.to));
    case "ERR_OVERLAP":
      return faults[fault.code](plain(formatPeriod(fault.other)));
    case "ERR_TOO_MANY_PERIODS":
      return faults[fault.code](fault.most);
  }
}

/** The same where one day or one time of every day is asked for. */
export function clockFaultWords(fault: PeriodFault): string {
  const typed = "typed" in fault ? cut(fault.typed) : "";
  return fault.code === "ERR_NO_DAYS" ? words().noDay(typed) : words().noClock(typed);
}

function cut(typed: string): string {
  return plain(typed.slice(0, 40));
}

/** `Monday 18:00-20:30, Evening class`. */
export function formatPeriod({ weekday, startMinute, endMinute, name }: Period): string {
  const when = words().period(weekdayWord(weekday), formatMinute(startMinute), formatMinute(endMinute));
  return name === "" ? when : words().named(when, name);
}

/** By its ISO number: `Monday`. */
export function weekdayWord(weekday: number): string {
  return words().weekdays[weekday - 1] ?? "";
}
