import type { LampStepKind, StepKind, StripStepKind } from "../../../store/shapes/plan.ts";

/* Steps of prints in trays: the kinds there are, in the words for paper. `tray` is the bath's label; null: not known. */

const at = (tray: string | null): string => (tray === null ? "" : ` (${tray})`);
/** Which of two alike: ` 1`; empty where there is one only. */
const nth = (ordinal: number): string => (ordinal > 0 ? ` ${ordinal}` : "");

export type TrayStepKind = Exclude<StepKind, "wetting-agent" | "cut" | LampStepKind | StripStepKind>;

const doing: Record<TrayStepKind, (tray: string | null, ordinal: number) => string> = {
  develop: (tray) =>
    `Slide the print into the developer${at(tray)}, face down, push it under and turn it. Press the button when it is under.`,
  stop: (tray) => `Lay it into the stop bath${at(tray)}. Press the button when it is in.`,
  rinse: () => "Lay it into the rinse water. Press the button when it is in.",
  fix: (tray, ordinal) =>
    `Lay it into fixer${nth(ordinal)}${at(tray)}, under the surface. Press the button when it is in.`,
  wash: (_, ordinal) =>
    `Lay it into the wash${ordinal > 0 ? ` for the ${ordinal === 1 ? "first" : "second"} time` : ""}. Press the button when it is in.`,
  "wash-aid": (tray) => `Lay it into the wash aid${at(tray)}. Press the button when it is in.`,
  dry: () => "Take it out, wipe the water off, hang it or lay it on a rack. Press the button when it dries.",
};

const labels: Record<TrayStepKind, (ordinal: number) => string> = {
  develop: () => "Print is under",
  stop: () => "In the stop bath",
  rinse: () => "In the rinse",
  fix: (ordinal) => `In fixer${nth(ordinal)}`,
  wash: (ordinal) => `In the wash${nth(ordinal)}`,
  "wash-aid": () => "In the wash aid",
  dry: () => "It is drying",
};

const leaving: Record<TrayStepKind, string> = {
  develop: "Lift it by a corner and let it drain over the developer. Tongs of this tray only.",
  stop: "Lift it out and let it drain over the stop bath.",
  rinse: "Lift it out and let it drain.",
  fix: "Lift it out and let it drain over the fixer: what drips carries silver.",
  wash: "The wash is done.",
  "wash-aid": "Lift it out of the wash aid.",
  dry: "",
};

export const en = {
  doing,
  labels,
  leaving,
  rock: "keep rocking the tray",
  rhythm: (firstSeconds: number, burstSeconds: number) =>
    firstSeconds === burstSeconds
      ? `rock the tray ${burstSeconds} s each minute`
      : `rock the tray for ${firstSeconds} s, then ${burstSeconds} s each minute`,
};
export type TrayStepWords = typeof en;
