import { ok, type Result } from "../result.ts";
import { parseLine, type Line, type LineFault, type LineForm } from "../speech/line.ts";

/* What a person typed, as a call: of a command where it is one, else of /ask with the sentence. */

/** Commands whose name people use as a word: `/plan lantern 400`, `/help fixer in the eye`. */
const SPOKEN: readonly string[] = ["plan", "help"];
/** `word:value`, as only a command is written. */
const OPTION = /(^|\s)[a-z]+:\S/i;

const isSlashed = (text: string): boolean => text.trimStart().startsWith("/");

/** A line that is meant as a command and is not quite one keeps its fault, so that it can be put right. */
export function readTyped(text: string, forms: readonly LineForm[]): Result<Line, LineFault> {
  const parsed = parseLine(text, forms);
  if (parsed.ok) return parsed;
  const { fault } = parsed;
  const sentence = ok({ name: "ask", options: { text: text.trim().replace(/^\/\s*/, "") } });
  switch (fault.code) {
    case "ERR_UNKNOWN_COMMAND": {
      const isSlip = fault.near.length > 0 && (isSlashed(text) || OPTION.test(text));
      return isSlip ? parsed : sentence;
    }
    case "ERR_STRAY_WORDS":
      return isSlashed(text) && !SPOKEN.includes(fault.command) ? parsed : sentence;
    default:
      return parsed;
  }
}
