import type { Stores } from "../../store/index.ts";

/** Whether nothing falls due and nothing waits to be said for so long: time for what no call may wait for. */
export function isQuiet(
  { cues, outbox }: Pick<Stores, "cues" | "outbox">,
  now: number,
  forMs: number,
): boolean {
  return (cues.nextDecideAt() ?? Infinity) > now + forMs && outbox.ready(now + forMs, 1).length === 0;
}
