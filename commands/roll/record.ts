import { dosePercent } from "../plan/dose.ts";
import { makeDilution } from "../../store/shapes/sheet.ts";
import {
  isFilmRun,
  type Deviation,
  type FilmDeviation,
  type FilmRun,
  type Run,
} from "../../store/shapes/run.ts";
import type { NewRoll, RollBody } from "../../store/shapes/roll.ts";

/** What the log keeps of a run that is over: one roll for each film in the tank, none of prints. */
export function recordRolls(
  run: Run,
  personName: string,
  cues: { readonly late: number; readonly missed: number },
): NewRoll[] {
  if (!isFilmRun(run)) return [];
  if (run.phase.kind !== "finished" && run.phase.kind !== "stopped") return [];
  const { plan, phase } = run;
  const shared = {
    classId: run.classId,
    runId: run.id,
    personId: run.personId,
    personName,
    film: plan.sheet.film,
    developer: plan.sheet.developer,
    dilution: makeDilution(plan.sheet.dilution),
    tank: plan.tank,
    batches: [...new Set(plan.steps.flatMap(({ batch }) => (batch === null ? [] : [batch])))].join(" "),
    outcome: phase.kind,
    endedAt: phase.atMs,
    lateCues: cues.late,
  };
  return Array.from({ length: plan.rolls }, (_, index) => ({
    ...shared,
    body: { ...bodyOf(run, cues.missed), film: { index: index + 1, count: plan.rolls } },
  }));
}

function bodyOf(run: FilmRun, missedCues: number): Omit<RollBody, "film"> {
  const { plan } = run;
  const steps = plan.steps.map((step, index) => {
    const mark = run.marks.find((each) => each.step === index);
    const actualSeconds =
      mark?.endedAtMs == null ? null : Math.round((mark.endedAtMs - mark.startedAtMs) / 1000);
    return {
      kind: step.kind,
      ordinal: step.ordinal,
      plannedSeconds: step.seconds,
      actualSeconds,
      startedAtMs: mark?.startedAtMs ?? null,
      tenthsC: readingsOf(run, index).at(-1)?.tenthsC ?? null,
      batch: step.batch,
    };
  });
  const developer = plan.steps.find(({ kind }) => kind === "develop");
  const developing = steps.find(({ kind }) => kind === "develop");
  return {
    exposureIndex: plan.exposureIndex,
    tenthsC: plan.tenthsC,
    format: plan.format,
    frames: plan.frames,
    frame: plan.frame ?? null,
    strips: plan.strips,
    plannedSeconds: developing?.plannedSeconds ?? 0,
    developedSeconds: developing?.actualSeconds ?? null,
    dosePerMille: dosePerMille(run, developing?.actualSeconds ?? null),
    steps,
    deviations: run.deviations.filter(isOfFilm),
    reason: run.phase.kind === "stopped" ? run.phase.reason : null,
    missedCues,
    developerMl: perFilm(developer?.ml, plan.rolls),
    concentrateMl: perFilm(developer?.concentrateMl, plan.rolls),
    isTabular: plan.sheet.tabularGrain,
    cause: null,
    frameMarks: [],
  };
}

const isOfFilm = (each: Deviation): each is FilmDeviation =>
  each.kind !== "seen" && each.kind !== "washed-anew";

function perFilm(ml: number | null | undefined, films: number): number | null {
  return ml == null ? null : Math.round((ml / films) * 10) / 10;
}

/** What was measured in the bath of a step, in order. */
function readingsOf(run: Run, step: number): { readonly atMs: number; readonly tenthsC: number }[] {
  return run.deviations.flatMap((each) =>
    each.kind === "new-temperature" && each.step === step ? [{ atMs: each.atMs, tenthsC: each.tenthsC }] : [],
  );
}

/** From the temperatures measured in the developer and from when it really was in the tank. */
function dosePerMille(run: FilmRun, seconds: number | null): number | null {
  const index = run.plan.steps.findIndex(({ kind }) => kind === "develop");
  const startedAtMs = run.marks.find(({ step }) => step === index)?.startedAtMs;
  if (seconds === null || startedAtMs === undefined) return null;
  const readings = readingsOf(run, index).map(({ atMs, tenthsC }) => ({
    atSeconds: (atMs - startedAtMs) / 1000,
    tenthsC,
  }));
  const percent = dosePercent(run.plan, seconds, readings);
  return percent.ok ? Math.round(percent.value * 10) : null;
}
