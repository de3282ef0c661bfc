import { BARE_STEP, type Step } from "../../store/shapes/plan.ts";
import type { Strip } from "../../store/shapes/print.ts";
import type { StripPlan } from "../../store/shapes/strip-plan.ts";
import type { Basis } from "../../store/shapes/sheet.ts";
import { fail, ok, type Result } from "../result.ts";
import { type Bar, barsOf, type BarsFault, CALL_TENTHS, type Exposure, exposuresOf } from "./bars.ts";

/*
 * A test strip as a run: at each call the lamp goes off, the card is moved in the dark, and the lamp goes on again with the
 * next press, so that no bar gets light while somebody looks for the card. Pure.
 */

const BASIS: Basis = { kind: "paper", rule: "called-strip" };
/** A lamp's switch is in a hand: a call is good to a second. */
const BY_HAND_TENTHS = 10;

export interface CalledStrip {
  readonly plan: StripPlan;
  readonly bars: readonly Bar[];
}

export type CalledFault =
  | BarsFault
  /** An exposure is over before anybody has read its call. */
  | { readonly code: "ERR_STRIP_QUICK"; readonly shortestTenths: number };

export const shortestOf = (exposures: readonly Exposure[]): number =>
  Math.min(...exposures.map(({ tenths }) => tenths));

/** The strip in whole seconds, with a step for each exposure and one to look at it. */
export function calledStrip(asked: Strip): Result<CalledStrip, CalledFault> {
  const strip = { ...asked, timerTenths: BY_HAND_TENTHS };
  const own = barsOf(asked);
  if (!own.ok) return own;
  const ownShortest = shortestOf(exposuresOf(own.value, asked.way));
  if (ownShortest < CALL_TENTHS) return fail({ code: "ERR_STRIP_QUICK", shortestTenths: ownShortest });
  const bars = barsOf(strip);
  if (!bars.ok) return bars;
  const exposures = exposuresOf(bars.value, strip.way);
  const steps = [
    ...exposures.map(({ tenths, fromBar, toBar }, at): Step => ({
      ...aStep("expose"),
      ordinal: at + 1,
      seconds: tenths / 10,
      bars: { way: strip.way, from: fromBar, to: toBar },
    })),
    { ...aStep("judge"), bars: { way: strip.way, from: 1, to: strip.bars } },
  ];
  return ok({ plan: { strip, tank: null, steps }, bars: bars.value });
}

function aStep(kind: Step["kind"]): Step {
  return { ...BARE_STEP, kind, medium: "paper", basis: [BASIS] };
}
