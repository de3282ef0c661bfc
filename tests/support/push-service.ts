import { createDecipheriv, createECDH, createPublicKey, hkdfSync, randomBytes, verify } from "node:crypto";
import { once } from "node:events";
import { readFileSync } from "node:fs";
import { createServer } from "node:https";
import type { AddressInfo } from "node:net";
import type { MadeCertificate } from "./certificate.ts";

/*
 * A push service on loopback, and a phone's side of the encryption, written from RFC 8291 and RFC 8188 on Node's own
 * cryptography: nothing of it is the library that sends.
 */

export interface PhoneKeys {
  readonly privateKey: Buffer;
  readonly auth: Buffer;
}

/** The plain text of an `aes128gcm` body (RFC 8188, 2), its key derived as RFC 8291, 3.4 says. Of one record. */
export function decrypt(body: Buffer, { privateKey, auth }: PhoneKeys): string {
  const ecdh = createECDH("prime256v1");
  ecdh.setPrivateKey(privateKey);
  const salt = body.subarray(0, 16);
  const recordSize = body.readUInt32BE(16);
  const idLength = body.readUInt8(20);
  const serverKey = body.subarray(21, 21 + idLength);
  const record = body.subarray(21 + idLength);
  if (record.length > recordSize) throw new Error("more than one record");
  const info = Buffer.concat([Buffer.from("WebPush: info\0"), ecdh.getPublicKey(), serverKey]);
  const secret = Buffer.from(hkdfSync("sha256", ecdh.computeSecret(serverKey), auth, info, 32));
  const derive = (label: string, length: number): Buffer =>
    Buffer.from(hkdfSync("sha256", secret, salt, Buffer.from(`Content-Encoding: ${label}\0`), length));
  const decipher = createDecipheriv("aes-128-gcm", derive("aes128gcm", 16), derive("nonce", 12));
  decipher.setAuthTag(record.subarray(-16));
  const padded = Buffer.concat([decipher.update(record.subarray(0, -16)), decipher.final()]);
  const end = padded.lastIndexOf(2);
  if (padded.subarray(end + 1).some((byte) => byte !== 0)) throw new Error("no last record");
  return padded.subarray(0, end).toString();
}

/** What a VAPID header claims, if its key has signed it (RFC 8292, 2; ES256). */
export function readVapid(header: string): {
  readonly claims: Record<string, unknown>;
  readonly key: string;
} {
  const [, token, key] = /^vapid t=([\w.-]+), ?k=([\w-]+)$/.exec(header) ?? [];
  const [head, claims, signature] = (token ?? "").split(".");
  const point = Buffer.from(key ?? "", "base64url");
  const jwk = {
    kty: "EC",
    crv: "P-256",
    x: point.subarray(1, 33).toString("base64url"),
    y: point.subarray(33).toString("base64url"),
  };
  const isSigned = verify(
    "sha256",
    Buffer.from(`${head}.${claims}`),
    { key: createPublicKey({ key: jwk, format: "jwk" }), dsaEncoding: "ieee-p1363" },
    Buffer.from(signature ?? "", "base64url"),
  );
  if (!isSigned) throw new Error("not signed by its key");
  return { claims: JSON.parse(Buffer.from(claims ?? "", "base64url").toString()), key: key ?? "" };
}

export interface Pushed {
  readonly path: string;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly body: Record<string, unknown>;
}

export interface PushService {
  /** `localhost:port`. */
  readonly host: string;
  readonly got: Pushed[];
  /** A phone's subscription, as its browser hands it out. */
  subscription(path: string): { endpoint: string; keys: { p256dh: string; auth: string } };
  /** What is answered from now on; called before the answer goes out. */
  answer(with_: (pushed: Pushed) => { status: number; retryAfter?: number } | undefined): void;
  stop(): Promise<void>;
}

/** `undefined` as an answer: none comes. */
export async function startPushService(made: MadeCertificate): Promise<PushService> {
  const keys: PhoneKeys = { privateKey: randomBytes(32), auth: randomBytes(16) };
  const got: Pushed[] = [];
  let answer: Parameters<PushService["answer"]>[0] = () => ({ status: 201 });
  const tls = { cert: readFileSync(made.certificate), key: readFileSync(made.key) };
  const server = createServer(tls, (request, response) => {
    const parts: Buffer[] = [];
    request.on("data", (part: Buffer) => parts.push(part));
    request.on("end", () => {
      const body = JSON.parse(decrypt(Buffer.concat(parts), keys)) as Record<string, unknown>;
      const pushed = { path: request.url ?? "", headers: request.headers, body };
      got.push(pushed);
      const given = answer(pushed);
      if (!given) return request.socket.destroy();
      const headers = given.retryAfter === undefined ? {} : { "retry-after": String(given.retryAfter) };
      return response.writeHead(given.status, headers).end();
    });
  });
  server.listen(0, "127.0.0.1");
  await once(server, "listening");
  const host = `localhost:${(server.address() as AddressInfo).port}`;
  const ecdh = createECDH("prime256v1");
  ecdh.setPrivateKey(keys.privateKey);
  return {
    host,
    got,
    subscription: (path) => ({
      endpoint: `https://${host}/${path}`,
      keys: { p256dh: ecdh.getPublicKey("base64url"), auth: keys.auth.toString("base64url") },
    }),
    answer: (next) => void (answer = next),
    async stop() {
      server.closeAllConnections();
      server.close();
      await once(server, "close");
    },
  };
}
