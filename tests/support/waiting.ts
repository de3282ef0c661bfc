import type { Db } from "../../store/open.ts";

/** Cues of a store that are still to be decided, nudges aside, and its messages that are still to be said. */
export function countWaiting(db: Db): { cues: number; messages: number; messagesOfRuns: number } {
  return db
    .prepare(
      `select (select count(*) from cues where state = 'pending' and kind != 'nudge') as cues,
         count(*) as messages, count(run_id) as messagesOfRuns from outbox where state in ('owed', 'sending')`,
    )
    .get() as { cues: number; messages: number; messagesOfRuns: number };
}
