import { readFileSync } from "node:fs";

/** The only source of time. Handlers and pure code get the instant of their call as a number. */
export interface Clock {
  /** Milliseconds since the epoch. */
  now(): number;
}

/** What a computer can say of time. */
export interface TimeSources {
  /** The wall clock; may be set forward or back at any moment. */
  wallMs(): number;
  /** Never set, stands still while the computer sleeps; comparable between processes of one boot. */
  monoMs(): number;
  /** Never set, goes on while the computer sleeps; undefined where it can't be read. Coarse: 10 ms. */
  uptimeMs(): number | undefined;
  /** Names the boot these two count from. */
  readonly bootId: string;
}

/** Two clocks read at one moment. */
export interface Anchor {
  readonly bootId: string;
  readonly wallMs: number;
  readonly monoMs: number;
  readonly uptimeMs: number | null;
}

/** A wall clock that is off by less than this is left alone: nobody at a sink can tell. */
export const STEP_MS = 50;

export interface SteadyClockOptions {
  readonly sources: TimeSources;
  /** The anchor an earlier process of this boot left, if any. */
  readonly anchor: Anchor | undefined;
  /**
   * The wall clock was set by `byMs`: whatever is under way must move with it, and `anchor` be kept in the same
   * transaction. Called before `now` returns. False where that could not be written: then time goes on as if the clock had
   * not been set, which is what the film goes by, and the next `now` tries again.
   */
  onStep(byMs: number, anchor: Anchor): boolean;
  /** To be kept for the next process; false where it could not be. */
  onAnchor(anchor: Anchor): boolean;
}

/**
 * The wall clock, watched. Film develops by elapsed time: when the clock is set, every instant under way is moved by the
 * same amount, so that steps keep their true length. Time the computer slept is elapsed time and moves nothing.
 */
export function createSteadyClock({ sources, anchor: left, onStep, onAnchor }: SteadyClockOptions): Clock {
  const take = (): Anchor => ({
    bootId: sources.bootId,
    wallMs: sources.wallMs(),
    monoMs: sources.monoMs(),
    uptimeMs: sources.uptimeMs() ?? null,
  });
  let anchor = left?.bootId === sources.bootId ? left : take();
  onAnchor(anchor);

  return {
    now() {
      const wallMs = sources.wallMs();
      const apartMs = wallMs - anchor.wallMs - (sources.monoMs() - anchor.monoMs);
      if (Math.abs(apartMs) < STEP_MS) return wallMs;
      const here = take();
      const byMs = Math.round(stepBetween(anchor, here));
      const isKept = Math.abs(byMs) >= STEP_MS ? onStep(byMs, here) : onAnchor(here);
      if (!isKept) return here.wallMs - byMs;
      anchor = here;
      return here.wallMs;
    },
  };
}

/** By how much the wall clock was set between two anchors of one boot; sleep is not counted. */
export function stepBetween(from: Anchor, to: Anchor): number {
  const apartMs = to.wallMs - from.wallMs - (to.monoMs - from.monoMs);
  if (from.uptimeMs !== null && to.uptimeMs !== null) {
    const sleptMs = to.uptimeMs - from.uptimeMs - (to.monoMs - from.monoMs);
    return apartMs - (Math.abs(sleptMs) < STEP_MS ? 0 : sleptMs);
  }
  // Sleep and a clock set forward look alike here; of the two, sleep is the likelier.
  return apartMs > 0 ? 0 : apartMs;
}

/** The computer's own clocks. */
export function systemTime(): TimeSources {
  const bootId = read("/proc/sys/kernel/random/boot_id")?.trim();
  return {
    wallMs: () => Date.now(),
    monoMs: () => Number(process.hrtime.bigint() / 1000n) / 1000,
    uptimeMs() {
      const seconds = Number(read("/proc/uptime")?.split(" ")[0]);
      return Number.isFinite(seconds) ? seconds * 1000 : undefined;
    },
    // Without a boot's name nothing is carried over from one process to the next.
    bootId: bootId ?? `process-${process.pid}-${Date.now()}`,
  };
}

/** For one call from a terminal, which outlives no step of the clock. */
export function createClock(): Clock {
  return { now: () => Date.now() };
}

function read(path: string): string | undefined {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return undefined;
  }
}
