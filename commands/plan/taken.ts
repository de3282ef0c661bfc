import { type Run, waitsToBegin } from "../../store/shapes/run.ts";
import { inEach } from "../speech/language.ts";
import { instant, makeNumber, plain } from "../speech/wording.ts";
import { stagesLeft } from "./stages.ts";
import { de } from "./words/taken.de.ts";
import { en } from "./words/taken.en.ts";

/* A tank that another film is in: whose it is, and until when as far as that is known. */

const words = inEach({ en, de });

const MINUTE_MS = 60_000;

/** When the film of a run hangs, and has left its tank, if one step follows the other; null: its first bath is not in yet. */
export function leavesTankAtMs(run: Run, nowMs: number): number | null {
  if (waitsToBegin(run)) return null;
  const { sinkSeconds, washSeconds } = stagesLeft(run, nowMs);
  return nowMs + (sinkSeconds + washSeconds) * 1000;
}

/** To the minute, since it is up to whoever has it; null: as above. */
export function sayUntil(run: Run, nowMs: number): string | null {
  const atMs = leavesTankAtMs(run, nowMs);
  return atMs === null ? null : instant(Math.ceil(atMs / MINUTE_MS) * MINUTE_MS, "time");
}

/** `owner`: null where the run is the reader's own. */
export function sayTaken(tank: number, by: Run, owner: string | null, nowMs: number): string {
  const until = sayUntil(by, nowMs);
  const run = makeNumber("run", by.number);
  return owner === null ? words().byOwn(tank, run, until) : words().by(tank, run, plain(owner), until);
}
