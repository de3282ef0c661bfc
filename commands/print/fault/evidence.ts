import type { Standing } from "../../batch/state.ts";
import type { Print } from "../../../store/shapes/print.ts";
import { stopsBetween } from "../light.ts";
import type { CauseCode } from "./cause.en.ts";

/* What a print's own record says for or against a cause. The factors are our own judgement, no source. */

/** What is known beside the print. */
export interface Surroundings {
  /** The bottle its developer came from, as it stood then; null: not known. */
  readonly developer: { readonly label: string; readonly standing: Standing } | null;
  /** The best rated other print of the same frame; null: there is none. */
  readonly better: Print | null;
  /** Prints of other people with the same look in the days before it. */
  readonly othersAlike: number;
}

export type Finding =
  | { readonly kind: "developed-short"; readonly seconds: number }
  | { readonly kind: "developed-long"; readonly seconds: number }
  | { readonly kind: "developed-full"; readonly seconds: number }
  | { readonly kind: "warm"; readonly tenthsC: number }
  | { readonly kind: "cold"; readonly tenthsC: number }
  | { readonly kind: "temperature-right"; readonly tenthsC: number }
  | { readonly kind: "developer-bad"; readonly label: string; readonly standing: Standing }
  | { readonly kind: "developer-good"; readonly label: string }
  | { readonly kind: "more-light"; readonly print: number; readonly stops: number }
  | { readonly kind: "less-light"; readonly print: number; readonly stops: number }
  | { readonly kind: "harder"; readonly print: number }
  | { readonly kind: "softer"; readonly print: number }
  | { readonly kind: "fibre" }
  | { readonly kind: "condenser" }
  | { readonly kind: "others-alike"; readonly count: number };

/** Average development of prints is published as 1 1/2 to 2 min (US Army SS0509); less than a minute is short for any paper. */
const SHORT_SECONDS = 60;
/** A published trial (Clerc, section 556): full black needs 140 s, and 280 s stain. */
const LONG_SECONDS = 280;
/** Hydroquinone fails under 60 F (Wellington handbook, p. 130); baths are kept to 75 F (US Army). */
const COLD_TENTHS = 156;
const WARM_TENTHS = 240;
/** Less than this is no other exposure. */
const OTHER_STOPS = 0.25;

export function findingsOf(print: Print, around: Surroundings): Finding[] {
  const { body } = print;
  return [
    ...timeFindings(body.developSeconds),
    ...temperatureFindings(body.tenthsC),
    ...developerFindings(around.developer),
    ...(around.better ? besideBetter(print, around.better) : []),
    ...(body.paper?.kind === "fibre" ? [{ kind: "fibre" as const }] : []),
    ...(body.enlarger?.light === "condenser" ? [{ kind: "condenser" as const }] : []),
    ...(around.othersAlike > 0 ? [{ kind: "others-alike" as const, count: around.othersAlike }] : []),
  ];
}

function timeFindings(seconds: number | null): Finding[] {
  if (seconds === null) return [];
  if (seconds < SHORT_SECONDS) return [{ kind: "developed-short", seconds }];
  return [{ kind: seconds >= LONG_SECONDS ? "developed-long" : "developed-full", seconds }];
}

function temperatureFindings(tenthsC: number | null): Finding[] {
  if (tenthsC === null) return [];
  if (tenthsC < COLD_TENTHS) return [{ kind: "cold", tenthsC }];
  return [{ kind: tenthsC > WARM_TENTHS ? "warm" : "temperature-right", tenthsC }];
}

function developerFindings(developer: Surroundings["developer"]): Finding[] {
  if (developer === null) return [];
  const { label, standing } = developer;
  return [
    standing === "ready" ? { kind: "developer-good", label } : { kind: "developer-bad", label, standing },
  ];
}

/** Light can be compared only where nothing else was other: paper, grade, aperture, height and size. */
function besideBetter({ body }: Print, better: Print): Finding[] {
  const other = better.body;
  const grade = body.paper?.gradeTenths ?? body.gradeTenths;
  const itsGrade = other.paper?.gradeTenths ?? other.gradeTenths;
  if (grade !== null && itsGrade !== null && grade !== itsGrade)
    return [{ kind: grade > itsGrade ? "harder" : "softer", print: better.number }];
  const isAlike =
    body.paper?.number === other.paper?.number &&
    body.paper?.lot === other.paper?.lot &&
    body.apertureTenths === other.apertureTenths &&
    body.headMm === other.headMm &&
    body.size?.longMm === other.size?.longMm;
  const stops = stopsBetween(other.exposureTenths, body.exposureTenths);
  if (!isAlike || Math.abs(stops) < OTHER_STOPS) return [];
  return [{ kind: stops > 0 ? "more-light" : "less-light", print: better.number, stops: Math.abs(stops) }];
}

/** How a finding changes a cause's standing: above 1 speaks for it, below 1 against. */
export const FACTORS: Readonly<Record<Finding["kind"], Partial<Record<CauseCode, number>>>> = {
  "developed-short": { "pulled-early": 4, "under-exposure": 0.5, "long-development": 0.1, forced: 0.1 },
  "developed-long": { "long-development": 4, forced: 3, "pulled-early": 0.1 },
  "developed-full": { "pulled-early": 0.2, "long-development": 0.5, "under-exposure": 1.5 },
  warm: { "warm-developer": 4, "cold-developer": 0.1 },
  cold: { "cold-developer": 4, "warm-developer": 0.1 },
  "temperature-right": { "cold-developer": 0.2, "warm-developer": 0.2 },
  "developer-bad": { "weak-developer": 4, "too-much-bromide": 2, "under-exposure": 0.7 },
  "developer-good": { "weak-developer": 0.4 },
  "more-light": { "over-exposure": 4, "under-exposure": 0.1, forced: 0.5 },
  "less-light": { "under-exposure": 4, forced: 2, "over-exposure": 0.1 },
  harder: { "hard-negative": 3, "soft-grade": 0.1 },
  softer: { "soft-grade": 3, "hard-negative": 0.1 },
  fibre: { "short-wash": 2 },
  condenser: { dust: 1.5, "negative-moved": 1.5 },
  "others-alike": {
    safelight: 2,
    "old-paper": 1.5,
    "worn-fixer": 2,
    "weak-developer": 2,
    "warm-developer": 1.5,
    "fixer-in-developer": 3,
  },
};
