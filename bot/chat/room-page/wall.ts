import { doingNow } from "../../../commands/run/doing.ts";
import type { WallRow } from "../room/wire.ts";

/* How the tanks stand on the wall: what is due next first and large, what waits small, all on one screen. */

/** A bath that ends within this time, and the next one to end in any case, is large. */
const SOON_MS = 3 * 60_000;

export interface WallTank {
  readonly row: WallRow;
  /** `late`: a bath goes on working that should be out. `running`: its time goes. `idle`: nothing spoils while it waits. */
  readonly state: "late" | "running" | "idle";
  /** What its digits count to, or from; null where it counts nothing. */
  readonly at: number | null;
}

export interface Wall {
  readonly large: readonly WallTank[];
  readonly small: readonly WallTank[];
}

export function arrangeWall(rows: readonly WallRow[], now: number): Wall {
  const tanks = rows.map((row) => tankOf(row, now)).sort(byUrgency);
  const firstRunning = tanks.find(({ state }) => state === "running");
  const isLarge = (tank: WallTank): boolean =>
    tank.state === "late" ||
    tank === firstRunning ||
    (tank.state === "running" && tank.at !== null && tank.at - now <= SOON_MS);
  return { large: tanks.filter(isLarge), small: tanks.filter((tank) => !isLarge(tank)) };
}

/** Says which tank stands where and how: as long as it is the same, nothing has moved. */
export function orderOf({ large, small }: Wall): string {
  const say = ({ row, state, at }: WallTank): string => `${row.ownerId} ${row.run} ${state} ${at ?? ""}`;
  return [...large.map(say), "", ...small.map(say)].join("\n");
}

function tankOf(row: WallRow, now: number): WallTank {
  // A bath that goes on working is reminded of; a film in the wash or on the line is not.
  const isWorking = row.sayings.nudge !== undefined;
  const over = row.overdueSince ?? (row.endsAt !== null && row.endsAt <= now ? row.endsAt : null);
  if (over !== null) return { row, state: isWorking ? "late" : "idle", at: isWorking ? over : null };
  return row.endsAt === null ? { row, state: "idle", at: null } : { row, state: "running", at: row.endsAt };
}

const URGENCY = { late: 0, running: 1, idle: 2 } as const;

/** What is late comes first, the longest first; then whichever bath ends soonest; then what can wait. */
function byUrgency(a: WallTank, b: WallTank): number {
  return (
    URGENCY[a.state] - URGENCY[b.state] || (a.at ?? 0) - (b.at ?? 0) || (a.row.tank ?? 0) - (b.row.tank ?? 0)
  );
}

/** What is to be done there, for those who see it and can press nothing. */
export function wallWords({ row, state }: WallTank, now: number, toCome: (title: string) => string): string {
  return state === "running" ? `${row.title} · ${doingNow(row, now)}` : toCome(row.title);
}

export interface WallLayout {
  readonly largeColumns: number;
  /** What a large card's words are measured by, px. */
  readonly largePx: number;
  readonly smallColumns: number;
  /** The height of a small one, px. */
  readonly smallPx: number;
}

/** A small tank is a line: its number, its owner, its time. */
const SMALL_ASPECT = 3.4;
const LARGE_ASPECT = 1.45;
/** Of the window's height: higher, one tank would fill the wall with its number. */
const MOST_SMALL = 0.16;
const STEPS = 40;

/** The largest signs with which all of them fit: small ones are about half the size of large ones. */
export function layOutWall(large: number, small: number, widthPx: number, heightPx: number): WallLayout {
  let best: WallLayout = { largeColumns: 1, largePx: 0, smallColumns: 1, smallPx: 0 };
  let bestScore = -1;
  for (let step = 1; step <= STEPS; step += 1) {
    const smallPx = (heightPx * MOST_SMALL * step) / STEPS;
    const smallColumns = Math.max(1, Math.floor(widthPx / (smallPx * SMALL_ASPECT)));
    const left = heightPx - Math.ceil(small / smallColumns) * smallPx;
    if (left < 0) break;
    for (let largeColumns = 1; largeColumns <= Math.max(1, large); largeColumns += 1) {
      const rows = Math.ceil(large / largeColumns);
      const largePx = large === 0 ? Infinity : Math.min(left / rows, widthPx / largeColumns / LARGE_ASPECT);
      // Of layouts that are as good otherwise, the one with the larger large ones.
      const score =
        Math.min(largePx / 2, small === 0 ? Infinity : smallPx) + Math.min(largePx, heightPx) / 100;
      if (score <= bestScore) continue;
      bestScore = score;
      best = { largeColumns, largePx: Math.min(largePx, heightPx), smallColumns, smallPx };
    }
  }
  return best;
}
