import { advance, type RunEvent } from "../../commands/run/machine.ts";
import { makeTrayPlan } from "../../commands/tray/process.ts";
import type { TrayRequest } from "../../commands/tray/request.ts";
import type { TrayPlan } from "../../store/shapes/tray.ts";
import type { TrayLine } from "../../store/shapes/tray-line.ts";
import type { TrayRun } from "../../store/shapes/run.ts";
import { START } from "./make.ts";

/* Makers of lines of trays, prints and their runs; all of it is invented. */

export function aLine(over: Partial<TrayLine> = {}): TrayLine {
  return {
    number: 1,
    developer: "Dock Print",
    dilution: { concentrateParts: 1, waterParts: 9 },
    rcSeconds: 60,
    fibreSeconds: 120,
    atTenthsC: 200,
    factorPer10C: null,
    factor: null,
    leastSeconds: null,
    stainSeconds: null,
    stop: "acid",
    baths: 1,
    drainSeconds: 10,
    developPlaces: 2,
    stopPlaces: 2,
    fixPlaces: 4,
    washPlaces: 8,
    isUsual: false,
    ...over,
  };
}

export function aTrayRequest(over: Partial<TrayRequest> = {}): TrayRequest {
  return {
    line: aLine(),
    paper: "resin-coated",
    box: null,
    size: { shortMm: 203, longMm: 254 },
    prints: 1,
    tenthsC: 200,
    fixTenthsC: null,
    waterTenthsC: null,
    fixer: "usual",
    baths: over.line?.baths ?? 1,
    washAid: true,
    clearSeconds: null,
    factor: over.line?.factor ?? null,
    ...over,
  };
}

export function aTrayPlan(over: Partial<TrayRequest> = {}): TrayPlan {
  const made = makeTrayPlan(aTrayRequest(over));
  if (!made.ok) throw new Error(made.fault.code);
  return made.value;
}

export function aTrayRun(over: Partial<TrayRun> = {}): TrayRun {
  return {
    id: 1,
    number: 1,
    classId: 1,
    personId: "room:mina",
    plan: aTrayPlan(),
    warnSeconds: 15,
    startedAtMs: START,
    schedule: 0,
    phase: { kind: "waiting", step: 0, sinceMs: START },
    marks: [],
    deviations: [],
    ...over,
  };
}

/** The run after these events, each of which it must take. */
export function after(run: TrayRun, ...events: readonly RunEvent[]): TrayRun {
  return events.reduce<TrayRun>((before, event) => {
    const result = advance(before, event);
    if (!result.ok) throw new Error(result.fault.code);
    return result.value as TrayRun;
  }, run);
}

export const next = (atMs: number): RunEvent => ({ kind: "next", step: null, sure: true, atMs });
