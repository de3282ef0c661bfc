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

/** Columns of a strict table hold what was written; they are not examined with every call. */
export const CUE_COLUMNS = `cues.id, key, kind, step, cues.number, due_at as "dueAtMs", made_at as "madeAtMs"`;

type Row = RunRow &
  Reach & { [Key in keyof DueCue as `cue_${Key}`]: DueCue[Key] } & {
    readonly tag: string | null;
    readonly decideAt: number;
  };
type Cut = Span & { readonly at: number; readonly id: number; readonly runs: string };

/** By the run's id, the most overdue first. */
export function createDueReader(db: Db, runs: Pick<RunStore, "read">): (span: Span) => Map<number, DueRun> {
  // A lead is what sets the two instants of a cue apart; without one it is never decided ahead. Nor is the end of a step,
  // since the run moves on with it.
  const isDue = `state = 'pending' and decide_at <= @most and (decide_at <= @now
     or (decide_at < due_at and due_at <= @most and cues.kind <> 'next-bath'))`;
  const ofPerson = "class_id = runs.class_id and person_id = runs.person_id";
  // Indexes and the order are given, since the planner would else walk past every cue that is not due. A limit that is a variable and
  // nothing else has the whole statement compiled anew each time, which takes ten times as long as doing it.
  const due = db.prepare<[Span], Row>(
    `select cues.id as "cue_id", key as "cue_key", kind as "cue_kind", step as "cue_step", cues.number as "cue_number",
       due_at as "cue_dueAtMs", made_at as "cue_madeAtMs", decide_at as "decideAt",
       runs.id, runs.number, runs.class_id as "classId", runs.person_id as "personId", started_at as "startedAtMs", body, phase,
       coalesce(chosen_language, language) as tag, members.person_id is not null as "isMember",
       exists (select 1 from push_subscriptions where ${ofPerson}) as "hasPhone"
     from cues indexed by cues_due
       cross join runs on runs.id = cues.run_id
       left join members on members.class_id = runs.class_id and members.person_id = runs.person_id
     where ${isDue} order by decide_at, cues.id limit 0 + @limit`,
  );
  const rest = db.prepare<[Cut], DueCue & { readonly runId: number }>(
    `select ${CUE_COLUMNS}, run_id as "runId" from cues indexed by cues_run
     where run_id in (select value from json_each(@runs)) and ${isDue} and (decide_at, id) > (@at, @id) order by decide_at, id`,
  );
  return (span) => {
    const byRun = new Map<number, DueRun>();
    const rows = due.all(span);
    for (const row of rows) {
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
    const last = rows.at(-1);
    if (!last || rows.length < span.limit) return byRun;
    // Where the limit cuts, a run is taken with all of it that is due: what is late stands for what came before it.
    const cut = { ...span, at: last.decideAt, id: last.cue_id, runs: JSON.stringify([...byRun.keys()]) };
    for (const { runId, ...cue } of rest.all(cut)) byRun.get(runId)?.cues.push(cue);
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
