export interface LimitSettings {
  /** Requests with the bot's token in one second, all routes together; interactions are exempt. Published: 50. */
  readonly globalPerSecond: number;
  /** New messages in one channel. Seen in headers, not published: 5 in 5 s. */
  readonly perChannel: number;
  readonly perChannelMs: number;
}

export const PUBLISHED_LIMITS: LimitSettings = { globalPerSecond: 50, perChannel: 5, perChannelMs: 5000 };

export interface Limited {
  readonly headers: Record<string, string>;
  /** Set where the request is one too many. */
  readonly refusedSeconds?: number;
  readonly isGlobal?: boolean;
}

/** Counts as the platform does: fixed windows that begin with the first request. */
export function createLimits(settings: LimitSettings, now: () => number) {
  const windows = new Map<string, { count: number; endsAt: number }>();

  function count(key: string, most: number, ms: number) {
    const at = now();
    const current = windows.get(key);
    const window = current && current.endsAt > at ? current : { count: 0, endsAt: at + ms };
    window.count += 1;
    windows.set(key, window);
    return { left: most - window.count, seconds: Math.max(0.001, (window.endsAt - at) / 1000) };
  }

  return {
    countGlobal(): Limited {
      const { left, seconds } = count("global", settings.globalPerSecond, 1000);
      return left < 0 ? { headers: {}, refusedSeconds: seconds, isGlobal: true } : { headers: {} };
    },
    countMessage(channelId: string): Limited {
      const { left, seconds } = count(channelId, settings.perChannel, settings.perChannelMs);
      const headers = {
        "x-ratelimit-bucket": "a1b2c3d4e5f6",
        "x-ratelimit-limit": String(settings.perChannel),
        "x-ratelimit-remaining": String(Math.max(0, left)),
        "x-ratelimit-reset": String(now() / 1000 + seconds),
        "x-ratelimit-reset-after": seconds.toFixed(3),
      };
      return left < 0 ? { headers, refusedSeconds: seconds } : { headers };
    },
  };
}
