import type { Habits } from "../../store/shapes/school.ts";
import { isSheetFilm, type FrameSize } from "../../store/shapes/film.ts";
import { fail, ok, type Result } from "../result.ts";
import { cautionsFor } from "./cautions.ts";
import { cutStrips } from "./cut.ts";
import { frameOn, framesFor, stripFramesOf, usualFrames } from "./frames.ts";
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
  const frame = frameOn(format, request.frame);
  if (request.frame !== null && !framesFor(format).includes(frame))
    return fail({ code: "ERR_WRONG_FRAME", format, frame, takes: framesFor(format) });
  const volume = volumeFor(request.tank, format, request.rolls, request.volumeMl);
  if (!volume.ok) return volume;
  const volumeMl = volume.value;
  const leastMl = leastVolumeMl(sheet.dilution, habits.measureStepMl);
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
  const frames = Math.ceil(request.frames ?? usualFrames(format, frame));
  return ok({
    sheet,
    exposureIndex: request.exposureIndex ?? sheet.boxSpeed,
    tenthsC,
    rolls: request.rolls,
    format,
    frames,
    ...(request.frame === null ? {} : { frame }),
    tank: request.tank?.number ?? null,
    volumeMl,
    steps: layOutSteps(request, habits, parts),
    cautions: cautionsFor(request, habits, parts),
    strips: stripsFor(format, frame, frames, {
      of135: request.stripFrames ?? habits.stripFrames,
      of120: habits.stripFrames120,
    }),
    sheetSeconds: development.value.sheetSeconds,
    spread: development.value.spread,
    drift: development.value.drift,
    alsoFilms: request.others.map(({ film }) => film),
  });
}

/** Sheet film is not cut. */
function stripsFor(
  format: Plan["format"],
  frame: FrameSize,
  frames: number,
  { of135, of120 }: { readonly of135: number; readonly of120: number | null },
): number[] {
  if (isSheetFilm(format)) return [];
  return [...cutStrips(frames, stripFramesOf(format, frame, of135, of120)).strips];
}
