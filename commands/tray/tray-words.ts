import type { PaperKind } from "../../store/shapes/paper.ts";
import type { TrayPlan } from "../../store/shapes/tray.ts";
import { inEach } from "../speech/language.ts";
import { formatBothScales, formatNumber, joinAnd, plain, quoted } from "../speech/wording.ts";
import { de } from "./words/tray.de.ts";
import { en } from "./words/tray.en.ts";

/* The words for trays and prints, shared by everything that speaks of them. */

const words = inEach({ en, de });

export const noLines = (): string => words().noLines;
export const unknownLine = (number: number, known: readonly number[]): string =>
  words().unknownLine(number, joinAnd(known.map(String)));
/** `3 prints`. */
export const printsWord = (count: number): string => words().prints(count);
export const paperWord = (paper: PaperKind): string => words().papers[paper];
export const noSuchPaper = (typed: string): string => words().noSuchPaper(quoted(plain(typed)));

type Caution = TrayPlan["cautions"][number];

export function sayTrayCaution({ code, detail }: Caution): string {
  const number = (name: string): number => Number(detail[name] ?? 0);
  const say = words().cautions;
  switch (code) {
    case "WARN_TRAY_COLD":
      return say.WARN_TRAY_COLD(formatBothScales(number("tenthsC")));
    case "WARN_TRAY_WARM":
      return say.WARN_TRAY_WARM(formatBothScales(number("tenthsC")));
    case "WARN_TRAYS_APART":
      return say.WARN_TRAYS_APART(formatNumber(number("apartTenths") / 10, 1));
    case "WARN_LEAST_TIME":
      return say.WARN_LEAST_TIME(number("seconds"));
    case "WARN_STAIN":
      return say.WARN_STAIN(number("seconds"));
    case "WARN_SILVER_UNKNOWN":
      return say.WARN_SILVER_UNKNOWN(
        String(detail["batch"] ?? ""),
        formatNumber(number("lowMg") / 1000, 1),
        formatNumber(number("highMg") / 1000, 1),
      );
    case "WARN_FILM_CALLS":
      return say.WARN_FILM_CALLS(String(detail["run"] ?? ""));
    default:
      return say[code];
  }
}
