import { setTimeout as sleep } from "node:timers/promises";
import {
  DiscordAPIError,
  HTTPError,
  parseResponse,
  RateLimitError,
  REST,
  type RawFile,
  type RequestMethod,
} from "discord.js";
import type { Admitted, Headers } from "./pace.ts";
import type { Log } from "../../process/log.ts";

/** Why a request did not come back with an answer. */
export type RestFault =
  /** A rate limit; nothing was done. */
  | { readonly kind: "busy"; readonly afterMs: number }
  /** The request never left. */
  | { readonly kind: "unsent"; readonly detail: string }
  /** Perhaps done: the answer was lost. */
  | { readonly kind: "lost"; readonly detail: string }
  /** The platform said no. `code` is its own number, 0 where it gave none. */
  | { readonly kind: "denied"; readonly status: number; readonly code: number; readonly detail: string };

export interface RestCall {
  readonly method: `${RequestMethod}`;
  readonly route: `/${string}`;
  readonly body?: unknown;
  readonly files?: RawFile[];
  readonly query?: URLSearchParams;
  /** Interactions carry a token of their own. */
  readonly isInteraction?: boolean;
  /** How long a rate limit is waited out here; none for what has a queue of its own. */
  readonly patienceMs?: number;
  /** What its answer must hold; another than that is no answer of the platform's, and the request perhaps not done. */
  readonly holds?: (value: unknown) => boolean;
  /** Only for what may be done twice: how often a lost answer is asked for again. */
  readonly repeats?: number;
}

export type RestAnswer<T> =
  /** `platformAt`: when it was answered, by the platform's own clock, ms since the epoch; NaN where it says nothing. */
  | { readonly ok: true; readonly value: T; readonly platformAt: number }
  | { readonly ok: false; readonly fault: RestFault };

export interface DiscordRest {
  request<T>(call: RestCall): Promise<RestAnswer<T>>;
  /** Drops what is queued or under way, so that nothing keeps the process alive. */
  stop(): void;
}

export interface RestSettings {
  readonly token: string;
  readonly api: string;
  readonly requestTimeoutMs: number;
  readonly log: Log;
  /** The token is rejected: every later request would be, too. */
  onUnauthorized(): void;
  /** Lets each request out that counts against the bot's own limit, and is told of its answer. */
  admit?(method: string, path: string): Promise<Admitted>;
}

const REPEAT_AFTER_MS = 150;

/** Off: requests are let out one by one (discord-pace.ts); this library's own count would hold answers to people up. */
const REQUESTS_PER_SECOND = 1000;

/**
 * The one way to the platform's REST interface. It keeps to the platform's own rate limits, never repeats by itself what
 * may not be done twice, and gives each failure one of four names.
 */
export function createDiscordRest({
  token,
  api,
  requestTimeoutMs,
  log,
  onUnauthorized,
  admit,
}: RestSettings): DiscordRest {
  const rest = new REST({
    api,
    timeout: requestTimeoutMs,
    retries: 0,
    globalRequestsPerSecond: REQUESTS_PER_SECOND,
    rejectOnRateLimit: () => true,
    invalidRequestWarningInterval: 500,
  }).setToken(token);
  rest.on("invalidRequestWarning", (data) => log.warn({ ...data }, "many requests were refused"));
  const underWay = new Set<AbortController>();
  let isStopped = false;

  async function once<T>(call: RestCall): Promise<RestAnswer<T>> {
    const admitted = call.isInteraction || isStopped ? undefined : await admit?.(call.method, call.route);
    if (isStopped) return { ok: false, fault: { kind: "unsent", detail: "stopped" } };
    const controller = new AbortController();
    underWay.add(controller);
    let headers: Headers | null = null;
    try {
      const response = await rest.queueRequest({
        method: call.method as RequestMethod,
        fullRoute: call.route,
        body: call.body,
        ...(call.files ? { files: call.files } : {}),
        ...(call.query ? { query: call.query } : {}),
        auth: !call.isInteraction,
        signal: controller.signal,
      });
      ({ headers } = response);
      admitted?.end(headers);
      const platformAt = Date.parse(headers.get("date") ?? "");
      const value: unknown = await parseResponse(response);
      if (call.holds?.(value) === false)
        return {
          ok: false,
          fault: { kind: "lost", detail: `the platform answered ${response.status} with something else` },
        };
      return { ok: true, value: value as T, platformAt };
    } catch (error) {
      const fault = readFault(error);
      if (fault.kind === "denied" && fault.status === 401 && !call.isInteraction) onUnauthorized();
      return { ok: false, fault };
    } finally {
      if (headers === null) admitted?.end(null);
      underWay.delete(controller);
    }
  }

  async function pause(ms: number): Promise<void> {
    const controller = new AbortController();
    underWay.add(controller);
    await sleep(ms, undefined, { signal: controller.signal }).catch(() => undefined);
    underWay.delete(controller);
  }

  return {
    async request<T>(call: RestCall) {
      let patienceMs = call.patienceMs ?? 0;
      let repeats = call.repeats ?? 0;
      for (;;) {
        const answer = await once<T>(call);
        if (answer.ok || isStopped) return answer;
        const { fault } = answer;
        if (fault.kind === "busy" && fault.afterMs <= patienceMs) {
          patienceMs -= Math.max(1, fault.afterMs);
          await pause(fault.afterMs);
        } else if ((fault.kind === "lost" || fault.kind === "unsent") && repeats > 0) {
          repeats -= 1;
          await pause(REPEAT_AFTER_MS);
        } else return answer;
      }
    },
    stop() {
      isStopped = true;
      for (const controller of underWay) controller.abort();
      rest.clearHashSweeper();
      rest.clearHandlerSweeper();
    },
  };
}

const SNOWFLAKE = /^\d{15,20}$/;

/** A message, a channel: anything the platform has given an id. */
export function hasId(value: unknown): boolean {
  return typeof value === "object" && value !== null && "id" in value && SNOWFLAKE.test(String(value.id));
}

/** Connections that were never made: the request can't have arrived. */
const NEVER_LEFT = new Set([
  "ECONNREFUSED",
  "ENOTFOUND",
  "EAI_AGAIN",
  "ENETUNREACH",
  "UND_ERR_CONNECT_TIMEOUT",
]);

export function readFault(error: unknown): RestFault {
  if (error instanceof RateLimitError) {
    // A limit nobody could foresee is told by `retryAfter` alone; `timeToReset` then speaks of a window that was fine.
    const afterMs = Math.max(error.timeToReset, error.retryAfter, error.sublimitTimeout);
    return { kind: "busy", afterMs: Math.max(1, Math.ceil(afterMs)) };
  }
  if (error instanceof DiscordAPIError) {
    const code = Number(error.code);
    const detail = `${error.status} ${Number.isInteger(code) ? `${code} ` : ""}${error.message}`;
    return { kind: "denied", status: error.status, code: Number.isInteger(code) ? code : 0, detail };
  }
  if (error instanceof HTTPError) return { kind: "lost", detail: `the platform answered ${error.status}` };
  const detail = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  const isUnsent =
    readCodes(error).some((code) => NEVER_LEFT.has(code)) || /Expected token to be set/.test(detail);
  return { kind: isUnsent ? "unsent" : "lost", detail };
}

/** Happy-eyeballs connections fail with several errors in one. */
function readCodes(error: unknown): string[] {
  if (!(error instanceof Error)) return [];
  const own = "code" in error && typeof error.code === "string" ? [error.code] : [];
  const several = error instanceof AggregateError ? error.errors.flatMap(readCodes) : [];
  return [...own, ...several, ...readCodes(error.cause)];
}
