import type { WallRow } from "../room/wire.ts";

/* How the tanks are laid out on the wall. */

/** From this many on, cards show only what the far end of the room needs. */
export const MANY = 9;
const NARROWEST_CARD_PX = 270;
const NARROWEST_OF_MANY_PX = 190;

/** A film that waits for its person comes first, then whichever bath ends soonest. */
export function orderForWall(rows: readonly WallRow[]): WallRow[] {
  return [...rows].sort((a, b) => urgency(a) - urgency(b) || (a.tank ?? 0) - (b.tank ?? 0));
}

function urgency({ phase, endsAt }: WallRow): number {
  return phase === "waiting" ? 0 : (endsAt ?? Number.MAX_SAFE_INTEGER);
}

/** A card is about this much wider than high; cards of many have less on them. */
const CARD_ASPECT = 1.3;
const CARD_OF_MANY_ASPECT = 2;

/** The fewest columns with which all cards are seen at once, as far as they stay wide enough to read. */
export function columnsFor(count: number, widthPx: number, heightPx: number): number {
  const isMany = count > MANY;
  const narrowest = isMany ? NARROWEST_OF_MANY_PX : NARROWEST_CARD_PX;
  const aspect = isMany ? CARD_OF_MANY_ASPECT : CARD_ASPECT;
  const most = Math.max(1, Math.floor(widthPx / narrowest));
  for (let columns = 1; columns < most; columns += 1) {
    const rows = Math.ceil(count / columns);
    if ((rows * widthPx) / columns / aspect <= heightPx) return columns;
  }
  return most;
}
