import { readUserId, type Directory } from "./discord-settings.ts";
import { createPace, type Pace } from "./pace.ts";
import type { Target } from "./port.ts";

/*
 * How fast the platform takes messages: 50 requests a second of one bot are published; some five in five seconds of one
 * channel are what its headers say. A little less is used, so that none of them is ever refused.
 */

export const PER_SECOND = 47;
const CHANNEL = { channelCount: 5, channelWindowMs: 5050 } as const;

export interface DiscordPace {
  readonly pace: Pace;
  targetOf(personId: string | null, channelRef: string | null): Target;
  /** An answer of the platform to any request. */
  onAnswer(method: string, path: string, headers: { get(name: string): string | null }): void;
}

export function createDiscordPace(
  directory: Pick<Directory, "directChannel" | "isDirectRefused">,
  clock: { now(): number },
  perSecond = PER_SECOND,
): DiscordPace {
  const pace = createPace({ perSecond, ...CHANNEL });
  return {
    pace,
    targetOf(personId, channelRef) {
      const isKnown =
        personId !== null && readUserId(personId) !== undefined && !directory.isDirectRefused(personId);
      const direct = isKnown ? directory.directChannel(personId) : null;
      if (direct !== null) return { channel: direct, isShared: false };
      return { channel: channelRef ?? "nowhere", isShared: true };
    },
    onAnswer(method, path, headers) {
      // Answers to interactions do not count against the common limit.
      if (/^\/(webhooks|interactions)\//.test(path)) return;
      const channel = method === "POST" ? /^\/channels\/(\d+)\/messages$/.exec(path)?.[1] : undefined;
      if (channel === undefined) {
        pace.spend(clock.now());
        return;
      }
      const remaining = Number(headers.get("x-ratelimit-remaining") ?? Number.NaN);
      const resetAfterMs = Number(headers.get("x-ratelimit-reset-after") ?? Number.NaN) * 1000;
      if (Number.isFinite(remaining) && Number.isFinite(resetAfterMs)) {
        pace.learn(channel, { remaining, resetAfterMs: Math.ceil(resetAfterMs) }, clock.now());
      }
    },
  };
}
