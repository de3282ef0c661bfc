import type { Action } from "../define.ts";
import { formatSize } from "../print/sizes.ts";
import { fitsKey, makeLine } from "../speech/line.ts";
import { makeTemperature } from "../speech/measure.ts";
import { formatDilution, formatSeconds, makeNumber } from "../speech/wording.ts";
import { inEach } from "../speech/language.ts";
import type { LampPlan } from "../../store/shapes/lamp.ts";
import { isTrayRun, type Run, secondsIn, type TrayRun } from "../../store/shapes/run.ts";
import { isLampPlan, isStripPlan } from "../../store/shapes/tray.ts";
import { de } from "./words/reply.de.ts";
import { en } from "./words/reply.en.ts";

/* What is done next with what came out of a run. */

const words = inEach({ en, de });

/** `roll`: the first of those that came into the log. */
export function afterRun(run: Run, roll: { readonly number: number } | undefined): Action[] {
  if (isLampPlan(run.plan)) return [lampReadingAction(run.plan)];
  if (isStripPlan(run.plan)) return run.phase.kind === "finished" ? barActions(run.plan.strip.bars) : [];
  if (isTrayRun(run) && run.phase.kind === "finished") return [logPrintAction(run)];
  return roll ? [{ label: words().showRoll, line: makeLine("roll show", { roll: roll.number }) }] : [];
}

const barActions = (bars: number): Action[] =>
  Array.from({ length: bars }, (_, at) => ({
    label: words().strip.bar(at + 1),
    line: makeLine("print read", { bar: at + 1 }),
  }));

function lampReadingAction({ lamp, minutes }: LampPlan): Action {
  const line = makeLine("tray lamp", { lamp, longest: Math.max(...minutes) });
  return { label: words().lamp.note, line, weight: "main" };
}

/**
 * What the trays know of a print: its paper, size, developer, and how it was developed. The exposure is not among it, so that
 * nothing is in the log before somebody says it.
 */
function logPrintAction(run: TrayRun): Action {
  const { box, size, developer, dilution, steps } = run.plan;
  const seconds = developedSeconds(run);
  const known = {
    ...(box === null ? {} : { paper: makeNumber("paper", box) }),
    size: formatSize(size),
    ...(seconds === null ? {} : { develop: formatSeconds(seconds) }),
    temp: makeTemperature(temperatureOf(run)),
  };
  const bottle = steps.find(({ kind }) => kind === "develop")?.batch ?? null;
  const names = [`${developer} ${formatDilution(dilution)}`, ...(bottle === null ? [] : [bottle])];
  const line = names.map((name) => makeLine("print log", { ...known, developer: name })).find(fitsKey);
  const label = words().tray.logPrint(run.plan.prints);
  return { label, line: line ?? makeLine("print log", known), weight: "main" };
}

/** How long they really lay in the developer; null where nobody noted it. */
function developedSeconds(run: TrayRun): number | null {
  const at = run.plan.steps.findIndex(({ kind }) => kind === "develop");
  const mark = run.marks.find(({ step }) => step === at);
  if (!mark || mark.endedAtMs === null) return null;
  const seconds = Math.round(secondsIn(run, mark.endedAtMs - mark.startedAtMs));
  return seconds >= 1 && seconds <= 3600 ? seconds : null;
}

/** As last measured in the developer, else as planned. */
function temperatureOf({ plan, deviations }: TrayRun): number {
  const measured = deviations.findLast(
    (each) => each.kind === "new-temperature" && plan.steps[each.step]?.kind === "develop",
  );
  return measured?.kind === "new-temperature" ? measured.tenthsC : plan.tenthsC;
}
