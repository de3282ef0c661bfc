import { keepRun } from "../../commands/run/keep.ts";
import { advance } from "../../commands/run/machine.ts";
import type { Plan } from "../../store/shapes/plan.ts";
import type { OpenedStores } from "../../store/index.ts";
import { aPlan, aRun, aStep } from "../support/make.ts";

/* Classes in the middle of developing, written straight into a store. All of it is invented. */

export interface SeedPerson {
  readonly id: string;
  /** The channel in which this person is spoken to alone; null where direct messages are refused. */
  readonly direct: string | null;
}

export interface SeedClass {
  readonly key: string;
  readonly channelRef: string | null;
  readonly people: readonly SeedPerson[];
}

/** One call a minute for ten minutes. */
export function planWithCallEachMinute(): Plan {
  const agitation = {
    initialSeconds: 30,
    cycleSeconds: 60,
    burstSeconds: 5,
    manner: "inversion",
    taps: 2,
  } as const;
  const steps = [
    aStep({ kind: "develop", seconds: 660, agitation, pourOutSeconds: 10 }),
    aStep({ kind: "rinse", ordinal: 1 }),
    aStep({ kind: "fix", seconds: 300, agitation, pourOutSeconds: 10 }),
  ];
  return aPlan({ steps });
}

/** `startOf` gives the instant at which a person's developer went in. Calls before `now` are over. */
export function seedClasses(
  stores: OpenedStores,
  classes: readonly SeedClass[],
  startOf: (classIndex: number, position: number) => number,
  now: number,
): void {
  const plan = planWithCallEachMinute();
  const secret = stores.db.prepare(
    "insert into room_secrets (class_id, kind, value, changed_at) values (?, ?, ?, ?)",
  );
  stores.atomically(() => {
    for (const [index, { key, channelRef, people }] of classes.entries()) {
      const { id: classId } = stores.classes.add(key, `Class ${index}`, "UTC", false, now);
      if (channelRef !== null) stores.classes.setChannelRef(classId, channelRef);
      // A class without passphrases would be given some at the start, which takes its while each.
      if (key.startsWith("room:"))
        for (const kind of ["join", "teacher", "aide"]) secret.run(classId, kind, `${kind}${index}`, now);
      for (const [position, { id: personId, direct }] of people.entries()) {
        stores.members.see(classId, { id: personId, name: `Person ${position}` }, "student", now);
        if (direct === null) stores.members.saveDirectRefused(personId, now + 24 * 3_600_000);
        else stores.members.saveDirectChannel(personId, direct);
        const { id: _id, number: _number, ...draft } = aRun({ classId, personId, plan, startedAtMs: now });
        const atMs = Math.floor(startOf(index, position));
        const begun = advance(stores.runs.add(draft), { kind: "next", step: 0, sure: false, atMs });
        if (!begun.ok) throw new Error(begun.fault.code);
        keepRun(stores, begun.value, now);
      }
    }
  });
}
