import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { instant, plain } from "../../speech/wording.ts";
import { showCode } from "../return.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export interface GivenCode {
  readonly code: string;
  /** Until when it can be used, ms since the epoch. */
  readonly until: number;
}

function codeReply(text: string, { code, until }: GivenCode): Reply {
  return { text, fields: { code: showCode(code), untilMs: until } };
}

export const ownReply = (given: GivenCode): Reply =>
  codeReply(words().own(showCode(given.code), instant(given.until, "time")), given);
export const givenReply = (name: string, given: GivenCode): Reply =>
  codeReply(words().given(plain(name), showCode(given.code), instant(given.until, "time")), given);

export const byAccount = (): string => words().byAccount;
export const byPassphrase = (): string => words().byPassphrase;
export const unknownPerson = (name: string): string => words().unknownPerson(plain(name));
export const aboveYou = (name: string): string => words().aboveYou(plain(name));
