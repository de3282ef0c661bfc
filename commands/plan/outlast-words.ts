import { inEach } from "../speech/language.ts";
import { instant } from "../speech/wording.ts";
import { sittingNow } from "./bell.ts";
import type { SchoolClass } from "../../store/shapes/school.ts";
import { outlast, type Outlast } from "./outlast.ts";
import type { Staged } from "./stages.ts";
import { de } from "./words/outlast.de.ts";
import { en } from "./words/outlast.en.ts";

const words = inEach({ en, de });

/** A warning for a run that would outlast the bell; empty where it fits. */
export function outlastWords({
  verdict,
  bellAtMs,
  doneAtMs,
  hungAtMs,
  fixedAtMs,
  latestAtMs,
}: Outlast): string {
  if (verdict === "fits") return "";
  const advice = words().advice[verdict]({
    done: instant(doneAtMs, "time"),
    hung: instant(hungAtMs, "time"),
    fixed: instant(fixedAtMs, "time"),
    latest: instant(latestAtMs, "time"),
  });
  return words().bell(instant(bellAtMs, "time"), advice);
}

/** The same for a plan that is about to be started; empty outside the class's periods. */
export function bellWarning(
  plan: Staged,
  { habits, zone }: Pick<SchoolClass, "habits" | "zone">,
  nowMs: number,
): string {
  const sitting = sittingNow(habits.periods, zone, nowMs);
  return sitting === null ? "" : outlastWords(outlast(plan, nowMs, sitting.endsAtMs));
}
