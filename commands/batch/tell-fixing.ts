import { type Run, runNameOf } from "../../store/shapes/run.ts";
import type { Stores } from "../../store/index.ts";
import { owe } from "../owe.ts";

/** To a run's owner, of the fixer their film is or was in; `line` of its ledger says so. Inside `atomically`. */
export function tellOfFixing(stores: Stores, run: Run, line: number, text: () => string, now: number): void {
  const { classId, personId, id } = run;
  const of = { kind: "fixing", run: id, line } as const;
  owe(stores, { of, classId, personId, run: runNameOf(run), say: () => ({ text: text() }) }, now);
}
