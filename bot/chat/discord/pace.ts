import { createAllowance, createArrivals } from "../allowance.ts";
import { readUserId, type Directory } from "./settings.ts";
import { createPace, type Pace } from "../pace.ts";
import type { Target } from "../port.ts";

/*
 * How fast the platform takes requests: 50 a second of one bot are published; some five new messages in five seconds of one
 * channel are what its headers say. Every request but answers to interactions, which do not count, passes here.
 */

export const PER_SECOND = 50;
/** A second, and what two clocks may differ by in one. */
const WINDOW_MS = 1005;
const CHANNEL = { channelCount: 5, channelWindowMs: 5050 } as const;
/** Cues go first; but whatever else has waited this long gets its turn among them. */
const PATIENCE_MS = 500;
/** So many requests of one second are kept for those who have. */
const MOST_RESERVED = 2;
const SPARE = 0.4;
const TARGETS_KEPT_MS = 1000;
const GIVEN_UP_MS = 1000;
/** Direct channels and threads are opened one after the other: what one waits for the rest of a class is nothing that messages take. */
const UNMEASURED = /^\/(gateway\/bot|users\/@me\/channels|channels\/\d+\/threads)$/;

type TargetDirectory = Pick<Directory, "directChannel" | "isDirectRefused" | "threads">;

export interface Headers {
  get(name: string): string | null;
}

/** A request that has been let out. */
export interface Admitted {
  /** Its answer is there; null where none came, or one without headers. */
  end(headers: Headers | null): void;
}

export interface DiscordPace {
  readonly pace: Pace;
  targetOf(personId: string | null, channelRef: string | null, runId: number | null): Target;
  /** Resolves when this request may leave. */
  admit(method: string, path: string): Promise<Admitted>;
}

export function createDiscordPace(
  directory: TargetDirectory,
  clock: { now(): number },
  perSecond = PER_SECOND,
): DiscordPace {
  const allowance = createAllowance(perSecond, WINDOW_MS);
  const arrivals = createArrivals();
  const waiting: { readonly since: number; leave(now: number): void }[] = [];
  const hasWaited = (now: number): number => waiting.filter(({ since }) => since <= now - PATIENCE_MS).length;
  const pace = createPace({ perSecond, ...CHANNEL }, allowance, (now) =>
    Math.min(MOST_RESERVED, hasWaited(now)),
  );
  const targets = new Map<string, Target>();
  let targetsAt = -Infinity;
  let timer: NodeJS.Timeout | undefined;

  function letOut(): void {
    clearTimeout(timer);
    const now = clock.now();
    // Cues may be about to leave: who has not waited long leaves them some room.
    const freeAt = (): number => allowance.freeAt(now, hasWaited(now) > 0 ? 0 : perSecond * SPARE);
    while (waiting.length > 0 && freeAt() <= now) waiting.shift()?.leave(now);
    if (waiting.length === 0) return;
    const waitMs = Math.ceil(Math.min(freeAt() - now, PATIENCE_MS));
    timer = setTimeout(letOut, Math.max(1, waitMs)).unref();
  }

  function admitted(ticket: number, channel: string | undefined, isMeasured: boolean): Admitted {
    const sentAt = clock.now();
    return {
      end(headers) {
        const now = clock.now();
        // A request that failed at once says nothing of how long messages take; one that was given up does.
        if (isMeasured && (headers !== null || now - sentAt >= GIVEN_UP_MS)) pace.took(now - sentAt, now);
        const told = readLimit(headers);
        allowance.end(ticket, arrivals.latestOf(sentAt, now, told?.platformAt));
        if (told && channel !== undefined) pace.learn(channel, told, now);
        if (waiting.length > 0) letOut();
      },
    };
  }

  return {
    pace,
    targetOf(personId, channelRef, runId) {
      // Asked for every message that waits, each time one leaves.
      const now = clock.now();
      if (Math.abs(now - targetsAt) >= TARGETS_KEPT_MS) {
        targets.clear();
        targetsAt = now;
      }
      const name = `${personId} ${channelRef} ${runId}`;
      const target = targets.get(name) ?? findTarget(directory, personId, channelRef, runId);
      targets.set(name, target);
      return target;
    },
    async admit(method, path) {
      const channel = method === "POST" ? /^\/channels\/(\d+)\/messages$/.exec(path)?.[1] : undefined;
      const kept = channel === undefined ? undefined : pace.claim(channel);
      const isMeasured = method !== "PUT" && !UNMEASURED.test(path);
      if (kept !== undefined) return admitted(kept, channel, isMeasured);
      const ticket = await new Promise<number>((resolve) => {
        waiting.push({ since: clock.now(), leave: (now) => resolve(allowance.begin(now)) });
        letOut();
      });
      return admitted(ticket, channel, isMeasured);
    },
  };
}

function findTarget(
  directory: TargetDirectory,
  personId: string | null,
  channelRef: string | null,
  runId: number | null,
): Target {
  const thread = personId === null || runId === null ? null : directory.threads.threadOf(runId);
  if (thread !== null) return { channel: thread, isShared: false };
  const isKnown =
    personId !== null && readUserId(personId) !== undefined && !directory.isDirectRefused(personId);
  const direct = isKnown ? directory.directChannel(personId) : null;
  if (direct !== null) return { channel: direct, isShared: false };
  return { channel: channelRef ?? "nowhere", isShared: true };
}

function readLimit(headers: Headers | null) {
  const read = (name: string): number => Number(headers?.get(name) ?? Number.NaN);
  const remaining = read("x-ratelimit-remaining");
  const resetAfterMs = read("x-ratelimit-reset-after") * 1000;
  if (!Number.isFinite(remaining) || !Number.isFinite(resetAfterMs)) return undefined;
  // The end of the window, less what is left of it: the instant at which the platform counted.
  const platformAt = read("x-ratelimit-reset") * 1000 - resetAfterMs;
  return {
    remaining,
    resetAfterMs: Math.ceil(resetAfterMs),
    platformAt: Number.isFinite(platformAt) ? platformAt : undefined,
  };
}
