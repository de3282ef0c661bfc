import type { Batch } from "../../store/shapes/batch.ts";
import {
  clearingAt,
  freshClearing,
  isCleared,
  testedClearing,
  toppedClearing,
  type Clearing,
} from "./clearing.ts";
import { minusMl, plusMl } from "../speech/tenths.ts";
import { SQ_IN_PER_ROLL } from "./area.ts";
import { countingLines, type Carry, type LedgerLine } from "../../store/shapes/ledger.ts";

/* The bath itself, line by line: what is in the bottle and what it has been through. */

/** A bottle less full than this ages as a part-full one. Common practice, no source. */
const PART_FULL_BELOW = 0.9;

export interface Bath {
  /** In the bottle, by the lines; below 0 where more was poured than was mixed. */
  readonly volumeMl: number;
  /** Taken out by runs for good. */
  readonly usedMl: number;
  /** Film passed since mixing, sq in, whatever was topped up: the sum of the lines. */
  readonly usedSqIn: number;
  readonly tabularSqIn: number;
  readonly films: number;
  /** Film the bath as it is now carries, in plain film's sq in: tabular-grain film counts more, a top-up takes some out. */
  readonly loadSqIn: number;
  /** The same without that weighting: film whose silver is in this bath, sq in. */
  readonly heldSqIn: number;
  /** Share of its strength as mixed: what film carries in thins it. */
  readonly strength: number;
  /** Carried in and out with the film so far, ml. */
  readonly carriedInMl: number;
  readonly carriedOutMl: number;
  readonly clearing: Clearing | null;
  readonly testedSeconds: number | null;
  readonly testedAtMs: number | null;
  /** Load when it was last tested; null: never. */
  readonly testedLoadSqIn: number | null;
  readonly silverMgPerLitre: number | null;
  readonly phTenths: number | null;
  readonly partFullSinceMs: number | null;
  readonly topUps: number;
  readonly tests: number;
  readonly discardedAtMs: number | null;
}

const EMPTY: Bath = {
  volumeMl: 0,
  usedMl: 0,
  usedSqIn: 0,
  tabularSqIn: 0,
  films: 0,
  loadSqIn: 0,
  heldSqIn: 0,
  strength: 1,
  carriedInMl: 0,
  carriedOutMl: 0,
  clearing: null,
  testedSeconds: null,
  testedAtMs: null,
  testedLoadSqIn: null,
  silverMgPerLitre: null,
  phTenths: null,
  partFullSinceMs: null,
  topUps: 0,
  tests: 0,
  discardedAtMs: null,
};

/** The bath after all lines that count, in the order they were written. */
export function bathOf(batch: Batch, lines: readonly LedgerLine[]): Bath {
  return countingLines(lines).reduce((bath, line) => noteLevel(batch, apply(batch, bath, line), line), EMPTY);
}

function apply(batch: Batch, bath: Bath, { body, atMs }: LedgerLine): Bath {
  switch (body.kind) {
    case "mixed": {
      const { clearingSeconds: seconds, volumeMl } = body;
      if (seconds === null) return { ...bath, volumeMl };
      const clearing = freshClearing(seconds, batch.capacitySqInPerLitre);
      return { ...bath, volumeMl, clearing, ...tested(bath, seconds, atMs) };
    }
    case "used":
      return afterCarry(batch, use(batch, bath, body), body.carry ?? null);
    case "tested":
      return test(batch, bath, body, atMs);
    case "topped":
      return body.isReplenisher && batch.replenishMlPerRoll
        ? replenish(bath, body, batch.replenishMlPerRoll)
        : topUp(bath, body.addedMl, body.removedMl);
    case "discarded":
      return { ...takeOut(bath, body.ml), discardedAtMs: body.isAll ? atMs : bath.discardedAtMs };
    case "corrected":
      return {
        ...bath,
        volumeMl: bath.volumeMl + body.ml,
        usedSqIn: Math.max(0, bath.usedSqIn + body.areaSqIn),
        loadSqIn: Math.max(0, bath.loadSqIn + body.areaSqIn),
        heldSqIn: Math.max(0, bath.heldSqIn + body.areaSqIn),
      };
    case "allowed":
      return bath;
  }
}

function use(batch: Batch, bath: Bath, body: Extract<LedgerLine["body"], { kind: "used" }>): Bath {
  const { areaSqIn, isTabular } = body;
  // A second fixing bath is spared: what silver it gets comes over with the film.
  // So is stock that was diluted in the tank, and is not poured back.
  const isSpared = body.place === 2 || (batch.usage === "again" && body.ml > 0);
  return {
    ...bath,
    volumeMl: minusMl(bath.volumeMl, body.ml),
    usedMl: plusMl(bath.usedMl, body.ml),
    usedSqIn: bath.usedSqIn + areaSqIn,
    tabularSqIn: bath.tabularSqIn + (isTabular ? areaSqIn : 0),
    films: bath.films + body.films,
    loadSqIn: bath.loadSqIn + (isSpared ? 0 : loadOf(batch, areaSqIn, isTabular)),
    heldSqIn: bath.heldSqIn + (isSpared ? 0 : areaSqIn),
  };
}

/** Replenisher is asked for by the film that went through: what is carried away of the bath takes none of that off. */
export function afterCarry(batch: Batch, bath: Bath, carry: Carry | null): Bath {
  const after = carryOver(bath, carry);
  return batch.replenishMlPerRoll ? { ...after, loadSqIn: bath.loadSqIn } : after;
}

/** What film brought in mixes with the bath, and then its share of all that goes away with the film. */
function carryOver<T extends Pick<Bath, CarriedKey>>(bath: T, carry: Carry | null): T {
  const { volumeMl, strength } = bath;
  if (carry === null || volumeMl <= 0) return bath;
  const whole = volumeMl + carry.inMl;
  const stays = Math.max(0, whole - carry.outMl) / whole;
  return {
    ...bath,
    volumeMl: minusMl(plusMl(volumeMl, carry.inMl), carry.outMl),
    strength: (strength * volumeMl + carry.inStrength * carry.inMl) / whole,
    loadSqIn: (bath.loadSqIn + carry.loadSqIn) * stays,
    heldSqIn: (bath.heldSqIn + carry.loadSqIn) * stays,
    carriedInMl: plusMl(bath.carriedInMl, carry.inMl),
    carriedOutMl: plusMl(bath.carriedOutMl, carry.outMl),
  };
}
type CarriedKey = "volumeMl" | "strength" | "loadSqIn" | "heldSqIn" | "carriedInMl" | "carriedOutMl";

/** What an area of film means for this bath, in plain film's sq in. */
export function loadOf(
  batch: Pick<Batch, "capacitySqInPerLitre" | "tabularSqInPerLitre">,
  areaSqIn: number,
  isTabular: boolean,
): number {
  const { capacitySqInPerLitre: plain, tabularSqInPerLitre: tabular } = batch;
  return isTabular && plain !== null && tabular !== null ? (areaSqIn * plain) / tabular : areaSqIn;
}

/** sq in in a litre of what the bath was mixed as: thinned, it is the more loaded. */
export function densityOf({
  loadSqIn,
  volumeMl,
  strength,
}: Pick<Bath, "loadSqIn" | "volumeMl" | "strength">): number {
  return volumeMl > 0 && strength > 0 ? (loadSqIn * 1000) / (volumeMl * strength) : 0;
}

function tested(bath: Bath, seconds: number, atMs: number): Partial<Bath> {
  return {
    testedSeconds: seconds,
    testedAtMs: atMs,
    testedLoadSqIn: bath.loadSqIn,
    tests: bath.tests + 1,
  };
}

function test(
  batch: Batch,
  bath: Bath,
  body: Extract<LedgerLine["body"], { kind: "tested" }>,
  atMs: number,
): Bath {
  const more = {
    silverMgPerLitre: body.silverMgPerLitre ?? bath.silverMgPerLitre,
    phTenths: body.phTenths ?? bath.phTenths,
  };
  const { clearingSeconds: seconds } = body;
  if (seconds === null) return { ...bath, ...more };
  const density = densityOf(bath);
  const clearing = testedClearing(bath.clearing, seconds, density, batch.capacitySqInPerLitre);
  return { ...bath, ...more, clearing, ...tested(bath, seconds, atMs) };
}

function takeOut(bath: Bath, ml: number): Bath {
  const left = bath.volumeMl - ml;
  const share = bath.volumeMl > 0 ? Math.max(0, left) / bath.volumeMl : 0;
  return { ...bath, volumeMl: left, loadSqIn: bath.loadSqIn * share, heldSqIn: bath.heldSqIn * share };
}

function topUp(bath: Bath, addedMl: number, removedMl: number): Bath {
  const density = densityOf(bath);
  const kept = takeOut(bath, removedMl);
  const volumeMl = kept.volumeMl + addedMl;
  const clearing =
    bath.clearing && volumeMl > 0
      ? toppedClearing(bath.clearing, density, Math.max(0, kept.volumeMl) / volumeMl)
      : bath.clearing;
  const share = volumeMl > 0 ? Math.max(0, kept.volumeMl) / volumeMl : 1;
  const silverMgPerLitre = bath.silverMgPerLitre === null ? null : Math.round(bath.silverMgPerLitre * share);
  // Fresh bath comes at full strength.
  const strength = bath.strength * share + 1 - share;
  return { ...kept, volumeMl, clearing, silverMgPerLitre, strength, topUps: bath.topUps + 1 };
}

/** Replenisher makes good what so much film has used, and never more than what went through. */
function replenish(
  bath: Bath,
  { addedMl, removedMl }: { addedMl: number; removedMl: number },
  mlPerRoll: number,
): Bath {
  const kept = takeOut(bath, removedMl);
  const loadSqIn = Math.max(0, kept.loadSqIn - (addedMl / mlPerRoll) * SQ_IN_PER_ROLL);
  return { ...kept, volumeMl: kept.volumeMl + addedMl, loadSqIn, topUps: bath.topUps + 1 };
}

function noteLevel(batch: Batch, bath: Bath, { atMs }: LedgerLine): Bath {
  const isPart = bath.volumeMl < PART_FULL_BELOW * batch.bottleMl;
  return isPart && bath.partFullSinceMs === null ? { ...bath, partFullSinceMs: atMs } : bath;
}

/** Seconds a scrap would take to clear now; null: nobody has tested. */
export function predictedSeconds(bath: Bath): number | null {
  return bath.clearing === null ? null : clearingAt(bath.clearing, densityOf(bath));
}

/** Whether the clearing time, tested or predicted, has doubled. */
export function hasDoubled(bath: Bath): boolean {
  const seconds = predictedSeconds(bath);
  return seconds !== null && bath.clearing !== null && !isCleared(seconds, bath.clearing.freshSeconds);
}
