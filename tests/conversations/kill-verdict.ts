import { join } from "node:path";
import Database from "better-sqlite3";
import type { Heard } from "./kill-client.ts";
import type { Film } from "./kill-films.ts";
import { demand, judgeHeard, type HeardCall, type Tally } from "./kill-heard.ts";

/*
 * What was said over a round of kills, held against what was owed. Where a page outside listened, its own record has the last
 * word; the others' is what a page of theirs would be given.
 */

interface Cue {
  readonly run_id: number;
  readonly kind: string;
  readonly due_at: number;
  readonly state: string;
}

/** Whoever does not answer the last call is asked so long after it whether the next bath is in. */
const NUDGE_MS = 20_000;

type Message = HeardCall & { readonly id: number; readonly personId: string };

export interface Figures extends Tally {
  /** Of the calls heard, so many in the record of a page outside. */
  readonly outside: number;
}

export const NONE: Figures = { calls: 0, heard: 0, missed: 0, late: 0, toldInVain: 0, outside: 0 };

/** @throws where anything was lost, doubled, early, or not told, with the call it is about. */
export function judge(
  data: string,
  films: readonly Film[],
  outside: ReadonlyMap<string, readonly Heard[]>,
): Figures {
  const { cues, messages } = readStore(data);
  let total = NONE;
  for (const film of films) {
    const isOfFilm = ({ dueAt }: HeardCall): boolean => dueAt < (film.calls.at(-1)?.dueAt ?? 0) + NUDGE_MS;
    const kept = (messages.get(film.personId) ?? []).filter(isOfFilm);
    const heard = outside.get(film.personId)?.filter(isOfFilm);
    if (heard) checkRecord(heard, kept);
    checkSettled(film, cues.get(film.runId) ?? []);
    total = add(total, { ...judgeHeard(film.calls, heard ?? kept), outside: heard?.length ?? 0 });
    messages.delete(film.personId);
    cues.delete(film.runId);
  }
  demand(messages.size === 0 && cues.size === 0, "something was said or settled that nobody was owed");
  return total;
}

export function add(one: Figures, other: Figures): Figures {
  const sum = { ...one };
  for (const name of Object.keys(NONE) as (keyof Figures)[])
    Object.assign(sum, { [name]: one[name] + other[name] });
  return sum;
}

function readStore(data: string) {
  const db = new Database(join(data, "sinkside.db"));
  const found = db.pragma("integrity_check", { simple: true });
  demand(found === "ok", `the store is damaged: ${String(found)}`);
  const cues = groupBy(
    db
      .prepare("select * from cues where kind != 'nudge' and state != 'dropped' order by due_at, id")
      .all() as Cue[],
    ({ run_id }) => run_id,
  );
  const messages = groupBy(
    db
      .prepare(
        `select id, person_id as personId, at, body ->> 'text' as text, body ->> 'dueAt' as dueAt from messages
         where body ->> 'kind' in ('cue', 'notice') order by id`,
      )
      .all() as Message[],
    ({ personId }) => personId,
  );
  db.close();
  return { cues, messages };
}

/** What a page got is what was kept, and nobody got it before its moment. */
function checkRecord(heard: readonly Heard[], kept: readonly Message[]): void {
  const plain = (calls: readonly (HeardCall & { id: number })[]): string =>
    JSON.stringify(calls.map(({ id, dueAt, at, text }) => [id, dueAt, at, text]));
  demand(plain(heard) === plain(kept), `got ${plain(heard)}, kept are ${plain(kept)}`);
  const early = heard.find(({ readAt, dueAt }) => readAt < dueAt);
  demand(early === undefined, `read early: ${JSON.stringify(early)}`);
}

/** The bot's own table holds each call that the plan owes, and none of them waits any more. */
function checkSettled(film: Film, cues: readonly Cue[]): void {
  const plain = (calls: readonly { kind: string; dueAt: number }[]): string =>
    JSON.stringify(calls.map(({ kind, dueAt }) => `${kind} ${dueAt}`).sort());
  const kept = cues.map(({ kind, due_at }) => ({ kind, dueAt: due_at }));
  const owed = film.calls.filter(({ kind }) => kind !== "wash-anew");
  demand(plain(kept) === plain(owed), `not the calls that the plan owes: ${plain(kept)}`);
  const open = cues.find(({ state }) => state !== "said" && state !== "merged");
  demand(open === undefined, `neither said nor merged: ${JSON.stringify(open)}`);
}

function groupBy<T, K>(list: readonly T[], keyOfOne: (one: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const one of list) {
    const group = groups.get(keyOfOne(one));
    if (group) group.push(one);
    else groups.set(keyOfOne(one), [one]);
  }
  return groups;
}
