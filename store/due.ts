import type { Place } from "./classes.ts";
import { type Language, languageRead } from "./shapes/language.ts";
import type { CueKind, DueCue } from "./shapes/cue.ts";
import type { Run } from "./shapes/run.ts";
import type { Reach } from "./shapes/reach.ts";
import type { Db } from "./open.ts";
import type { RunStore } from "./runs.ts";

/*
 * What is due. All that a call is made of is read in one go: of most runs one cue is due, and each look at a table costs as
 * much. Rows come as lists, since to name each of their columns again takes a quarter of the time.
 */

/** A run with what is due of it, and whom its calls reach. */
export interface DueRun {
  readonly cues: DueCue[];
  /** So long before they are due they are decided. */
  readonly leadMs: number;
  readonly language: Language;
  readonly reach: Reach;
  readonly place: Place;
  /** @throws where its row can't be read. */
  run(): Run;
}

export interface Span {
  readonly now: number;
  /** The last moment that is looked at. */
  readonly most: number;
}

/** Columns of a strict table hold what was written; they are not examined with every call. */
export const CUE_COLUMNS = `cues.id, key, kind, step, cues.number, due_at as "dueAtMs", made_at as "madeAtMs"`;

type Row = readonly [
  ...cue: [id: number, key: string, kind: CueKind, step: number, number: number],
  ...moments: [dueAtMs: number, madeAtMs: number, decideAtMs: number],
  ...run: [id: number, number: number, classId: number, personId: string, startedAtMs: number],
  ...texts: [body: string, phase: string, tag: string | null],
  ...reach: [isMember: number, hasPhone: number],
  ...place: [key: string, channelRef: string | null],
];

interface DueReader {
  /** By the run's id, the runs of so many cues, the most overdue first. Of a run that the limit cuts more may be due. */
  next(span: Span & { readonly limit: number }): Map<number, DueRun>;
  /** All that is due of one run. */
  allOf(span: Span & { readonly runId: number }): DueCue[];
}

export function createDueReader(db: Db, runs: Pick<RunStore, "read">): DueReader {
  // A lead is what sets the two instants of a cue apart; without one it is never decided ahead. Nor is the end of a step,
  // since the run moves on with it.
  const isDue = `state = 'pending' and decide_at <= @most and (decide_at <= @now
     or (decide_at < due_at and due_at <= @most and cues.kind <> 'next-bath'))`;
  const ofPerson = "class_id = runs.class_id and person_id = runs.person_id";
  // Indexes and the order are given, since the planner would else walk past every cue that is not due. A limit that is a variable and
  // nothing else has the whole statement compiled anew each time, which takes ten times as long as doing it.
  const next = db
    .prepare<[object], Row>(
      `select cues.id, cues.key, kind, step, cues.number, due_at, made_at, decide_at,
         runs.id, runs.number, runs.class_id, runs.person_id, started_at, body, phase,
         coalesce(chosen_language, language), members.person_id is not null,
         exists (select 1 from push_subscriptions where ${ofPerson}), classes.key, channel_ref
       from cues indexed by cues_due
         cross join runs on runs.id = cues.run_id
         join classes on classes.id = runs.class_id
         left join members on members.class_id = runs.class_id and members.person_id = runs.person_id
       where ${isDue} order by decide_at, cues.id limit 0 + @limit`,
    )
    .raw();
  const allOf = db.prepare<[object], DueCue>(
    `select ${CUE_COLUMNS} from cues indexed by cues_run where run_id = @runId and ${isDue} order by decide_at, id`,
  );
  return {
    next(span) {
      const byRun = new Map<number, DueRun>();
      for (const row of next.all(span)) {
        const same = byRun.get(row[8]);
        if (same) same.cues.push(cueOf(row));
        else byRun.set(row[8], runOf(row, runs));
      }
      return byRun;
    },
    allOf: (span) => allOf.all(span),
  };
}

function cueOf([id, key, kind, step, number, dueAtMs, madeAtMs]: Row): DueCue {
  return { id, key, kind, step, number, dueAtMs, madeAtMs };
}

function runOf(row: Row, runs: Pick<RunStore, "read">): DueRun {
  const [, , , , , dueAtMs, , decideAtMs, id, number, classId, personId, startedAtMs, ...rest] = row;
  const [body, phase, tag, isMember, hasPhone, classKey, channelRef] = rest;
  return {
    cues: [cueOf(row)],
    leadMs: dueAtMs - decideAtMs,
    language: languageRead(tag),
    reach: { classId, isMember, hasPhone },
    place: { key: classKey, channelRef },
    run: () => runs.read({ id, number, classId, personId, startedAtMs, body, phase }),
  };
}
