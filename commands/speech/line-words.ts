import { inEach } from "./language.ts";
import type { LineFault } from "./line.ts";
import { plain, quoted } from "./wording.ts";
import { de } from "./words/line.de.ts";
import { en } from "./words/line.en.ts";

const words = inEach({ en, de });

/** One sentence: what is wrong with a typed line, and what to do. */
export function lineFaultWords(fault: LineFault): string {
  switch (fault.code) {
    case "ERR_EMPTY_LINE":
      return words().empty;
    case "ERR_UNKNOWN_COMMAND":
      return words().unknownCommand(
        plain(fault.word),
        fault.near.map((name) => `/${name}`),
      );
    case "ERR_OPEN_QUOTE":
      return words().openQuote(fault.option);
    case "ERR_TWICE":
      return words().twice(fault.option);
    case "ERR_STRAY_WORDS":
      return words().strayWords(quoted(plain(fault.words)), fault.command);
  }
}
