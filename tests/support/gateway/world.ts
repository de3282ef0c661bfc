import {
  ChannelType,
  OverwriteType,
  PermissionFlagsBits as Bits,
  type APIChannel,
  type APIGuildMember,
  type APIOverwrite,
  type APIRole,
  type APIUser,
  type GuildMemberFlags,
  type RoleFlags,
  type UserFlags,
} from "discord-api-types/v10";

/* The people, servers and channels of the loopback platform, and how it writes them down. */

export interface User {
  readonly id: string;
  readonly name: string;
  /** Server nickname. */
  readonly nick: string | null;
  /** null: the platform does not tell them with a call. */
  readonly permissions: bigint | null;
  readonly roleIds: readonly string[];
  /** Takes no direct messages. */
  isClosed: boolean;
  /** The language their client is set to. */
  readonly locale: string;
}

export interface Channel {
  readonly id: string;
  readonly guildId: string | null;
  readonly name: string;
  /** Who a direct channel is with. */
  readonly userId: string | null;
  /** What the bot is refused here; in a thread what the channel around it says. */
  denied: bigint;
  readonly thread?: Thread;
}

/** What a channel has beside, where it is a thread. */
export interface Thread {
  readonly parentId: string;
  readonly isPrivate: boolean;
  /** People who were taken in. */
  readonly members: Set<string>;
  isArchived: boolean;
  /** By a moderator: only they open it again. */
  isLocked: boolean;
}

export interface Guild {
  readonly id: string;
  readonly name: string;
  /** Its own language, as the platform writes one. */
  readonly locale: string;
  readonly roles: readonly { readonly id: string; readonly name: string }[];
}

const NONE: number = 0;

export const STUDENT_PERMISSIONS = Bits.ViewChannel | Bits.SendMessages | Bits.UseApplicationCommands;
export const BOT_PERMISSIONS =
  Bits.ViewChannel |
  Bits.SendMessages |
  Bits.SendMessagesInThreads |
  Bits.EmbedLinks |
  Bits.AttachFiles |
  Bits.ReadMessageHistory |
  Bits.CreatePrivateThreads |
  Bits.CreatePublicThreads;

export interface World {
  readonly bot: User;
  readonly applicationId: string;
  readonly users: Map<string, User>;
  readonly guilds: Map<string, Guild>;
  readonly channels: Map<string, Channel>;
  addUser(user: Partial<Omit<User, "id">> & { name: string }): User;
  addGuild(name: string, roles?: readonly string[], locale?: string): { guild: Guild; channel: Channel };
  addChannel(channel: Partial<Channel> & { name: string }): Channel;
  /** The direct channel with a person; made on the first asking. */
  openDirect(userId: string): Channel;
}

export function createWorld(nextId: () => string): World {
  const users = new Map<string, User>();
  const guilds = new Map<string, Guild>();
  const channels = new Map<string, Channel>();

  const addUser: World["addUser"] = (given) => {
    const base = {
      id: nextId(),
      nick: null,
      permissions: STUDENT_PERMISSIONS,
      roleIds: [],
      isClosed: false,
      locale: "en-GB",
    };
    const user = { ...base, ...given };
    users.set(user.id, user);
    return user;
  };
  const addChannel: World["addChannel"] = (given) => {
    const channel = { id: nextId(), guildId: null, userId: null, denied: 0n, ...given };
    channels.set(channel.id, channel);
    return channel;
  };

  const bot = addUser({ name: "sinkside", permissions: BOT_PERMISSIONS });
  return {
    bot,
    applicationId: nextId(),
    users,
    guilds,
    channels,
    addUser,
    addChannel,
    addGuild(name, roles = [], locale = "en-GB") {
      const guild = {
        id: nextId(),
        name,
        locale,
        roles: roles.map((each) => ({ id: nextId(), name: each })),
      };
      guilds.set(guild.id, guild);
      return { guild, channel: addChannel({ guildId: guild.id, name: "darkroom" }) };
    },
    openDirect(userId) {
      const known = [...channels.values()].find((channel) => channel.userId === userId);
      return known ?? addChannel({ name: "direct", userId });
    },
  };
}

/** Fields the OpenAPI document asks for and the written documentation calls optional are there too. */
export function writeUser(user: User, isBot = false) {
  return {
    id: user.id,
    username: user.name.toLowerCase(),
    global_name: user.name,
    discriminator: "0",
    avatar: null,
    public_flags: NONE as UserFlags,
    flags: NONE as UserFlags,
    primary_guild: null,
    bot: isBot,
  } satisfies APIUser & Record<string, unknown>;
}

export function writeMember(user: User, isBot = false): APIGuildMember {
  return {
    user: writeUser(user, isBot),
    nick: user.nick,
    roles: [...user.roleIds],
    joined_at: "2026-09-01T17:00:00.000000+00:00",
    deaf: false,
    mute: false,
    flags: NONE as GuildMemberFlags,
  };
}

export function writeDirectChannel(channel: Channel, world: World) {
  const user = world.users.get(channel.userId ?? "");
  return {
    id: channel.id,
    type: ChannelType.DM,
    last_message_id: null,
    flags: 0,
    recipients: user ? [writeUser(user)] : [],
  };
}

/** Everything the platform's document asks for of a thread that the bot has made. */
export function writeThread({ id, guildId, name, thread }: Channel, botId: string) {
  if (!thread) throw new Error(`${name} is no thread`);
  return {
    id,
    type: thread.isPrivate ? ChannelType.PrivateThread : ChannelType.PublicThread,
    guild_id: guildId ?? "",
    parent_id: thread.parentId,
    owner_id: botId,
    name,
    flags: 0,
    last_message_id: null,
    rate_limit_per_user: 0,
    message_count: 0,
    member_count: Math.min(50, thread.members.size + 1),
    total_message_sent: 0,
    thread_metadata: {
      archived: thread.isArchived,
      archive_timestamp: "2026-11-26T18:00:00.000Z",
      auto_archive_duration: 60,
      locked: thread.isLocked,
      create_timestamp: "2026-11-26T18:00:00.000Z",
      ...(thread.isPrivate ? { invitable: true } : {}),
    },
  };
}

export function writeGuildChannel(channel: Channel, botId: string): APIChannel {
  if (channel.thread) return writeThread(channel, botId) as unknown as APIChannel;
  const overwrite: APIOverwrite = {
    id: botId,
    type: OverwriteType.Member,
    allow: "0",
    deny: String(channel.denied),
  };
  return {
    id: channel.id,
    type: ChannelType.GuildText,
    guild_id: channel.guildId ?? "",
    name: channel.name,
    position: 0,
    permission_overwrites: channel.denied === 0n ? [] : [overwrite],
    parent_id: null,
    topic: null,
    nsfw: false,
    last_message_id: null,
    rate_limit_per_user: 0,
  } as APIChannel;
}

export const writeRole = (id: string, name: string, permissions: bigint): APIRole => ({
  id,
  name,
  permissions: String(permissions),
  color: 0,
  colors: { primary_color: 0, secondary_color: null, tertiary_color: null },
  hoist: false,
  managed: false,
  mentionable: false,
  position: 0,
  flags: NONE as RoleFlags,
});

/** GUILD_CREATE. The members named are those a bot without the members intent is told: itself. */
export function writeGuild(guild: Guild, world: World) {
  const all = [...world.channels.values()].filter(({ guildId }) => guildId === guild.id);
  const channels = all.filter(({ thread }) => !thread);
  const active = all.filter(({ thread }) => thread?.isArchived === false);
  return {
    id: guild.id,
    name: guild.name,
    icon: null,
    // An owner may do everything: the bot must not be one.
    owner_id: world.applicationId,
    unavailable: false,
    joined_at: "2026-09-01T17:00:00.000000+00:00",
    large: false,
    member_count: world.users.size,
    roles: [
      writeRole(guild.id, "@everyone", BOT_PERMISSIONS),
      ...guild.roles.map(({ id, name }) => writeRole(id, name, STUDENT_PERMISSIONS)),
    ],
    channels: channels.map((channel) => writeGuildChannel(channel, world.bot.id)),
    members: [writeMember(world.bot, true)],
    threads: active.map((each) => writeThread(each, world.bot.id)),
    emojis: [],
    stickers: [],
    features: [],
    presences: [],
    voice_states: [],
    stage_instances: [],
    guild_scheduled_events: [],
    soundboard_sounds: [],
    preferred_locale: guild.locale,
    nsfw_level: 0,
    verification_level: 0,
    explicit_content_filter: 0,
    default_message_notifications: 0,
    mfa_level: 0,
    premium_tier: 0,
    system_channel_flags: 0,
    afk_timeout: 300,
  };
}
