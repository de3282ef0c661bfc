import { inEach } from "../speech/language.ts";
import { formatNumber, plain } from "../speech/wording.ts";
import type { AgitationFault } from "../sheet/agitation.ts";
import type { CautionCode, Plan } from "../../store/shapes/plan.ts";
import { HANDBOOK_SECONDS, type WashTime } from "./wash.ts";
import { de } from "./words/caution.de.ts";
import { en } from "./words/caution.en.ts";

/* The sentences of a plan's cautions: what is the matter, and what to do. */

const words = inEach({ en, de });

type Detail = Plan["cautions"][number]["detail"];
type Word = (detail: Detail, plan: Plan) => string;

const number = (detail: Detail, key: string): number => Number(detail[key] ?? 0);
const decimal = (detail: Detail, key: string): string => formatNumber(number(detail, key));

function sayShort(detail: Detail): string {
  if (detail["betterTenthsC"] === undefined) return words().shortOnly;
  const [seconds, tenthsC] = [number(detail, "betterSeconds"), number(detail, "betterTenthsC")];
  return detail["waterTenthsC"] === undefined
    ? words().shortCool(seconds, tenthsC)
    : words().shortMix(seconds, tenthsC, number(detail, "waterTenthsC"), number(detail, "roomTenthsC"));
}

/** What handbooks ask beyond this wash. */
export function washShortWords({ seconds, hypoLeft }: Pick<WashTime, "seconds" | "hypoLeft">): string {
  return words().washShort(HANDBOOK_SECONDS, seconds, formatNumber(Math.round(hypoLeft * 1000) / 10));
}

export const CAUTION_TEXT = {
  WARN_WORN_FIXER: (detail) =>
    words().wornFixer(
      number(detail, "clearingSeconds"),
      number(detail, "freshSeconds"),
      number(detail, "seconds"),
    ),
  WARN_SLOW_FIXER: (detail) =>
    words().slowFixer(number(detail, "clearingSeconds"), number(detail, "seconds")),
  WARN_SHORT_TIME: sayShort,
  WARN_COOL: () => words().cool,
  WARN_WARM: () => words().warm,
  WARN_ONE_POINT: (detail) =>
    detail["kind"] === "one-point"
      ? words().onePoint(decimal(detail, "factorPer10C"))
      : words().beyond(decimal(detail, "factorPer10C")),
  WARN_OTHER_AGITATION: (detail) => words().otherAgitation(number(detail, "seconds")),
  WARN_RULE_OF_THUMB: () => words().ruleOfThumb,
  WARN_WASH_SHORT: (detail) =>
    words().washShort(
      number(detail, "handbookSeconds"),
      number(detail, "seconds"),
      decimal(detail, "hypoLeftPercent"),
    ),
  WARN_RETICULATION: (detail) =>
    words().reticulation(
      number(detail, "stepTenths"),
      number(detail, "limitTenths"),
      number(detail, "looseLimitTenths"),
    ),
  WARN_LONG_FIX: (detail) => words().longFix(number(detail, "seconds")),
  WARN_LITTLE_CONCENTRATE: (detail, plan) =>
    words().littleConcentrate(
      number(detail, "concentrateMl"),
      plan.rolls,
      number(detail, "neededMl"),
      number(detail, "enoughMl"),
    ),
  WARN_STRENGTH: (detail) => words().strength(number(detail, "percent")),
  WARN_BOTTLE_SHORT: (detail) =>
    words().bottleShort(plain(String(detail["label"])), number(detail, "ml"), number(detail, "volumeMl")),
  WARN_COVERED: (detail) => words().covered(number(detail, "volumeMl")),
  WARN_AGITATION: (detail) => words().agitation[detail["fault"] as AgitationFault] ?? "",
  WARN_DRIFT: (detail) => words().drift(number(detail, "roomTenthsC"), number(detail, "seconds")),
  WARN_TANK_LEAKS: (detail) =>
    words().tankLeaks(number(detail, "tank"), plain(String(detail["condition"] ?? ""))),
  WARN_SHARED_TANK: (detail) => words().sharedTank(number(detail, "percent")),
  WARN_WATER_TEMPERATURE: (detail) => words().waterTemperature(number(detail, "tenthsC")),
  NOTE_CHEMICALS: () => words().chemicals,
} as const satisfies Record<CautionCode, Word>;

export function sayCaution(caution: Plan["cautions"][number], plan: Plan): string {
  const word: Word = CAUTION_TEXT[caution.code];
  return word(caution.detail, plan);
}
