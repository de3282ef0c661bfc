import { NAMELESS } from "../../store/shapes/person.ts";
import { recordRolls } from "../roll/record.ts";
import type { Roll } from "../../store/shapes/roll.ts";
import { cuesAfter } from "./cues.ts";
import { leadMsOf } from "./lead.ts";
import { isOver, isTrial, type Run } from "../../store/shapes/run.ts";
import { LATE_FROM_MS } from "./settle.ts";
import type { Stores } from "../../store/index.ts";
import { recordPours } from "../batch/pour.ts";
import { callNext, leaveQueue } from "./turns.ts";

/**
 * Keeps a run that has changed, with the cues its new schedule owes, the baths that went in and, once it is over, its
 * rolls in the log. What it had still to say was missed where it is late by `lateMs`. Must be called inside `atomically`:
 * these are one matter.
 */
export function keepRun(stores: Stores, changed: Run, now: number, lateMs = LATE_FROM_MS): Roll[] {
  const run = leaveQueue(stores, changed, now);
  stores.runs.save(run);
  stores.outbox.withdraw(run.id, now, lateMs);
  const leadMs = leadMsOf(stores, stores.classes.addressOf(run.classId)?.key ?? "");
  stores.cues.reschedule(run.id, cuesAfter(run, now), leadMs, now);
  recordPours(stores, run, now);
  callNext(stores, run, now);
  // Of a film that waited for its tank nothing was done.
  if (!isOver(run) || isTrial(run) || changed.queued?.forTank) return [];
  const owner = stores.members.find(run.classId, run.personId);
  const { outbox, cues } = stores;
  const missed = cues.mergedOf(run.id) + outbox.unsaidOf(run.id, LATE_FROM_MS);
  const calls = { late: outbox.lateOf(run.id, LATE_FROM_MS), missed };
  return recordRolls(run, owner?.name ?? NAMELESS, calls).map((roll) => stores.rolls.add(roll));
}
