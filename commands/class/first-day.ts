import { chatOf } from "../../store/shapes/chat-key.ts";
import type { BatchKind } from "../../store/shapes/batch.ts";
import { FIRST_STEPS, type FirstStep, type SchoolClass } from "../../store/shapes/school.ts";
import type { Stores } from "../../store/index.ts";

/*
 * What a new class needs before its first film, in the order in which it is done. Whether a step is done stands in what the
 * class has: only "later" is kept of the list itself.
 */

/** Without these no film gets through. */
const NEEDED_KINDS = ["developer", "fixer"] as const satisfies readonly BatchKind[];
export type NeededKind = (typeof NEEDED_KINDS)[number];

export interface FirstDayFacts {
  readonly class: SchoolClass;
  readonly tanks: number;
  readonly sheets: number;
  /** Of what is needed, what is in no bottle and on no shelf. */
  readonly missing: readonly NeededKind[];
  /** What students come in with; null where a chat has its own door. */
  readonly joinCode: string | null;
  /** Whether somebody has found the way in who doesn't teach. */
  readonly hasStudents: boolean;
  readonly hasChannel: boolean;
  readonly hasTrial: boolean;
}

export type StepState = "done" | "later" | "open";

export interface FirstDayStep {
  readonly key: FirstStep;
  readonly state: StepState;
}

/** Every step as it stands. */
export function firstDayOf(facts: FirstDayFacts): FirstDayStep[] {
  const { later } = facts.class.habits;
  return FIRST_STEPS.map((key) => ({
    key,
    state: isDone(key, facts) ? "done" : later.includes(key) ? "later" : "open",
  }));
}

function isDone(key: FirstStep, facts: FirstDayFacts): boolean {
  const { answered } = facts.class.habits;
  switch (key) {
    case "name":
      return answered.includes("name") && answered.includes("zone");
    case "tanks":
      return facts.tanks > 0;
    case "times":
      return facts.sheets > 0;
    case "bottles":
      return facts.missing.length === 0;
    case "code":
      return facts.joinCode === null ? facts.hasChannel : facts.hasStudents;
    case "trial":
      return facts.hasTrial;
  }
}

/** The one to do now; undefined: none is left, but for what is put off. */
export const nextFirstStep = (facts: FirstDayFacts): FirstStep | undefined =>
  firstDayOf(facts).find(({ state }) => state === "open")?.key;

/** undefined: this class is past its first day, or invented. */
export function firstDayFacts(stores: Stores, classId: number): FirstDayFacts | undefined {
  // Read anew: a call may just have changed it.
  const school = stores.classes.get(classId);
  if (!school || school.demo || stores.rolls.hasAny(classId)) return undefined;
  const isRoom = chatOf(school.key) === "room";
  return {
    class: school,
    tanks: stores.tanks.list(classId).length,
    sheets: stores.sheets.list(classId).length,
    missing: missingKinds(stores, classId),
    joinCode: isRoom ? (stores.rooms.secret(classId, "join") ?? null) : null,
    hasStudents: stores.members.list(classId).some(({ role }) => role === "student"),
    hasChannel: school.habits.answered.includes("channel") && stores.classes.channelRef(classId) !== null,
    hasTrial: stores.runs.hasTrial(classId),
  };
}

function missingKinds({ batches, shelf }: Stores, classId: number): NeededKind[] {
  const has = new Set<BatchKind>([
    ...batches.standing(classId).map(({ kind }) => kind),
    ...shelf.list(classId).flatMap(({ pack, leftMl }) => (leftMl > 0 ? [pack.kind] : [])),
  ]);
  return NEEDED_KINDS.filter((kind) => !has.has(kind));
}
