import { ok, type Result } from "../result.ts";
import { parseLine, type Line, type LineFault, type LineForm } from "../speech/line.ts";

/* What a person typed, as a call: of a command where it is one, else of /ask with the sentence. */

/** Commands whose name people use as a word: `/plan lantern 400`, `/help fixer in the eye`. */
const SPOKEN: readonly string[] = ["plan", "help"];
/** Commands that take a number without its name, and begin as a sentence may: `print again please`. */
const NUMBERED: readonly string[] = [
  "print again",
  "print show",
  "print fault",
  "contact sheet",
  "roll show",
];
/** `word:value`, as only a command is written. */
const OPTION = /(^|\s)[a-z]+:\S/i;

const isSlashed = (text: string): boolean => text.trimStart().startsWith("/");

/** A line that is meant as a command and is not quite one keeps its fault, so that it can be put right. */
export function readTyped(text: string, forms: readonly LineForm[]): Result<Line, LineFault> {
  const parsed = parseLine(text, forms);
  const sentence = ok({ name: "ask", options: { text: text.trim().replace(/^\/\s*/, "") } });
  if (parsed.ok) return isSpoken(parsed.value, text) ? sentence : parsed;
  const { fault } = parsed;
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

/** Words where a number would stand, and nothing that only a command is written with. */
function isSpoken({ name, options }: Line, text: string): boolean {
  const given = Object.values(options);
  if (isSlashed(text) || OPTION.test(text) || !NUMBERED.includes(name) || given.length === 0) return false;
  return given.every((value) => !/\d/.test(value));
}
