import type { Standing } from "../../batch/state.ts";
import { largestStepTenths, RETICULATION_TENTHS } from "../../plan/wash.ts";
import type { Roll } from "../../../store/shapes/roll.ts";

/* What a roll's own record says for or against a cause. The factors are our own judgement, no source. */

/** How a bottle stood when this film went through it. */
export interface BathFacts {
  readonly label: string;
  readonly standing: Standing;
  /** Predicted or tested, at that moment; null: not known. */
  readonly clearingSeconds: number | null;
}

/** What is known beside the roll. */
export interface Surroundings {
  readonly developer: BathFacts | null;
  readonly fixer: BathFacts | null;
  /** What is said of the tank today; null: nothing, or no tank was named. */
  readonly tankCondition: string | null;
}

export type Finding =
  | { readonly kind: "dose-short"; readonly percent: number }
  | { readonly kind: "dose-over"; readonly percent: number }
  | { readonly kind: "dose-right" }
  | { readonly kind: "never-developed" }
  | { readonly kind: "developer-bad"; readonly label: string; readonly standing: Standing }
  | { readonly kind: "developer-good"; readonly label: string }
  | {
      readonly kind: "fix-short";
      readonly seconds: number;
      readonly neededSeconds: number;
      readonly times: number;
    }
  | { readonly kind: "fix-cut"; readonly seconds: number; readonly plannedSeconds: number }
  | { readonly kind: "fix-enough"; readonly seconds: number; readonly clearingSeconds: number }
  | { readonly kind: "fixer-bad"; readonly label: string; readonly standing: Standing }
  | { readonly kind: "fixer-good"; readonly label: string }
  | { readonly kind: "wash-cut"; readonly seconds: number; readonly plannedSeconds: number }
  | { readonly kind: "calls-missed"; readonly missed: number; readonly late: number }
  | { readonly kind: "calls-kept" }
  | { readonly kind: "tank-reported"; readonly condition: string }
  | { readonly kind: "baths-apart"; readonly stepTenths: number }
  | { readonly kind: "baths-even"; readonly stepTenths: number }
  | { readonly kind: "warm"; readonly tenthsC: number }
  | { readonly kind: "wetting-skipped" }
  | { readonly kind: "tabular" };

/** Beyond this a dose is off, not merely human. */
const DOSE_OFF_PER_MILLE = 50;
const CUT_SECONDS = 10;
/** Warm enough to soften gelatin: the upper end of handbooks' range for solutions, 75 °F. */
const WARM_TENTHS = 240;

type RollStep = Roll["body"]["steps"][number];

export function findingsOf(roll: Roll, around: Surroundings): Finding[] {
  return [
    ...doseFindings(roll),
    ...bathFindings(around),
    ...fixFindings(roll, around),
    ...stepFindings(roll),
    ...callFindings(roll),
    ...temperatureFindings(roll),
    ...(around.tankCondition === null
      ? []
      : [{ kind: "tank-reported" as const, condition: around.tankCondition }]),
    ...(roll.body.isTabular ? [{ kind: "tabular" as const }] : []),
  ];
}

function doseFindings({ body: { developedSeconds, dosePerMille } }: Roll): Finding[] {
  if (developedSeconds === null) return [{ kind: "never-developed" }];
  if (dosePerMille === null) return [];
  const off = dosePerMille - 1000;
  const percent = Math.round(Math.abs(off) / 10);
  if (off < -DOSE_OFF_PER_MILLE) return [{ kind: "dose-short", percent }];
  return off > DOSE_OFF_PER_MILLE ? [{ kind: "dose-over", percent }] : [{ kind: "dose-right" }];
}

function bathFindings({ developer, fixer }: Surroundings): Finding[] {
  const found: Finding[] = [];
  if (developer)
    found.push(
      developer.standing === "ready"
        ? { kind: "developer-good", label: developer.label }
        : { kind: "developer-bad", label: developer.label, standing: developer.standing },
    );
  if (fixer)
    found.push(
      fixer.standing === "ready"
        ? { kind: "fixer-good", label: fixer.label }
        : { kind: "fixer-bad", label: fixer.label, standing: fixer.standing },
    );
  return found;
}

function fixFindings({ body }: Roll, { fixer }: Surroundings): Finding[] {
  // In one bath or in two: what counts is all of it.
  const fixes = body.steps.filter(({ kind }) => kind === "fix");
  const fix = fixes[0];
  if (!fix || fixes.some(({ actualSeconds }) => actualSeconds === null)) return [];
  const seconds = fixes.reduce((sum, { actualSeconds }) => sum + (actualSeconds ?? 0), 0);
  const plannedSeconds = fixes.reduce((sum, each) => sum + (each.plannedSeconds ?? 0), 0);
  const clearingSeconds = fixer?.clearingSeconds ?? null;
  if (clearingSeconds !== null) {
    // Twice the clearing time: US Navy NAVEDTRA 14209; three times for tabular grain: practitioners' pages.
    const times = body.isTabular ? 3 : 2;
    const neededSeconds = Math.ceil(clearingSeconds * times);
    return seconds < neededSeconds
      ? [{ kind: "fix-short", seconds, neededSeconds, times }]
      : [{ kind: "fix-enough", seconds, clearingSeconds: Math.round(clearingSeconds) }];
  }
  return fixes.some(isCut) ? [{ kind: "fix-cut", seconds, plannedSeconds }] : [];
}

function stepFindings({ body: { steps } }: Roll): Finding[] {
  const found: Finding[] = [];
  const wash = steps.findLast(({ kind }) => kind === "wash");
  if (wash && isCut(wash))
    found.push({
      kind: "wash-cut",
      seconds: wash.actualSeconds ?? 0,
      plannedSeconds: wash.plannedSeconds ?? 0,
    });
  const wetting = stepOf(steps, "wetting-agent");
  const dried = stepOf(steps, "dry");
  if (wetting && wetting.startedAtMs === null && dried?.startedAtMs != null)
    found.push({ kind: "wetting-skipped" });
  return found;
}

function callFindings({ lateCues, body: { missedCues, developedSeconds } }: Roll): Finding[] {
  if (developedSeconds === null) return [];
  return missedCues + lateCues > 0
    ? [{ kind: "calls-missed", missed: missedCues, late: lateCues }]
    : [{ kind: "calls-kept" }];
}

/** Only temperatures that were measured count; the developer's is always known. */
function temperatureFindings({ body: { tenthsC, steps } }: Roll): Finding[] {
  const measured = steps.flatMap((step) => (step.tenthsC === null ? [] : [step.tenthsC]));
  const baths = [tenthsC, ...measured];
  const found: Finding[] = [];
  const stepTenths = largestStepTenths(baths);
  if (stepTenths > RETICULATION_TENTHS) found.push({ kind: "baths-apart", stepTenths });
  else if (measured.length > 0) found.push({ kind: "baths-even", stepTenths });
  const warmest = Math.max(...baths);
  if (warmest > WARM_TENTHS) found.push({ kind: "warm", tenthsC: warmest });
  return found;
}

function stepOf(steps: readonly RollStep[], kind: RollStep["kind"]): RollStep | undefined {
  return steps.find((step) => step.kind === kind);
}

function isCut({ actualSeconds, plannedSeconds }: RollStep): boolean {
  return actualSeconds !== null && plannedSeconds !== null && actualSeconds < plannedSeconds - CUT_SECONDS;
}

/** How much a finding speaks for (above 1) or against (below 1) a cause. */
export const FACTORS = {
  "dose-short": {
    "short-development": 6,
    "weak-developer": 0.7,
    "under-exposure": 0.6,
    "over-development": 0.1,
  },
  "dose-over": { "over-development": 6, "over-exposure": 0.7, "short-development": 0.1 },
  "dose-right": { "short-development": 0.25, "over-development": 0.4, "under-exposure": 1.3 },
  "never-developed": { "not-developed": 20, "not-exposed": 0.3 },
  "developer-bad": { "weak-developer": 6, "not-developed": 2 },
  "developer-good": { "weak-developer": 0.4 },
  "fix-short": { "short-fixing": 6, "worn-fixer": 1.2 },
  "fix-cut": { "short-fixing": 4 },
  "fix-enough": { "short-fixing": 0.2, "worn-fixer": 0.6, "film-touched": 1.5 },
  "fixer-bad": { "worn-fixer": 6 },
  "fixer-good": { "worn-fixer": 0.4 },
  "wash-cut": { "short-wash": 4 },
  "calls-missed": { "little-agitation": 4 },
  "calls-kept": { "little-agitation": 0.5 },
  "tank-reported": { "tank-leak": 3, splash: 1.2 },
  "baths-apart": { reticulation: 5 },
  "baths-even": { reticulation: 0.3 },
  warm: { "soft-gelatin": 3, "over-development": 1.3 },
  "wetting-skipped": { drying: 4 },
  tabular: { "short-fixing": 1.5 },
} as const satisfies Record<Finding["kind"], Readonly<Record<string, number>>>;
