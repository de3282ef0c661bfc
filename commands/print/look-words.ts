import { inEach } from "../speech/language.ts";
import { type PrintLook, PRINT_LOOKS } from "./looks.ts";
import { de } from "./words/look.de.ts";
import { en } from "./words/look.en.ts";

/* What is seen on a print, in words. As with rolls, the log keeps a fault in one language, and each reader sees their own. */

const words = inEach({ en, de });

export const lookWord = (look: PrintLook): string => words().words[look];
export const lookHelp = (look: PrintLook): string => words().help[look];

/** What the log keeps as the fault. */
export const keptFault = (look: PrintLook): string => en.words[look];

/** A fault from the log for the one who reads. */
export function sayPrintFault(kept: string): string {
  const look = PRINT_LOOKS.find((each) => en.words[each] === kept);
  return look === undefined ? kept : lookWord(look);
}
