import { fail, ok, type Result } from "../result.ts";
import type { Agitation, Basis, Sheet } from "../../store/shapes/sheet.ts";
import { AGITATION_SOURCE, agitationFactor } from "../sheet/agitation.ts";
import { coolingPath, defaultTimeConstantSeconds, secondsForDose } from "./drift.ts";
import type { Drift } from "../../store/shapes/plan.ts";
import type { PlanFault, PlanRequest } from "./request.ts";
import { reusedSeconds } from "./reuse.ts";
import { middleSeconds, sharedSeconds } from "./share.ts";
import { type SheetTime, timeFor } from "../sheet/time.ts";

/* The developing time: the sheet's, then what this load changes about it, each with what it rests on. */

export interface Development {
  readonly seconds: number;
  readonly spread: { readonly lowSeconds: number; readonly highSeconds: number } | null;
  /** The sheet's own time at this temperature, before any allowance. */
  readonly sheetSeconds: number;
  readonly agitation: Agitation;
  readonly drift: Drift | null;
  /** Seconds the drift adds (below 0: takes off). */
  readonly driftSeconds: number;
  /** The films that share the tank differ, and by how much at most, per cent of their own time. */
  readonly sharedOffPercent: number;
  readonly basis: readonly Basis[];
  secondsAt(celsius: number): number;
}

export function developmentFor(request: PlanRequest, volumeMl: number): Result<Development, PlanFault> {
  const { sheet, tenthsC } = request;
  const time = timeFor(sheet, tenthsC, request.exposureIndex ?? sheet.boxSpeed);
  if (!time.ok) return time;
  const basis: Basis[] = [...time.value.basis];
  const shared = shareWith(request, time.value);
  if (!shared.ok) return shared;
  if (request.others.length > 0) basis.push(SHARE_BASIS);

  const reused = reusedSeconds(sheet, shared.value.seconds, request.filmsDone);
  if (!reused.ok) return reused;
  if (request.filmsDone > 0)
    basis.push({ kind: "rule", rule: "more time in a used developer", source: sheet.source });

  const agitation = request.agitation ?? sheet.agitation;
  const factor = agitationFactor(sheet, agitation);
  const still = reused.value * factor;
  if (factor !== 1) basis.push(agitationBasis(reused.value, still));

  const drift = driftOf(request, volumeMl);
  const seconds = drift ? driftedSeconds(shared.value, tenthsC, drift, still) : still;
  if (drift) basis.push({ kind: "rule", rule: "allowance for the room", source: driftSource(request) });
  return ok({
    seconds: atLeastOne(seconds),
    spread: spreadOf(time.value, seconds, factor),
    sheetSeconds: atLeastOne(time.value.seconds),
    agitation,
    drift,
    driftSeconds: Math.round(seconds - still),
    sharedOffPercent: Math.round(Math.abs(shared.value.seconds / time.value.seconds - 1) * 100),
    basis,
    secondsAt: time.value.secondsAt,
  });
}

const SHARE_BASIS: Basis = {
  kind: "rule",
  rule: "the middle time of the films in the tank, which lie within 10 % of each other",
  source: "Kodak F-4016: 10 % is the smallest correction",
};

function atLeastOne(seconds: number): number {
  return Math.max(1, Math.round(seconds));
}

/** A film's time, or that of several in one tank: at this temperature, and at those the tank drifts to. */
type SharedTime = Pick<SheetTime, "seconds" | "secondsAt">;

function shareWith(request: PlanRequest, own: SheetTime): Result<SharedTime, PlanFault> {
  if (request.others.length === 0) return ok(own);
  const films = [{ film: request.sheet.film, seconds: Math.round(own.seconds) }];
  const times = [own];
  for (const other of request.others) {
    const time = timeFor(other, request.tenthsC, other.boxSpeed);
    if (!time.ok) return time;
    films.push({ film: other.film, seconds: Math.round(time.value.seconds) });
    times.push(time.value);
  }
  const seconds = sharedSeconds(times.map((time) => time.seconds));
  if (seconds === null) return fail({ code: "ERR_CANNOT_SHARE", films });
  return ok({ seconds, secondsAt: (celsius) => middleSeconds(times.map((time) => time.secondsAt(celsius))) });
}

function agitationBasis(before: number, after: number): Basis {
  return {
    kind: "rule-of-thumb",
    lowSeconds: Math.round(Math.min(before, after)),
    highSeconds: Math.round(Math.max(before, after)),
    source: AGITATION_SOURCE,
  };
}

function driftOf({ roomTenthsC, tenthsC, tank }: PlanRequest, volumeMl: number): Drift | null {
  if (roomTenthsC === null || roomTenthsC === tenthsC) return null;
  const timeConstantSeconds = tank?.timeConstantSeconds ?? defaultTimeConstantSeconds(volumeMl);
  return { roomTenthsC, timeConstantSeconds };
}

function driftSource({ tank }: PlanRequest): string {
  return tank?.timeConstantSeconds
    ? "Newton's law of cooling, this tank as measured"
    : "Newton's law of cooling, our estimate of a tank in still air";
}

function driftedSeconds(time: SharedTime, tenthsC: number, drift: Drift, still: number): number {
  const path = coolingPath(tenthsC / 10, drift.roomTenthsC / 10, drift.timeConstantSeconds);
  return secondsForDose(time.secondsAt, path, still / time.seconds);
}

function spreadOf(time: SheetTime, seconds: number, agitation: number): Development["spread"] {
  const isSure = time.lowSeconds === time.highSeconds && agitation === 1;
  if (isSure) return null;
  const scale = seconds / time.seconds;
  // A rule of thumb on agitation may be right wholly or not at all.
  const [least, most] = [Math.min(1, 1 / agitation), Math.max(1, 1 / agitation)];
  return {
    lowSeconds: atLeastOne(time.lowSeconds * scale * least),
    highSeconds: atLeastOne(time.highSeconds * scale * most),
  };
}

/** The sheets of the films sharing a tank must be for one developer at one dilution. */
export function isSameBath(a: Sheet, b: Sheet): boolean {
  return (
    a.developer.toLowerCase() === b.developer.toLowerCase() &&
    a.dilution.concentrateParts === b.dilution.concentrateParts &&
    a.dilution.waterParts === b.dilution.waterParts
  );
}
