import { candidatesFor } from "../../batch/candidates.ts";
import { SQ_IN_PER_ROLL } from "../../batch/area.ts";
import { BATCH_KINDS, type Batch, type BatchKind } from "../../../store/shapes/batch.ts";
import { collectedNow } from "../../batch/collected.ts";
import type { PeriodFacts, Shortage, WeekFacts } from "./digest-words.ts";
import { reachedMarks } from "../../batch/marks.ts";
import { paceFor } from "../../batch/pace.ts";
import { lampsDue } from "../../tray/lamp.ts";
import { stateOf } from "../../batch/state.ts";
import type { SchoolClass } from "../../../store/shapes/school.ts";
import type { Stores } from "../../../store/index.ts";

/* What a digest speaks of, read from the store. */

const WEEK_MS = 7 * 24 * 3_600_000;

export function periodFacts(stores: Stores, found: SchoolClass, now: number, startsAtMs = now): PeriodFacts {
  const shown = candidatesFor(stores, found.id, null, now).map(({ batch, state }) => ({ batch, state }));
  const ready = shown.filter(({ state }) => state.standing === "ready");
  const tired = ready.flatMap(({ batch, state }) => {
    const marks = reachedMarks(batch, stores.batches.lines(batch.id), now).map(({ mark }) => mark);
    return marks.length > 0 ? [{ batch, state, marks }] : [];
  });
  return {
    ready,
    tired,
    worn: shown.filter(({ state }) => state.standing !== "ready"),
    toMix: shortages(stores, found, now),
    lampsDue: lampsDue(found.habits.lamps, startsAtMs).map(({ name }) => name),
  };
}

/** Baths the class keeps of which too little is ready for the rolls to be expected. */
function shortages(stores: Stores, found: SchoolClass, now: number): Shortage[] {
  const all = stores.batches.list(found.id);
  return BATCH_KINDS.flatMap((kind): Shortage[] => {
    const newest = all.find((batch) => batch.kind === kind);
    if (!newest) return [];
    const leftRolls = readyRolls(stores, newest, kind, now);
    const pace = paceFor(stores, newest, now);
    const periods = Math.max(1, found.habits.periods.length);
    const expected = pace === null ? null : Math.ceil(pace.high / periods);
    const isShort = leftRolls !== null && (leftRolls === 0 || (expected !== null && leftRolls < expected));
    return isShort ? [{ kind, product: newest.product, leftRolls, expected }] : [];
  });
}

/** null: there is some without a known limit. */
function readyRolls(stores: Stores, newest: Batch, kind: BatchKind, now: number): number | null {
  const ready = candidatesFor(stores, newest.classId, null, now).filter(
    ({ batch, state }) =>
      batch.kind === kind &&
      state.standing === "ready" &&
      (kind !== "developer" || batch.product.toLowerCase() === newest.product.toLowerCase()),
  );
  if (ready.some(({ state }) => state.leftRolls === null)) return null;
  return ready.reduce((sum, { state, reservedSqIn, reservedMl }) => {
    const promised = reservedSqIn / SQ_IN_PER_ROLL + reservedMl / state.mlPerFilm;
    return sum + Math.max(0, Math.floor((state.leftRolls ?? 0) - promised));
  }, 0);
}

export function weekFacts(stores: Stores, found: SchoolClass, now: number): WeekFacts {
  const since = now - WEEK_MS;
  const sum = (kind: "mixed" | "topped" | "used" | "discarded", ml: (body: never) => number): number =>
    stores.batches
      .linesSince(found.id, kind, since)
      .reduce((total, { body }) => total + ml(body as never), 0);
  const gone = (to: string): number =>
    sum("discarded", (body: { ml: number; to: string }) => (body.to === to ? body.ml : 0)) +
    sum("topped", (body: { removedMl: number; to: string | null }) => (body.to === to ? body.removedMl : 0));
  const standing = stores.batches.standing(found.id);
  const collected = collectedNow(stores, found.id);
  return {
    ...stores.digests.rollsSince(found.id, since),
    mixedMl:
      sum("mixed", (body: { volumeMl: number }) => body.volumeMl) +
      sum("topped", (body: { addedMl: number }) => body.addedMl),
    usedMl: sum("used", (body: { ml: number }) => body.ml),
    drainMl: gone("drain"),
    silverMl: gone("silver"),
    supplierMl: gone("supplier"),
    collected,
    ending: standing.flatMap((batch) => {
      const state = stateOf(batch, stores.batches.lines(batch.id), now);
      const { expiresAtMs } = state;
      return state.standing === "ready" && expiresAtMs !== null && expiresAtMs <= now + WEEK_MS
        ? [{ batch, state }]
        : [];
    }),
    isEmpty: standing.length === 0 && collected.ml === 0,
  };
}
