import { createServer } from "node:http";
import { once } from "node:events";
import type { AddressInfo } from "node:net";
import type { Registry } from "prom-client";
import type { Stores } from "../../store/index.ts";

/** `late`: a cue waits undecided; `failing`: the store can't be read; `behind`: much is owed and not said;
 * `chat-off`: a chat can go on no longer, the others do; `chat-slow`: a chat takes so long that calls come late there. */
export interface Health {
  readonly status: "ok" | "chat-slow" | "chat-off" | "behind" | "late" | "failing";
  /** Chats that are off, and why. */
  readonly chatsOff: Readonly<Record<string, string>>;
  /** Chats whose messages take longer than a call can leave ahead: how many seconds. */
  readonly chatsSlow: Readonly<Record<string, number>>;
  readonly overdueSeconds: number;
  readonly outboxDepth: number;
  /** Whole days for which the room's certificate still holds; null where it has none of its own. */
  readonly certificateDaysLeft: number | null;
}

/** From then on the beat, which comes every second, must have stopped. */
const LATE_MS = 5000;
const BEHIND_MS = 60_000;

/** Whether the bot does what it is for; never whether a chat says that it is connected. */
export function checkHealth(
  stores: Stores,
  now: number,
  certificateDaysLeft: number | null = null,
  chatsOff: Readonly<Record<string, string>> = {},
  chatsSlow: Readonly<Record<string, number>> = {},
): Health {
  try {
    const overdueMs = Math.max(0, now - (stores.cues.nextDecideAt() ?? Infinity));
    const oldestAt = stores.figures.oldestUrgentAt();
    const behindMs = oldestAt === null ? 0 : now - oldestAt;
    const status =
      overdueMs > LATE_MS
        ? "late"
        : behindMs > BEHIND_MS
          ? "behind"
          : Object.keys(chatsOff).length > 0
            ? "chat-off"
            : Object.keys(chatsSlow).length > 0
              ? "chat-slow"
              : "ok";
    return {
      status,
      overdueSeconds: overdueMs / 1000,
      outboxDepth: stores.outbox.depth(),
      certificateDaysLeft,
      chatsOff,
      chatsSlow,
    };
  } catch {
    return { status: "failing", overdueSeconds: 0, outboxDepth: 0, certificateDaysLeft, chatsOff, chatsSlow };
  }
}

export interface HealthServer {
  readonly url: string;
  stop(): Promise<void>;
}

const OWN_HOST = /^(127\.0\.0\.1|localhost|\[::1\])(:\d+)?$/i;

/** `/metrics` and `/health` for programs on the same computer; nobody else can reach it. */
export async function serveHealth(
  port: number,
  registry: Registry,
  check: () => Health,
): Promise<HealthServer> {
  const server = createServer((request, response) => {
    const send = (status: number, type: string, body: string): void => {
      response.writeHead(status, { "content-type": type, "cache-control": "no-store" });
      response.end(request.method === "HEAD" ? undefined : body);
    };
    // A page of another site may make a browser ask here by a name that leads to this computer: it is to read nothing.
    if (!OWN_HOST.test(request.headers.host ?? "")) return send(421, "text/plain", "Ask 127.0.0.1.\n");
    if (request.method !== "GET" && request.method !== "HEAD")
      return send(405, "text/plain", "Only GET is answered here.\n");
    switch (request.url?.split("?")[0]) {
      case "/health": {
        const health = check();
        const isWell = ["ok", "chat-slow", "chat-off", "behind"].includes(health.status);
        return send(isWell ? 200 : 503, "application/json", `${JSON.stringify(health)}\n`);
      }
      case "/metrics":
        registry.metrics().then(
          (text) => send(200, registry.contentType, text),
          (error: unknown) => send(500, "text/plain", `${String(error)}\n`),
        );
        return undefined;
      default:
        return send(404, "text/plain", "Here are /health and /metrics.\n");
    }
  });
  server.listen(port, "127.0.0.1");
  await once(server, "listening");
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    async stop() {
      server.closeAllConnections();
      server.close();
      await once(server, "close");
    },
  };
}
