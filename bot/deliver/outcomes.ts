import { tellUnreached } from "../../commands/run/unreached.ts";
import type { Stores } from "../../store/index.ts";
import type { Owed } from "../../store/owed.ts";
import type { Outcome } from "../chat/port.ts";
import type { Log } from "../process/log.ts";
import type { Unit } from "./units.ts";

/* What became of what was said, and what is done about it. */

export interface Tried {
  readonly unit: Unit;
  readonly several: readonly Owed[];
  readonly outcome: Outcome;
  /** When it was known. */
  readonly knownAt: number;
}

/** Waits between tries after an unknown outcome: short at first, since a cue ages quickly. */
const RETRY_MS = [500, 1000, 2000, 5000, 10_000, 30_000] as const;
/** A message that breaks the chat's own code will do so again. */
export const SLOW_RETRY_MS = 10_000;
/** A person who can't be reached alone is not tried again for this long. */
const REFUSED_FOR_MS = 60 * 60 * 1000;

export function retryMs(tries: number): number {
  return RETRY_MS[Math.min(tries, RETRY_MS.length - 1)] ?? 30_000;
}

/** When it was said: of a repeat, when the try before it was, whose answer was lost. */
export function saidAt({ several, outcome, knownAt }: Omit<Tried, "unit">): number {
  const agoMs = outcome.kind === "sent" ? (outcome.agoMs ?? 0) : 0;
  return Math.max(knownAt - agoMs, several[0]?.firstTryAt ?? -Infinity);
}

/** Keeps an outcome; inside a transaction. */
export function recordOutcome(stores: Stores, log: Log, tried: Tried, now: number): void {
  const { unit, several, outcome } = tried;
  const { outbox } = stores;
  const tries = several[0]?.tries ?? 1;
  switch (outcome.kind) {
    case "sent":
      return outbox.markSent(unit.ids, outcome.ref, saidAt(tried));
    case "later":
      return outbox.markUnsaid(unit.ids, now + outcome.afterMs, "the chat asked to wait");
    case "unknown":
      log.warn({ key: unit.key, tries, detail: outcome.detail }, "not known whether it was said");
      return outbox.markLater(unit.ids, now + retryMs(tries - 1), outcome.detail);
    case "refused":
      return refuse(stores, log, unit, several, outcome.detail, now);
  }
}

function refuse(
  stores: Stores,
  log: Log,
  unit: Unit,
  several: readonly Owed[],
  detail: string,
  now: number,
): void {
  const { outbox, members } = stores;
  log.warn({ key: unit.key, detail }, "refused by the chat");
  const only = several.length === 1 ? several[0] : undefined;
  if (!only || only.personId === null) {
    outbox.markEnded(unit.ids, "failed", detail, now);
    for (const runId of new Set(several.map((each) => each.runId)))
      if (runId !== null) tellUnreached(stores, runId, now);
    return;
  }
  members.saveDirectRefused(only.personId, now + REFUSED_FOR_MS);
  outbox.redirectToClass(only.id, only.personId);
  outbox.markUnsaid(unit.ids, now, detail);
}
