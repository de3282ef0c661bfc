import type { Standing } from "../../store/shapes/enlarger.ts";
import { inEach } from "../speech/language.ts";
import { makeNumber } from "../speech/wording.ts";
import { gradeWord } from "../print/print-words.ts";
import { formatAperture, formatDistance, formatExposure } from "../print/stops.ts";
import { de } from "./words/standing.de.ts";
import { en } from "./words/standing.en.ts";

/* A standing exposure in words, and the rules by which its time is found. */

const words = inEach({ en, de });

/** `12 s at f/8, grade 2, head at 50 cm`. */
export function settingWords({ tenths, apertureTenths, gradeTenths, headMm, paper }: Standing): string {
  return words().setting(
    formatExposure(tenths),
    formatAperture(apertureTenths),
    gradeWord(gradeTenths),
    formatDistance(headMm),
    paper === null ? null : makeNumber("paper", paper),
  );
}

/** The published rule for the time, and the rules beside it. */
export const ruleLines = (): string[] => [words().rule, words().rivals];
