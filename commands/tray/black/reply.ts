import type { TrayLine } from "../../../store/shapes/tray-line.ts";
import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { formatBothScales, formatSeconds } from "../../speech/wording.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export const stainFirst = (): string => words().stainFirst;
export const outside = (seconds: number): string => words().outside(formatSeconds(seconds));

export function blackReply(line: TrayLine, least: number, stain: number | null, mostSeconds: number): Reply {
  const end = stain === null ? mostSeconds : Math.min(stain, mostSeconds);
  const isShort = line.leastSeconds !== null && line.rcSeconds < line.leastSeconds;
  return {
    text: [
      words().usable(formatSeconds(least), formatSeconds(end)),
      words().rule,
      isShort ? words().raised(formatSeconds(line.leastSeconds ?? 0), formatBothScales(line.atTenthsC)) : "",
    ]
      .filter(Boolean)
      .join("\n"),
    fields: {
      line: line.number,
      leastSeconds: line.leastSeconds,
      stainSeconds: line.stainSeconds,
      usableFromSeconds: least,
      usableToSeconds: end,
    },
  };
}
