import type { Db } from "./open.ts";
import { toMatch } from "./rolls-match.ts";
import type { Roll, RollFilter } from "./shapes/roll.ts";

/* The ways from a filter to the rolls that fit it. */

/** More classes than this are not named one by one. */
const MOST_OTHERS = 30;

interface Asked {
  readonly classId: number;
  readonly match: string;
  readonly fromMs: number;
  readonly untilMs: number;
}

/** Whether it asks for anything but days. */
function isNarrowed(filter: RollFilter): boolean {
  return Object.entries({ ...filter, fromMs: null, untilMs: null }).some(([name, value]) =>
    Array.isArray(value) ? value.length > 0 || name === "fault" : value !== null && value !== false,
  );
}

/**
 * Three ways to the same rolls, by what is asked: dates alone go by the index of dates; anything else by the index of
 * words, with the dates looked at row by row only where there are any.
 */
export function createWays(db: Db) {
  const holdsMost = db.prepare<[number], { yes: number | null }>(
    "select 2 * (select max(number) from rolls where class_id = ?) > (select max(id) from rolls) as yes",
  );
  const others = db.prepare<[number, number], { id: number }>("select id from classes where id <> ? limit ?");
  const make = (from: string, order: string) => ({
    ids: db.prepare<object, { id: number }>(`${from} ${order} limit @limit offset @offset`),
    count: db.prepare<object, { total: number }>(`select count(*) as total from (${from} limit @limit)`),
  });
  const byWords = make(
    "select rowid as id from rolls_text where rolls_text match @match",
    "order by rowid desc",
  );
  const byDate = make(
    "select id from rolls where class_id = @classId and ended_at >= @fromMs and ended_at < @untilMs",
    "order by ended_at desc, id desc",
  );
  const byBoth = make(
    `select rolls.id from rolls_text cross join rolls indexed by rolls_facts on rolls.id = rolls_text.rowid
     where rolls_text match @match and ended_at >= @fromMs and ended_at < @untilMs`,
    "order by rolls_text.rowid desc",
  );

  /** null: the class is found sooner by its own mark. */
  function othersOf(classId: number): number[] | null {
    if (holdsMost.get(classId)?.yes !== 1) return null;
    const ids = others.all(classId, MOST_OTHERS + 1).map(({ id }) => id);
    return ids.length > MOST_OTHERS ? null : ids;
  }

  return {
    ask: (classId: number, filter: RollFilter): Asked => ({
      classId,
      match: toMatch(classId, filter, othersOf(classId)),
      fromMs: filter.fromMs ?? Number.MIN_SAFE_INTEGER,
      untilMs: filter.untilMs ?? Number.MAX_SAFE_INTEGER,
    }),
    of(filter: RollFilter) {
      if (filter.fromMs === null && filter.untilMs === null) return byWords;
      return isNarrowed(filter) ? byBoth : byDate;
    },
  };
}

/**
 * One slice after the other, each begun by the number where the last one ended, so that nothing is open in between: what is
 * written meanwhile disturbs nothing, and no slice takes longer for lying far back. Days are looked at in the rows a slice
 * has anyway: to look for the next that fits could take as long as the whole log.
 */
export function createWalk(db: Db, ways: ReturnType<typeof createWays>) {
  const all = db.prepare<object, WalkedRow>(
    `select ${COLUMNS} from rolls where class_id = @classId and number < @below order by number desc limit @limit`,
  );
  const byWords = db.prepare<object, WalkedRow>(
    `select ${COLUMNS} from rolls_text cross join rolls on rolls.id = rolls_text.rowid
     where rolls_text match @match and rolls_text.rowid <=
       (select id from rolls where class_id = @classId and number < @below order by number desc limit 1)
     order by rolls_text.rowid desc limit @limit`,
  );
  return (classId: number, filter: RollFilter, below: number, limit: number) => {
    const rows = isNarrowed(filter)
      ? byWords.all({ ...ways.ask(classId, filter), below, limit })
      : all.all({ classId, below, limit });
    const { fromMs, untilMs } = filter;
    return {
      rows: rows.filter(({ endedAt: at }) => at >= (fromMs ?? at) && (untilMs === null || at < untilMs)),
      next: rows.length < limit ? null : (rows.at(-1)?.number ?? null),
    };
  };
}

type WalkedRow = Omit<Roll, "body"> & { body: string };

const COLUMNS = `rolls.id, rolls.class_id as "classId", rolls.number, rolls.run_id as "runId", rolls.person_id as "personId",
  rolls.person_name as "personName", rolls.film, rolls.developer, rolls.dilution, rolls.tank, rolls.batches, rolls.outcome,
  rolls.ended_at as "endedAt", rolls.late_cues as "lateCues", rolls.rating, rolls.fault, rolls.note, rolls.body`;
