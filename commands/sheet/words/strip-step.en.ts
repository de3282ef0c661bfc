import type { Step, StripStepKind } from "../../../store/shapes/plan.ts";
import { saySeconds } from "../../speech/wording.ts";

/* Steps of a test strip that is called. */

type Bars = NonNullable<Step["bars"]>;

/** What the card does before an exposure. */
export function moveCard({ way, from, to }: Bars): string {
  if (way === "cover") return from === 1 ? "Leave all bars open" : `Cover bar ${from - 1}`;
  return from === to ? `Cover all but bar ${to}` : `Open bar ${from}`;
}

export const en = {
  doing: {
    expose: (bars: Bars, seconds: number) =>
      `${moveCard(bars)}, then lamp on for ${saySeconds(seconds)}. Press the button when it is on.`,
    judge: () =>
      "Develop the strip in full and look at it in white light. Press the button, then the bar that is right.",
  },
  labels: { expose: "Lamp is on", judge: "Looked at" } satisfies Record<StripStepKind, string>,
  /** `Cover bar 3` */
  moveCard,
  lampOff: "Lamp off now.",
  lampOffIn: (seconds: number) => `Lamp off in ${saySeconds(seconds)}.`,
  thenMove: (move: string) => `Then: ${move.charAt(0).toLowerCase()}${move.slice(1)}.`,
};
export type StripStepWords = typeof en;
