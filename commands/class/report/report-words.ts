import { kindWord } from "../../batch/batch-words.ts";
import { BATCH_KINDS } from "../../../store/shapes/batch.ts";
import { inEach } from "../../speech/language.ts";
import { sayFault } from "../../roll/look-words.ts";
import { formatMl, formatNumber, sayDilution } from "../../speech/wording.ts";
import type { ReportFigures, Tally } from "./report.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

/* The report's sentences, for the chat, the picture and the page. */

export const words = inEach({ en, de });

/** `12 Jan`, in the class's zone. */
export function dayOf(atMs: number, zone: string): string {
  return new Date(atMs).toLocaleDateString(words().locale, {
    timeZone: zone,
    day: "numeric",
    month: "short",
  });
}

export function headLine({ fromMs, untilMs, rolls, people }: ReportFigures, zone: string): string {
  const day = (atMs: number): string =>
    new Date(atMs).toLocaleDateString(words().locale, { timeZone: zone, dateStyle: "medium" });
  return words().head(day(fromMs), day(untilMs - 1), rolls, people);
}

export function summaryLines(figures: ReportFigures): string[] {
  const { runsOnTime, runsCalled, dose, faulty, rolls, rating, finished } = figures;
  if (rolls === 0) return [];
  const faults = words().faulty(percent(faulty, rolls));
  return [
    words().finished(finished, rolls),
    runsCalled === 0 ? words().noneCalled : words().onTime(percent(runsOnTime, runsCalled), runsCalled),
    dose === null ? "" : words().dose(tenth(dose.median), tenth(dose.low), tenth(dose.high)),
    rating === null ? faults : `${faults} ${words().rated(formatNumber(rating.mean, 1), rating.count)}`,
  ].filter(Boolean);
}

/** None where nothing was printed. */
export function printLines({ prints }: ReportFigures): string[] {
  const { count, people, rating, faulty, papers } = prints;
  if (count === 0) return [];
  const rated = rating === null ? [] : [words().rated(formatNumber(rating.mean, 1), rating.count)];
  return [
    [
      words().prints(count, people),
      ...(faulty > 0 ? [words().faulty(percent(faulty, count))] : []),
      ...rated,
    ].join(" "),
    ...(papers.length === 0
      ? []
      : [words().papers(papers.map(({ name, count: uses }) => `${name} ${uses}`).join(", "))]),
  ];
}

export function chemistryLines({ developers, batchesMixed, silver }: ReportFigures): string[] {
  return [
    ...developers.map(({ name, ml, concentrateMl }) =>
      concentrateMl > 0
        ? words().usedConcentrate(sayBath(name), formatLitres(ml), formatLitres(concentrateMl))
        : words().used(sayBath(name), formatLitres(ml)),
    ),
    ...(batchesMixed.length > 0
      ? [words().mixed(batchesMixed.map(({ name, count }) => `${sayKind(name)} ${count}`).join(", "))]
      : []),
    silver.ml === 0
      ? words().noFixer
      : words().fixer(formatLitres(silver.ml), grams(silver.lowMg, silver.highMg)),
    ...(silver.ml > 0 && silver.measuredMl < silver.ml ? [words().ruleOfThumb] : []),
  ];
}

/** The faults in the reader's language, the commonest first. */
export function faultTallies({ faults }: ReportFigures): Tally[] {
  return faults.map(({ name, count }) => ({ name: sayFault(name), count }));
}

/** `House MQ stock`, as the figures count it, for people. */
function sayBath(name: string): string {
  const at = name.lastIndexOf(" ") + 1;
  return name.slice(0, at) + sayDilution(name.slice(at));
}

function sayKind(name: string): string {
  const kind = BATCH_KINDS.find((each) => each === name);
  return kind === undefined ? name : kindWord(kind);
}

function formatLitres(ml: number): string {
  return ml >= 1000 ? `${formatNumber(ml / 1000, 1)} l` : formatMl(ml);
}

function grams(lowMg: number, highMg: number): string {
  return words().grams(formatNumber(lowMg / 1000, 1), formatNumber(highMg / 1000, 1));
}

function percent(part: number, whole: number): string {
  return whole === 0 ? "0 %" : `${Math.round((part * 100) / whole)} %`;
}

function tenth(perMille: number): string {
  return formatNumber(perMille / 10, Number.isInteger(perMille / 10) ? 0 : 1);
}
