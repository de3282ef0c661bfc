import { saySeconds } from "../../speech/wording.ts";
import type { Agitation } from "../../../store/shapes/sheet.ts";
import type { LampStepKind, StepKind, StripStepKind } from "../../../store/shapes/plan.ts";

/** ` from B3`; empty where the bottle is not known. */
type From = string | null;
const from = (bottle: From): string => (bottle === null ? "" : ` from ${bottle}`);

/** Steps a film goes through. */
export type FilmStepKind = Exclude<StepKind, LampStepKind | StripStepKind>;

const titles: Record<StepKind, string> = {
  develop: "Developer",
  stop: "Stop bath",
  rinse: "Rinse",
  fix: "Fixer",
  wash: "Wash",
  "wash-aid": "Wash aid",
  "wetting-agent": "Wetting agent",
  dry: "Drying",
  cut: "Cut and sleeve",
  lamp: "Safelight",
  grey: "Grey exposure",
  read: "Reading",
  expose: "Exposure",
  judge: "Judging",
};

const doing: Record<FilmStepKind, (bottle: From) => string> = {
  develop: (bottle) => `Pour in the developer${from(bottle)}. Press the button when the tank is full.`,
  stop: (bottle) => `Pour in the stop bath${from(bottle)}. Press the button when it is in.`,
  rinse: (bottle) => `Fill the tank with water${from(bottle)}. Press the button when it is full.`,
  fix: (bottle) => `Pour in the fixer${from(bottle)}. Press the button when it is in.`,
  wash: (bottle) => `Start the wash${from(bottle)}. Press the button when water runs through the tank.`,
  "wash-aid": (bottle) => `Pour in the wash aid${from(bottle)}. Press the button when it is in.`,
  "wetting-agent": (bottle) => `Pour in the wetting agent${from(bottle)}. Press the button when it is in.`,
  dry: () => "Hang the film up to dry, a clip at each end. Press the button when it hangs.",
  cut: () => "Cut the film into strips and sleeve them. Press the button when done.",
};

const labels: Record<FilmStepKind, string> = {
  develop: "Tank is full",
  stop: "Stop is in",
  rinse: "Water is in",
  fix: "Fixer is in",
  wash: "Wash is running",
  "wash-aid": "Wash aid is in",
  "wetting-agent": "Wetting agent is in",
  dry: "Film hangs",
  cut: "Cut and sleeved",
};

const leaving: Record<FilmStepKind, (bottle: string | null) => string> = {
  develop: () =>
    "Pour out the developer. It is used once: into the waste jug or drain your class uses for it.",
  stop: () => "Pour out the stop bath.",
  rinse: () => "Pour out the water.",
  fix: (bottle) => `Pour the fixer back into ${bottle ?? "its bottle"}, never down the drain.`,
  wash: () => "The wash is done.",
  "wash-aid": () => "Pour out the wash aid.",
  "wetting-agent": () => "Lift the film out of the wetting agent. Let it drip.",
  dry: () => "The film should be dry. Check the ends.",
  cut: () => "",
};

const back: Partial<Record<StepKind, (bottle: string) => string>> = {
  develop: (bottle) => `Pour the developer back into ${bottle}.`,
  stop: (bottle) => `Pour the stop bath back into ${bottle}.`,
  "wash-aid": (bottle) => `Pour the wash aid back into ${bottle}.`,
};

const oneOfTwo = {
  doing: (bath: number, bottle: string | null) =>
    `Pour in fixing bath ${bath}${from(bottle)}. Press the button when it is in.`,
  label: (bath: number) => `Bath ${bath} is in`,
  leaving: (bath: number, bottle: string | null) =>
    `Pour fixing bath ${bath} back into ${bottle ?? `bottle ${bath}`}, never into the other one and never down the drain.`,
};

const manners: Record<Agitation["manner"], string> = {
  inversion: "turn the tank over and back",
  rotation: "turn the reel",
  continuous: "keep the tank moving all the time",
};

export const en = {
  titles,
  titleInText: (title: string) => title.toLowerCase(),
  doing,
  /** A developer that is diluted for the tank. */
  pourMixed: (concentrate: string, bottle: From, water: string) =>
    `Pour in the developer: ${concentrate}${bottle === null ? " of concentrate" : from(bottle)} and ${water} of water, mixed. Press the button when the tank is full.`,
  labels,
  leaving,
  /** Where a bath is used again: said instead of pouring it out. */
  back,
  oneOfTwo,
  /** After it. */
  replenish: (ml: string) => `Then ${ml} of replenisher go in: an aide or the teacher notes it.`,
  manners,
  /** `first 30 s, then 5 s each minute`. */
  rhythm: (firstSeconds: number, burstSeconds: number, cycleSeconds: number) =>
    `first ${saySeconds(firstSeconds)}, then ${saySeconds(burstSeconds)} ${cycleSeconds === 60 ? "each minute" : `every ${saySeconds(cycleSeconds)}`}`,
  firstOnly: (firstSeconds: number) => `first ${saySeconds(firstSeconds)}`,
  taps: (taps: number) => `then tap it firmly on the bench ${taps === 1 ? "once" : `${taps} times`}`,
};
export type StepWords = typeof en;
