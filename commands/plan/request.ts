import type { Agitation, Sheet } from "../../store/shapes/sheet.ts";
import type { FrameSize } from "../../store/shapes/film.ts";
import type { Tank } from "../../store/shapes/tank.ts";
import type { Plan, Step, StepKind } from "../../store/shapes/plan.ts";
import type { ReuseFault } from "./reuse.ts";
import type { TimeFault } from "../sheet/time.ts";
import type { VolumeFault } from "./volume.ts";
import type { WashMethod } from "./wash.ts";

/** Which bath of a plan: its step, and of two fixing baths which. */
export type BathKey = StepKind | "fix-2";
export type BathLabels = Partial<Record<BathKey, string>>;

export function bathKeyOf({ kind, ordinal }: Pick<Step, "kind" | "ordinal">): BathKey {
  return kind === "fix" && ordinal === 2 ? "fix-2" : kind;
}

export interface ShortBottle {
  readonly label: string;
  readonly ml: number;
}

/** What is asked of a plan. null: as the sheet, the tank or the class has it. */
export interface PlanRequest {
  readonly sheet: Sheet;
  readonly tenthsC: number;
  readonly exposureIndex: number | null;
  readonly tank: Tank | null;
  readonly format: Plan["format"];
  readonly rolls: number;
  /** Frames on each roll. */
  readonly frames: number | null;
  /** What the camera makes; null: the format's usual one. */
  readonly frame: FrameSize | null;
  /** Frames in a strip of the sleeves for 135; null: as the class has it. */
  readonly stripFrames: number | null;
  readonly volumeMl: number | null;
  readonly agitation: Agitation | null;
  readonly stop: "water" | "acid" | null;
  readonly washMethod: WashMethod | null;
  readonly washAid: boolean | null;
  readonly clearingSeconds: number | null;
  /** What the fixer took to clear when it was fresh; null: not known. */
  readonly freshClearingSeconds: number | null;
  /** The room, where the plan is to allow for the tank's drift towards it; null: no allowance. */
  readonly roomTenthsC: number | null;
  readonly fixTenthsC: number | null;
  /** Water of the rinses and the wash. */
  readonly waterTenthsC: number | null;
  /** Films each litre of this developer has done before. */
  readonly filmsDone: number;
  /** Labels of the bottles the baths come from. */
  readonly batches: BathLabels;
  /** Bottles poured back that hold less than the tank takes. */
  readonly shortBottles: readonly ShortBottle[];
  /** Other films to share the tank: their sheets for the same developer. */
  readonly others: readonly Sheet[];
}

/** The least of a request: one roll of 135 by the sheet and the class's habits. */
export function bareRequest(sheet: Sheet, tenthsC: number): PlanRequest {
  return {
    sheet,
    tenthsC,
    exposureIndex: null,
    tank: null,
    format: "135",
    rolls: 1,
    frames: null,
    frame: null,
    stripFrames: null,
    volumeMl: null,
    agitation: null,
    stop: null,
    washMethod: null,
    washAid: null,
    clearingSeconds: null,
    freshClearingSeconds: null,
    roomTenthsC: null,
    fixTenthsC: null,
    waterTenthsC: null,
    filmsDone: 0,
    batches: {},
    shortBottles: [],
    others: [],
  };
}

export type PlanFault =
  | TimeFault
  | VolumeFault
  | ReuseFault
  | {
      readonly code: "ERR_WRONG_FRAME";
      readonly format: Plan["format"];
      readonly frame: FrameSize;
      readonly takes: readonly FrameSize[];
    }
  | {
      readonly code: "ERR_CANNOT_SHARE";
      readonly films: readonly { readonly film: string; readonly seconds: number }[];
    };
