import { inEach } from "../speech/language.ts";
import { instant, saySeconds } from "../speech/wording.ts";
import { de } from "./words/room.de.ts";
import { en } from "./words/room.en.ts";

/* When there is room in the trays. */

const words = inEach({ en, de });

export const fullWords = (fromMs: number, ahead: number, nowMs: number): string =>
  words().full(instant(fromMs, "time"), saySeconds((fromMs - nowMs) / 1000), ahead);
export const tooSmallWords = (prints: number): string => words().tooSmall(prints);
export const putInAnyway = (): string => words().anyway;
/** To whoever has prints in a wash that begins anew; the call that says it names their run. */
export const washAnewWords = (seconds: number, endsAtMs: number): string =>
  words().washAnew(saySeconds(seconds), instant(endsAtMs, "time"));
