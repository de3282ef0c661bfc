import type { Step } from "../../../store/shapes/plan.ts";
import type { TrayPlan } from "../../../store/shapes/tray.ts";
import { makeDilution } from "../../../store/shapes/sheet.ts";
import type { FieldValue, Reply } from "../../define.ts";
import { describeAgitation, titleOf } from "../../sheet/step-words.ts";
import { formatSize } from "../../print/sizes.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import {
  formatBothScales,
  formatDilution,
  formatNumber,
  formatSeconds,
  makeNumber,
  plain,
} from "../../speech/wording.ts";
import type { TrayFault } from "../request.ts";
import type { SilverFact } from "../silver.ts";
import { paperWord, sayTrayCaution } from "../tray-words.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export const timeRefused = ({ seconds, tenthsC, atTenthsC }: TrayFault): string =>
  words().timeRefused(formatBothScales(tenthsC), formatSeconds(seconds), formatBothScales(atTenthsC));
export const workPrint = (): string => words().workPrint;

export function tooMuchSilver({ label, lowMg, highMg, isMeasured }: SilverFact, limitMg: number): string {
  const [low, high, limit] = [lowMg, highMg, limitMg].map((mg) => formatNumber(mg / 1000, 1)) as [
    string,
    string,
    string,
  ];
  return words().tooMuchSilver(label, isMeasured ? low : null, low, high, limit);
}

export function plannedReply(number: number, plan: TrayPlan, bellWarning: string): Reply {
  const develop = plan.steps.find(({ kind }) => kind === "develop");
  const bath = `${plain(plan.developer)} ${formatDilution(plan.dilution)}`;
  const temperature = formatBothScales(plan.tenthsC);
  const box = plan.box === null ? null : makeNumber("paper", plan.box);
  const what = words().what(plan.prints, formatSize(plan.size), paperWord(plan.paper), box);
  const head =
    plan.factor === null
      ? words().byTime(formatSeconds(develop?.seconds ?? 0), bath, temperature)
      : words().byFactor(formatNumber(plan.factor), bath, temperature, formatSeconds(plan.leastSeconds));
  return {
    text: [
      `${head} ${what}`,
      words().planOf(makeNumber("plan", number), plan.line),
      bellWarning,
      ...plan.steps.map((step) => `- ${sayStep(step, plan)}`),
      words().neverShorter(formatSeconds(plan.leastSeconds)),
      ...plan.cautions.map((caution) => `- ${sayTrayCaution(caution)}`),
    ]
      .filter(Boolean)
      .join("\n"),
    fields: fieldsOf(number, plan),
    actions: [
      { label: words().start, line: makeLine("run start", { plan: number }), weight: "main" },
      { label: words().restsOn, line: makeLine("plan curve", { plan: number }) },
    ],
  };
}

function sayStep(step: Step, { factor }: TrayPlan): string {
  const isByFactor = step.kind === "develop" && factor !== null;
  const time = step.seconds === null || isByFactor ? "" : ` **${formatSeconds(step.seconds)}**`;
  const parts = [
    `${titleOf(step)}${time}`,
    step.batch === null ? "" : words().from(plain(step.batch)),
    step.agitation && step.agitation.manner !== "continuous"
      ? describeAgitation(step.agitation, step.medium)
      : "",
    step.kind === "develop" && step.pourOutSeconds > 0 && step.seconds !== null && !isByFactor
      ? words().liftAt(formatSeconds(step.seconds - step.pourOutSeconds))
      : "",
  ];
  return parts.filter(Boolean).join("; ");
}

function fieldsOf(number: number, plan: TrayPlan): { readonly [key: string]: FieldValue } {
  return {
    plan: number,
    line: plan.line,
    paper: plan.paper,
    box: plan.box,
    shortMm: plan.size.shortMm,
    longMm: plan.size.longMm,
    prints: plan.prints,
    developer: plan.developer,
    dilution: makeDilution(plan.dilution),
    tenthsC: plan.tenthsC,
    leastSeconds: plan.leastSeconds,
    factor: plan.factor,
    steps: plan.steps.map(({ kind, ordinal, seconds, pourOutSeconds, batch }) => ({
      kind,
      ordinal,
      seconds,
      pourOutSeconds,
      batch,
    })),
    cautions: plan.cautions.map(({ code }) => code),
  };
}
