import type { LineFault } from "./line.ts";
import { plain } from "./wording.ts";

/** One sentence: what is wrong with a typed line, and what to do. */
export function lineFaultWords(fault: LineFault): string {
  switch (fault.code) {
    case "ERR_EMPTY_LINE":
      return "Type a command, for example /help.";
    case "ERR_UNKNOWN_COMMAND": {
      const near = fault.near.map((name) => `/${name}`).join(" or ");
      return `I know no /${plain(fault.word)}. ${near ? `Did you mean ${near}?` : "Try /help."}`;
    }
    case "ERR_OPEN_QUOTE":
      return `The quote after ${fault.option}: is not closed. Add a " at its end.`;
    case "ERR_TWICE":
      return `${fault.option}: is there twice. Say it once.`;
    case "ERR_STRAY_WORDS":
      return `I can't tell what "${plain(fault.words)}" is. Write options as name:value, for example /${fault.command} name:value.`;
  }
}
