import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeNumber, plain } from "../../speech/wording.ts";
import type { LogFile } from "../../../store/shapes/log-file.ts";
import { takenWords, type Taken } from "../taken-words.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

/** `counted` is more than `most` where counting stopped. */
export function exportReply(log: LogFile, counted: number, most: number, taken: readonly Taken[]): Reply {
  const isCapped = counted > most;
  const rolls = Math.min(counted, most);
  const format = log.format.toUpperCase();
  const text = isCapped ? words().exportedMany(rolls, format) : words().exported(rolls, format);
  return {
    text: [...takenWords(taken), text].join("\n"),
    fields: { format: log.format, rolls, isCapped },
    log,
  };
}

/** Of what another file ended with, the rest. */
export function restReply(log: LogFile, taken: readonly Taken[]): Reply {
  const text = words().rest(makeNumber("roll", log.below), log.format.toUpperCase());
  return { text: [...takenWords(taken), text].join("\n"), fields: { format: log.format }, log };
}

export const noSuchRoll = (typed: string): string => words().noSuchRoll(plain(typed));
