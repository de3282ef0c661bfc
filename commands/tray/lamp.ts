import type { Lamp } from "../../store/shapes/lamp.ts";
import type { LampPlan } from "../../store/shapes/lamp.ts";
import type { Basis } from "../../store/shapes/sheet.ts";
import { BARE_STEP, type Step } from "../../store/shapes/plan.ts";

/*
 * A safelight's test and what it tells. Paper is given a light grey (density 0.25 to 0.50, or 0.15 to 0.40 over paper), and
 * the lamp before and after it, in steps: that shows what bare paper hides, since highlights suffer before borders fog
 * (a film maker's guide to testing safelights).
 */

/** The steps of that guide's printed results. */
export const USUAL_MINUTES = [1, 3, 7] as const;
/** Half a year, and whenever bulb, filter or paper changes. Common practice, no source. */
export const USUAL_DAYS = 182;

const BASIS: Basis = { kind: "paper", rule: "lamp-steps" };

export function lampPlan(lamp: string, minutes: readonly number[]): LampPlan {
  const steps = [...new Set(minutes)].sort((a, b) => a - b);
  return {
    lamp,
    minutes: steps,
    tank: null,
    steps: [...row(steps, 1), byHand("grey"), ...row(steps, 2), byHand("read")],
  };
}

/** With each coin a further part is covered, so that the lamp burns on from step to step. */
function row(minutes: readonly number[], number: 1 | 2): Step[] {
  return minutes.map((toMinutes, at) => {
    const fromMinutes = minutes[at - 1] ?? 0;
    return {
      ...byHand("lamp"),
      ordinal: (number - 1) * minutes.length + at + 1,
      seconds: (toMinutes - fromMinutes) * 60,
      lamp: { row: number, fromMinutes, toMinutes },
    };
  });
}

function byHand(kind: Step["kind"]): Step {
  return { ...BARE_STEP, kind, medium: "paper", basis: [BASIS] };
}

export type Seen = Pick<Lamp, "beforeMinutes" | "afterMinutes" | "aloneMinutes" | "longestMinutes">;

export interface LampVerdict {
  /** Paper may lie so long under it in all; null: it is not safe. */
  readonly safeSeconds: number | null;
  /** No step showed a change: it is safe for at least as long as was tried. */
  readonly isAtLeast: boolean;
}

/**
 * Safe is at most half of the time that makes the first change that can be seen; where even the shortest step changed, the
 * lamp is not safe (the same guide).
 */
export function judgeLamp(seen: Seen, shortestMinutes: number): LampVerdict {
  const changes = [seen.beforeMinutes, seen.afterMinutes, seen.aloneMinutes].filter((each) => each !== null);
  if (changes.length === 0) return { safeSeconds: seen.longestMinutes * 60, isAtLeast: true };
  const first = Math.min(...changes);
  return { safeSeconds: first <= shortestMinutes ? null : first * 30, isAtLeast: false };
}

/** Lamps whose test is due at this instant. */
export const lampsDue = (lamps: readonly Lamp[], atMs: number): Lamp[] =>
  lamps.filter(({ nextAtMs }) => nextAtMs <= atMs);
