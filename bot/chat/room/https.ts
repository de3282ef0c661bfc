import { createServer, type Server } from "node:http";
import type { Server as HttpsServer } from "node:https";
import type { Socket } from "node:net";
import {
  daysLeft,
  readCertificate,
  type Certificate,
  type CertificateFiles,
} from "../../process/certificate.ts";
import type { Log } from "../../process/log.ts";
import { isOwnHost } from "./address.ts";

/* https in this process: the certificate as its files have it now, and http at the same port sent on to https. */

export interface LiveCertificate {
  /** The one in use. */
  current(): Certificate;
  /** Reads the files again; one that is new and good is in use from then on, for whoever connects next. */
  look(now: number): void;
  onChange(use: (certificate: Certificate) => void): void;
}

/** From so many days before its end on, the log tells once a day. */
const WARN_DAYS = 14;

/** null where no files are set. They were good a moment ago: what is wrong with them since ends the start. */
export function openCertificate(
  files: CertificateFiles | null,
  now: number,
  log: Log,
): LiveCertificate | null {
  if (!files) return null;
  const read = readCertificate(files, now);
  if (!read.ok) throw Object.assign(new Error(read.fault.join("\n")), { code: "ERR_SETTING" });
  return watchCertificate(files, read.value, log);
}

export function watchCertificate(
  files: CertificateFiles,
  first: Certificate,
  log: Pick<Log, "info" | "warn">,
): LiveCertificate {
  let current = first;
  let told = "";
  let use: (certificate: Certificate) => void = () => {};
  const tell = (sentence: string): void => {
    if (sentence !== told) log.warn({}, sentence);
    told = sentence;
  };
  return {
    current: () => current,
    onChange: (then) => void (use = then),
    look(now) {
      const read = readCertificate(files, now);
      // One file may be there before the other: what is in use stays until both are good.
      if (!read.ok) return tell(`the certificate in use stays: ${read.fault.join("; ")}`);
      if (read.value.cert !== current.cert || read.value.key !== current.key) {
        current = read.value;
        use(current);
        log.info({ daysLeft: daysLeft(current, now) }, "another certificate is in use");
      }
      const left = daysLeft(current, now);
      if (left <= WARN_DAYS)
        tell(`the certificate holds ${left} more days: renew ROOM_TLS_CERT and ROOM_TLS_KEY`);
    },
  };
}

/** Of TLS's first byte: a handshake record (RFC 8446, 5.1). Nothing of http begins with it. */
const HANDSHAKE = 0x16;
/** Who connects and says nothing holds a socket. */
const FIRST_BYTE_MS = 10_000;

/**
 * Lets `server` tell what comes to its port: a TLS handshake it takes itself, plain http is answered with the https
 * address of the same page. `isOwn` keeps a foreign name in the request from becoming an address.
 */
export function splitPort(server: HttpsServer, isOwn: (host: string | undefined) => boolean): Server {
  const handshakes = server.listeners("connection") as ((socket: Socket) => void)[];
  const plain = createServer(
    { requestTimeout: 10_000, connectionsCheckingInterval: 2_000 },
    (request, reply) => {
      const { host } = request.headers;
      const isRead = request.method === "GET" || request.method === "HEAD";
      if (!isRead || !isOwn(host)) return reply.writeHead(421, { connection: "close" }).end();
      const path = request.url?.startsWith("/") ? request.url : "/";
      return reply.writeHead(308, { location: `https://${host}${path}`, connection: "close" }).end();
    },
  );
  server.removeAllListeners("connection");
  server.on("connection", (socket: Socket) => {
    socket.setTimeout(FIRST_BYTE_MS, () => socket.destroy());
    socket.on("error", () => socket.destroy());
    socket.once("readable", () => {
      const first = socket.read(1) as Buffer | null;
      if (!first) return socket.destroy();
      socket.setTimeout(0);
      socket.removeAllListeners("timeout");
      socket.unshift(first);
      if (first[0] !== HANDSHAKE) plain.emit("connection", socket);
      else for (const take of handshakes) take.call(server, socket);
      return undefined;
    });
  });
  return plain;
}

/** Whether a request's host is one the room answers to. */
export const ownHost =
  (boundTo: string, publicUrl: string | null) =>
  (host: string | undefined): boolean =>
    isOwnHost(host, boundTo, publicUrl);
