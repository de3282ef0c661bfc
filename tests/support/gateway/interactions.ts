import {
  ApplicationCommandOptionType as OptionType,
  InteractionContextType,
  type APIApplicationCommandOption,
  type APIButtonComponentWithCustomId,
  type RESTPostAPIChatInputApplicationCommandsJSONBody as CommandBody,
} from "discord-api-types/v10";
import type { Ledger, StoredMessage } from "./ledger.ts";
import {
  writeDirectChannel,
  writeGuildChannel,
  writeMember,
  writeUser,
  type Channel,
  type User,
  type World,
} from "./world.ts";

/** What a person sees of the bot's answer; it goes on growing while follow-ups come. */
export interface Answer {
  readonly interactionId: string;
  /** Of the first callback: 4 a message, 5 a deferral, 8 a completion. */
  callback: number | undefined;
  isPrivate: boolean;
  /** In order; a deferral that was withdrawn leaves none. */
  readonly messages: StoredMessage[];
  choices: readonly { name: string; value: string | number }[];
  /** All messages' text. */
  readonly text: string;
  readonly buttons: readonly APIButtonComponentWithCustomId[];
}

export interface Live {
  readonly id: string;
  readonly token: string;
  readonly at: number;
  readonly channelId: string;
  readonly answer: Answer;
  /** What the answer was edited from: the deferral, or the first message. */
  original: StoredMessage | "deferred" | undefined;
  isAcknowledged: boolean;
}

/** A file that a person sends along. */
export interface SentFile {
  readonly name: string;
  readonly type: string;
  readonly data: Uint8Array;
  /** What is told of its size, where that is not true. */
  readonly size?: number;
  /** Where it lies, where that is not this platform's own place. */
  readonly url?: string;
}
export type Given = Readonly<Record<string, string | number | boolean | SentFile>>;

type Plain = Readonly<Record<string, string | number | boolean>>;
const isFile = (value: Given[string]): value is SentFile => typeof value === "object";

export interface Where {
  /** In the direct channel with the bot. */
  readonly isDirect?: boolean;
  readonly channel?: Channel;
}

export interface InteractionSide {
  readonly live: Map<string, Live>;
  create(user: User, where: Where, kind: { type: number; data: object; message?: object }): Live;
}

export function createInteractions(
  world: World,
  ledger: Ledger,
  commandsOf: (guildId: string | null) => readonly CommandBody[],
  dispatch: (type: string, data: unknown) => void,
  nextId: () => string,
  now: () => number,
  fileUrl: () => string,
) {
  const live = new Map<string, Live>();

  function channelOf(user: User, { isDirect, channel }: Where): Channel {
    if (channel) return channel;
    if (isDirect) return world.openDirect(user.id);
    const first = [...world.channels.values()].find(({ guildId }) => guildId !== null);
    if (!first) throw new Error("there is no server yet");
    return first;
  }

  function create(
    user: User,
    channel: Channel,
    kind: { type: number; data: object; message?: object },
  ): Live {
    const id = nextId();
    const isGuild = channel.guildId !== null;
    const answer: Answer = {
      interactionId: id,
      callback: undefined,
      isPrivate: false,
      messages: [],
      choices: [],
      get text() {
        return this.messages.map(({ content }) => content).join("\n");
      },
      get buttons() {
        return this.messages.flatMap(({ components }) => listButtons(components));
      },
    };
    const one: Live = {
      id,
      token: `token-of-${id}`,
      at: now(),
      channelId: channel.id,
      answer,
      original: undefined,
      isAcknowledged: false,
    };
    live.set(id, one);
    dispatch("INTERACTION_CREATE", {
      id,
      application_id: world.applicationId,
      token: one.token,
      version: 1,
      type: kind.type,
      data: kind.data,
      ...(kind.message ? { message: kind.message } : {}),
      channel: isGuild ? writeGuildChannel(channel, world.bot.id) : writeDirectChannel(channel, world),
      channel_id: channel.id,
      ...(isGuild
        ? {
            guild_id: channel.guildId,
            guild: { id: channel.guildId, locale: "en-GB", features: [] },
            member: { ...writeMember(user), permissions: String(user.permissions) },
          }
        : { user: writeUser(user) }),
      context: isGuild ? InteractionContextType.Guild : InteractionContextType.BotDM,
      app_permissions: "2251799813685247",
      authorizing_integration_owners: { 0: channel.guildId ?? "0" },
      attachment_size_limit: 10_485_760,
      entitlements: [],
      locale: user.locale,
    });
    return one;
  }

  /** As a person's own client does it: only what is registered can be called, only with options that fit. */
  function slash(user: User, name: string, given: Given, where: Where = {}, focused?: string): Live {
    const channel = channelOf(user, where);
    const [group = "", sub] = name.split(" ");
    const body = commandsOf(channel.guildId).find((each) => each.name === group);
    if (!body) throw new Error(`/${group} is not registered here`);
    const parent = sub === undefined ? body : body.options?.find((option) => option.name === sub);
    if (!parent) throw new Error(`/${group} has no ${sub}`);
    const definitions = "options" in parent ? (parent.options ?? []) : [];
    if (sub === undefined && definitions.some(({ type }) => type === OptionType.Subcommand))
      throw new Error(`/${group} can only be called with a sub-command`);
    const { plain, attachments } = putAway(given);
    const options =
      focused === undefined ? fit(name, definitions, plain) : draft(definitions, plain, focused);
    return create(user, channel, {
      type: focused === undefined ? 2 : 4,
      data: {
        id: nextId(),
        name: group,
        type: 1,
        ...(channel.guildId === null ? {} : { guild_id: channel.guildId }),
        ...resolvedOf(options, attachments),
        options: sub === undefined ? options : [{ type: OptionType.Subcommand, name: sub, options }],
      },
    });
  }

  /** What the platform tells of the ids among the options. */
  function resolvedOf(options: readonly { type: OptionType; value: unknown }[], attachments: object) {
    const idsOf = (wanted: OptionType): string[] =>
      options.filter(({ type }) => type === wanted).map(({ value }) => String(value));
    const channels = idsOf(OptionType.Channel).map((id) => {
      const channel = world.channels.get(id);
      if (!channel) throw new Error(`there is no channel ${id} to pick`);
      return [id, { id, type: 0, name: channel.name, permissions: "0", parent_id: null }];
    });
    const allRoles = [...world.guilds.values()].flatMap(({ id, roles }) => [
      { id, name: "@everyone" },
      ...roles,
    ]);
    const roles = idsOf(OptionType.Role).map((id) => {
      const role = allRoles.find((each) => each.id === id);
      if (!role) throw new Error(`there is no role ${id} to pick`);
      return [id, role];
    });
    const users = idsOf(OptionType.User).map((id) => {
      const user = world.users.get(id);
      if (!user) throw new Error(`there is nobody ${id} to pick`);
      return [id, writeUser(user)];
    });
    const resolved = {
      ...(Object.keys(attachments).length > 0 ? { attachments } : {}),
      ...(channels.length > 0 ? { channels: Object.fromEntries(channels) as object } : {}),
      ...(roles.length > 0 ? { roles: Object.fromEntries(roles) as object } : {}),
      ...(users.length > 0 ? { users: Object.fromEntries(users) as object } : {}),
    };
    return Object.keys(resolved).length > 0 ? { resolved } : {};
  }

  /** Files lie with the platform; an option only names them. */
  function putAway(given: Given) {
    const plain: Record<string, string | number | boolean> = {};
    const attachments: Record<string, object> = {};
    for (const [option, value] of Object.entries(given)) {
      if (!isFile(value)) {
        plain[option] = value;
        continue;
      }
      const id = nextId();
      plain[option] = id;
      ledger.sent.set(`/files/${id}`, value);
      attachments[id] = {
        id,
        filename: value.name,
        content_type: value.type,
        size: value.size ?? value.data.byteLength,
        url: value.url ?? `${fileUrl()}/files/${id}`,
        proxy_url: value.url ?? `${fileUrl()}/files/${id}`,
      };
    }
    return { plain, attachments };
  }

  /** Presses the newest button with this line that this person can see. */
  function press(user: User, line: string): Live {
    const message = ledger.messages.findLast(
      (each) => !each.isDeleted && listButtons(each.components).some((button) => button.custom_id === line),
    );
    const channel = message && world.channels.get(message.channelId);
    if (!message || !channel) throw new Error(`no button carries “${line}”`);
    if (channel.userId !== null && channel.userId !== user.id)
      throw new Error("that button is somebody else's");
    return create(user, channel, {
      type: 3,
      data: { custom_id: line, component_type: 2, id: 2 },
      message: ledger.write(message, false),
    });
  }

  return { live, slash, press };
}

function fit(name: string, definitions: readonly APIApplicationCommandOption[], given: Plain) {
  for (const { name: option, required } of definitions)
    if (required && given[option] === undefined) throw new Error(`/${name} needs ${option}`);
  return Object.entries(given).map(([option, value]) => {
    const definition = definitions.find((each) => each.name === option);
    if (!definition) throw new Error(`/${name} takes no ${option}`);
    const choices = "choices" in definition ? (definition.choices ?? []) : [];
    if (choices.length > 0 && !choices.some((each) => each.value === value))
      throw new Error(`/${name} ${option}: ${value} is not among the choices`);
    if (!isOfType(definition.type, value))
      throw new Error(`/${name} ${option}: ${value} is of the wrong type`);
    if ("min_value" in definition && Number(value) < Number(definition.min_value))
      throw new Error(`/${name} ${option}: ${value} is too small`);
    if ("max_value" in definition && Number(value) > Number(definition.max_value))
      throw new Error(`/${name} ${option}: ${value} is too large`);
    return { name: option, type: definition.type, value };
  });
}

function draft(definitions: readonly APIApplicationCommandOption[], given: Plain, focused: string) {
  return Object.entries(given).map(([name, value]) => {
    const definition = definitions.find((each) => each.name === name);
    if (!definition) throw new Error(`no option ${name}`);
    const isFocused = name === focused;
    if (isFocused && !("autocomplete" in definition && definition.autocomplete))
      throw new Error(`${name} has no completion`);
    return { name, type: definition.type, value, ...(isFocused ? { focused: true } : {}) };
  });
}

function isOfType(type: OptionType, value: string | number | boolean): boolean {
  if (type === OptionType.Integer) return Number.isInteger(value);
  if (type === OptionType.Number) return typeof value === "number";
  if (type === OptionType.Boolean) return typeof value === "boolean";
  if ([OptionType.Channel, OptionType.Role, OptionType.User].includes(type))
    return typeof value === "string" && /^\d{15,20}$/.test(value);
  return typeof value === "string";
}

export function listButtons(components: StoredMessage["components"]): APIButtonComponentWithCustomId[] {
  return components
    .flatMap((row) => (row.type === 1 ? row.components : []))
    .flatMap((each) => (each.type === 2 && "custom_id" in each ? [each] : []));
}
