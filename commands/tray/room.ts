import { isTrayRun, isTrial, type TrayRun } from "../../store/shapes/run.ts";
import { UserError, type Context } from "../define.ts";
import { makeLine } from "../speech/line.ts";
import { atLine, firstStart, hasGivenWay, tooSmallFor } from "./places.ts";
import { fullWords, putInAnyway, tooSmallWords } from "./room-words.ts";

/**
 * Whether prints may go into the first tray now.
 * @throws UserError where a tray on their way has no place at its time, with the moment at which all have.
 */
export function requireRoom({ stores, class: school, now }: Context, run: TrayRun): void {
  const line = school.habits.trayLines.find(({ number }) => number === run.plan.line);
  if (!line || isTrial(run)) return;
  const { inTrays, waiting } = atLine(stores.runs.open(school.id).filter(isTrayRun), line.number);
  const anyway = {
    label: putInAnyway(),
    line: makeLine("run next", { run: run.number, step: 0, sure: "yes" }),
    weight: "danger" as const,
  };
  if (tooSmallFor(line, run.plan) !== null)
    throw new UserError("ERR_TRAYS_SMALL", tooSmallWords(run.plan.prints), [anyway]);
  const ahead = waiting.filter((each) => each.id < run.id && !hasGivenWay(each, now));
  const others = ahead.map(({ plan }) => plan);
  const fromMs = firstStart(line, run.plan, inTrays, others, now);
  if (fromMs === null || fromMs <= now) return;
  throw new UserError("ERR_TRAYS_FULL", fullWords(Math.ceil(fromMs / 1000) * 1000, ahead.length, now), [
    anyway,
  ]);
}
