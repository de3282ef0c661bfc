import type { Stores } from "../../store/index.ts";
import type { Place } from "../../store/classes.ts";
import type { Reach } from "../../store/shapes/reach.ts";
import type { NewOwed, Owed } from "../../store/owed.ts";
import type { Posted } from "../chat/port.ts";
import { composeOne } from "./compose.ts";
import { type Address, giveUpStale, isStale } from "./gather.ts";

/* What is said in the very transaction that decides it. */

/** What a run says, just decided. */
export type NewCall = NewOwed &
  Pick<Owed, "body" | "missed"> & { readonly runId: number; readonly reach: Reach; readonly place: Place };
/** Says it, or owes it; returns what is to be done after the commit, if anything. */
export type Say = (call: NewCall) => (() => void) | void;

/** It has no row before it is said. */
const NEVER_OWED = { id: 0, state: "sent", tries: 0, firstTryAt: null, sentAt: null, ref: null } as const;

/**
 * Where its chat keeps it in this store, it is written down there and nowhere else; only what tells of calls that went unsaid is
 * recorded beside them. Elsewhere it is owed, and what is returned is undefined.
 */
export function sayAtOnce(
  { outbox }: Stores,
  call: NewCall,
  address: Address | null,
  now: number,
): { readonly owed: Owed; readonly posted: Posted } | undefined {
  if (!address?.port.post) return void outbox.owe(call);
  if (isStale(call, now)) {
    outbox.owe(call);
    // At once, since the next call of its run tells of it, and may be said in this very transaction.
    return void giveUpStale(outbox, [outbox.findByKey(call.key)?.id ?? 0], now);
  }
  const missed = call.missed + outbox.takeUntoldOf(call.runId, call.dueAt);
  const owed = Object.assign(call, NEVER_OWED, { missed });
  const posted = address.port.post(composeOne(owed, address, now), call.reach);
  const { outcome } = posted;
  if (outcome.kind !== "sent") return void outbox.owe(owed);
  if (missed > 0) outbox.owe(owed, { ref: outcome.ref, at: now });
  return { owed, posted };
}
