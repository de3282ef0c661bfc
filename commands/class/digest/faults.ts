import { BATCH_KINDS } from "../../../store/shapes/batch.ts";
import { labelOf } from "../../batch/batch-words.ts";
import { oweTeachers } from "../../owe.ts";
import { evidenceOf } from "./evidence.ts";
import { evidenceWords } from "./evidence-words.ts";
import type { Stores } from "../../../store/index.ts";

const EIGHT_WEEKS_MS = 56 * 24 * 3_600_000;

/** Tells the teachers, once for each batch and fault, where rolls through a batch fail more than chance explains. */
export function reportFaults(stores: Stores, classId: number, now: number): void {
  const rolls = stores.digests.judgedRolls(classId, now - EIGHT_WEEKS_MS).map(({ batches, fault }) => ({
    labels: batches.split(" ").filter(Boolean),
    fault: fault.trim().toLowerCase(),
  }));
  const teachers = stores.members.list(classId).filter(({ role }) => role === "teacher");
  if (teachers.length === 0 || rolls.every(({ fault }) => fault === "")) return;
  const all = stores.batches.list(classId);
  for (const kind of BATCH_KINDS) {
    const batches = all.filter((batch) => batch.kind === kind);
    const labels = batches.map(labelOf);
    const through = rolls.filter((roll) => roll.labels.some((label) => labels.includes(label)));
    for (const evidence of evidenceOf(through, labels)) {
      const batch = batches.find((each) => labelOf(each) === evidence.label);
      const mark = `fault:${evidence.fault}`.slice(0, 200);
      if (!batch || stores.batches.isMarked(batch.id, mark, 0)) continue;
      stores.batches.mark(batch.id, mark, 0, now);
      oweTeachers(
        stores,
        {
          of: (teacher) => ({ kind: "fault", batch: batch.id, fault: shortHash(mark), teacher }),
          classId,
          say: () => evidenceWords(evidence),
        },
        now,
      );
    }
  }
}

/** Seven letters that tell faults apart in a key (FNV-1a). */
function shortHash(text: string): string {
  let hash = 0x811c9dc5;
  for (const letter of text) hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), 0x01000193);
  return (hash >>> 0).toString(36);
}
