import type { Agitation, Step } from "./plan.ts";
import { plain, saySeconds } from "../wording.ts";

/* The words for steps and baths, shared by the plan, the run and the log. */

const TITLES = {
  develop: "Developer",
  stop: "Stop bath",
  rinse: "Rinse",
  fix: "Fixer",
  wash: "Wash",
  "wash-aid": "Wash aid",
  "wetting-agent": "Wetting agent",
  dry: "Dryer",
  cut: "Cut and sleeve",
} as const satisfies Record<Step["kind"], string>;

/** `Developer`, `Rinse 2`. */
export function titleOf(step: Pick<Step, "kind" | "ordinal">): string {
  return step.ordinal > 0 ? `${TITLES[step.kind]} ${step.ordinal}` : TITLES[step.kind];
}

const DOING = {
  develop: "Pour in the developer. Tap when the tank is full.",
  stop: "Pour in the stop bath. Tap when it is in.",
  rinse: "Fill the tank with water. Tap when it is full.",
  fix: "Pour in the fixer. Tap when it is in.",
  wash: "Start the wash. Tap when water runs through the tank.",
  "wash-aid": "Pour in the wash aid. Tap when it is in.",
  "wetting-agent": "Pour in the wetting agent. Tap when it is in.",
  dry: "Hang the film up to dry, a clip at each end. Tap when it hangs.",
  cut: "Cut the film into strips and sleeve them. Tap when done.",
} as const satisfies Record<Step["kind"], string>;

/** What a person does to begin this step, and from which bottle. */
export function doingOf(step: Pick<Step, "kind" | "batch">): string {
  const doing = DOING[step.kind];
  return step.batch === null ? doing : doing.replace(/\.(?= Tap)/, ` from ${plain(step.batch)}.`);
}

const LABELS = {
  develop: "Tank is full",
  stop: "Stop is in",
  rinse: "Water is in",
  fix: "Fixer is in",
  wash: "Wash is running",
  "wash-aid": "Wash aid is in",
  "wetting-agent": "Wetting agent is in",
  dry: "Film hangs",
  cut: "Cut and sleeved",
} as const satisfies Record<Step["kind"], string>;

/** The button that begins this step. */
export function labelOf(step: Pick<Step, "kind">): string {
  return LABELS[step.kind];
}

const LEAVING = {
  develop: "Pour out the developer. It is used once: into the waste jug or drain your class uses for it.",
  stop: "Pour out the stop bath.",
  rinse: "Pour out the water.",
  fix: "Pour the fixer back into its bottle, never down the drain.",
  wash: "The wash is done.",
  "wash-aid": "Pour out the wash aid.",
  "wetting-agent": "Lift the film out of the wetting agent. Let it drip.",
  dry: "The film should be dry. Check the ends.",
  cut: "",
} as const satisfies Record<Step["kind"], string>;

/** What a person does when this step's time is up, and where its bath goes. */
export function leavingOf(step: Pick<Step, "kind" | "batch" | "isPouredBack">): string {
  if (step.batch === null) return LEAVING[step.kind];
  const bottle = plain(step.batch);
  const back = step.isPouredBack ? BACK[step.kind] : undefined;
  return back ? `${back} into ${bottle}.` : LEAVING[step.kind].replace("into its bottle", `into ${bottle}`);
}

/** Where a bath is used again: said instead of pouring it out. */
const BACK: Partial<Record<Step["kind"], string>> = {
  develop: "Pour the developer back",
  stop: "Pour the stop bath back",
  "wash-aid": "Pour the wash aid back",
};

const MANNERS = {
  inversion: "turn the tank over and back",
  rotation: "turn the reel",
  continuous: "keep the tank moving all the time",
} as const satisfies Record<Agitation["manner"], string>;

/** `first 30 s, then 5 s each minute: turn the tank over and back; tap it 2 times on the bench`. */
export function describeAgitation(agitation: Agitation): string {
  const manner = MANNERS[agitation.manner];
  if (agitation.manner === "continuous") return manner;
  const cycle = agitation.cycleSeconds === 60 ? "each minute" : `every ${saySeconds(agitation.cycleSeconds)}`;
  const rhythm =
    agitation.cycleSeconds > 0 && agitation.burstSeconds > 0
      ? `first ${saySeconds(agitation.initialSeconds)}, then ${saySeconds(agitation.burstSeconds)} ${cycle}`
      : `first ${saySeconds(agitation.initialSeconds)}`;
  const taps =
    agitation.taps > 0
      ? `; then rap it ${agitation.taps === 1 ? "once" : `${agitation.taps} times`} on the bench`
      : "";
  return `${rhythm}: ${manner}${taps}`;
}
