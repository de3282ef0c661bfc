import { countOf, formatMl } from "../wording.ts";
import type { ReportFigures } from "./report.ts";

/* The report's sentences, for the chat, the picture and the page. */

/** `12 Jan`, in the class's zone. */
export function dayOf(atMs: number, zone: string): string {
  return new Date(atMs).toLocaleDateString("en-GB", { timeZone: zone, day: "numeric", month: "short" });
}

export function headLine({ fromMs, untilMs, rolls, people }: ReportFigures, zone: string): string {
  const day = (atMs: number): string =>
    new Date(atMs).toLocaleDateString("en-GB", { timeZone: zone, dateStyle: "medium" });
  return `${day(fromMs)} to ${day(untilMs - 1)}: ${countOf(rolls, "roll")} by ${countOf(people, "person", "people")}`;
}

export function summaryLines(figures: ReportFigures): string[] {
  const { runsOnTime, runsCalled, dose, faulty, rolls, rating, finished } = figures;
  return [
    `${finished} of ${rolls} rolls came to the end.`,
    runsCalled === 0
      ? "No run was called yet."
      : `${percent(runsOnTime, runsCalled)} of ${countOf(runsCalled, "run")} had every call on time.`,
    dose === null
      ? ""
      : `Development: ${tenth(dose.median)} % of plan in the middle; nine of ten between ${tenth(dose.low)} and ${tenth(dose.high)} %.`,
    `${percent(faulty, rolls)} show a fault.${rating === null ? "" : ` Rated ${rating.mean.toFixed(1)} of 5 on average (${rating.count} rated).`}`,
  ].filter(Boolean);
}

export function chemistryLines({ developers, batchesMixed, silver }: ReportFigures): string[] {
  return [
    ...developers.map(
      ({ name, ml, concentrateMl }) =>
        `${name}: ${formatLitres(ml)} used${concentrateMl > 0 ? `, ${formatLitres(concentrateMl)} of concentrate` : ""}`,
    ),
    ...(batchesMixed.length > 0
      ? [`Batches mixed: ${batchesMixed.map(({ name, count }) => `${name} ${count}`).join(", ")}`]
      : []),
    silver.ml === 0
      ? "Used fixer: none collected"
      : `Used fixer: ${formatLitres(silver.ml)} collected, silver ${grams(silver.lowMg, silver.highMg)}`,
    ...(silver.ml > 0 && silver.measuredMl < silver.ml
      ? ["(the silver by a rule of thumb, not measured)"]
      : []),
  ];
}

function formatLitres(ml: number): string {
  return ml >= 1000 ? `${(ml / 1000).toFixed(1)} l` : formatMl(ml);
}

function grams(lowMg: number, highMg: number): string {
  const low = (lowMg / 1000).toFixed(1);
  const high = (highMg / 1000).toFixed(1);
  return low === high ? `${low} g` : `${low} to ${high} g`;
}

function percent(part: number, whole: number): string {
  return whole === 0 ? "0 %" : `${Math.round((part * 100) / whole)} %`;
}

function tenth(perMille: number): string {
  return (perMille / 10).toFixed(Number.isInteger(perMille / 10) ? 0 : 1);
}
