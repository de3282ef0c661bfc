import { inEach } from "../speech/language.ts";
import { instant, saySeconds } from "../speech/wording.ts";
import { de } from "./words/longer.de.ts";
import { en } from "./words/longer.en.ts";

/* To whoever has a film under way, of a fixer that was found to clear more slowly. */

const words = inEach({ en, de });

export const stayLongerWords = (label: string, seconds: number, endsAtMs: number): string =>
  words().stay(label, saySeconds(seconds), instant(endsAtMs, "time"));
export const fixAgainWords = (label: string, seconds: number): string =>
  words().again(label, saySeconds(seconds));
