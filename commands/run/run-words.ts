import { makeNumber } from "../speech/wording.ts";
import { isTankless, isTrayRun, isTrial, type Run, type RunName, runNameOf } from "../../store/shapes/run.ts";
import { type AnyPlan, isFilmPlan, isStripPlan, isTrayPlan } from "../../store/shapes/tray.ts";
import { inEach } from "../speech/language.ts";
import { de } from "./words/reply.de.ts";
import { en } from "./words/reply.en.ts";

const words = inEach({ en, de });

/** `R7, tank 3`. */
export const nameOf = (run: Run): string => sayRun(runNameOf(run));

/** `R7, tank 3 · Lantern 400`; of prints and of tests what it is named by. The number leads. At most 100 characters. */
export function threadNameOf(run: Run): string {
  const matter = matterOf(run.plan);
  const named = isTrial(run) ? words().trialName(matter) : matter;
  return `${sayRun({ ...runNameOf(run), isTrial: undefined })} · ${named}`.slice(0, 100);
}

function matterOf(plan: AnyPlan): string {
  if (isFilmPlan(plan)) return plan.sheet.film;
  if (isTrayPlan(plan)) return plan.developer;
  return isStripPlan(plan) ? words().strip.what : plan.lamp;
}

/** Of a run that waits for a place. */
export function queuedWords(run: Run): string {
  if (isTankless(run) && run.plan.tank !== null) return words().queuedForTank(run.plan.tank);
  return words().queued(isTrayRun(run), run.queued?.dueAtMs ?? null);
}

export function sayRun({ number, tank, trays, isTrial: isTried }: RunName): string {
  const name = words().name(makeNumber("run", number), tank, trays ?? null);
  return isTried ? words().trialName(name) : name;
}
