import type { Server as HttpsServer } from "node:https";
import { existsSync } from "node:fs";
import { join } from "node:path";
import cookie from "@fastify/cookie";
import helmet from "@fastify/helmet";
import rateLimit from "@fastify/rate-limit";
import fastifyStatic from "@fastify/static";
import websocket from "@fastify/websocket";
import fastify, { type FastifyInstance, type FastifyReply, type FastifyRequest } from "fastify";
import { ownHost, splitPort, type LiveCertificate } from "./https.ts";
import { isStorageFault } from "../../../store/open.ts";
import { isOwnHost, isOwnOrigin } from "./address.ts";
import type { Log } from "../../process/log.ts";
import type { DoorCode } from "./wire.ts";

/* The room's web server before anything is served: its limits, its headers and what it refuses. */

const MOST_BODY_BYTES = 16 * 1024;
const MOST_SOCKET_MESSAGE_BYTES = 64 * 1024;
/** A class may sit behind one address, so this is wide: thirty phones that load the page twice a minute. */
const MOST_REQUESTS_A_MINUTE = 1500;

export interface HttpParts {
  readonly host: string;
  readonly publicUrl: string | null;
  /** Where the built page lies. */
  readonly pageDir: string;
  readonly log: Log;
  /** Whose share of requests this one is taken from. */
  readonly limitKeyOf: (request: FastifyRequest) => string;
  /** null: plain http, perhaps behind a proxy that adds https. */
  readonly certificate: LiveCertificate | null;
}

export async function createHttp(parts: HttpParts): Promise<FastifyInstance> {
  const { host, publicUrl, pageDir, log, certificate, limitKeyOf } = parts;
  const hasSecureName = publicUrl?.startsWith("https:") ?? false;
  const isSecure = hasSecureName || certificate !== null;
  // Node looks for connections that are over their time only so often.
  const looking = { connectionsCheckingInterval: 2_000 };
  const server = certificate
    ? { https: { ...looking, cert: certificate.current().cert, key: certificate.current().key } }
    : { http: looking };
  const app = fastify({
    ...(server as { http: typeof looking }),
    logger: false,
    bodyLimit: MOST_BODY_BYTES,
    // A request that dribbles in holds a connection: 10 s are plenty for 16 KB on a school network.
    requestTimeout: 10_000,
    connectionTimeout: 30_000,
    keepAliveTimeout: 20_000,
    forceCloseConnections: true,
    // Behind a stated address there is a proxy; otherwise what a request says of its sender is not believed.
    trustProxy: publicUrl === null ? false : "loopback",
  });
  if (certificate) useCertificate(app, certificate, ownHost(host, publicUrl));
  app.server.headersTimeout = 8_000;
  app.server.maxHeadersCount = 60;

  app.addHook("onRequest", async (request, reply) => {
    const { host: hostHeader, origin } = request.headers;
    if (!isOwnHost(hostHeader, host, publicUrl)) return refuse(reply, 421, "ERR_HOST");
    const isSocket = request.headers.upgrade !== undefined;
    const changes = isSocket || (request.method !== "GET" && request.method !== "HEAD");
    if (changes && !isOwnOrigin(origin, hostHeader, publicUrl)) return refuse(reply, 403, "ERR_ORIGIN");
    return undefined;
  });

  // A refused upgrade has left the server's own keeping: unless it is closed here, it stays open for good.
  app.addHook("onResponse", async (request) => {
    if (request.headers.upgrade !== undefined) request.raw.socket.destroySoon();
  });

  await app.register(helmet, {
    contentSecurityPolicy: {
      useDefaults: false,
      directives: {
        defaultSrc: ["'none'"],
        scriptSrc: ["'self'"],
        styleSrc: ["'self'"],
        imgSrc: ["'self'"],
        fontSrc: ["'self'"],
        // The track of the minutes ahead is made on the page.
        mediaSrc: ["blob:"],
        manifestSrc: ["'self'"],
        workerSrc: ["'self'"],
        // Older browsers do not count the socket of the same host as 'self'.
        connectSrc: [
          "'self'",
          (request) =>
            `${isSecure ? "wss" : "ws"}://${(request.headers.host ?? "").replace(/[^\w.:[\]-]/g, "")}`,
        ],
        baseUri: ["'none'"],
        formAction: ["'none'"],
        frameAncestors: ["'none'"],
      },
    },
    // Browsers apply this to every port of a name: only a name that was given to the room may be bound to https.
    strictTransportSecurity: hasSecureName && { includeSubDomains: false },
    crossOriginOpenerPolicy: isSecure,
    originAgentCluster: isSecure,
    referrerPolicy: { policy: "no-referrer" },
  });
  await app.register(cookie);
  await app.register(rateLimit, {
    max: MOST_REQUESTS_A_MINUTE,
    timeWindow: 60_000,
    // Who is signed in has a share of their own, which nobody else at their address can use up.
    keyGenerator: limitKeyOf,
    errorResponseBuilder: () =>
      Object.assign(new Error("too often"), { statusCode: 429, code: "ERR_TOO_OFTEN" }),
  });
  await app.register(websocket, {
    options: { maxPayload: MOST_SOCKET_MESSAGE_BYTES, perMessageDeflate: false },
  });

  app.setErrorHandler((error: Error & { statusCode?: number }, request, reply) => {
    const status = error.statusCode ?? 500;
    if (status >= 500) log.error({ err: error, route: request.routeOptions.url }, "room request failed");
    if (status === 429) return refuse(reply, 429, "ERR_TOO_OFTEN");
    if (isStorageFault(error)) return refuse(reply, 507, "ERR_DISK");
    return status >= 500 ? refuse(reply, 500, "ERR_BROKE") : refuse(reply, status, "ERR_NOT_UNDERSTOOD");
  });
  app.setNotFoundHandler((_request, reply) => refuse(reply, 404, "ERR_NOT_FOUND"));
  await servePage(app, pageDir);
  return app;
}

/** For whoever connects from now on, and those who connect once it changes; open connections stay as they are. */
function useCertificate(
  app: FastifyInstance,
  certificate: LiveCertificate,
  isOwn: (host: string | undefined) => boolean,
): void {
  const server = app.server as unknown as HttpsServer;
  const plain = splitPort(server, isOwn);
  certificate.onChange(({ cert, key }) => server.setSecureContext({ cert, key }));
  app.addHook("onClose", async () => plain.closeAllConnections());
}

export function refuse(reply: FastifyReply, status: number, code: DoorCode): FastifyReply {
  return reply.code(status).header("cache-control", "no-store").send({ error: { code } });
}

async function servePage(app: FastifyInstance, pageDir: string): Promise<void> {
  if (!existsSync(join(pageDir, "index.html"))) {
    app.get("/", async (_request, reply) =>
      reply.code(503).type("text/plain").send("The page is not built. Run: npm run build"),
    );
    return;
  }
  await app.register(fastifyStatic, {
    root: join(pageDir, "assets"),
    prefix: "/assets/",
    preCompressed: true,
    immutable: true,
    maxAge: "365d",
    index: false,
  });
  // What a home screen and a closed page are made of. The worker's own file is asked for anew, or it would never be replaced.
  for (const [path, type] of [
    ["manifest.webmanifest", "application/manifest+json"],
    ["sw.js", "text/javascript; charset=utf-8"],
  ] as const) {
    app.get(`/${path}`, (_request, reply) =>
      reply.header("cache-control", "no-cache").type(type).sendFile(path, pageDir, { cacheControl: false }),
    );
  }
  for (const path of ["/", "/board"]) {
    app.get(path, (_request, reply) =>
      reply.header("cache-control", "no-cache").sendFile("index.html", pageDir, { cacheControl: false }),
    );
  }
}
