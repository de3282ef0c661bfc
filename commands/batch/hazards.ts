import { inEach } from "../speech/language.ts";
import type { BatchKind } from "../../store/shapes/batch.ts";
import { de } from "./words/hazard.de.ts";
import { en } from "./words/hazard.en.ts";

/* What to mind while a bath is mixed, in a line or two: the long form is `/caution about:mixing`. */

const words = inEach({ en, de });

/** What it is mixed from; null: nobody has said. */
export type MixedFrom = "powder" | "liquid" | null;

/** A skin that a tap hurts: from memory (Moritz and Henriques 1947), 49 °C takes minutes, 60 °C some 5 s. */
export const SCALD_TENTHS_C = 500;

/** The lines to mind; none where the kind has no hazard of its own. A powder's dust comes on top. */
export function mixingCautions(kind: BatchKind, from: MixedFrom): string[] {
  const own = words().mixing[kind];
  const dust = from === "powder" && kind !== "wetting-agent" ? [words().powder] : [];
  return [...(own === null ? [] : [own]), ...dust];
}

/** For several baths at once, each line said once. */
export function cautionsOf(baths: readonly { kind: BatchKind; from: MixedFrom }[]): string[] {
  return [...new Set(baths.flatMap(({ kind, from }) => mixingCautions(kind, from)))];
}

/** A word on scalds where the water is that hot; else none. */
export function scaldCautions(hotTenthsC: number): string[] {
  return hotTenthsC >= SCALD_TENTHS_C ? [words().scald(hotTenthsC)] : [];
}
