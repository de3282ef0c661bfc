import type { Habits } from "../../store/shapes/school.ts";
import { fail, ok, type Result } from "../result.ts";
import { cautionsFor } from "./cautions.ts";
import { cutStrips, FRAMES_PER_FILM, STRIP_FRAMES_120 } from "./cut.ts";
import { developmentFor } from "./develop.ts";
import { fixTime } from "./fix.ts";
import type { Plan } from "../../store/shapes/plan.ts";
import type { PlanFault, PlanRequest } from "./request.ts";
import { layOutSteps } from "./steps.ts";
import { leastVolumeMl, volumeFor } from "./volume.ts";
import { washTime } from "./wash.ts";

/** Works out the whole plan for one tank load: steps, times, volumes, strips and cautions. */
export function makePlan(request: PlanRequest, habits: Habits): Result<Plan, PlanFault> {
  const { sheet, tenthsC, format } = request;
  const volume = volumeFor(request.tank, format, request.rolls, request.volumeMl);
  if (!volume.ok) return volume;
  const volumeMl = volume.value;
  const leastMl = leastVolumeMl(sheet.dilution);
  if (volumeMl < leastMl)
    return fail({ code: "ERR_NO_CONCENTRATE", volumeMl, dilution: sheet.dilution, leastMl });
  const development = developmentFor(request, volumeMl);
  if (!development.ok) return development;

  const isTabular = sheet.tabularGrain || request.others.some((other) => other.tabularGrain);
  const hasAid = request.washAid ?? habits.washAid;
  const parts = {
    volumeMl,
    development: development.value,
    fix: fixTime(request.clearingSeconds, isTabular, habits.fixMinSeconds, request.fixTenthsC ?? tenthsC),
    wash: washTime(
      request.washMethod ?? habits.washMethod,
      hasAid,
      habits.washMinSeconds,
      request.waterTenthsC ?? tenthsC,
      volumeMl,
    ),
    hasAid,
  };
  const frames = request.frames ?? FRAMES_PER_FILM[format];
  return ok({
    sheet,
    exposureIndex: request.exposureIndex ?? sheet.boxSpeed,
    tenthsC,
    rolls: request.rolls,
    format,
    frames,
    tank: request.tank?.number ?? null,
    volumeMl,
    steps: layOutSteps(request, habits, parts),
    cautions: cautionsFor(request, habits, parts),
    strips: stripsFor(format, frames, habits),
    sheetSeconds: development.value.sheetSeconds,
    spread: development.value.spread,
    drift: development.value.drift,
    alsoFilms: request.others.map(({ film }) => film),
  });
}

/** Sheet film is not cut. */
function stripsFor(format: Plan["format"], frames: number, habits: Habits): number[] {
  if (format === "4x5") return [];
  return [...cutStrips(frames, format === "135" ? habits.stripFrames : STRIP_FRAMES_120).strips];
}
