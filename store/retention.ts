import type { Db } from "./open.ts";
import { parseMessageKey } from "./shapes/message-key.ts";

/*
 * What is finished and old enough is cleared, a portion at a time. What stays: the log, its photos, the ledgers and the marks of
 * warnings with their bottles, sheets, tanks, people, whatever belongs to a run that is not over, and what a repeat is still
 * recognised by.
 */

/** In this order: what hangs on a run goes before it. */
export const CLEARED = [
  "cues",
  "says",
  "outbox",
  "messages",
  "presses",
  "plans",
  "runs",
  "imports",
  "erasures",
  "calls",
  "sessions",
] as const;
export type Cleared = (typeof CLEARED)[number];

/** What was finished before these instants goes. */
export type Cutoffs = Readonly<Record<Cleared, number>>;

export interface Portion {
  readonly cleared: number;
  /** Where to go on; undefined: all the rest is too young. */
  readonly next: number | undefined;
}

export interface RetentionStore {
  /** Looks at `most` rows from `after` on and clears those that are finished; inside `atomically` only. */
  clear(kind: Cleared, after: number, cutoffs: Cutoffs, now: number, most: number): Portion;
}

interface Looked {
  readonly id: number;
  readonly at: number;
  readonly isOver: 0 | 1;
  readonly key: string | null;
}

interface Walk {
  readonly table: string;
  /** When it was finished, or begun where it is not. */
  readonly at: string;
  readonly isOver: string;
  readonly key?: string;
}

const runIsOver = (table: string): string =>
  `exists (select 1 from runs where runs.id = ${table}.run_id and phase_kind in ('finished', 'stopped'))`;

/** Tables whose rows come in order of their age: they are walked through from the oldest on. */
const WALKS: Readonly<Record<Exclude<Cleared, "calls" | "sessions">, Walk>> = {
  cues: {
    table: "cues",
    at: "coalesce(settled_at, made_at)",
    isOver: `state <> 'pending' and ${runIsOver("cues")}`,
  },
  // The newest stays: who has received it is asked for without its number, and no number comes twice.
  says: {
    table: "says",
    at: "said_at",
    isOver:
      "exists (select 1 from says newer where newer.class_id = says.class_id and newer.number > says.number)",
  },
  outbox: {
    table: "outbox",
    at: "coalesce(sent_at, decided_at)",
    isOver: `state in ('sent', 'failed', 'stale') and (run_id is null or ${runIsOver("outbox")})`,
    key: "key",
  },
  messages: { table: "messages", at: "at", isOver: "true" },
  presses: { table: "sink_presses", at: "at", isOver: "true" },
  // A run keeps its plan within itself.
  plans: { table: "plans", at: "made_at", isOver: "true" },
  runs: {
    table: "runs",
    at: "coalesce(phase ->> 'atMs', started_at)",
    isOver: `phase_kind in ('finished', 'stopped')
      and not exists (select 1 from cues where run_id = runs.id) and not exists (select 1 from outbox where run_id = runs.id)`,
  },
  // The newest stays, since no number comes twice.
  imports: {
    table: "sheet_imports",
    at: "at",
    isOver:
      "exists (select 1 from sheet_imports newer where newer.class_id = sheet_imports.class_id and newer.number > sheet_imports.number)",
  },
  erasures: { table: "erasures", at: "coalesce(swept_at, asked_at)", isOver: "swept_at is not null" },
};

/** Further ahead than this nothing can have been written, unless the clock was set: that must not hide what comes after it. */
const AHEAD_MS = 24 * 3_600_000;

export function createRetentionStore(db: Db): RetentionStore {
  const walks = Object.entries(WALKS).map(([kind, { table, at, isOver, key = "null" }]) => {
    const look = db.prepare<[number, number], Looked>(
      `select id, ${at} as at, ${isOver} as "isOver", ${key} as key from ${table} where id > ? order by id limit ?`,
    );
    const drop = db.prepare<[string]>(`delete from ${table} where id in (select value from json_each(?))`);
    return [kind, { look, drop }] as const;
  });
  const byKind = new Map(walks);
  const aged = {
    calls: db.prepare<[number, number]>(
      "delete from calls where call_id in (select call_id from calls where at < ? order by at limit ?)",
    ),
    sessions: db.prepare<[number, number]>(
      "delete from room_sessions where token_hash in (select token_hash from room_sessions where seen_at < ? limit ?)",
    ),
  };
  const sayIds = db.prepare<[], { id: number }>("select id from says");
  const openIds = db.prepare<[], { id: number }>(
    "select id from runs where phase_kind in ('waiting', 'running')",
  );

  /** Messages that must not be said again while their run is open, and those of which it is still asked whom they reached. */
  function findHeld(): (key: string) => boolean {
    const says = new Set(sayIds.all().map(({ id }) => id));
    const open = new Set(openIds.all().map(({ id }) => id));
    return (text) => {
      const key = parseMessageKey(text);
      if (key?.kind === "say") return says.has(key.say);
      return key?.kind === "redirect" && open.has(key.run);
    };
  }

  return {
    clear(kind, after, cutoffs, now, most) {
      const before = cutoffs[kind];
      if (kind === "calls" || kind === "sessions") {
        const { changes } = aged[kind].run(before, most);
        return { cleared: changes, next: changes === most ? 0 : undefined };
      }
      const walk = byKind.get(kind);
      const looked = walk?.look.all(after, most) ?? [];
      const old = looked.filter(({ at, isOver }) => at < before && isOver === 1);
      const isHeld = old.some(({ key }) => key !== null) ? findHeld() : () => false;
      const ids = old.filter(({ key }) => key === null || !isHeld(key)).map(({ id }) => id);
      if (ids.length > 0) walk?.drop.run(JSON.stringify(ids));
      const isYoung = looked.every(({ at }) => at >= before && at < now + AHEAD_MS);
      const isEnd = looked.length < most || isYoung;
      return { cleared: ids.length, next: isEnd ? undefined : looked.at(-1)?.id };
    },
  };
}
