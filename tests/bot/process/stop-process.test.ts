import { existsSync, mkdtempSync } from "node:fs";
import { once } from "node:events";
import { connect, type Socket } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { drawToken, hashToken } from "../../../bot/chat/room/secrets.ts";
import { inventDemo } from "../../../bot/demo/demo.ts";
import { openStores, type OpenedStores } from "../../../store/index.ts";
import { createGateway } from "../../support/gateway/gateway.ts";
import { aQuickPlan, pourIn } from "../../support/developing.ts";
import { startProcess } from "../../support/process.ts";

/* The built process, told to stop. */

const PHONES = 30;

function prepared(prepare: (stores: OpenedStores, classId: number, now: number) => void): string {
  const data = mkdtempSync(join(tmpdir(), "sinkside-stop-"));
  const stores = openStores(join(data, "sinkside.db"));
  const now = Date.now();
  const demo = inventDemo(stores, "UTC", now);
  if (!demo) throw new Error("no demo class");
  stores.atomically(() => prepare(stores, demo.id, now));
  stores.close();
  return data;
}

/** A phone that was let in and then went out of reach: it reads nothing, answers nothing, and says no goodbye. */
async function outOfReach(url: string, token: string): Promise<Socket> {
  const { port } = new URL(url);
  const socket = connect(Number(port), "127.0.0.1");
  socket.on("error", () => {});
  const key = Buffer.alloc(16, 7).toString("base64");
  socket.write(
    [
      "GET /live HTTP/1.1",
      `Host: 127.0.0.1:${port}`,
      `Origin: ${url}`,
      "Upgrade: websocket",
      "Connection: Upgrade",
      `Sec-WebSocket-Key: ${key}`,
      "Sec-WebSocket-Version: 13",
      `Cookie: sinkside=${token}`,
      "\r\n",
    ].join("\r\n"),
  );
  const [first] = (await once(socket, "data")) as [Buffer];
  expect(first.toString()).toMatch(/^HTTP\/1\.1 101 /);
  return socket.pause();
}

test("with phones out of reach it closes its store and ends: nobody is asked first", async () => {
  const tokens = Array.from({ length: PHONES }, drawToken);
  const data = prepared((stores, classId, now) => {
    const rooms = stores.rooms;
    for (const [index, token] of tokens.entries()) {
      const personId = `room:p${index}`;
      stores.members.see(classId, { id: personId, name: `Person ${index}` }, "student", now);
      rooms.addSession({ tokenHash: hashToken(token), classId, personId, device: "Device" }, now);
    }
  });
  const bot = startProcess(data, { BACKUP_CRON: "off" });
  const url = await bot.ready;
  const phones = await Promise.all(tokens.map((token) => outOfReach(url, token)));
  const began = performance.now();
  expect(await bot.kill("SIGTERM")).toBe(0);
  console.log(`ended in ${Math.round(performance.now() - began)} ms`);
  for (const phone of phones) phone.destroy();
  // The hard end leaves the log of the store behind; who closes it moves all of it in.
  expect(existsSync(join(data, "sinkside.db-wal"))).toBe(false);
});

test("with the other chat out of reach it closes its store and ends: a goodbye is not waited for", async () => {
  const gateway = await createGateway();
  const data = prepared(() => {});
  const bot = startProcess(data, {
    BACKUP_CRON: "off",
    DISCORD_TOKEN: gateway.token,
    DISCORD_API_URL: gateway.api,
  });
  await bot.ready;
  await expect.poll(() => gateway.socket.isConnected(), { timeout: 60_000 }).toBe(true);
  gateway.socket.fallSilent();
  expect(await bot.kill("SIGTERM")).toBe(0);
  await gateway.stop();
  expect(existsSync(join(data, "sinkside.db-wal"))).toBe(false);
  expect(bot.output()).toContain('"parts":["chats"]');
});

test("while it waits for a chat that hangs, the room is called on", async () => {
  const gateway = await createGateway();
  gateway.faults.add("POST", /messages$/, { kind: "hang", after: true });
  const plan = aQuickPlan(20, 1, { pourOutSeconds: 1 });
  const data = prepared((stores, classId, now) => {
    stores.members.see(classId, { id: "room:mina", name: "Mina" }, "student", now);
    pourIn(stores, { classId, personId: "room:mina", plan, warnSeconds: 0 }, now);
    const { id } = stores.classes.ensure(`discord:${gateway.guild.id}`, gateway.guild.name, now);
    stores.classes.setChannelRef(id, gateway.channel.id);
    const user = gateway.addUser("Ben");
    const personId = `discord:${user.id}`;
    stores.members.see(id, { id: personId, name: user.name }, "student", now);
    stores.members.saveDirectChannel(personId, gateway.world.openDirect(user.id).id);
    pourIn(stores, { classId: id, personId, plan: aQuickPlan(600, 600), warnSeconds: 0 }, now);
  });
  const bot = startProcess(data, {
    BACKUP_CRON: "off",
    DISCORD_TOKEN: gateway.token,
    DISCORD_API_URL: gateway.api,
  });
  await bot.ready;
  while (gateway.asked("POST", /messages$/).length === 0) await new Promise((done) => setTimeout(done, 50));
  const toldAt = Date.now();
  expect(await bot.kill("SIGTERM")).toBe(0);
  await gateway.stop();
  const stores = openStores(join(data, "sinkside.db"));
  const after = stores.db
    .prepare("select body ->> 'dueAt' as due from messages where key like 'd:%' and body ->> 'dueAt' > ?")
    .all(toldAt);
  stores.close();
  expect(after.length).toBeGreaterThanOrEqual(2);
});
