import { isTrayRun, isTrial, runNameOf, stepAt, type TrayRun } from "../../store/shapes/run.ts";
import type { Stores } from "../../store/index.ts";
import { owe } from "../owe.ts";
import { washAnewWords } from "../tray/room-words.ts";
import { keepRun } from "./keep.ts";
import { advance } from "./machine.ts";

/**
 * A print has just gone into the wash of its line: the wash of all others in it begins anew, and their owners are told.
 * Inside `atomically`.
 */
export function washOthersAnew(stores: Stores, wet: TrayRun, now: number): void {
  if (isTrial(wet) || wet.phase.kind !== "running" || stepAt(wet, wet.phase.step)?.kind !== "wash") return;
  const others = stores.runs
    .open(wet.classId)
    .filter(isTrayRun)
    .filter((run) => !isTrial(run))
    .filter(({ id, plan }) => id !== wet.id && plan.line === wet.plan.line);
  for (const other of others) {
    const result = advance(other, { kind: "wash-anew", atMs: now });
    if (!result.ok || result.value.schedule === other.schedule) continue;
    const changed = result.value;
    keepRun(stores, changed, now);
    const { phase } = changed;
    if (phase.kind !== "running") continue;
    const seconds = stepAt(changed, phase.step)?.seconds ?? 0;
    owe(
      stores,
      {
        of: { kind: "wash-anew", run: changed.id, schedule: changed.schedule },
        classId: changed.classId,
        personId: changed.personId,
        run: runNameOf(changed),
        say: () => ({ text: washAnewWords(seconds, phase.endsAtMs) }),
      },
      now,
    );
  }
}
