import { mkdtempSync } from "node:fs";
import { request } from "node:https";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import { WebSocket } from "ws";
import { openStores } from "../../store/index.ts";
import { makeCertificate, type MadeCertificate } from "../support/certificate.ts";
import { needing } from "../support/needs.ts";
import { type BotProcess, startProcess } from "../support/process.ts";
import { type PushService, startPushService } from "../support/push-service.ts";

/*
 * The built process, killed with -9 when a push service has taken a call and has not said so yet: the worst moment, since
 * nobody knows whether it was shown. The next life says it again, under the key and topic by which the phone knows it.
 */

const KILLS = 3;

let service: PushService | undefined;
let bot: BotProcess | undefined;
afterEach(async () => {
  if (bot?.child.exitCode === null) await bot.kill();
  await service?.stop();
});

function post(url: string, path: string, made: MadeCertificate, body: unknown, cookie = ""): Promise<string> {
  return new Promise((resolve, reject) => {
    const headers = { origin: url, "content-type": "application/json", cookie };
    const asking = request(
      url + path,
      { method: "POST", ca: made.pem, headers, agent: false },
      (response) => {
        response.resume();
        if (response.statusCode === 200)
          resolve((response.headers["set-cookie"]?.[0] ?? "").split(";")[0] ?? "");
        else reject(new Error(`${path}: ${response.statusCode}`));
      },
    );
    asking.on("error", reject);
    asking.end(JSON.stringify(body));
  });
}

/** Says each line in the room as its page would, one after the other's answer. */
async function says(
  url: string,
  made: MadeCertificate,
  cookie: string,
  lines: readonly string[],
): Promise<void> {
  const socket = new WebSocket(`${url.replace("https", "wss")}/live`, {
    ca: made.pem,
    headers: { cookie, origin: url },
  });
  await new Promise((resolve, reject) => socket.on("open", resolve).on("error", reject));
  for (const [at, text] of lines.entries()) {
    const id = `call-000${at}`;
    const taken = new Promise<void>((resolve) => {
      // The process may be killed over the last one.
      socket.on("close", () => resolve());
      socket.on("message", (data) => {
        const message = JSON.parse(String(data)) as { type: string; id?: string };
        if (message.type === "taken" && message.id === id) resolve();
      });
    });
    socket.send(JSON.stringify({ type: "line", id, text }));
    await taken;
  }
  socket.terminate();
}

describe("a push", needing("openssl"), () => {
  test(
    `is neither lost nor unknown to the phone over ${KILLS} kills between its sending and its record`,
    { timeout: 120_000 },
    async () => {
      const made = makeCertificate();
      const pushes = await startPushService(made);
      service = pushes;
      const data = mkdtempSync(join(tmpdir(), "sinkside-push-"));
      const start = (): BotProcess =>
        (bot = startProcess(data, {
          ROOM_TLS_CERT: made.certificate,
          ROOM_TLS_KEY: made.key,
          PUSH_HOSTS: pushes.host,
          NODE_EXTRA_CA_CERTS: made.certificate,
        }));
      let kills = 0;
      const url = await start().ready;
      const teacher = await post(url, "/api/demo", made, { name: "Iris", role: "teacher" });
      await post(url, "/api/push/allow", made, { isAllowed: true }, teacher);
      const mina = await post(url, "/api/demo", made, { name: "Mina", role: "student" });
      await post(url, "/api/push/on", made, pushes.subscription("mina"), mina);
      const ended = new Promise<void>((resolve) => {
        pushes.answer(() => {
          if (kills >= KILLS) {
            resolve();
            return { status: 201 };
          }
          kills += 1;
          bot?.child.kill("SIGKILL");
          return undefined;
        });
      });
      await says(url, made, mina, [
        "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:3",
        "/run start",
        "/run next step:0",
      ]).catch(() => undefined);
      // Each life ends as it has sent; the next takes up what is owed.
      for (let life = 0; life < KILLS; life += 1) {
        await bot?.ended();
        start();
      }
      await ended;
      expect(kills).toBe(KILLS);
      const keys = pushes.got.map(({ body }) => body["key"]);
      const topics = pushes.got.map(({ headers }) => headers["topic"]);
      expect(keys).toHaveLength(KILLS + 1);
      expect(new Set(keys).size).toBe(1);
      expect(new Set(topics).size).toBe(1);
      await bot?.kill("SIGTERM");
      const stores = openStores(join(data, "sinkside.db"));
      expect(stores.db.prepare("select * from push_owed").all()).toEqual([]);
      stores.close();
    },
  );
});
