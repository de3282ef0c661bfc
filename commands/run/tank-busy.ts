import { type Context, UserError } from "../define.ts";
import type { StoredPlan } from "../../store/plans.ts";
import { sayTaken } from "../plan/taken.ts";
import { makeLine } from "../speech/line.ts";
import { parseNumber } from "../speech/wording.ts";
import { freeLike, holderBefore, holderOf, isLike } from "../tank/holder.ts";
import { isFilmRun, type Run, waitsToBegin } from "../../store/shapes/run.ts";
import type { Tank } from "../../store/shapes/tank.ts";
import { isFilmPlan } from "../../store/shapes/tray.ts";
import { advance } from "./machine.ts";
import { keepRun } from "./keep.ts";
import { ownerOf } from "./starting.ts";
import { statusAction, stopAction } from "./reply.ts";
import * as words from "./tank-busy-words.ts";

/* A tank that is wanted and not free: another like it is offered; where there is none, or by one's own will, one waits. */

/** Offered instead of the one that is taken. */
const MOST_TANKS = 4;

/** The same plan in another tank; one of another size wants a plan of its own. */
export function inTank({ stores, class: { id } }: Context, stored: StoredPlan, text: string): StoredPlan {
  const number = parseNumber("tank", text);
  const [wanted, planned] = [number, stored.plan.tank].map((each) =>
    each == null ? undefined : stores.tanks.find(id, each),
  );
  if (!wanted) throw new UserError("ERR_UNKNOWN_TANK", words.unknown(text));
  if (!planned || !isFilmPlan(stored.plan) || !isLike(wanted, planned))
    throw new UserError("ERR_TANK_UNLIKE", words.unlike(wanted));
  return { ...stored, plan: { ...stored.plan, tank: wanted.number } };
}

/**
 * Whose tank it is that this plan waits for; null: it is free.
 * @throws UserError where there is nothing to wait for: another tank is free and `isPatient` is false, or it is one's own.
 */
export function waitFor(context: Context, { plan, number }: StoredPlan, isPatient: boolean): string | null {
  const { stores, class: school, person } = context;
  if (plan.tank === null) return null;
  const open = stores.runs.open(school.id);
  const holder = holderOf(open, plan.tank);
  if (!holder) return null;
  const who = sayTaken(plan.tank, holder, ownerOf(context, holder), context.now);
  if (holder.personId === person.id) throw new UserError("ERR_TANK_BUSY", words.own(who));
  const own = open.find(
    (run) => run.personId === person.id && run.plan.tank === plan.tank && waitsToBegin(run),
  );
  if (own)
    throw new UserError("ERR_TANK_BUSY", words.waitsAlready(who, own), [statusAction(own), stopAction(own)]);
  const tank = stores.tanks.find(school.id, plan.tank);
  const free = tank && !isPatient ? freeLike(tank, stores.tanks.list(school.id), open) : [];
  if (free.length === 0) return who;
  const line = (options: Readonly<Record<string, string | number>>): string =>
    makeLine("run start", { plan: number, ...options });
  throw new UserError("ERR_TANK_BUSY", words.takeAnother(who, free.map(numberOf)), [
    ...free.slice(0, MOST_TANKS).map((each) => ({
      label: words.tankKey(each.number),
      line: line({ tank: each.number }),
      weight: "main" as const,
    })),
    { label: words.waitKey(plan.tank), line: line({ wait: "yes" }) },
  ]);
}

const numberOf = ({ number }: Tank): number => number;

/** Whoever starts a film waits for no other tank any more: their runs that did, ended. */
export function endWaits({ stores, class: { id }, person, now }: Context): Run[] {
  return stores.runs.open(id, person.id).flatMap((run) => {
    if (!run.queued?.forTank || !isFilmRun(run)) return [];
    const ended = advance(run, { kind: "stop", reason: "", atMs: now });
    if (!ended.ok) return [];
    keepRun(stores, ended.value, now);
    return [run];
  });
}

/** @throws UserError where another film is in the tank of a run that is to begin. */
export function requireTank(context: Context, run: Run): void {
  const holder = holderBefore(context.stores.runs.open(context.class.id), run);
  if (!holder || run.plan.tank === null) return;
  const who = sayTaken(run.plan.tank, holder, ownerOf(context, holder), context.now);
  throw new UserError("ERR_TANK_BUSY", words.stillWaits(who), [
    {
      label: words.isMine(),
      line: makeLine("run next", { run: run.number, step: 0, sure: "yes" }),
      weight: "danger",
    },
    stopAction(run),
  ]);
}
