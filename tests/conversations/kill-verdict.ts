import { join } from "node:path";
import Database from "better-sqlite3";
import { LATE_FROM_MS } from "../../commands/run/settle.ts";
import type { Film } from "./kill-films.ts";

/* What was said over a round of kills, held against what was owed. */

/** A message is put into words a moment before it is kept; on a busy machine that moment is longer. */
const WORDING_MS = 1000;

interface Cue {
  readonly run_id: number;
  readonly key: string;
  readonly kind: string;
  readonly due_at: number;
  readonly state: string;
  readonly settled_at: number;
}

interface Message {
  readonly id: number;
  readonly key: string | null;
  readonly person_id: string;
  readonly at: number;
  readonly text: string;
  readonly due_at: number;
}

interface Row {
  readonly key: string;
  readonly state: string;
  readonly decided_at: number;
  readonly useful_until: number | null;
  readonly sent_at: number | null;
}

export interface Figures {
  readonly calls: number;
  readonly messages: number;
  readonly merged: number;
  readonly late: number;
  readonly givenUp: number;
}

/** @throws where anything was lost, doubled, early, or not told to be late, with the call it is about. */
export function judge(data: string, films: readonly Film[]): Figures {
  const db = new Database(join(data, "sinkside.db"));
  const found = db.pragma("integrity_check", { simple: true });
  demand(found === "ok", `the store is damaged: ${String(found)}`);
  const cues = groupBy(
    db.prepare("select * from cues where kind != 'nudge' order by due_at, id").all() as Cue[],
    ({ run_id }) => run_id,
  );
  const messages = groupBy(
    db
      .prepare(
        `select id, key, person_id, at, body ->> 'text' as text, body ->> 'dueAt' as due_at from messages
         where body ->> 'kind' in ('cue', 'notice') order by id`,
      )
      .all() as Message[],
    ({ person_id }) => person_id,
  );
  const rows = new Map(
    (db.prepare("select * from outbox where run_id is not null").all() as Row[]).map((row) => [row.key, row]),
  );
  const nudges = new Set(
    (
      db.prepare("select run_id, key from cues where kind = 'nudge'").all() as Pick<Cue, "run_id" | "key">[]
    ).map(keyOf),
  );
  db.close();

  const total = { calls: 0, messages: 0, merged: 0, late: 0, givenUp: 0 };
  for (const film of films) {
    const said = (messages.get(film.personId) ?? []).filter(({ key }) => !nudges.has(key?.slice(2) ?? ""));
    const figures = judgeFilm(film, cues.get(film.runId) ?? [], said, rows);
    for (const name of Object.keys(total) as (keyof Figures)[]) total[name] += figures[name];
    messages.delete(film.personId);
    cues.delete(film.runId);
  }
  demand(messages.size === 0 && cues.size === 0, "something was said or settled that nobody was owed");
  return total;
}

function judgeFilm(
  film: Film,
  cues: readonly Cue[],
  said: readonly Message[],
  rows: ReadonlyMap<string, Row>,
): Figures {
  const plain = (calls: readonly { kind: string; dueAt: number }[]): string =>
    JSON.stringify(calls.map(({ kind, dueAt }) => `${kind} ${dueAt}`).sort());
  const kept = cues.map(({ kind, due_at }) => ({ kind, dueAt: due_at }));
  demand(plain(kept) === plain(film.calls), `not the calls that the plan owes: ${plain(kept)}`);

  const byMoment = new Map(said.map((message) => [message.due_at, message]));
  demand(byMoment.size === said.length, `a call was said twice: ${JSON.stringify(said)}`);
  // The first one said is the first one read.
  const order = said.map(({ due_at }) => due_at);
  demand(order.join() === [...order].sort((a, b) => a - b).join(), `out of order: ${JSON.stringify(said)}`);

  let late = 0;
  let merged = 0;
  let givenUp = 0;
  for (const cue of cues) {
    const about = JSON.stringify(cue);
    const message = byMoment.get(cue.due_at);
    byMoment.delete(cue.due_at);
    if (cue.state === "merged") {
      demand(message === undefined, `merged and said: ${about}`);
      checkMerged(cue, cues, about);
      merged += 1;
      continue;
    }
    demand(cue.state === "said", `neither said nor merged: ${about}`);
    if (!message) {
      checkGivenUp(cue, said, rows.get(keyOf(cue)), about);
      givenUp += 1;
      continue;
    }
    demand(message.key === `d:${keyOf(cue)}`, `under another key: ${about} ${message.key ?? ""}`);
    const row = rows.get(keyOf(cue));
    const whole = `${about} ${JSON.stringify(message)} ${JSON.stringify(row)}`;
    demand(row?.state === "sent", `said, and not on record: ${whole}`);
    checkMoment(message, row?.decided_at ?? NaN, missedBefore(cue, cues), whole);
    if (message.at - cue.due_at >= LATE_FROM_MS) late += 1;
  }
  demand(byMoment.size === 0, `said, but owed to nobody: ${JSON.stringify([...byMoment.values()])}`);
  const end = cues.at(-1);
  demand(end?.kind === "next-bath" && end.state === "said", `no end: ${JSON.stringify(end)}`);
  demand(said.at(-1)?.due_at === end?.due_at, `the end was not said: ${JSON.stringify(end)}`);
  return { calls: cues.length, messages: said.length, merged, late, givenUp };
}

/** Only what was late already, or what the end of the step stands for, is counted in a newer call instead of said. */
function checkMerged(cue: Cue, cues: readonly Cue[], about: string): void {
  const standsFor = cues.find(
    ({ state, settled_at, due_at }) =>
      state === "said" && settled_at === cue.settled_at && due_at >= cue.due_at,
  );
  demand(standsFor !== undefined, `merged into nothing: ${about}`);
  const isLate = cue.settled_at - cue.due_at >= LATE_FROM_MS;
  demand(isLate || standsFor?.kind === "next-bath", `merged though it was on time: ${about}`);
}

/** A call may go unsaid only where it is on record that the next one had overtaken it; what pours out never. */
function checkGivenUp(cue: Cue, said: readonly Message[], row: Row | undefined, about: string): void {
  demand(row?.state === "stale", `lost: ${about} ${JSON.stringify(row)}`);
  demand(cue.kind !== "pour-out" && cue.kind !== "next-bath", `given up: ${about}`);
  demand((row?.sent_at ?? 0) >= (row?.useful_until ?? Infinity), `given up too soon: ${about}`);
  demand(
    said.some(({ due_at }) => due_at > cue.due_at),
    `given up, and nothing said after it: ${about}`,
  );
}

/** How many calls the first one said of those settled together has to tell as missed. */
function missedBefore(cue: Cue, cues: readonly Cue[]): number {
  const together = cues.filter(({ settled_at }) => settled_at === cue.settled_at);
  if (together.find(({ state }) => state === "said") !== cue) return 0;
  return together.filter(
    ({ state, due_at, settled_at }) => state === "merged" && settled_at - due_at >= LATE_FROM_MS,
  ).length;
}

/** What was late when it was decided says so; so does, whatever the record says of that, what was late for longer. */
function checkMoment({ at, due_at, text }: Message, decidedAt: number, missed: number, about: string): void {
  const lateMs = at - due_at;
  demand(lateMs >= 0 && decidedAt >= due_at, `early: ${about}`);
  const isLate = decidedAt - due_at >= LATE_FROM_MS || lateMs >= LATE_FROM_MS + WORDING_MS;
  const told = /\*\*(?:(\d+) min)? ?(?:(\d+) s)? late\*\*: this was for/.exec(text);
  if (isLate) demand(told !== null, `late, and does not say so: ${about}`);
  if (lateMs < LATE_FROM_MS) demand(!text.includes("late**"), `on time, and says it is late: ${about}`);
  if (told) {
    // In whole seconds, as they were when it was put into words.
    const toldMs = (Number(told[1] ?? 0) * 60 + Number(told[2] ?? 0)) * 1000;
    const isTrue = toldMs <= lateMs + 500 && toldMs >= lateMs - WORDING_MS - 500;
    demand(isTrue, `says a wrong lateness: ${about}`);
  }
  const toldMissed = Number(/(\d+) calls? before (?:it|this) (?:was|were) missed/.exec(text)?.[1] ?? 0);
  demand(toldMissed === missed, `missed ${missed}, and says ${toldMissed}: ${about}`);
}

const keyOf = ({ run_id, key }: Pick<Cue, "run_id" | "key">): string => `${run_id.toString(36)}.${key}`;

function groupBy<T, K>(list: readonly T[], keyOfOne: (one: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const one of list) {
    const group = groups.get(keyOfOne(one));
    if (group) group.push(one);
    else groups.set(keyOfOne(one), [one]);
  }
  return groups;
}

function demand(isSo: boolean, otherwise: string): void {
  if (!isSo) throw new Error(otherwise);
}
