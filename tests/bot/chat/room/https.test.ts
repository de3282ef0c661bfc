import { copyFileSync } from "node:fs";
import { get as getPlain, type IncomingMessage } from "node:http";
import { request, type RequestOptions } from "node:https";
import { connect } from "node:net";
import { connect as connectTls, type TLSSocket } from "node:tls";
import { afterEach, beforeAll, describe, expect, test } from "vitest";
import { WebSocket } from "ws";
import { openCertificate, type LiveCertificate } from "../../../../bot/chat/room/https.ts";
import type { DoorSheet } from "../../../../bot/chat/room/wire.ts";
import { makeCertificate, type MadeCertificate } from "../../../support/certificate.ts";
import { createFakeClock } from "../../../support/clock.ts";
import { createMemoryLog } from "../../../support/room.ts";
import { needing } from "../../../support/needs.ts";
import { startRoom, type RoomServer } from "../../../support/room-server.ts";

let server: RoomServer;
afterEach(() => server?.stop());

const NOW = Date.UTC(2026, 0, 15, 18);
const DAY_MS = 86_400_000;
const madeFor = (days: number): MadeCertificate =>
  makeCertificate({ from: NOW - DAY_MS, until: NOW + days * DAY_MS });

async function open(
  made: MadeCertificate,
  at: number,
): Promise<{ live: LiveCertificate; log: ReturnType<typeof createMemoryLog> }> {
  const log = createMemoryLog();
  const live = openCertificate(made, at, log);
  if (!live) throw new Error("no certificate");
  server = await startRoom({ certificate: live }, undefined, createFakeClock());
  return { live, log };
}

interface Got {
  readonly status: number;
  readonly headers: IncomingMessage["headers"];
  readonly text: string;
}

async function read(message: IncomingMessage): Promise<Got> {
  let text = "";
  for await (const part of message) text += String(part);
  return { status: message.statusCode ?? 0, headers: message.headers, text };
}

/** By https, with the certificate the only one that is trusted; time does not matter to this check of the name. */
function ask(path: string, ca: string, body?: unknown, cookie = ""): Promise<Got> {
  const options: RequestOptions = {
    ca,
    method: body === undefined ? "GET" : "POST",
    headers: { origin: server.url, "content-type": "application/json", cookie },
    agent: false,
  };
  return new Promise((resolve, reject) => {
    const asking = request(server.url + path, options, (message) => void read(message).then(resolve, reject));
    asking.on("error", reject);
    asking.end(body === undefined ? undefined : JSON.stringify(body));
  });
}

const port = (): number => Number(new URL(server.url).port);

/** The validity of what the server shows to whoever connects now. */
function shownUntil(): Promise<number> {
  return new Promise((resolve, reject) => {
    const socket: TLSSocket = connectTls(
      { host: "127.0.0.1", port: port(), rejectUnauthorized: false },
      () => {
        resolve(Date.parse(socket.getPeerCertificate().valid_to));
        socket.destroy();
      },
    );
    socket.on("error", reject);
  });
}

// What the clients here check is the real date, so these certificates hold now.
let today: MadeCertificate;

describe("https in the process", needing("openssl"), () => {
  beforeAll(() => void (today = makeCertificate()));

  test("the page is served over https, its cookie is Secure, and no other port of the name is bound to https", async () => {
    await open(today, Date.now());
    expect(server.url).toMatch(/^https:\/\/127\.0\.0\.1:\d+$/);
    const joined = await ask("/api/demo", today.pem, { name: "Mina", role: "student" });
    expect(joined.status).toBe(200);
    expect(joined.headers["set-cookie"]?.[0]).toMatch(/HttpOnly; Secure; SameSite=Strict/);
    expect(joined.headers["strict-transport-security"]).toBeUndefined();
    expect(joined.headers["content-security-policy"]).toContain(`wss://127.0.0.1:${port()}`);
    const cookie = joined.headers["set-cookie"]?.[0]?.split(";")[0] ?? "";
    const socket = new WebSocket(`${server.url.replace("https", "wss")}/live`, {
      ca: today.pem,
      headers: { cookie, origin: server.url },
    });
    await new Promise((resolve, reject) => socket.on("open", resolve).on("error", reject));
    socket.close();
  });

  test("http at the same port is sent on to the same page, by its own name only", async () => {
    await open(today, Date.now());
    const plain = (path: string, host: string): Promise<Got> =>
      new Promise((resolve, reject) => {
        getPlain(
          { host: "127.0.0.1", port: port(), path, headers: { host }, agent: false },
          (message) => void read(message).then(resolve, reject),
        ).on("error", reject);
      });
    const sent = await plain("/board?x=1", `127.0.0.1:${port()}`);
    expect(sent.status).toBe(308);
    expect(sent.headers.location).toBe(`https://127.0.0.1:${port()}/board?x=1`);
    const foreign = await plain("/", "evil.example");
    expect(foreign.status).toBe(421);
    expect(foreign.headers.location).toBeUndefined();
  });

  test("what was typed into an http page is not taken: nothing but reading is sent on", async () => {
    await open(today, Date.now());
    const socket = connect(port(), "127.0.0.1");
    socket.write(`POST /api/demo HTTP/1.1\r\nHost: 127.0.0.1:${port()}\r\nContent-Length: 0\r\n\r\n`);
    const [first] = await new Promise<Buffer[]>((resolve) => socket.once("data", (data) => resolve([data])));
    expect(String(first)).toMatch(/^HTTP\/1\.1 421/);
    socket.destroy();
  });

  test("a new certificate is in use for the next who connects, and who is connected stays", async () => {
    const made = madeFor(20);
    const { live, log } = await open(made, NOW);
    expect(await shownUntil()).toBe(NOW + 20 * DAY_MS);
    const open1 = connectTls({ host: "127.0.0.1", port: port(), rejectUnauthorized: false });
    await new Promise((resolve) => open1.once("secureConnect", resolve));
    const next = madeFor(200);
    // The two files come one after the other: half of a pair changes nothing.
    copyFileSync(next.certificate, made.certificate);
    live.look(NOW);
    expect(await shownUntil()).toBe(NOW + 20 * DAY_MS);
    expect(log.lines.at(-1)?.message).toMatch(/^the certificate in use stays: ROOM_TLS_KEY/);
    copyFileSync(next.key, made.key);
    live.look(NOW);
    expect(await shownUntil()).toBe(NOW + 200 * DAY_MS);
    open1.write(`GET /api/me HTTP/1.1\r\nHost: 127.0.0.1:${port()}\r\n\r\n`);
    const answer = await new Promise<Buffer>((resolve) => open1.once("data", resolve));
    expect(String(answer)).toMatch(/^HTTP\/1\.1 200/);
    open1.destroy();
  });

  test("the door panel shows how long it holds, and the log says once when it is time to renew", async () => {
    const made = makeCertificate({ until: Math.floor(Date.now() / 1000) * 1000 + 90 * DAY_MS });
    const { live, log } = await open(made, Date.now());
    const joined = await ask("/api/demo", made.pem, { name: "Iris", role: "teacher" });
    const cookie = joined.headers["set-cookie"]?.[0]?.split(";")[0] ?? "";
    const sheet = JSON.parse((await ask("/api/door", made.pem, undefined, cookie)).text) as DoorSheet;
    const { until } = live.current();
    expect(sheet.certificate).toEqual({ until, daysLeft: Math.floor((until - server.clock.now()) / DAY_MS) });
    expect(sheet.isSecure).toBe(true);
    live.look(until - 14.5 * DAY_MS);
    live.look(until - 14.4 * DAY_MS);
    expect(log.lines.filter(({ level }) => level === "warn").map(({ message }) => message)).toEqual([
      "the certificate holds 14 more days: renew ROOM_TLS_CERT and ROOM_TLS_KEY",
    ]);
  });
});
