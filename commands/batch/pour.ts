import { NAMELESS } from "../../store/shapes/person.ts";
import { labelOf, wornWords } from "./batch-words.ts";
import { chooseBatch, needOf, takenMl, type Need } from "./choose.ts";
import { isFixer, type Batch } from "../../store/shapes/batch.ts";
import { openAllowance } from "../../store/shapes/ledger.ts";
import { takeAction, wornAtPourWords } from "./refusal-words.ts";
import { stateOf } from "./state.ts";
import { UserError } from "../define.ts";
import { stepAt, type StepRecord, type Run } from "../../store/shapes/run.ts";
import { parseNumber } from "../speech/wording.ts";
import { candidatesFor, hasTabularFilm } from "./candidates.ts";
import type { Stores } from "../../store/index.ts";
import { carryInto } from "./carry.ts";
import { enterLine } from "./enter.ts";
import { overEndWords } from "./warn-words.ts";
import { tellOfFixing } from "./tell-fixing.ts";

/**
 * Enters in the ledger every bath that is in the tank and not entered yet: once for each run and step, whatever is
 * tapped twice or tried again. Called with every change of a run, in its transaction.
 * @throws UserError where the bath going in just now is worn out and nobody allowed it: the run then stays as it was.
 */
export function recordPours(stores: Stores, run: Run, now: number): void {
  for (const mark of run.marks) {
    const label = stepAt(run, mark.step)?.batch ?? null;
    const number = label === null ? undefined : parseNumber("batch", label);
    const key = `${run.id}.${mark.step}`;
    if (number === undefined || stores.batches.hasLine(key)) continue;
    const batch = stores.batches.find(run.classId, number);
    if (batch) recordPour(stores, run, mark, batch, key, now);
  }
}

function recordPour(
  stores: Stores,
  run: Run,
  mark: StepRecord,
  batch: Batch,
  key: string,
  now: number,
): void {
  const step = stepAt(run, mark.step);
  const need = step && needOf(run.plan, step, hasTabularFilm(stores, run.classId, run.plan));
  if (!need) return;
  const lines = stores.batches.lines(batch.id);
  const isWorn = stateOf(batch, lines, now).standing !== "ready";
  const allowance = isWorn ? openAllowance(lines, run.personId) : undefined;
  const isPouring = run.phase.kind === "running" && run.phase.step === mark.step;
  if (isWorn && !allowance && isPouring) throw refusal(stores, run, batch, need, now);
  const owner = stores.members.find(run.classId, run.personId);
  const line = {
    batchId: batch.id,
    key,
    runId: run.id,
    atMs: mark.startedAtMs,
    person: { id: run.personId, name: owner?.name ?? NAMELESS },
    about: null,
    body: {
      kind: "used",
      runNumber: run.number,
      step: mark.step,
      ml: takenMl(batch, need),
      areaSqIn: need.areaSqIn,
      isTabular: need.isTabular,
      films: need.films,
      carry: carryInto(stores, run, mark.step, batch, need, now),
      place: need.place,
      allowedBy: allowance?.id ?? null,
    },
  } as const;
  const kept = enterLine(stores, batch, line, now);
  if (kept && isFixer(batch.kind) && !allowance && isPouring) tellIfOver(stores, run, batch, kept.id, now);
}

/** Shares of a capacity end a hair beside the whole. */
const FULL_PERCENT = 100.5;

/** The last film a fixer is good for ends it; one more is in a bath that may not fix it. */
function tellIfOver(stores: Stores, run: Run, batch: Batch, line: number, now: number): void {
  const { usedPercent } = stateOf(batch, stores.batches.lines(batch.id), now);
  if ((usedPercent ?? 0) <= FULL_PERCENT) return;
  tellOfFixing(stores, run, line, () => overEndWords(labelOf(batch)), now);
}

function refusal(stores: Stores, run: Run, batch: Batch, need: Need, now: number): UserError {
  const candidates = candidatesFor(stores, run.classId, null, now, run.id);
  const chosen = chooseBatch(need, candidates, null, true);
  const instead = chosen.ok ? (chosen.value?.batch.number ?? null) : null;
  const state = stateOf(batch, stores.batches.lines(batch.id), now);
  return new UserError(
    "ERR_BATCH_WORN",
    wornAtPourWords(labelOf(batch), wornWords(batch, state), instead),
    instead === null ? [] : [takeAction(run.number, instead)],
  );
}
