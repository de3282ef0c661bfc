import { settleSome, type TickDeps } from "../../bot/cues/tick.ts";

/** Settles every cue to be decided by `now`, and owes what is said; returns the classes whose runs spoke. */
export function settleDue(deps: TickDeps, now: number): Set<number> {
  const spoken = new Set<number>();
  while (deps.stores.atomically(() => settleSome(deps, now, now, spoken)));
  return spoken;
}
