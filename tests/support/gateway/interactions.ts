import {
  ApplicationCommandOptionType as OptionType,
  InteractionContextType,
  type APIButtonComponentWithCustomId,
  type APIComponentInLabel,
  type APIModalInteractionResponseCallbackData,
  type APIStringSelectComponent,
  type RESTPostAPIChatInputApplicationCommandsJSONBody as CommandBody,
} from "discord-api-types/v10";
import type { Ledger, StoredMessage } from "./ledger.ts";
import { draft, findPath, fit, nest, type Plain } from "./registered.ts";
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
  /** Of the first callback: 4 a message, 5 a deferral, 7 the pressed message edited, 8 a completion, 9 a form. */
  callback: number | undefined;
  isPrivate: boolean;
  /** In order; a deferral that was withdrawn leaves none. */
  readonly messages: StoredMessage[];
  choices: readonly { name: string; value: string | number }[];
  form: APIModalInteractionResponseCallbackData | undefined;
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
  /** The message whose key was pressed. */
  readonly pressed: StoredMessage | undefined;
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
  /** Commands that the server's own settings show to everybody, whatever their default permissions. */
  const opened = new Set<string>();

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
    kind: { type: number; data: object; message?: StoredMessage | undefined },
  ): Live {
    const id = nextId();
    const isGuild = channel.guildId !== null;
    const answer: Answer = {
      interactionId: id,
      callback: undefined,
      isPrivate: false,
      messages: [],
      choices: [],
      form: undefined,
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
      pressed: kind.message,
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
      ...(kind.message ? { message: ledger.write(kind.message, false) } : {}),
      channel: isGuild ? writeGuildChannel(channel, world.bot.id) : writeDirectChannel(channel, world),
      channel_id: channel.id,
      ...(isGuild
        ? {
            guild_id: channel.guildId,
            guild: { id: channel.guildId, locale: "en-GB", features: [] },
            member: {
              ...writeMember(user),
              ...(user.permissions === null ? {} : { permissions: String(user.permissions) }),
            },
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
    const { path, leaf, permissions } = findPath(commandsOf(channel.guildId), name);
    const [top = ""] = path;
    const isShown =
      permissions === undefined ||
      channel.guildId === null ||
      opened.has(top) ||
      ((user.permissions ?? 0n) & permissions) !== 0n;
    if (!isShown) throw new Error(`/${top} is not shown to ${user.name}`);
    const definitions = leaf.options;
    const { plain, attachments } = putAway(given);
    const options =
      focused === undefined ? fit(name, definitions, plain) : draft(definitions, plain, focused);
    return create(user, channel, {
      type: focused === undefined ? 2 : 4,
      data: {
        id: nextId(),
        name: top,
        type: 1,
        ...(channel.guildId === null ? {} : { guild_id: channel.guildId }),
        ...resolvedOf(options, attachments),
        options: nest(path.slice(1), options),
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

  /** The newest message with this key that this person can see; the class that a key carries may be left out. */
  function findKey(user: User, line: string): { message: StoredMessage; channel: Channel; key: string } {
    const carries = (key: string): boolean =>
      key === line || (key.startsWith("#") && key.endsWith(` ${line}`));
    const message = ledger.messages.findLast(
      (each) => !each.isDeleted && listLines(each.components).some(carries),
    );
    const channel = message && world.channels.get(message.channelId);
    const key = listLines(message?.components ?? []).find(carries);
    if (!message || !channel || key === undefined) throw new Error(`no button carries “${line}”`);
    if (channel.userId !== null && channel.userId !== user.id)
      throw new Error("that button is somebody else's");
    return { message, channel, key };
  }

  /** Presses a button, or takes a line from a list. */
  function press(user: User, line: string): Live {
    const { message, channel, key } = findKey(user, line);
    const list = listLists(message.components).find(({ options }) =>
      options.some(({ value }) => value === key),
    );
    const data = list
      ? { custom_id: list.custom_id, component_type: 3, values: [key], id: 2 }
      : { custom_id: key, component_type: 2, id: 2 };
    return create(user, channel, { type: 3, data, message });
  }

  /** Fills in a form that was opened, as a person's own client does it: what does not fit is not sent. */
  function submit(
    user: User,
    form: APIModalInteractionResponseCallbackData,
    given: Plain,
    where: Where,
  ): Live {
    const fields = form.components.flatMap((each) => (each.type === 18 ? [each.component] : []));
    for (const name of Object.keys(given))
      if (!fields.some((field) => "custom_id" in field && field.custom_id === name))
        throw new Error(`the form has no field ${name}`);
    const components = fields.map((field, at) => ({
      type: 18,
      id: at * 2 + 1,
      component: { ...fillIn(field, given), id: at * 2 + 2 },
    }));
    return create(user, channelOf(user, where), { type: 5, data: { custom_id: form.custom_id, components } });
  }

  /** Takes a command from a message's menu. */
  function useMenu(user: User, name: string, message: StoredMessage): Live {
    const channel = world.channels.get(message.channelId);
    const body = commandsOf(channel?.guildId ?? null).find(
      (each) => each.name === name && (each.type as number) === 3,
    );
    if (!channel || !body) throw new Error(`no message has ${name} on its menu here`);
    const resolved = { messages: { [message.id]: ledger.write(message, false) } };
    return create(user, channel, {
      type: 2,
      data: { id: nextId(), name, type: 3, target_id: message.id, resolved },
    });
  }

  return { live, opened, slash, press, submit, useMenu };
}

function fillIn(field: APIComponentInLabel, given: Plain): object {
  if (field.type === 4) {
    const value = String(given[field.custom_id] ?? field.value ?? "");
    if (value === "" && field.required !== false) throw new Error(`the form needs ${field.custom_id}`);
    if (value.length > (field.max_length ?? 4000)) throw new Error(`${field.custom_id} is too long`);
    return { type: 4, custom_id: field.custom_id, value };
  }
  if (field.type !== 3) throw new Error(`a field of type ${field.type} is not known here`);
  const chosen = given[field.custom_id] ?? field.options.find((each) => each.default)?.value;
  if (chosen === undefined && field.required !== false) throw new Error(`the form needs ${field.custom_id}`);
  if (chosen !== undefined && !field.options.some(({ value }) => value === String(chosen)))
    throw new Error(`${field.custom_id}: ${String(chosen)} is not in the list`);
  return { type: 3, custom_id: field.custom_id, values: chosen === undefined ? [] : [String(chosen)] };
}

function listLists(components: StoredMessage["components"]): APIStringSelectComponent[] {
  return components
    .flatMap((row) => (row.type === 1 ? row.components : []))
    .flatMap((each) => (each.type === 3 ? [each] : []));
}

/** What each key of a message calls. */
const listLines = (components: StoredMessage["components"]): string[] => [
  ...listButtons(components).map((button) => button.custom_id),
  ...listLists(components).flatMap(({ options }) => options.map(({ value }) => value)),
];

export function listButtons(components: StoredMessage["components"]): APIButtonComponentWithCustomId[] {
  return components
    .flatMap((row) => (row.type === 1 ? row.components : []))
    .flatMap((each) => (each.type === 2 && "custom_id" in each ? [each] : []));
}
