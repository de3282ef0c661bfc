import type { ThreadPowers } from "../../../commands/define.ts";
import type { Log } from "../../process/log.ts";
import { setTimeout as sleep } from "node:timers/promises";
import { languageOfTag } from "../../../store/shapes/language.ts";
import {
  ChannelType,
  Client,
  DiscordjsErrorCodes,
  Events,
  GatewayDispatchEvents,
  GatewayIntentBits,
  Partials,
  PermissionsBitField,
  RateLimitError,
  Options,
  type APIInteraction,
  type GatewayMessageCreateDispatchData,
  type Guild,
  type PermissionsString,
  type TextChannel,
} from "discord.js";
import { NEEDED_PERMISSIONS, THREAD_PERMISSIONS } from "./invite.ts";
import type { Admitted } from "./pace.ts";
import type { DiscordShard } from "./settings.ts";
import { buildStrategy } from "./shards.ts";
import type { Joined } from "./welcome.ts";

export interface GatewaySettings {
  readonly token: string;
  readonly api: string;
  readonly log: Log;
  readonly requestTimeoutMs: number;
  readonly guildWaitMs: number;
  readonly retryMs: number;
  readonly signal: AbortSignal;
  /** Lets a request out that counts against the bot's own limit: the library asks for the gateway's address itself. */
  admit?(method: string, path: string): Promise<Admitted>;
  readonly shard?: DiscordShard;
  onInteraction(interaction: APIInteraction): void;
  /** Anything written in a channel that the bot sees; its words only where they are for the bot. */
  onMessage(message: GatewayMessageCreateDispatchData): void;
  /** At each first connection: the servers the bot is in. */
  onReady(applicationId: string, guildIds: readonly string[], name: string): void;
  onGuild(applicationId: string, guildId: string): void;
  /** Somebody has just added the bot to this server. */
  onJoined(joined: Joined): void;
  onFatal(sentence: string): void;
}

export const TOKEN_REJECTED =
  "Discord rejected the bot's token. Put a valid one into DISCORD_TOKEN and start again.";

/** Closings after which connecting again is of no use. Source: Discord's documentation, "Gateway Close Event Codes". */
const FATAL_CLOSINGS: Readonly<Record<number, string>> = {
  4004: TOKEN_REJECTED,
  4010: "Discord refused the connection (invalid shard). Start again with this program's own settings.",
  4011: "The bot is in more servers than one connection may serve. Split it by servers.",
  4012: "Discord no longer speaks the version of its interface this program uses. Update the program.",
  4013: "Discord refused the kinds of event this program asks for. Update the program.",
  4014: "Discord does not allow this bot the kinds of event it asks for. Look at the bot's settings in the developer portal.",
};

const LONGEST_RETRY_MS = 60_000;

/** Without the privileged one, words come only of messages that name the bot or are written to it alone. */
const INTENTS = [GatewayIntentBits.Guilds, GatewayIntentBits.GuildMessages, GatewayIntentBits.DirectMessages];

/** The connection on which the platform reports what people do. It asks for no privileged intent. */
export function createDiscordGateway(settings: GatewaySettings) {
  const { log, signal, retryMs } = settings;
  let client: Client<true> | undefined;
  let latest: Client | undefined;

  function createClient(): Client {
    const { shard } = settings;
    const made = new Client({
      intents: INTENTS,
      // What people write is answered and not kept.
      makeCache: Options.cacheWithLimits({ ...Options.DefaultMakeCacheSettings, MessageManager: 0 }),
      partials: [Partials.Channel],
      allowedMentions: { parse: [] },
      waitGuildTimeout: settings.guildWaitMs,
      rest: { api: settings.api, timeout: settings.requestTimeoutMs, retries: 0 },
      ...(shard ? { shards: [shard.id], shardCount: shard.count } : {}),
      ws: {
        buildStrategy,
        ...(shard ? { buildIdentifyThrottler: () => ({ waitForIdentify: shard.waitForTurn }) } : {}),
      },
    });
    latest = made;
    // Without a listener an error here would end the process.
    made.on(Events.Error, (error) => log.error({ err: error }, "the connection reported an error"));
    made.on(Events.ShardError, (error) => log.warn({ err: error }, "the connection failed"));
    made.on(Events.ShardReconnecting, () => {
      // The library says so of a connection that it was told to end, too.
      if (!signal.aborted) log.warn({}, "the connection was lost; connecting again");
    });
    made.on(Events.ShardResume, (_, replayed) =>
      log.info({ replayed }, "the connection goes on where it was"),
    );
    made.on(Events.ShardDisconnect, ({ code }) => {
      const sentence = FATAL_CLOSINGS[code];
      if (sentence !== undefined) settings.onFatal(sentence);
    });
    // Straight from the socket: the client itself would hold commands back until it has all servers' data.
    made.ws.on(GatewayDispatchEvents.InteractionCreate, settings.onInteraction);
    made.ws.on(GatewayDispatchEvents.MessageCreate, settings.onMessage);
    made.on(Events.ClientReady, (ready) => {
      client = ready;
      settings.onReady(ready.application.id, [...ready.guilds.cache.keys()], ready.user.username);
    });
    // Of a server known at the start, or seen again after a fault, the library reports no creation.
    made.on(Events.GuildCreate, (guild) => {
      settings.onGuild(guild.client.application.id, guild.id);
      settings.onJoined({
        guildId: guild.id,
        channelId: firstChannel(guild),
        language: languageOfTag(guild.preferredLocale),
      });
    });
    return made;
  }

  /** `afterMs`: not yet, and not before then where the platform said so. */
  async function connect(): Promise<"connected" | "fatal" | { readonly afterMs: number }> {
    const made = createClient();
    const admitted = await settings.admit?.("GET", "/gateway/bot");
    try {
      await made.login(settings.token);
      return "connected";
    } catch (error) {
      await made.destroy().catch(() => undefined);
      if (isTokenFault(error)) settings.onFatal(TOKEN_REJECTED);
      if (signal.aborted) return "fatal";
      const afterMs = error instanceof RateLimitError ? Math.max(error.timeToReset, error.retryAfter) : 0;
      log.warn({ err: error, ...(afterMs > 0 ? { afterMs } : {}) }, "no connection yet");
      return { afterMs };
    } finally {
      admitted?.end(null);
    }
  }

  async function keepTrying(afterMs: number): Promise<void> {
    let told = afterMs;
    for (let pauseMs = retryMs; !signal.aborted; pauseMs = Math.min(pauseMs * 2, LONGEST_RETRY_MS)) {
      // A wait the platform asks for is kept, however long it is.
      await sleep(Math.max(pauseMs, told), undefined, { signal }).catch(() => undefined);
      const tried = signal.aborted ? "fatal" : await connect();
      if (typeof tried === "string") return;
      told = tried.afterMs;
    }
  }

  /** What the bot may do in a channel; undefined where that can't be told. */
  function ownPermissions(channelId: string): Readonly<PermissionsBitField> | undefined {
    const channel = latest?.channels.cache.get(channelId);
    if (!channel || channel.isDMBased()) return undefined;
    const me = channel.guild.members.me;
    return me ? (channel.permissionsFor(me) ?? undefined) : undefined;
  }

  function missingPermissions(channelId: string): string[] {
    const has = ownPermissions(channelId);
    if (!has) return [];
    const isThread = latest?.channels.cache.get(channelId)?.isThread() ?? false;
    const skipped = isThread ? "SendMessages" : "SendMessagesInThreads";
    return NEEDED_PERMISSIONS.filter((each) => each !== skipped)
      .filter((each) => !has.has(each))
      .map(sayPermission);
  }

  function threadPowers(channelId: string): ThreadPowers {
    const has = ownPermissions(channelId);
    if (!has) return { missing: [], areOpen: false };
    const [forOne, forAll] = THREAD_PERMISSIONS;
    const mayNot = [
      ...(has.has("SendMessagesInThreads") ? [] : ["SendMessagesInThreads" as const]),
      ...(has.any([forOne, forAll]) ? [] : [forOne]),
    ];
    return { missing: mayNot.map(sayPermission), areOpen: !has.has(forOne) };
  }

  return {
    /** Resolves after the first try; where the platform can't be reached, tries go on behind. */
    async start(): Promise<void> {
      const tried = await connect();
      if (typeof tried !== "string") void keepTrying(tried.afterMs);
    },
    async stop(): Promise<void> {
      await latest
        ?.destroy()
        .catch((error: unknown) => log.warn({ err: error }, "the connection did not end well"));
    },
    ownId: (): string | undefined => client?.user.id,
    guildName: (guildId: string): string | undefined => latest?.guilds.cache.get(guildId)?.name,
    roleNames: (guildId: string, roleIds: readonly string[]): string[] => {
      const roles = latest?.guilds.cache.get(guildId)?.roles.cache;
      return roleIds.flatMap((id) => roles?.get(id)?.name ?? []);
    },
    /** What a member may do on a server: a message does not tell it, as a command does. */
    permissionsOf(guildId: string, userId: string, roleIds: readonly string[]): bigint {
      const guild = latest?.guilds.cache.get(guildId);
      if (guild?.ownerId === userId) return PermissionsBitField.All;
      const roles = [guildId, ...roleIds].flatMap((id) => guild?.roles.cache.get(id) ?? []);
      return roles.reduce((sum, { permissions }) => sum | permissions.bitfield, 0n);
    },
    missingPermissions,
    threadPowers,
    /** Undefined of one that the bot does not see. */
    channelName(channelId: string): string | undefined {
      const channel = latest?.channels.cache.get(channelId);
      return channel && "name" in channel ? (channel.name ?? undefined) : undefined;
    },
    /** The channel that a thread is in; undefined for what is none, as far as is known. */
    parentOf(channelId: string): string | undefined {
      const channel = latest?.channels.cache.get(channelId);
      return channel?.isThread() ? (channel.parentId ?? undefined) : undefined;
    },
  };
}

export type DiscordGateway = ReturnType<typeof createDiscordGateway>;

/** Where the server greets people, or the uppermost channel the bot may write in. */
function firstChannel({ systemChannel, channels, members }: Guild): string | null {
  const { me } = members;
  const texts = [...channels.cache.values()].filter((channel) => channel.type === ChannelType.GuildText);
  const inOrder = texts.sort((a, b) => a.rawPosition - b.rawPosition || a.id.localeCompare(b.id));
  const mayWrite = (channel: TextChannel): boolean =>
    me !== null && channel.permissionsFor(me).has(["ViewChannel", "SendMessages"]);
  return [...(systemChannel ? [systemChannel] : []), ...inOrder].find(mayWrite)?.id ?? null;
}

/** `SendMessagesInThreads` as the settings page has it: `Send Messages in Threads`. */
function sayPermission(permission: PermissionsString): string {
  return permission.replace(/(?<=[a-z])(?=[A-Z])/g, " ").replace(" In ", " in ");
}

function isTokenFault(error: unknown): boolean {
  if (!(error instanceof Error)) return false;
  const code = "code" in error ? error.code : undefined;
  const status = "status" in error ? error.status : undefined;
  return code === DiscordjsErrorCodes.TokenInvalid || status === 401;
}
