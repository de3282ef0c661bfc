import { makeNumber } from "../speech/wording.ts";
import { type Run, type RunName, runNameOf } from "../../store/shapes/run.ts";
import { inEach } from "../speech/language.ts";
import { de } from "./words/reply.de.ts";
import { en } from "./words/reply.en.ts";

const words = inEach({ en, de });

/** `R7, tank 3`. */
export const nameOf = (run: Run): string => sayRun(runNameOf(run));

export function sayRun({ number, tank, trays, isTrial }: RunName): string {
  const name = words().name(makeNumber("run", number), tank, trays ?? null);
  return isTrial ? words().trialName(name) : name;
}
