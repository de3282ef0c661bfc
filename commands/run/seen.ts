import { currentStep, isTrayRun, type Run } from "../../store/shapes/run.ts";
import type { Action } from "../define.ts";
import { inEach } from "../speech/language.ts";
import { makeLine } from "../speech/line.ts";
import { de } from "./words/reply.de.ts";
import { en } from "./words/reply.en.ts";

const words = inEach({ en, de });

/** The button for the moment at which the image appears, where that decides how long it is developed. */
export function seenAction(run: Run): Action | undefined {
  if (!isTrayRun(run) || run.plan.factor === null || run.phase.kind !== "running") return undefined;
  if (currentStep(run)?.kind !== "develop") return undefined;
  const { step } = run.phase;
  if (run.deviations.some((each) => each.kind === "seen" && each.step === step)) return undefined;
  return { label: words().iSeeIt, line: makeLine("run seen", { run: run.number }), weight: "main" };
}
