import type { BatchKind } from "../../../store/shapes/batch.ts";
import { en as batch } from "../words/batch.en.ts";

export const en = {
  noRun: "You have no run going. Name the bottle when you plan: `/plan fixbatch:B5`.",
  whichRun: "You have several runs going. Say which: `run:R7`.",
  unknownRun: (typed: string) => `There is no run ${typed}. See yours with \`/run status\`.`,
  notYours: "That run belongs to somebody else. Only its owner, an aide or the teacher can change it.",
  noBathToCome: (run: string, kind: BatchKind, name: string) =>
    `${run} has no ${batch.kind[kind]} from a bottle still to come, so ${name} is not needed. Nothing was changed.`,
  planAgain: (name: string, label: string) =>
    `${name} asks for another developing time. Make a new plan with it: \`/plan devbatch:${label}\`.`,
  /** `step`: its title in the middle of a sentence. */
  taken: (label: string, step: string, run: string, time: string | null) =>
    `**${label}** for the ${step} of ${run}${time === null ? "" : ` for ${time}`}.`,
  bath: "bath",
};
export type TakeWords = typeof en;
