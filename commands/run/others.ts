import type { Step } from "../../store/shapes/plan.ts";
import { isTrial, type Run, runNameOf, stepAt } from "../../store/shapes/run.ts";
import type { Context } from "../define.ts";
import { owe } from "../owe.ts";
import { labelOf } from "../sheet/step-words.ts";
import { inEach } from "../speech/language.ts";
import { plain } from "../speech/wording.ts";
import { actionsOf } from "./reply.ts";
import { whereIsByClock } from "./where.ts";
import { de } from "./words/others.de.ts";
import { en } from "./words/others.en.ts";

/* Whoever else changes a run moves its owner's calls: the owner is told who did what, and what is next. */

const words = inEach({ en, de });

/** After `before` has become `after` by this person's call; its owner needs no word of what they did themselves. Inside `atomically`. */
export function tellOwner({ stores, person, now }: Context, before: Run, after: Run): void {
  if (after.personId === person.id || after.schedule === before.schedule || isTrial(after)) return;
  const isPressed = after.phase.kind !== "stopped" && enteredStep(before, after) !== undefined;
  owe(
    stores,
    {
      of: { kind: isPressed ? "pressed" : "changed", run: after.id, schedule: after.schedule },
      classId: after.classId,
      personId: after.personId,
      run: runNameOf(after),
      say: () => ({
        text: [...changesOf(before, after, plain(person.name)), whereIsByClock(after, now)].join("\n"),
        actions: actionsOf(after, now),
      }),
    },
    now,
  );
}

function changesOf(before: Run, after: Run, by: string): string[] {
  if (after.phase.kind === "stopped") return [words().stopped(by)];
  const noted = after.deviations.slice(before.deviations.length).flatMap((each): string[] => {
    switch (each.kind) {
      case "moved":
        return [words().moved(by, Math.abs(each.bySeconds), each.bySeconds < 0)];
      case "new-temperature":
        return [words().measured(by, each.tenthsC, each.toSeconds, each.fromSeconds)];
      case "seen":
        return [words().seen(by, each.toSeconds)];
      default:
        return [];
    }
  });
  const entered = enteredStep(before, after);
  return entered ? [words().pressed(by, labelOf(entered)), ...noted] : noted;
}

/** The step whose button was pressed; undefined where the run stayed where it was. */
function enteredStep(before: Run, after: Run): Step | undefined {
  const { phase } = before;
  if (phase.kind !== "waiting" && phase.kind !== "running") return undefined;
  const isSame = after.phase.kind === phase.kind && "step" in after.phase && after.phase.step === phase.step;
  return isSame ? undefined : stepAt(before, phase.kind === "waiting" ? phase.step : phase.step + 1);
}
