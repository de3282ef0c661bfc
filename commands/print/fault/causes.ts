import { inEach } from "../../speech/language.ts";
import { CAUSES, type Cause } from "./cause-table.ts";
import { de } from "./cause.de.ts";
import { type CauseCode, en } from "./cause.en.ts";

const words = inEach({ en, de });

export const findCause = (code: string): Cause | undefined => CAUSES.find((cause) => cause.code === code);

/** What a cause is called, what to do about it now and next time, and whence we have it. */
export const wordsOfCause = (code: CauseCode): (typeof en)[CauseCode] => words()[code];

/** The source as programs read it: in one language, whoever asks. */
export const sourceOfCause = (code: CauseCode): string => en[code].source;

export function causeTitle(code: string): string | undefined {
  const cause = findCause(code);
  return cause && wordsOfCause(cause.code).title;
}
