import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PermissionFlagsBits } from "discord-api-types/v10";
import { afterEach, beforeEach, expect, test } from "vitest";
import { takeLock } from "../../bot/disk/lock.ts";
import { openStores } from "../../store/index.ts";
import { createGateway, type Gateway } from "../support/gateway/gateway.ts";
import { shardOf } from "../support/gateway/socket.ts";
import { STUDENT_PERMISSIONS, type Channel, type Guild, type User } from "../support/gateway/world.ts";
import { startProcess, type BotProcess } from "../support/process.ts";
import { SHEET } from "../support/gateway/sheet.ts";

/* Two built processes of one bot on the loopback platform, each with its servers and its own store. */

interface Place {
  readonly guild: Guild;
  readonly channel: Channel;
}

let gateway: Gateway;
let bot: BotProcess;
let data: string;
let places: Place[];
let teacher: User;

beforeEach(async () => {
  gateway = await createGateway();
  data = mkdtempSync(join(tmpdir(), "sinkside-two-"));
  const { guild, channel } = gateway;
  const all: Place[] = [{ guild, channel }];
  // Ids have time inside: made one after the other, they fall to one process or the other.
  while ([0, 1].some((id) => !all.some((each) => shardOf(each.guild.id, 2) === id))) {
    await new Promise((resolve) => setTimeout(resolve, 1));
    all.push(gateway.world.addGuild("Invented class"));
  }
  places = [0, 1].map((id) => all.find((each) => shardOf(each.guild.id, 2) === id) as Place);
  teacher = gateway.addUser("Teacher", {
    permissions: STUDENT_PERMISSIONS | PermissionFlagsBits.ManageGuild,
  });
  bot = startProcess(data, {
    DISCORD_TOKEN: gateway.token,
    DISCORD_API_URL: gateway.api,
    DISCORD_SHARDS: "2",
  });
  await bot.ready;
  await until(() => places.every((place) => gateway.commands.has(place.guild.id)));
});

afterEach(async () => {
  await bot.kill("SIGTERM");
  await gateway.stop();
});

async function until(look: () => boolean): Promise<void> {
  const end = Date.now() + 40_000;
  while (!look()) {
    if (Date.now() > end) throw new Error(`never came: ${String(look)}\n${bot.output()}`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

function classesIn(folder: string): string[] {
  const stores = openStores(join(folder, "sinkside.db"));
  const keys = stores.classes.list().map(({ key }) => key);
  stores.close();
  return keys;
}

test("each process answers its own servers, keeps their classes alone, and gets its people's direct messages", async () => {
  // One identify in five seconds of a bot: they take turns.
  const [first = 0, second = 0] = gateway.socket.state.identifiedAt;
  expect(gateway.socket.state.identifies).toBe(2);
  expect(second - first).toBeGreaterThanOrEqual(5000);

  for (const { channel } of places) {
    const answer = await gateway.slash(teacher, "sheet add", SHEET, { channel });
    expect(answer.text).toContain("Lantern 400");
  }
  const keys = places.map(({ guild }) => `discord:${guild.id}`);
  expect(classesIn(data)).toEqual(["room:demo", keys[0]]);
  expect(classesIn(join(data, "shard-1"))).toEqual([keys[1]]);

  // The platform sends direct messages to the first process; this person's class is the other's, and so is the sheet.
  const mina = gateway.addUser("Mina");
  const [, other] = places;
  if (other) await gateway.slash(mina, "help", {}, { channel: other.channel });
  const asked = { film: "Lantern 400", temp: "20C" };
  const plan = await gateway.slash(mina, "plan make", asked, { isDirect: true });
  expect(plan.text).toContain("9:00");
  // A key of that answer is of that class, though she has been in one of the first process since.
  await gateway.slash(mina, "help", {}, { channel: places[0]?.channel ?? gateway.channel });
  const start = plan.buttons.find(({ label }) => label === "Start");
  expect((await gateway.press(mina, start?.custom_id ?? "no such key")).text).toContain(
    "Pour in the developer",
  );
  const stores = openStores(join(data, "shard-1", "sinkside.db"));
  expect(stores.db.prepare("select count(*) as plans from plans").get()).toEqual({ plans: 1 });
  expect(stores.db.prepare("select count(*) as runs from runs").get()).toEqual({ runs: 1 });
  stores.close();
  expect(gateway.violations).toEqual([]);
});

test("a roll is rated from the menu of its call, alone, though its person has been in a class of the other process since", async () => {
  const [home, other] = places;
  if (!home || !other) throw new Error("there are not two servers");
  const mina = gateway.addUser("Mina");
  const alone = { isDirect: true };
  await gateway.slash(teacher, "sheet add", SHEET, { channel: other.channel });
  await gateway.slash(mina, "help", {}, { channel: other.channel });
  await gateway.slash(mina, "plan make", { film: "Lantern 400", temp: "20C" }, alone);
  await gateway.slash(mina, "run start", {}, alone);
  await gateway.slash(mina, "run next", { run: "R1" }, alone);
  const callOf = () =>
    gateway
      .messagesTo(mina)
      .find(({ content, interactionId }) => interactionId === undefined && content.includes("Agitate"));
  await until(() => callOf() !== undefined);
  await gateway.slash(mina, "run stop", { run: "R1", sure: "yes" }, alone);
  await gateway.slash(mina, "help", {}, { channel: home.channel });
  const call = callOf();
  if (!call) throw new Error("there is no call");
  // Nothing in the message itself says whose it is.
  expect(call.components).toEqual([]);
  const opened = await gateway.useMenu(mina, "Rate this roll", call);
  expect(opened.text).toBe("");
  await gateway.submit(mina, opened, { rating: "4" }, alone);
  const ratings = (folder: string): unknown[] => {
    const stores = openStores(join(folder, "sinkside.db"));
    // The demo has rolls of its own.
    const rows = stores.db
      .prepare(
        "select rolls.number, rating from rolls join classes on classes.id = class_id where key like 'discord:%'",
      )
      .all();
    stores.close();
    return rows;
  };
  expect([ratings(data), ratings(join(data, "shard-1"))]).toEqual([[], [{ number: 1, rating: 4 }]]);
  expect(gateway.violations).toEqual([]);
});

test("a process that dies is started again, with its own store; all end with the first", async () => {
  const { pid } = openOwner(join(data, "shard-1"));
  process.kill(pid, "SIGKILL");
  await until(() => openOwner(join(data, "shard-1")).pid !== pid);
  await bot.kill("SIGKILL");
  await until(() => isFree(join(data, "shard-1")));
});

/** The process that owns a store, as the store has it. */
function openOwner(folder: string): { pid: number } {
  const stores = openStores(join(folder, "sinkside.db"));
  const row = stores.db.prepare("select pid from owner").get() as { pid: number };
  stores.close();
  return row;
}

/** Nobody holds the store any more. */
function isFree(folder: string): boolean {
  const path = join(folder, "sinkside.db");
  const stores = openStores(path);
  try {
    takeLock(path, stores.upkeep, { pid: 0, address: "", startedAt: 0 }).release();
    return true;
  } catch {
    return false;
  } finally {
    stores.close();
  }
}

test("where the token is rejected, a process with nothing else to serve ends for good; the first goes on with its room", async () => {
  const url = await bot.ready;
  gateway.revoke();
  // Each is let go by the platform, and asks to come in again.
  for (const shard of [0, 1]) gateway.socket.drop(shard);
  await until(() => bot.output().includes("a process of this bot can't use its chat; it stays off"));
  expect(bot.output()).not.toContain("it is started again");
  await until(() => /Discord rejected the bot's token/.test(bot.output()));
  expect((await fetch(url)).status).toBe(200);
});
