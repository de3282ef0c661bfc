import { makeNumber } from "../speech/wording.ts";
import { type Run, type RunName, runNameOf } from "../../store/shapes/run.ts";
import { isFilmPlan, isTrayPlan } from "../../store/shapes/tray.ts";
import { inEach } from "../speech/language.ts";
import { de } from "./words/reply.de.ts";
import { en } from "./words/reply.en.ts";

const words = inEach({ en, de });

/** `R7, tank 3`. */
export const nameOf = (run: Run): string => sayRun(runNameOf(run));

/** `R7, tank 3 · Lantern 400`; of prints and of a safelight's test what it is named by. At most 100 characters. */
export function threadNameOf(run: Run): string {
  const { plan } = run;
  const what = isFilmPlan(plan) ? plan.sheet.film : isTrayPlan(plan) ? plan.developer : plan.lamp;
  return `${nameOf(run)} · ${what}`.slice(0, 100);
}

export function sayRun({ number, tank, trays, isTrial }: RunName): string {
  const name = words().name(makeNumber("run", number), tank, trays ?? null);
  return isTrial ? words().trialName(name) : name;
}
