import { loadOf } from "./bath.ts";
import { placeIn } from "./pairs.ts";
import { goesBack, needOf, takenMl, type Candidate, type Need } from "./choose.ts";
import { labelOf } from "./batch-words.ts";
import { openAllowance } from "../../store/shapes/ledger.ts";
import { stateOf } from "./state.ts";
import { isFilmPlan, isTrayPlan, type AnyPlan } from "../../store/shapes/tray.ts";
import type { Run } from "../../store/shapes/run.ts";
import type { Stores } from "../../store/index.ts";

/** The steps of a run whose bath comes from a batch and is not in yet. */
export function pendingNeeds(
  stores: Stores,
  run: Run,
): { readonly index: number; readonly label: string; readonly need: Need }[] {
  const poured = new Set(run.marks.map(({ step }) => step));
  const isTabular = hasTabularFilm(stores, run.classId, run.plan);
  return run.plan.steps.flatMap((step, index) => {
    const need = step.batch === null || poured.has(index) ? undefined : needOf(run.plan, step, isTabular);
    return need && step.batch !== null ? [{ index, label: step.batch, need }] : [];
  });
}

/** Fibre paper, or one tabular-grain film in the tank: the whole load is counted as the heavier. */
export function hasTabularFilm(stores: Stores, classId: number, plan: AnyPlan): boolean {
  if (isTrayPlan(plan)) return plan.paper === "fibre";
  if (!isFilmPlan(plan)) return false;
  if (plan.sheet.tabularGrain) return true;
  return (plan.alsoFilms ?? []).some((film) =>
    stores.sheets.find(classId, film, plan.sheet.developer).some(({ sheet }) => sheet.tabularGrain),
  );
}

/**
 * Every batch on the shelf as this person may use it now, less what runs under way are promised.
 * `except`: a run whose own promise doesn't count.
 */
export function candidatesFor(
  stores: Stores,
  classId: number,
  personId: string | null,
  now: number,
  except: number | null = null,
): Candidate[] {
  const promised = stores.runs
    .open(classId)
    .filter(({ id }) => id !== except)
    .flatMap((run) => pendingNeeds(stores, run));
  const pairs = stores.classes.get(classId)?.habits.fixPairs ?? [];
  return stores.batches.standing(classId).map((batch) => {
    const lines = stores.batches.lines(batch.id);
    const own = promised.filter(({ label }) => label === labelOf(batch)).map(({ need }) => need);
    return {
      batch,
      state: stateOf(batch, lines, now),
      reservedMl: own.reduce((sum, need) => sum + takenMl(batch, need), 0),
      reservedSqIn: own
        .filter((need) => goesBack(batch, need))
        .reduce((sum, need) => sum + loadOf(batch, need.areaSqIn, need.isTabular), 0),
      place: placeIn(pairs, batch.number),
      isAllowed: personId !== null && openAllowance(lines, personId) !== undefined,
    };
  });
}
