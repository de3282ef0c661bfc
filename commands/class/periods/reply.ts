import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { instant, plain } from "../../speech/wording.ts";
import type { Sitting } from "../../plan/bell.ts";
import type { Period } from "../../../store/shapes/school.ts";
import { formatPeriod } from "../period-words.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export interface BellFacts {
  readonly zone: string;
  readonly now: Sitting | null;
  readonly next: Sitting | null;
}

export function bellReply(periods: readonly Period[], facts: BellFacts, done: string): Reply {
  const lines =
    periods.length === 0
      ? [words().none]
      : [
          words().count(periods.length, facts.zone),
          ...periods.map((period, at) => `${at + 1}. ${plain(formatPeriod(period))}`),
        ];
  return {
    text: [done, ...lines, whenWords(facts)].filter(Boolean).join("\n"),
    fields: {
      periods: periods.map((period) => ({ ...period })),
      bellAtMs: facts.now?.endsAtMs ?? null,
      nextStartsAtMs: facts.next?.startsAtMs ?? null,
    },
    actions: [{ label: words().setup, line: makeLine("class setup", {}) }],
  };
}

function whenWords({ now, next }: BellFacts): string {
  if (now) return words().rings(instant(now.endsAtMs, "time"), instant(now.endsAtMs, "relative"));
  if (next) return words().nextBegins(instant(next.startsAtMs, "relative"), plain(formatPeriod(next.period)));
  return "";
}

export const added = (count: number): string => words().added(count);
export const removed = (period: Period): string => words().removed(plain(formatPeriod(period)));
export const noWeekly = (notes: string): string => words().noWeekly(notes);
export const incomplete = (): string => words().incomplete;
export const noSuchPeriod = (number: number, count: number): string =>
  count === 0 ? words().noneToRemove : words().noSuchPeriod(number, count);
