import { LATE_FROM_MS } from "../../commands/run/settle.ts";

/*
 * What one person got of the calls of a film, held against what the plan owes them; nothing of the bot's own record is asked.
 * Every call is heard, or counted as missed by the very next one that is.
 */

/** A message is put into words a moment before it is kept; on a busy machine that moment is longer. */
const WORDING_MS = 1000;

export interface OwedCall {
  readonly kind: string;
  /** Ms since the epoch. */
  readonly dueAt: number;
}

export interface HeardCall {
  readonly dueAt: number;
  /** When it was said. */
  readonly at: number;
  readonly text: string;
}

export interface Tally {
  /** Calls owed. */
  readonly calls: number;
  readonly heard: number;
  /** Told as missed, by a later one. */
  readonly missed: number;
  readonly late: number;
  /** Heard, and told as missed all the same, since it could not be known: only where a chat's answer may be lost. */
  readonly toldInVain: number;
}

/** What a chat promises of when its calls come. */
export interface Manner {
  /** @throws where a call says what is not so of its moment. */
  checkMoment(call: HeardCall, about: string): void;
  /** Whether an answer can be lost, so that a call of which nobody knows is told as missed. */
  readonly losesAnswers: boolean;
}

/** The page: never early. */
export const ON_PAGE: Manner = { checkMoment, losesAnswers: false };

/**
 * `owed` and `heard` in order of time; of owed calls no two are due at one moment.
 * @throws where one is lost, doubled, out of order, early, or late or missed untold, with the call it is about.
 */
export function judgeHeard(
  owed: readonly OwedCall[],
  heard: readonly HeardCall[],
  manner: Manner = ON_PAGE,
): Tally {
  const moments = owed.map(({ dueAt }) => dueAt);
  let next = 0;
  let missed = 0;
  let late = 0;
  let toldInVain = 0;
  let untold = 0;
  for (const call of heard) {
    const about = JSON.stringify({ call, owed, heard });
    const index = moments.indexOf(call.dueAt);
    demand(index >= 0, `owed to nobody: ${about}`);
    demand(index >= next, `doubled, or out of order: ${about}`);
    const between = index - next;
    const told = missedIn(call.text);
    const most = manner.losesAnswers ? between + untold : between;
    demand(
      told >= between && told <= most,
      `${between} before it were not heard, and it says ${told}: ${about}`,
    );
    toldInVain += told - between;
    // If nobody knows of this one either, the next tells what it told once more, and it as well.
    untold = (told > between ? 0 : untold) + told + 1;
    const lost = owed.slice(next, index).find(({ kind }) => kind === "pour-out" || kind === "next-bath");
    // A tank is poured out late rather than never; only the end of the step may stand for it.
    demand(lost === undefined || owed[index]?.kind === "next-bath", `no call to pour out: ${about}`);
    manner.checkMoment(call, about);
    if (call.at - call.dueAt >= LATE_FROM_MS) late += 1;
    missed += told;
    next = index + 1;
  }
  demand(next === owed.length, `lost: ${JSON.stringify({ owed, heard })}`);
  return { calls: owed.length, heard: heard.length, missed, late, toldInVain };
}

export function addTallies(one: Tally, other: Tally): Tally {
  return {
    calls: one.calls + other.calls,
    heard: one.heard + other.heard,
    missed: one.missed + other.missed,
    late: one.late + other.late,
    toldInVain: one.toldInVain + other.toldInVain,
  };
}

export function missedIn(text: string): number {
  return Number(/(\d+) calls? before (?:it|this) (?:was|were) missed/.exec(text)?.[1] ?? 0);
}

/** Never early; what comes late says so, and by how much. */
function checkMoment({ at, dueAt, text }: HeardCall, about: string): void {
  const lateMs = at - dueAt;
  demand(lateMs >= 0, `early: ${about}`);
  const told = /\*\*(?:(\d+) min)? ?(?:(\d+) s)? late\*\*: this was for/.exec(text);
  if (lateMs >= LATE_FROM_MS + WORDING_MS) demand(told !== null, `late, and does not say so: ${about}`);
  if (lateMs < LATE_FROM_MS) demand(!text.includes("late**"), `on time, and says it is late: ${about}`);
  if (!told) return;
  // In whole seconds, as they were when it was put into words.
  const toldMs = (Number(told[1] ?? 0) * 60 + Number(told[2] ?? 0)) * 1000;
  const isTrue = toldMs <= lateMs + 500 && toldMs >= lateMs - WORDING_MS - 500;
  demand(isTrue, `says a wrong lateness: ${about}`);
}

export function demand(isSo: boolean, otherwise: string): asserts isSo {
  if (!isSo) throw new Error(otherwise);
}
