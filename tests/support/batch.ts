import type { Batch } from "../../store/shapes/batch.ts";
import type { LedgerLine, LineBody } from "../../store/shapes/ledger.ts";
import { START } from "./make.ts";

/* Makers of valid batches and ledger lines; a test names only what it is about. All of it is invented. */

export const DAY_MS = 86_400_000;
export const HOUR_MS = 3_600_000;

/** A litre of fixer 1+4 for 20 rolls, 10 of tabular-grain film; 60 days full, 30 part-full. */
export function aBatch(over: Partial<Batch> = {}): Batch {
  return {
    id: 3,
    classId: 1,
    number: 3,
    kind: "fixer",
    product: "Pier Fix",
    mixedAtMs: START,
    dilution: { concentrateParts: 1, waterParts: 4 },
    volumeMl: 1000,
    bottleMl: 1000,
    usage: "again",
    fullHours: 60 * 24,
    partHours: 30 * 24,
    capacitySqInPerLitre: 1600,
    tabularSqInPerLitre: 800,
    source: "invented",
    ...over,
  };
}

/** Ten litres of stock developer, used once. */
export function aDeveloper(over: Partial<Batch> = {}): Batch {
  return aBatch({
    id: 1,
    number: 1,
    kind: "developer",
    product: "House MQ",
    dilution: { concentrateParts: 1, waterParts: 0 },
    volumeMl: 5000,
    bottleMl: 5000,
    usage: "once",
    capacitySqInPerLitre: null,
    tabularSqInPerLitre: null,
    ...over,
  });
}

/** Lines numbered from 1, a minute apart. */
export function ledger(...bodies: readonly LineBody[]): LedgerLine[] {
  return bodies.map((body, index) => aLine(body, { id: index + 1, atMs: START + index * 60_000 }));
}

export function aLine(body: LineBody, over: Partial<Omit<LedgerLine, "body">> = {}): LedgerLine {
  return {
    id: 1,
    batchId: 3,
    runId: null,
    atMs: START,
    personId: "room:aida",
    personName: "Aida",
    aboutId: null,
    aboutName: null,
    ...over,
    body,
  };
}

export function mixed(volumeMl = 1000, clearingSeconds: number | null = null): LineBody {
  return { kind: "mixed", volumeMl, clearingSeconds };
}

/** Rolls of 80 sq in through a bath that is poured back; with `ml`, taken out for good. */
export function used(rolls: number, over: Partial<Extract<LineBody, { kind: "used" }>> = {}): LineBody {
  return {
    kind: "used",
    runNumber: null,
    step: null,
    ml: 0,
    areaSqIn: rolls * 80,
    isTabular: false,
    films: Math.ceil(rolls),
    allowedBy: null,
    ...over,
  };
}

export function tested(
  clearingSeconds: number,
  over: Partial<Extract<LineBody, { kind: "tested" }>> = {},
): LineBody {
  return { kind: "tested", clearingSeconds, phTenths: null, silverMgPerLitre: null, note: "", ...over };
}

export function topped(addedMl: number, removedMl = 0): LineBody {
  return { kind: "topped", addedMl, removedMl, to: removedMl > 0 ? "silver" : null, note: "" };
}

export function corrected(over: Partial<Extract<LineBody, { kind: "corrected" }>>): LineBody {
  return { kind: "corrected", reverses: null, ml: 0, areaSqIn: 0, reason: "invented", ...over };
}
