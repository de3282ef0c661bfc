import { z } from "zod";
import { PLAN_LIVES_MS } from "./shapes/plan.ts";
import { shiftRun } from "./shapes/run-shift.ts";
import type { Db } from "./open.ts";
import type { RunStore } from "./runs.ts";

const anchorSchema = z.object({
  bootId: z.string(),
  wallMs: z.number(),
  monoMs: z.number(),
  uptimeMs: z.number().nullable(),
});

export interface TimeStore {
  anchor(): z.output<typeof anchorSchema> | undefined;
  saveAnchor(anchor: z.output<typeof anchorSchema>): void;
  /**
   * Moves every instant that is under way by `byMs`: runs that are not over, cues that wait, what is still to be said.
   * What is past stays as it was written. One transaction with the anchor, so that it can't be done twice.
   */
  shift(byMs: number, anchor: z.output<typeof anchorSchema>): void;
}

export function createTimeStore(db: Db, runs: RunStore): TimeStore {
  const read = db.prepare<[], { value: string }>("select value from settings where name = 'clock'");
  const write = db.prepare<[string]>(
    "insert into settings (name, value) values ('clock', ?) on conflict do update set value = excluded.value",
  );
  const openIds = db.prepare<[], { id: number }>(
    "select id from runs where phase_kind in ('waiting', 'running')",
  );
  const starts = db.prepare<[number, number]>("update runs set started_at = started_at + ? where id = ?");
  // Which plan a run was begun from is told by the order of the two: no plan must come to lie on the other side of its run.
  const plans = db.prepare<[{ by: number; lives: number }]>(
    `update plans set made_at = made_at + @by where exists (
       select 1 from runs where phase_kind in ('waiting', 'running')
         and runs.class_id = plans.class_id and runs.person_id = plans.person_id
         and iif(@by < 0, plans.made_at between runs.started_at - @lives and runs.started_at,
           plans.made_at > runs.started_at))`,
  );
  const cues = db.prepare(
    `update cues set due_at = due_at + @by, decide_at = decide_at + @by, made_at = made_at + @by where state = 'pending'`,
  );
  const outbox = db.prepare(
    `update outbox set due_at = due_at + @by, decided_at = decided_at + @by, next_at = next_at + @by,
       first_try_at = first_try_at + @by, useful_until = useful_until + @by
     where state in ('owed', 'sending')`,
  );
  const pushes = db.prepare(
    "update push_owed set due_at = due_at + @by, next_at = next_at + @by, useful_until = useful_until + @by",
  );
  const saveAnchor: TimeStore["saveAnchor"] = (anchor) => void write.run(JSON.stringify(anchor));
  /** One that can't be read has no clock to be set; the others have. */
  function shiftOne(id: number, byMs: number): void {
    try {
      const run = runs.get(id);
      if (run) runs.save(shiftRun(run, byMs));
    } catch (error) {
      if (!(error instanceof z.ZodError)) throw error;
    }
  }
  const shift = db.transaction((byMs: number, anchor: z.output<typeof anchorSchema>) => {
    plans.run({ by: byMs, lives: PLAN_LIVES_MS });
    for (const { id } of openIds.all()) {
      shiftOne(id, byMs);
      starts.run(byMs, id);
    }
    cues.run({ by: byMs });
    pushes.run({ by: byMs });
    outbox.run({ by: byMs });
    saveAnchor(anchor);
  });
  return {
    anchor() {
      const row = read.get();
      const parsed = row && anchorSchema.safeParse(JSON.parse(row.value));
      return parsed?.success ? parsed.data : undefined;
    },
    saveAnchor,
    shift: (byMs, anchor) => void shift.immediate(byMs, anchor),
  };
}
