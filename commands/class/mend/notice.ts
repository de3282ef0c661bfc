import type { Stores } from "../../../store/index.ts";
import { IN_USE, type Unreadable } from "../../../store/shapes/unreadable.ts";
import { owe, oweTeachers } from "../../owe.ts";
import { ownerNotice, teacherNotice } from "./reply.ts";

/* Rows that can't be read are told of unasked, once: the teachers of all in use, the owner of a run of theirs. */

/** Reads every row that the class works with; inside `atomically`. */
export function tellUnreadable(stores: Stores, classId: number, now: number): void {
  const rows = stores.unreadable.list(classId, IN_USE).filter(({ kind, isOpen }) => kind !== "run" || isOpen);
  if (rows.length === 0) return;
  for (const row of rows) if (row.kind === "run") tellOwner(stores, classId, row, now);
  const which = hash(rows.map(({ kind, id, name }) => `${kind} ${id} ${name}`).join("|"));
  oweTeachers(
    stores,
    {
      of: (teacher) => ({ kind: "unreadable", class: classId, which, teacher }),
      classId,
      say: () => teacherNotice(rows),
    },
    now,
  );
}

/** A run whose calls can't be settled, where that is since it can't be read; inside `atomically`. */
export function tellLostRun(stores: Stores, runId: number, now: number): void {
  const classId = stores.unreadable.classOfRun(runId);
  if (classId !== undefined) tellUnreadable(stores, classId, now);
}

function tellOwner(stores: Stores, classId: number, row: Unreadable, now: number): void {
  if (row.personId === null) return;
  const of = { kind: "lost", run: row.id } as const;
  owe(stores, { of, classId, personId: row.personId, say: () => ({ text: ownerNotice(row) }) }, now);
}

/** Seven letters that tell one set of rows from another in a key (FNV-1a). */
function hash(text: string): string {
  let sum = 0x811c9dc5;
  for (const letter of text) sum = Math.imul(sum ^ (letter.codePointAt(0) ?? 0), 0x01000193);
  return (sum >>> 0).toString(36);
}
