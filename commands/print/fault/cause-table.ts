import type { PrintLook } from "../looks.ts";
import type { CauseCode } from "./cause.en.ts";

/*
 * Causes of what is seen on prints. `looks` says how well a cause explains a look, from 1 (may come from it) to 4 (the usual
 * reason). Each link has its source among the words; the weights are our own judgement, no source.
 */

export interface Cause {
  readonly code: CauseCode;
  readonly looks: Partial<Record<PrintLook, 1 | 2 | 3 | 4>>;
}

export const CAUSES: readonly Cause[] = [
  { code: "over-exposure", looks: { mottled: 4, dark: 4 } },
  { code: "under-exposure", looks: { pale: 4, hard: 2 } },
  { code: "pulled-early", looks: { flat: 4, pale: 3, mottled: 1 } },
  { code: "forced", looks: { grey: 4, yellow: 1 } },
  { code: "too-much-bromide", looks: { greenish: 4 } },
  { code: "hard-negative", looks: { hard: 4 } },
  { code: "soft-grade", looks: { grey: 2, flat: 2 } },
  { code: "long-development", looks: { stained: 3, yellow: 2, veiled: 2 } },
  { code: "warm-developer", looks: { yellow: 4 } },
  { code: "cold-developer", looks: { pale: 3, flat: 1 } },
  { code: "weak-developer", looks: { "white-patches": 4, pale: 1 } },
  { code: "strong-developer", looks: { veiled: 2 } },
  { code: "safelight", looks: { veiled: 4, "dull-highlights": 4, grey: 1 } },
  { code: "old-paper", looks: { veiled: 3, grey: 1 } },
  { code: "fixer-in-developer", looks: { veiled: 1 } },
  { code: "out-of-liquid", looks: { "brown-patch": 4 } },
  { code: "air-under", looks: { "round-marks": 4 } },
  { code: "floated", looks: { bleached: 4 } },
  { code: "worn-fixer", looks: { stained: 4, "yellow-later": 3, bleached: 1 } },
  { code: "short-wash", looks: { "yellow-later": 4 } },
  { code: "dust", looks: { "light-specks": 4 } },
  { code: "holes", looks: { "dark-specks": 4 } },
  { code: "touching-glass", looks: { rings: 4 } },
  { code: "focus", looks: { unsharp: 4 } },
  { code: "negative-moved", looks: { unsharp: 3 } },
  { code: "negative-turned", looks: { reversed: 4 } },
];
