import { loadOf } from "../../batch/bath.ts";
import type { BatchKind } from "../../../store/shapes/batch.ts";
import { areaOf } from "../../batch/area.ts";
import { isFit, type Candidate, type Need } from "../../batch/choose.ts";
import { presetFor } from "../../batch/presets.ts";
import { concentrateFor, type Shelved } from "../../../store/shapes/shelf.ts";
import type { Plan } from "../../../store/shapes/plan.ts";
import { unitsOf } from "../../plan/frames.ts";
import { ML_PER_FILM } from "../../plan/volume.ts";
import type { Dilution } from "../../../store/shapes/sheet.ts";

/* What to mix for a class: so many rolls on a day, less what is ready then, from what is on the shelf. */

export interface ClassDay {
  readonly rolls: number;
  readonly format: Plan["format"];
  readonly isTabular: boolean;
  readonly developer: string;
  readonly dilution: Dilution;
  /** Minimum of concentrate or stock for one roll, ml; null: none is stated. */
  readonly minConcentrateMl: number | null;
  readonly kinds: readonly BatchKind[];
  /** The largest tank: a bath poured back must at least fill it. */
  readonly tankMl: number;
  /** The bottles on the shelf as they will be on that day. */
  readonly candidates: readonly Candidate[];
  readonly shelf: readonly Shelved[];
  /** What the class mixed last of a kind: product and strength. */
  readonly usual: Partial<Record<BatchKind, { readonly product: string; readonly dilution: Dilution }>>;
}

export interface MixItem {
  readonly kind: BatchKind;
  /** null: nothing is known of what the class uses. */
  readonly product: string | null;
  readonly dilution: Dilution;
  /** Working strength that the day takes: ml that are used up, or rolls that pass. */
  readonly needMl: number | null;
  readonly needSqIn: number | null;
  /** What of it is ready; labels of the bottles. */
  readonly readyMl: number | null;
  readonly readySqIn: number | null;
  readonly readyFrom: readonly number[];
  readonly mixMl: number;
  readonly concentrateMl: number;
  readonly waterMl: number;
  /** What it goes into; the last may stay part-full. */
  readonly bottlesMl: readonly number[];
  readonly shelfMl: number | null;
  readonly packMl: number | null;
  readonly isPowder: boolean;
  readonly buyPacks: number | null;
}

/** Common bottle sizes, ml. Common practice, no source. */
const BOTTLES_ML = [5000, 2000, 1000, 500, 250] as const;
const ROUND_ML = { once: 50, again: 250 } as const;

export function planClass(day: ClassDay): MixItem[] {
  return day.kinds.map((kind) => itemFor(day, kind));
}

function itemFor(day: ClassDay, kind: BatchKind): MixItem {
  const isDeveloper = kind === "developer";
  const usual = day.usual[kind];
  const shelved = isDeveloper
    ? day.shelf.find(({ product }) => product.toLowerCase() === day.developer.toLowerCase())
    : day.shelf.find(({ pack, product }) => (usual ? product === usual.product : pack.kind === kind));
  const product = isDeveloper ? day.developer : (usual?.product ?? shelved?.product ?? null);
  const dilution = isDeveloper ? day.dilution : (usual?.dilution ?? shelved?.pack.dilution ?? STOCK);
  const isOnce =
    isDeveloper &&
    !day.candidates.some(
      (each) => each.batch.usage === "again" && isFit({ batch: each.batch, place: null }, needFor(day, kind)),
    );
  const short = isOnce ? shortMl(day) : shortArea(day, kind, dilution);
  return { kind, product, dilution, ...short, ...recipe(short.mixMl, dilution, shelved) };
}

const STOCK: Dilution = { concentrateParts: 1, waterParts: 0 };

function needFor(day: ClassDay, kind: BatchKind): Need {
  const isDeveloper = kind === "developer";
  return {
    kind,
    product: isDeveloper ? day.developer : null,
    dilution: isDeveloper ? day.dilution : null,
    ml: 0,
    concentrateMl: 0,
    areaSqIn: areaOf([{ format: day.format, films: day.rolls }]),
    isTabular: day.isTabular,
    films: day.rolls,
    place: null,
  };
}

function readyFor(day: ClassDay, kind: BatchKind): Candidate[] {
  return day.candidates.filter(
    (each) =>
      each.state.standing === "ready" && isFit({ batch: each.batch, place: null }, needFor(day, kind)),
  );
}

type Short = Pick<MixItem, "needMl" | "needSqIn" | "readyMl" | "readySqIn" | "readyFrom" | "mixMl">;

function shortMl(day: ClassDay): Short {
  const { concentrateParts, waterParts } = day.dilution;
  const whole = concentrateParts + waterParts;
  const least = ((day.minConcentrateMl ?? 0) * unitsOf(day.format) * whole) / concentrateParts;
  const needMl = Math.ceil(day.rolls * Math.max(ML_PER_FILM[day.format], least));
  const ready = readyFor(day, "developer");
  const readyMl = ready.reduce((sum, { batch, state, reservedMl }) => {
    const free = Math.max(0, state.volumeMl - reservedMl);
    return sum + (batch.dilution.waterParts === 0 ? Math.floor((free * whole) / concentrateParts) : free);
  }, 0);
  const mixMl = roundUp(Math.max(0, needMl - readyMl), ROUND_ML.once);
  return { needMl, needSqIn: null, readyMl, readySqIn: null, readyFrom: labels(ready), mixMl };
}

function shortArea(day: ClassDay, kind: BatchKind, dilution: Dilution): Short {
  const ready = readyFor(day, kind);
  const newest =
    ready.at(-1)?.batch ?? day.candidates.filter(({ batch }) => batch.kind === kind).at(-1)?.batch;
  const limits = newest ?? presetFor(kind, dilution);
  const { areaSqIn } = needFor(day, kind);
  const needSqIn = Math.ceil(loadOf(limits, areaSqIn, day.isTabular));
  const shared = { needMl: null, needSqIn, readyMl: null, readyFrom: labels(ready) };
  if (limits.capacitySqInPerLitre === null)
    return { ...shared, readySqIn: null, mixMl: ready.length > 0 ? 0 : roundUp(day.tankMl, ROUND_ML.again) };
  const readySqIn = ready.reduce(
    (sum, { state, reservedSqIn }) => sum + Math.max(0, (state.leftSqIn ?? 0) - reservedSqIn),
    0,
  );
  const shortSqIn = Math.max(0, needSqIn - readySqIn);
  const forArea = (shortSqIn * 1000) / limits.capacitySqInPerLitre;
  const mixMl = shortSqIn === 0 ? 0 : roundUp(Math.max(forArea, day.tankMl), ROUND_ML.again);
  return { ...shared, readySqIn: Math.floor(readySqIn), mixMl };
}

function labels(ready: readonly Candidate[]): number[] {
  return ready.map(({ batch }) => batch.number);
}

function roundUp(ml: number, step: number): number {
  return Math.ceil(ml / step - 1e-9) * step;
}

type Recipe = Pick<
  MixItem,
  "mixMl" | "concentrateMl" | "waterMl" | "bottlesMl" | "shelfMl" | "packMl" | "isPowder" | "buyPacks"
>;

function recipe(mixMl: number, dilution: Dilution, shelved: Shelved | undefined): Recipe {
  const wantedMl = concentrateFor(mixMl, dilution);
  const packMl = shelved?.pack.packMl ?? null;
  const isPowder = shelved?.pack.form === "powder";
  // A pack of powder is mixed whole: its grains are not alike all through.
  const concentrateMl = isPowder && packMl !== null ? roundUp(wantedMl, packMl) : wantedMl;
  const shelfMl = shelved ? Math.max(0, shelved.leftMl) : null;
  return {
    mixMl,
    concentrateMl,
    waterMl: mixMl - wantedMl,
    bottlesMl: intoBottles(isPowder ? concentrateMl : mixMl),
    shelfMl,
    packMl,
    isPowder,
    buyPacks:
      shelfMl === null || packMl === null ? null : Math.ceil(Math.max(0, concentrateMl - shelfMl) / packMl),
  };
}

/** Into full bottles, the largest first, since a full one keeps longer; the rest into the smallest that holds it. */
export function intoBottles(ml: number): number[] {
  const bottles: number[] = [];
  let left = ml;
  for (const size of BOTTLES_ML) {
    while (left >= size) {
      bottles.push(size);
      left -= size;
    }
  }
  const last = BOTTLES_ML.filter((size) => size >= left).at(-1);
  if (left > 0 && last !== undefined) bottles.push(last);
  return bottles;
}
