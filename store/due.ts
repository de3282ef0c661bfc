import { type Language, languageRead } from "./shapes/language.ts";
import type { DueCue } from "./shapes/cue.ts";
import type { Run } from "./shapes/run.ts";
import type { Reach } from "./shapes/reach.ts";
import type { Db } from "./open.ts";
import type { RunRow, RunStore } from "./runs.ts";

/* What is due. All that a call is made of is read in one go: of most runs one cue is due, and each look at a table costs as much. */

/** A run with all of it that is due, and whom its calls reach. */
export interface DueRun {
  readonly cues: DueCue[];
  readonly language: Language;
  readonly reach: Reach;
  /** @throws where its row can't be read. */
  run(): Run;
}

export interface Span {
  readonly now: number;
  /** The last moment that is looked at. */
  readonly most: number;
  /** How many cues, at least, are looked for. */
  readonly limit: number;
}

type Row = RunRow &
  Reach & { [Key in keyof DueCue as `cue_${Key}`]: DueCue[Key] } & { readonly tag: string | null };

/** By the run's id, the most overdue first. */
export function createDueReader(db: Db, runs: Pick<RunStore, "read">): (span: Span) => Map<number, DueRun> {
  // A lead is what sets the two instants of a cue apart; without one it is never decided ahead. Nor is the end of a step,
  // since the run moves on with it.
  const isDue = `decide_at <= @most and (decide_at <= @now
     or (decide_at < due_at and due_at <= @most and cues.kind <> 'next-bath'))`;
  const ofPerson = "class_id = runs.class_id and person_id = runs.person_id";
  // Indexes and the order are given, since the planner would else walk past every cue that is not due. A limit that is a variable and
  // nothing else has the whole statement compiled anew each time, which takes ten times as long as doing it.
  const due = db.prepare<[Span], Row>(
    `with late as materialized (
       select run_id from cues indexed by cues_due where state = 'pending' and ${isDue} order by decide_at, id limit 0 + @limit)
     select cues.id as "cue_id", key as "cue_key", kind as "cue_kind", step as "cue_step", cues.number as "cue_number",
       due_at as "cue_dueAtMs", made_at as "cue_madeAtMs",
       runs.id, runs.number, runs.class_id as "classId", runs.person_id as "personId", started_at as "startedAtMs", body, phase,
       coalesce(chosen_language, language) as tag, members.person_id is not null as "isMember",
       exists (select 1 from push_subscriptions where ${ofPerson}) as "hasPhone"
     from cues indexed by cues_run
       cross join runs on runs.id = cues.run_id
       left join members on members.class_id = runs.class_id and members.person_id = runs.person_id
     where run_id in late and state = 'pending' and ${isDue} order by decide_at, due_at, cues.id`,
  );
  return (span) => {
    const byRun = new Map<number, DueRun>();
    for (const row of due.all(span)) {
      const cue = cueOf(row);
      const same = byRun.get(row.id);
      if (same) same.cues.push(cue);
      else
        byRun.set(row.id, {
          cues: [cue],
          language: languageRead(row.tag),
          reach: row,
          run: () => runs.read(row),
        });
    }
    return byRun;
  };
}

function cueOf(row: Row): DueCue {
  return {
    id: row.cue_id,
    key: row.cue_key,
    kind: row.cue_kind,
    step: row.cue_step,
    number: row.cue_number,
    dueAtMs: row.cue_dueAtMs,
    madeAtMs: row.cue_madeAtMs,
  };
}
