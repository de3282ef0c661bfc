import { formatNumbers } from "./numbers.ts";
import { inEach } from "../speech/language.ts";
import { makeLine } from "../speech/line.ts";
import type { Action } from "../define.ts";
import { de } from "./words/reply.de.ts";
import { en } from "./words/reply.en.ts";

const words = inEach({ en, de });

/** `known`: the numbers of the class's tanks. */
export const unknownTank = (number: number, known: readonly number[]): string =>
  known.length === 0 ? words().unknownAndNone(number) : words().unknown(number, formatNumbers(known));

export const listAction = (): Action => ({ label: words().all, line: makeLine("tank list", {}) });
