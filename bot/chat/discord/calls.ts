import { makeChatKey } from "../../../store/shapes/chat-key.ts";
import {
  type APIApplicationCommandAutocompleteInteraction,
  type APIApplicationCommandInteractionDataBasicOption as GivenOption,
  type APIApplicationCommandInteractionDataOption as DataOption,
  type APIAttachment,
  type APIInteraction,
  ApplicationCommandOptionType as OptionType,
  ApplicationCommandType,
  ComponentType,
  InteractionType,
  PermissionFlagsBits,
} from "discord-api-types/v10";
import { type Command, lineFormsOf } from "../../../commands/define.ts";
import type { Role } from "../../../store/shapes/person.ts";
import { type Language, languageOfTag } from "../../../store/shapes/language.ts";
import { parseLine } from "../../../commands/speech/line.ts";
import { discordWords } from "./words/discord.ts";
import type { CommandMap } from "./options.ts";
import { type DiscordMember, type DiscordSettings, makePersonId } from "./settings.ts";
import { readPicks } from "./picked.ts";
import { readChoice } from "./choose-class.ts";
import type { CommandCall, Picked, Place } from "../port.ts";

/* What the platform sends, as calls of commands. */

const MANAGING = PermissionFlagsBits.ManageGuild | PermissionFlagsBits.Administrator;

/** A call that still lacks its answer. */
export type OpenCall = Omit<CommandCall, "answer">;

export type ReadCall =
  | {
      readonly kind: "call";
      readonly call: OpenCall;
      readonly command: Command | undefined;
      /** Sent along, and still with the platform. */
      readonly file: APIAttachment | undefined;
    }
  /** Not to be handed on: the person gets this sentence. */
  | { readonly kind: "sentence"; readonly text: string };

export interface CallSettings extends Pick<DiscordSettings, "commands" | "directory"> {
  readonly map: CommandMap;
  readonly roleOf: (member: DiscordMember) => Role;
  guildName(guildId: string): string | undefined;
  roleNames(guildId: string, roleIds: readonly string[]): string[];
  /** What the bot may not do in a channel and should, as the server's settings name it. */
  missingPermissions?(channelId: string): readonly string[];
}

/** As the person's own client tells it; undefined where it speaks none that is spoken here. */
export function languageOfInteraction(interaction: object): Language | undefined {
  return "locale" in interaction ? languageOfTag(String(interaction.locale)) : undefined;
}

export interface DiscordCaller {
  readonly person: { readonly id: string; readonly name: string };
  readonly role: Role;
  readonly place: Place;
  readonly language: Language | undefined;
}

export function createCallReader(settings: CallSettings) {
  const { map, directory, commands } = settings;
  const forms = lineFormsOf(commands);
  const missing = (channelId: string): readonly string[] => settings.missingPermissions?.(channelId) ?? [];

  /** Who calls, from where: by the server's own word, or, in a direct message, by where they were last seen. */
  function readCaller(interaction: APIInteraction): DiscordCaller | undefined {
    const { member, guild_id: guildId } = interaction;
    const user = member?.user ?? interaction.user;
    if (!user) return undefined;
    const personId = makePersonId(user.id);
    const person = { id: personId, name: member?.nick ?? user.global_name ?? user.username };
    const language = languageOfInteraction(interaction);
    if (!member || !guildId) {
      const last = directory.lastPlace(personId);
      return last ? { person, language, role: last.role, place: last.place } : undefined;
    }
    // A member may come without; who has no permission told is no manager.
    const permissions = BigInt(member.permissions ?? 0);
    const role = roleIn(guildId, personId, member.roles, permissions);
    const channelRef = interaction.channel?.id ?? interaction.channel_id ?? null;
    const place: Place = {
      classKey: makeChatKey("discord", guildId),
      className: settings.guildName(guildId) ?? "Class",
      channelRef,
      missingPermissions: channelRef === null ? [] : missing(channelRef),
      channelName: nameOfChannel(interaction.channel),
    };
    return { person, language, role, place };
  }

  function roleIn(guildId: string, personId: string, roleIds: readonly string[], permissions: bigint): Role {
    const roleNames = settings.roleNames(guildId, roleIds);
    const managesServer = (permissions & MANAGING) !== 0n;
    return settings.roleOf({ personId, guildId, roleIds, roleNames, managesServer });
  }

  /** Who has chosen one of their classes. */
  function callerIn(interaction: APIInteraction, classKey: string): DiscordCaller | undefined {
    const caller = readCaller(interaction);
    const chosen =
      caller && directory.placesOf(caller.person.id).find((each) => each.place.classKey === classKey);
    return chosen && { ...caller, role: chosen.role, place: chosen.place };
  }

  return {
    readCaller,
    roleIn,

    /** Undefined for what is no call of ours: other kinds of interaction, other components. */
    readCall(interaction: APIInteraction): ReadCall | undefined {
      const asked = readAsked(interaction);
      if (asked === undefined) return undefined;
      const words = discordWords(languageOfInteraction(interaction));
      if (asked === "oldButton") return { kind: "sentence", text: words.oldButton };
      const caller =
        asked.classKey === undefined ? readCaller(interaction) : callerIn(interaction, asked.classKey);
      if (!caller) return { kind: "sentence", text: words.noClass };
      const command = commands.find(({ name }) => name === asked.name);
      const { file, picked, classKey: _chosen, ...line } = asked;
      const place = { ...caller.place, picked };
      return { kind: "call", command, file, call: { callId: interaction.id, ...line, ...caller, place } };
    },

    readCompletion(interaction: APIApplicationCommandAutocompleteInteraction) {
      const caller = readCaller(interaction);
      const { command, options } = readPath(interaction.data.name, interaction.data.options);
      const focused = options.find((option) => "focused" in option && option.focused);
      if (!caller || !command || !focused) return undefined;
      const others = options
        .filter((option) => option !== focused)
        .map(({ name, value }) => [name, String(value)]);
      return {
        isNumber: focused.type === OptionType.Integer || focused.type === OptionType.Number,
        request: {
          name: command.name,
          option: focused.name,
          typed: String(focused.value),
          others: Object.fromEntries(others) as Record<string, string>,
          ...caller,
        },
      };
    },
  };

  function readAsked(interaction: APIInteraction): Asked | "oldButton" | undefined {
    if (interaction.type === InteractionType.ApplicationCommand) {
      if (interaction.data.type !== ApplicationCommandType.ChatInput) return undefined;
      const { command, path, options } = readPath(interaction.data.name, interaction.data.options ?? []);
      const isFile = ({ type }: GivenOption): boolean => type === OptionType.Attachment;
      const given = options.filter((option) => !isFile(option)).map(({ name, value }) => [name, value]);
      const { resolved } = interaction.data;
      const pickSettings = { memberName: directory.memberName, missingPermissions: missing };
      const picks = readPicks(options, resolved, interaction.guild_id, pickSettings);
      const fileId = options.find(isFile)?.value;
      const file = resolved?.attachments?.[String(fileId)];
      return {
        name: command?.name ?? path,
        options: { ...Object.fromEntries(given), ...picks.values } as Record<string, unknown>,
        picked: picks.channel,
        ...(file ? { file } : {}),
      };
    }
    if (interaction.type !== InteractionType.MessageComponent) return undefined;
    if (interaction.data.component_type !== ComponentType.Button) return undefined;
    const line = interaction.data.custom_id;
    const chosen = readChoice(line);
    if (chosen) return chosen;
    const parsed = parseLine(line, forms);
    return parsed.ok ? parsed.value : "oldButton";
  }

  function readPath(group: string, given: readonly DataOption[]) {
    const [first] = given;
    const sub = first?.type === OptionType.Subcommand ? first : undefined;
    const options = sub ? (sub.options ?? []) : given.filter(isGiven);
    const path = sub ? `${group} ${sub.name}` : group;
    return { path, options, command: map.find(group, sub?.name) };
  }
}

interface Asked {
  readonly name: string;
  readonly options: Record<string, unknown>;
  readonly picked?: Picked | undefined;
  readonly file?: APIAttachment;
  /** The class it is about, where that was asked. */
  readonly classKey?: string;
}

function nameOfChannel(channel: object | undefined): string | undefined {
  return channel && "name" in channel && typeof channel.name === "string" ? `#${channel.name}` : undefined;
}

export type CallReader = ReturnType<typeof createCallReader>;

function isGiven(option: DataOption): option is GivenOption {
  return option.type !== OptionType.Subcommand && option.type !== OptionType.SubcommandGroup;
}
