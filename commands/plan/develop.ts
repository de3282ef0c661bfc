import { fail, ok, type Result } from "../result.ts";
import type { Agitation, Basis, Sheet } from "../../store/shapes/sheet.ts";
import {
  agitationFactor,
  agitationRange,
  LESS_MOVEMENT_SOURCE,
  MORE_MOVEMENT_SOURCE,
} from "../sheet/agitation.ts";
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
  /** The exposure index is one the sheet has no times around: a rule of thumb carries it there. */
  readonly isPushed: boolean;
  /** Seconds another agitation than the sheet's adds (below 0: takes off). */
  readonly agitationSeconds: number;
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
  const range = agitationRange(factor, [agitation, sheet.agitation].some(isContinuous));
  if (factor !== 1) basis.push(agitationBasis(reused.value, factor, range));

  const drift = driftOf(request, volumeMl);
  const seconds = drift ? driftedSeconds(shared.value, tenthsC, drift, still) : still;
  if (drift) basis.push({ kind: "rule", rule: "allowance for the room", source: driftSource(request) });
  return ok({
    seconds: atLeastOne(seconds),
    spread: spreadOf(time.value, seconds, [
      { low: range.low / factor, high: range.high / factor },
      drift ? driftOff(request, still, seconds, atRoom(shared.value, drift, still)) : NOTHING_OFF,
    ]),
    sheetSeconds: atLeastOne(time.value.seconds),
    agitation,
    drift,
    isPushed: time.value.basis.some(({ kind }) => kind === "rule-of-thumb"),
    agitationSeconds: Math.round(still - reused.value),
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

const isContinuous = ({ manner }: Agitation): boolean => manner === "continuous";

function agitationBasis(before: number, factor: number, { low, high }: Off): Basis {
  return {
    kind: "rule-of-thumb",
    lowSeconds: Math.round(before * low),
    highSeconds: Math.round(before * high),
    source: factor < 1 ? MORE_MOVEMENT_SOURCE : LESS_MOVEMENT_SOURCE,
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

/** What a rule leaves open: factors of the time it gave. */
interface Off {
  readonly low: number;
  readonly high: number;
}
const NOTHING_OFF: Off = { low: 1, high: 1 };

/**
 * A tank's time constant that nobody measured may be half of our estimate, or three and a half times. Published vessels of water
 * lie between 0.6 and 3.3 times (tests/commands/sheet/rules-spread.test.ts); a steel tank that shines is among the slow ones.
 */
const FASTER = 2;
const SLOWER = 3.5;

/** Seconds, were the tank as warm as the room from the start. */
function atRoom({ seconds, secondsAt }: SharedTime, { roomTenthsC }: Drift, still: number): number {
  return (still / seconds) * secondsAt(roomTenthsC / 10);
}

/** What the drift adds goes, for times well below the constant, as one over it; and never past what the room itself asks. */
function driftOff({ tank }: PlanRequest, still: number, seconds: number, roomSeconds: number): Off {
  if (tank?.timeConstantSeconds) return NOTHING_OFF;
  const added = seconds - still;
  const most = still + added * FASTER;
  const ends = [
    still + added / SLOWER,
    added > 0 ? Math.min(most, roomSeconds) : Math.max(most, roomSeconds),
  ];
  return {
    low: Math.min(1, ...ends.map((end) => end / seconds)),
    high: Math.max(1, ...ends.map((end) => end / seconds)),
  };
}

/** A spread narrower than this share of the time is nothing to speak of. */
const LEAST_SPREAD = 0.01;

function spreadOf(time: SheetTime, seconds: number, offs: readonly Off[]): Development["spread"] {
  const scale = seconds / time.seconds;
  const low = offs.reduce((least, off) => least * off.low, time.lowSeconds * scale);
  const high = offs.reduce((most, off) => most * off.high, time.highSeconds * scale);
  if (high - low < LEAST_SPREAD * seconds) return null;
  const rounded = atLeastOne(seconds);
  return {
    lowSeconds: Math.min(rounded, atLeastOne(low)),
    highSeconds: Math.max(rounded, atLeastOne(high)),
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
