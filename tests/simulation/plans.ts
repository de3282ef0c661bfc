import type { Plan, Step } from "../../store/shapes/plan.ts";
import { aPlan, aStep } from "../support/make.ts";
import type { Random } from "./random.ts";

/** A short plan of any shape the program allows: an evening's worth of steps in minutes. */
export function drawPlan(random: Random): Plan {
  const kinds: Step["kind"][] = random.pick([
    ["develop", "rinse", "fix", "cut"],
    ["develop", "stop", "fix", "wash", "cut"],
    ["develop", "fix"],
    ["develop", "stop", "fix", "wetting-agent"],
    ["develop", "rinse", "rinse", "fix", "dry", "cut"],
  ]);
  const ordinals = new Map<string, number>();
  const steps = kinds.map((kind) => {
    ordinals.set(kind, (ordinals.get(kind) ?? 0) + 1);
    return drawStep(kind, ordinals.get(kind) ?? 0, random);
  });
  return aPlan({ steps, rolls: random.whole(1, 2) });
}

function drawStep(kind: Step["kind"], ordinal: number, random: Random): Step {
  if (kind === "cut") return aStep({ kind, ordinal, seconds: null, ml: null });
  const isAgitated = kind === "develop" || kind === "fix";
  const seconds = random.whole(isAgitated ? 25 : 5, isAgitated ? 140 : 60);
  if (!isAgitated) return aStep({ kind, ordinal, seconds });
  const cycleSeconds = random.pick([5, 10, 30, 60]);
  const isContinuous = random.chance(0.1);
  return aStep({
    kind,
    ordinal,
    seconds,
    pourOutSeconds: random.pick([0, 5, 10]),
    agitation: {
      initialSeconds: random.pick([0, 5, 15, 30]),
      cycleSeconds,
      burstSeconds: random.whole(1, Math.min(cycleSeconds, 10)),
      manner: isContinuous ? "continuous" : random.pick(["inversion", "rotation"]),
      taps: 0,
    },
  });
}
