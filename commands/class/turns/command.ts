import type { StoredPlan } from "../../../store/plans.ts";
import { waitingPlansOf } from "../../plan/ready.ts";
import { z } from "zod";
import { Temporal } from "temporal-polyfill";
import { defineCommand, UserError, type Context } from "../../define.ts";
import { fixTime, inEachBath } from "../../plan/fix.ts";
import { washTime } from "../../plan/wash.ts";
import { durationOption } from "../../speech/quantity.ts";
import { makeNumber } from "../../speech/wording.ts";
import { nextSitting, sittingNow } from "../../plan/bell.ts";
import { answerFit, type Load } from "./answer.ts";
import { soonestOf, type TankWait, tankWaitsOf } from "./tank-waits.ts";
import * as words from "./reply.ts";
import { isFilmRun, isTrayRun, isTrial, type Run, waitsToBegin } from "../../../store/shapes/run.ts";
import { queueAt } from "../../tray/queue.ts";
import { isFilmPlan } from "../../../store/shapes/tray.ts";
import { BARE_STEP } from "../../../store/shapes/plan.ts";
import type { Habits } from "../../../store/shapes/school.ts";
import { periodFaultWords } from "../period-words.ts";
import { parseClock } from "../periods.ts";
import { stagesLeft, stagesOf, type Stages } from "../../plan/stages.ts";
import { leavesTankAtMs, sayUntil } from "../../plan/taken.ts";
import { whoMay } from "../../who.ts";

/** Where nobody says how long: a middling developing time. */
const USUAL_DEVELOPING_SECONDS = 540;

export const classTurns = defineCommand({
  name: "class turns",
  was: ["class fit"],
  summary: "Will all tanks be done by the bell? The order, the latest pour-ins, who must wait",
  options: () => ({
    loads: z.coerce
      .number()
      .int()
      .min(0)
      .max(60)
      .default(0)
      .describe("So many tank loads more than have a plan or a run"),
    developing: durationOption.optional().describe("Developing time of these: 9:00"),
    films: z.coerce.number().int().min(1).max(8).default(1).describe("Films in each of these"),
    by: z.string().trim().min(1).max(12).optional().describe("Another bell than the class's, like 20:30"),
  }),
  who: whoMay("class turns"),
  visibility: "private",
  handle({ loads, developing, films, by }, context) {
    const { habits, zone } = context.class;
    const on = sittingNow(habits.periods, zone, context.now);
    const next = on ?? nextSitting(habits.periods, zone, context.now);
    const bellAtMs = by === undefined ? (next?.endsAtMs ?? null) : bellOf(by, context);
    // Before the class has begun, its clock starts with it.
    const fromMs = on === null && by === undefined && next !== null ? next.startsAtMs : context.now;
    const waits = tankWaitsOf(context.stores.runs.open(context.class.id));
    const all = [
      ...loadsUnderWay(context, soonestOf(waits, context.now)),
      ...loadsPlanned(context),
      ...loadsAsked(loads, films, developing ?? USUAL_DEVELOPING_SECONDS, habits),
    ];
    const trays = traysNow(context, bellAtMs);
    if (all.length === 0 && trays.length === 0)
      throw new UserError("ERR_NOTHING_TO_FIT", words.nothingToFit());
    if (all.length === 0) return words.traysReply(trays, bellAtMs, context.now);
    const sound = context.stores.tanks.list(context.class.id).filter(({ condition }) => condition === null);
    const places = {
      sinks: habits.sinks,
      washPlaces: habits.washPlaces,
      drySlots: habits.drySlots,
      tanks: sound.length === 0 ? null : sound.length,
    };
    const answer = answerFit(all, places, fromMs, bellAtMs);
    return words.fitReply(answer, sayWaits(context, waits), trays, context.now);
  },
});

/** Today, on the class's own clock. */
function bellOf(typed: string, { class: { zone }, now }: Context): number {
  const minute = parseClock(typed);
  if (!minute.ok) throw new UserError(minute.fault.code, periodFaultWords(minute.fault));
  const here = Temporal.Instant.fromEpochMilliseconds(now).toZonedDateTimeISO(zone);
  const bellAtMs = here.startOfDay().add({ minutes: minute.value }).epochMilliseconds;
  if (bellAtMs <= now) throw new UserError("ERR_BELL_PAST", words.bellPast(typed));
  return bellAtMs;
}

/** The lines of trays at which there is somebody; a tank, a sink, a dryer are no matter of theirs. */
function traysNow(context: Context, bellAtMs: number | null): words.TraysNow[] {
  const { stores, class: school, now } = context;
  const runs = stores.runs.open(school.id).filter(isTrayRun);
  const planned = plansWaiting(context);
  return school.habits.trayLines.flatMap((line) => {
    const { inTrays, waiting } = queueAt(line, runs, planned, now, bellAtMs);
    const labelled = (label: string, personId: string): string =>
      `${nameOf(stores, school.id, personId)} (${label})`;
    return inTrays.length + waiting.length === 0
      ? []
      : [
          {
            line: line.number,
            inTrays: inTrays.map(({ number, personId }) => labelled(makeNumber("run", number), personId)),
            waiting: waiting.map((each) => ({ ...each, label: labelled(each.label, each.personId) })),
          },
        ];
  });
}

function plansWaiting({ stores, class: { id }, now }: Context): StoredPlan[] {
  return stores.members.list(id).flatMap(({ personId }) => waitingPlansOf(stores, id, personId, now));
}

function sayWaits({ stores, class: { id }, now }: Context, waits: readonly TankWait[]): words.WaitsNow[] {
  const labelOf = ({ number, personId }: Run): string =>
    `${nameOf(stores, id, personId)} (${makeNumber("run", number)})`;
  return waits.map(({ tank, holder, waiting }) => ({
    tank,
    holder: labelOf(holder),
    until: sayUntil(holder, now),
    freeAtMs: leavesTankAtMs(holder, now),
    waiting: waiting.map(labelOf),
  }));
}

function loadsUnderWay(
  { stores, class: { id }, now }: Context,
  soonest: ReadonlyMap<number, number>,
): Load[] {
  return stores.runs
    .open(id)
    .filter(isFilmRun)
    .filter((run) => !isTrial(run))
    .map((run) => ({
      id: makeNumber("run", run.number),
      label: `${nameOf(stores, id, run.personId)} (${makeNumber("run", run.number)})`,
      stages: stagesLeft(run, now),
      films: run.plan.rolls,
      isUnderWay: !waitsToBegin(run),
      soonestMs: soonest.get(run.id),
    }));
}

/** Each person's newest plan of a film of today that no film has been started from since. */
function loadsPlanned(context: Context): Load[] {
  return plansWaiting(context).flatMap(({ plan, number, personId }) => {
    if (!isFilmPlan(plan)) return [];
    const id = makeNumber("plan", number);
    const label = `${nameOf(context.stores, context.class.id, personId)} (${id})`;
    return [{ id, label, stages: stagesOf(plan), films: plan.rolls, isUnderWay: false }];
  });
}

function loadsAsked(count: number, films: number, developingSeconds: number, habits: Habits): Load[] {
  return Array.from({ length: count }, (_, at) => ({
    id: `load ${at + 1}`,
    label: words.loadLabel(at + 1),
    stages: usualStages(developingSeconds, films, habits),
    films,
    isUnderWay: false,
  }));
}

/** The class's own way with every bath after the developer. */
function usualStages(developingSeconds: number, rolls: number, habits: Habits): Stages {
  const { seconds: fixing } = fixTime(null, false, habits.fixMinSeconds, 200);
  const wash = washTime(habits.washMethod, habits.washAid, habits.washMinSeconds, 200, 300);
  const basis = [{ kind: "house" as const, rule: "the class's usual" }];
  const step = (kind: "develop" | "rinse" | "fix" | "wash" | "wetting-agent" | "dry", seconds: number) => ({
    ...BARE_STEP,
    basis,
    kind,
    seconds,
  });
  return stagesOf({
    rolls,
    steps: [
      step("develop", developingSeconds),
      step("rinse", 60),
      ...Array.from({ length: habits.fixBaths }, () => step("fix", inEachBath(fixing, habits.fixBaths))),
      step("wash", wash.seconds),
      step("wetting-agent", habits.wettingSeconds),
      step("dry", habits.drySeconds),
      { ...BARE_STEP, basis, kind: "cut", seconds: null },
    ],
  });
}

function nameOf(stores: Context["stores"], classId: number, personId: string): string {
  return stores.members.find(classId, personId)?.name ?? words.somebody();
}
