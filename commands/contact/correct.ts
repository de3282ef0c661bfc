import type { Enlarger, Standing } from "../../store/shapes/enlarger.ts";
import { type Context, UserError } from "../define.ts";
import { adjust, type Changes, type Part, sumOf } from "../print/adjust.ts";
import { faultOfAdjust } from "../print/adjust-words.ts";
import { factorOf, onTimer } from "../print/light.ts";
import { findPaper } from "../print/options.ts";

/* The standing exposure of an enlarger, worked out anew where something is not as it was when it was tried. */

/** What may be otherwise: as it is now. */
export interface Otherwise {
  readonly height?: number | undefined;
  readonly aperture?: number | undefined;
  readonly grade?: number | undefined;
  /** A box of paper by its number. */
  readonly paper?: number | undefined;
}

export interface Corrected {
  readonly standing: Standing;
  readonly parts: readonly Part[];
  /** Seconds as they come out, and as the timer can be set, tenths. */
  readonly exact: number;
  readonly setTenths: number;
  /** As the enlarger stands now. */
  readonly now: Standing;
}

/** @throws UserError where the change can't be told, or a box of paper is not known. */
export function correct(
  context: Context,
  enlarger: Enlarger,
  { height, aperture, grade, paper }: Otherwise,
): Corrected | null {
  const standing = enlarger.standing ?? null;
  if (standing === null) return null;
  const to = <T>(value: T | undefined): { from: null; to: T } | undefined =>
    value === undefined ? undefined : { from: null, to: value };
  const box = paper === undefined ? undefined : findPaper(context, paper);
  const before =
    standing.paper === null ? null : (context.stores.papers.find(context.class.id, standing.paper) ?? null);
  const changes: Changes = {
    aperture: to(aperture),
    grade: to(grade),
    height: to(height),
    // A box beside one that nobody noted can't be told apart from it.
    ...(box && before && box.number !== before.number ? { paper: { from: before, to: box } } : {}),
  };
  const start = {
    apertureTenths: standing.apertureTenths,
    gradeTenths: standing.gradeTenths,
    paper: before,
    headMm: standing.headMm,
    size: null,
  };
  const parts = adjust(changes, start, { enlarger, negative: null });
  if (!parts.ok) throw new UserError(parts.fault.code, faultOfAdjust(parts.fault));
  const changed = parts.value.filter(({ from, to: now }) => from !== now);
  const exact = (standing.tenths / 10) * factorOf(sumOf(changed));
  const setTenths = onTimer(exact, enlarger.timerTenths);
  return {
    standing,
    parts: changed,
    exact,
    setTenths,
    now: {
      ...standing,
      headMm: height ?? standing.headMm,
      apertureTenths: aperture ?? standing.apertureTenths,
      gradeTenths: grade ?? standing.gradeTenths,
      paper: paper ?? standing.paper,
      tenths: setTenths,
    },
  };
}
