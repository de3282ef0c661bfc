import { type Context, UserError } from "../define.ts";
import { parseNumber } from "../speech/wording.ts";
import * as words from "./reply.ts";
import type { Run } from "../../store/shapes/run.ts";
import type { StoredPlan } from "../../store/plans.ts";
import type { AnyPlan } from "../../store/shapes/tray.ts";

export function findPlan(context: Context, text: string | undefined): StoredPlan {
  const { stores, person } = context;
  if (text === undefined) {
    const latest = stores.plans.latest(context.class.id, person.id);
    if (!latest) throw new UserError("ERR_NO_PLAN", words.noPlan());
    return latest;
  }
  const number = parseNumber("plan", text);
  const stored = number === undefined ? undefined : stores.plans.find(context.class.id, number);
  if (!stored) throw new UserError("ERR_UNKNOWN_PLAN", words.unknownPlan(text));
  // A button of somebody else's, or a number read off their screen: the film in the tank would be called to the wrong person.
  if (stored.personId !== person.id) {
    const owner = stores.members.find(context.class.id, stored.personId)?.name ?? "?";
    throw new UserError("ERR_NOT_YOUR_PLAN", words.planNotYours(stored.number, owner));
  }
  return stored;
}

/** Whose a run is; null where it is the caller's own. */
export function ownerOf({ stores, person }: Context, run: Run): string | null {
  return run.personId === person.id ? null : (stores.members.find(run.classId, run.personId)?.name ?? "?");
}

/** A thread for this run's calls, where the class wants one and the run was started in its channel. */
export function wantThread({ stores, class: school, here }: Context, run: Run): void {
  if (!school.habits.threads || here?.threads === undefined) return;
  const channelRef = stores.classes.channelRef(school.id);
  if (channelRef !== null && here.channelRef === channelRef) stores.runThreads.want(run.id, channelRef);
}

/** A run of this plan that waits for its first bath. */
export const freshRun = ({ class: school, person, now }: Context, plan: AnyPlan) => ({
  classId: school.id,
  personId: person.id,
  plan,
  warnSeconds: school.habits.warnSeconds,
  startedAtMs: now,
  schedule: 0,
  phase: { kind: "waiting", step: 0, sinceMs: now } as const,
  marks: [],
  deviations: [],
});
