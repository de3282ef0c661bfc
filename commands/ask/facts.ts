import type { Context } from "../define.ts";
import { boardOf, type BoardRow } from "../class/board.ts";
import { sittingNow } from "../plan/bell.ts";
import { sheetsOf } from "../sheet/options.ts";
import type { StoredPlan } from "../../store/plans.ts";
import type { Batch } from "../../store/shapes/batch.ts";
import { PLAN_LIVES_MS } from "../../store/shapes/plan.ts";
import { EVERY_PRINT, type Print } from "../../store/shapes/print.ts";
import { EVERY_ROLL } from "../../store/shapes/roll.ts";
import type { Run } from "../../store/shapes/run.ts";
import type { Habits } from "../../store/shapes/school.ts";
import type { Sheet } from "../../store/shapes/sheet.ts";
import type { Tank } from "../../store/shapes/tank.ts";

/* What the class's own records say to a question; looked up, never changed. */

export interface Facts {
  readonly sheets: readonly Sheet[];
  readonly habits: Habits;
  readonly now: number;
  /** The end of the sitting that is on; null between sittings. */
  readonly bellAtMs: number | null;
  /** This person's runs under way. */
  readonly runs: readonly Run[];
  /** This person's newest plan of today. */
  readonly plan: StoredPlan | null;
  /** Whether a run was started from it. */
  readonly isPlanUsed: boolean;
  readonly bottles: readonly Batch[];
  readonly tanks: readonly Tank[];
  readonly board: readonly BoardRow[];
  /** This person's newest roll. */
  readonly roll: number | null;
  /** This person's prints in the log, the newest first. */
  readonly prints: readonly Print[];
}

/** Whoever means an older one names it by its number. */
const MOST_PRINTS = 50;

export function factsFor(context: Context): Facts {
  const { stores, class: school, person, now } = context;
  const plan = stores.plans.latest(school.id, person.id);
  const run = stores.runs.latest(school.id, person.id);
  const own = { ...EVERY_ROLL, person: { id: person.id, name: null } };
  return {
    sheets: sheetsOf(context),
    habits: school.habits,
    now,
    bellAtMs: sittingNow(school.habits.periods, school.zone, now)?.endsAtMs ?? null,
    runs: stores.runs.open(school.id, person.id),
    plan: plan && now - plan.madeAt <= PLAN_LIVES_MS ? plan : null,
    isPlanUsed: Boolean(plan && run && run.startedAtMs >= plan.madeAt),
    bottles: stores.batches.standing(school.id),
    tanks: stores.tanks.list(school.id),
    board: boardOf(stores.runs.open(school.id), stores.members.list(school.id), now),
    roll: stores.rolls.search(school.id, own, 1, 0).rolls[0]?.number ?? null,
    prints: stores.prints.search(school.id, { ...EVERY_PRINT, personId: person.id }, MOST_PRINTS, 0).prints,
  };
}
