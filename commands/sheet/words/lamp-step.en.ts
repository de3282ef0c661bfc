import type { LampStepKind, Step } from "../../../store/shapes/plan.ts";

/* Steps of a safelight's test. */

type At = NonNullable<Step["lamp"]> | undefined;

const minutes = (count: number): string => `${count} min`;

export const en = {
  doing: {
    lamp: (at: At) =>
      at === undefined
        ? "Lamp on. Press the button when it is on."
        : at.fromMinutes === 0
          ? `Lamp off: lay a sheet where you work, face up, a card over its ${at.row === 1 ? "lower" : "upper"} half, the first coin on the other. Lamp on. Press the button when it is on.`
          : `Lay the next coin beside the last: it covers what has had ${minutes(at.fromMinutes)}. The lamp stays on. Press the button when it lies.`,
    grey: () =>
      "Lamp off, coins and card away. Keep a strip along one edge covered, and expose the rest under the enlarger to a light grey. Press the button when it is done.",
    read: () =>
      "Lamp off. Develop, stop and fix it in the dark, dry it, and look for coins you can see. Press the button, then note what you saw.",
  },
  labels: {
    lamp: (at: At): string => (at === undefined || at.fromMinutes === 0 ? "Lamp is on" : "Coin lies"),
    grey: "Grey is on it",
    read: "Looked at",
  },
  leaving: { lamp: "", grey: "", read: "" } as Record<LampStepKind, string>,
};
export type LampStepWords = typeof en;
