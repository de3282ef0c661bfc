import type { LogFile } from "../../../store/shapes/log-file.ts";
import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeNumber } from "../../speech/wording.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

/** `counted` is more than `most` where counting stopped. */
export function exportReply(log: LogFile, counted: number, most: number): Reply {
  const isCapped = counted > most;
  const prints = Math.min(counted, most);
  const format = log.format.toUpperCase();
  return {
    text: isCapped ? words().exportedMany(prints, format) : words().exported(prints, format),
    fields: { format: log.format, prints, isCapped },
    log,
  };
}

/** Of what another file ended with, the rest. */
export const restReply = (log: LogFile): Reply => ({
  text: words().rest(makeNumber("print", log.below), log.format.toUpperCase()),
  fields: { format: log.format },
  log,
});
