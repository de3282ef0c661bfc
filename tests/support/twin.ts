import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PermissionFlagsBits } from "discord-api-types/v10";
import { expect } from "vitest";
import { STUDENT_PERMISSIONS } from "./gateway/world.ts";
import { openWholeBot } from "./gateway/whole-bot.ts";

/* The whole bot, or the built process, on a loopback platform that others wrote, and two people there. */

/** What is used of the package; its own types are written for other settings than ours. */
interface Row {
  readonly [column: string]: unknown;
}
interface Table {
  findMany(query?: object): Promise<Row[]>;
  findUnique(query: object): Promise<Row | null>;
  updateMany(query: object): Promise<unknown>;
}
interface Platform {
  readonly restUrl: string;
  readonly botToken: string;
  readonly botUserId: string;
  readonly guildId: string;
  readonly prisma: Readonly<
    Record<
      | "user"
      | "channel"
      | "threadMember"
      | "message"
      | "guildMember"
      | "applicationCommand"
      | "interactionResponse",
      Table
    >
  >;
  start(): Promise<void>;
  stop(): Promise<void>;
  simulateInteraction(asked: object): Promise<{ readonly id: string }>;
}
interface Shown {
  readonly id: string;
  readonly content: string;
  readonly nonce: string | null;
  readonly labels: string[];
  readonly lines: string[];
}
export interface OpenForm {
  readonly line: string;
  readonly fields: string[];
}

const CHOSEN_ROW = 1;
const LABEL = 18;
const FORM = 9;

const load = (name: string): Promise<unknown> => import(name);

interface Bot {
  /** Why it can't go on, where it can't. */
  readonly fatal: readonly string[];
  stop(): Promise<void>;
}
type Open<B> = (on: { readonly token: string; readonly api: string }) => Promise<B>;

export const createTwin = (token?: string) => createTwinWith(openWholeBot, token);

export async function createTwinWith<B extends Bot>(open: Open<B>, token?: string) {
  const { DigitalDiscord } = (await load("discord-digital-twin")) as {
    DigitalDiscord: new (options: object) => Platform;
  };
  const platform = new DigitalDiscord({
    guild: { name: "Harbour workshop, Tuesday evening" },
    channels: [{ name: "darkroom", type: 0 }],
    users: [{ username: "iris" }, { username: "mina" }],
    // Its store in memory would be shared by all of this process.
    dbUrl: `file:${join(mkdtempSync(join(tmpdir(), "sinkside-twin-")), "twin.db")}`,
  });
  await platform.start();
  const { prisma, guildId } = platform;
  const idOf = async (username: string): Promise<string> =>
    String((await prisma.user.findMany({ where: { username } }))[0]?.["id"]);
  const [iris, mina] = await Promise.all([idOf("iris"), idOf("mina")]);
  const channelId = String((await prisma.channel.findMany({ where: { guildId } }))[0]?.["id"]);
  const may = (userId: string, permissions: bigint): Promise<unknown> =>
    prisma.guildMember.updateMany({ where: { guildId, userId }, data: { permissions: String(permissions) } });
  await may(iris, STUDENT_PERMISSIONS | PermissionFlagsBits.ManageGuild);
  await may(mina, STUDENT_PERMISSIONS);
  const bot = await open({ token: token ?? platform.botToken, api: platform.restUrl });
  if (bot.fatal.length === 0)
    await expect.poll(() => prisma.applicationCommand.findMany({ where: { guildId } }), POLL).not.toEqual([]);

  const messages = async (where = channelId): Promise<Shown[]> => {
    const rows = await prisma.message.findMany({ where: { channelId: where } });
    return rows.map(show).sort((a, b) => Number(BigInt(a.id) - BigInt(b.id)));
  };

  /** Until the bot has said something, and what it said. */
  async function answerTo(asked: object): Promise<string> {
    const before = new Set((await messages()).map(({ id }) => id));
    await platform.simulateInteraction({ channelId, ...asked });
    const fresh = async (): Promise<Shown[]> => (await messages()).filter(({ id }) => !before.has(id));
    await expect.poll(fresh, POLL).not.toEqual([]);
    return (await fresh()).map(({ content }) => content).join("\n");
  }

  async function formOf(asked: object): Promise<OpenForm> {
    const { id } = await platform.simulateInteraction({ channelId, ...asked });
    const response = (): Promise<Row | null> =>
      prisma.interactionResponse.findUnique({ where: { interactionId: id } });
    await expect.poll(async () => (await response())?.["type"], POLL).toBe(FORM);
    const form = JSON.parse(String((await response())?.["data"])) as {
      custom_id: string;
      components: { component: { custom_id: string } }[];
    };
    return { line: form.custom_id, fields: form.components.map(({ component }) => component.custom_id) };
  }

  /** What a person's client sends for `/staff-batch mix kind:fixer`. */
  function slashOf(userId: string, path: string, given: Readonly<Record<string, string | number>>): object {
    const [top, sub] = path.split(" ");
    const options = Object.entries(given).map(([name, value]) => ({
      name,
      type: typeof value === "number" ? 4 : 3,
      value,
    }));
    const data = { id: top, name: top, type: 1, options: sub ? [{ name: sub, type: 1, options }] : options };
    return { type: 2, userId, data };
  }

  async function pressOf(userId: string, label: string): Promise<object> {
    const holding = (await messages()).findLast(({ labels }) => labels.includes(label));
    if (!holding) throw new Error(`nobody sees a key ${label}`);
    const data = { custom_id: holding.lines[holding.labels.indexOf(label)], component_type: 2 };
    return { type: 3, userId, messageId: holding.id, data };
  }

  return {
    iris,
    mina,
    messages,
    async threads() {
      const rows = await prisma.channel.findMany({ where: { parentId: channelId } });
      return rows.map(({ id, name, archived }) => ({ id: String(id), name, archived }));
    },
    membersOf: async (threadId: string) =>
      (await prisma.threadMember.findMany({ where: { channelId: threadId } })).map(({ userId }) => userId),
    bot,
    /** Until somebody has been told this. */
    told: (text: string) =>
      expect
        .poll(async () => (await messages()).some(({ content }) => content.includes(text)), POLL)
        .toBe(true),
    async newest(): Promise<Shown> {
      const newest = (await messages()).at(-1);
      if (!newest) throw new Error("nothing was said");
      return newest;
    },
    async message(id: string): Promise<Shown> {
      const row = await prisma.message.findUnique({ where: { id } });
      if (!row) throw new Error(`no message ${id}`);
      return show(row);
    },
    async commands() {
      const rows = await prisma.applicationCommand.findMany({ where: { guildId } });
      return rows.map((row) => ({ name: row["name"], permissions: row["defaultMemberPermissions"] }));
    },
    slash: (userId: string, path: string, given: Readonly<Record<string, string | number>>) =>
      answerTo(slashOf(userId, path, given)),
    openForm: (userId: string, path: string, given: Readonly<Record<string, string | number>>) =>
      formOf(slashOf(userId, path, given)),
    press: async (userId: string, label: string) => answerTo(await pressOf(userId, label)),
    pressForm: async (userId: string, label: string) => formOf(await pressOf(userId, label)),
    submit(userId: string, { line, fields }: OpenForm, filled: Readonly<Record<string, string>>) {
      const components = fields.map((name) => ({
        type: LABEL,
        component: { type: 4, custom_id: name, value: filled[name] ?? "" },
      }));
      return answerTo({ type: 5, userId, data: { custom_id: line, components } });
    },
    async stop() {
      await bot.stop();
      await platform.stop();
    },
  };
}

const POLL = { timeout: 20_000, interval: 20 };

function show(row: Row): Shown {
  const rows = JSON.parse(String(row["components"])) as {
    type: number;
    components: { label?: string; custom_id: string }[];
  }[];
  const keys = rows.filter(({ type }) => type === CHOSEN_ROW).flatMap(({ components }) => components);
  return {
    id: String(row["id"]),
    content: String(row["content"]),
    nonce: row["nonce"] === null ? null : String(row["nonce"]),
    labels: keys.map(({ label = "" }) => label),
    lines: keys.map(({ custom_id: line }) => line),
  };
}

export type Twin = Awaited<ReturnType<typeof createTwin>>;
