import { makeChatKey } from "../../../store/shapes/chat-key.ts";
import {
  type APIApplicationCommandAutocompleteInteraction,
  type APIAttachment,
  type APIInteraction,
  ApplicationCommandOptionType as OptionType,
  PermissionFlagsBits,
} from "discord-api-types/v10";
import type { Command, ThreadPowers } from "../../../commands/define.ts";
import type { Role } from "../../../store/shapes/person.ts";
import { type Language, languageOfTag } from "../../../store/shapes/language.ts";
import { type AskedForm, createAskedReader } from "./asked.ts";
import { discordWords } from "./words/discord.ts";
import type { CommandMap } from "./options.ts";
import { type DiscordMember, type DiscordSettings, makePersonId } from "./settings.ts";
import type { Pressed } from "./used.ts";
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
      /** The key it came from. */
      readonly pressed: Pressed | undefined;
    }
  /** It lacks something: its form is to be opened. */
  | { readonly kind: "form"; readonly asked: AskedForm; readonly caller: DiscordCaller }
  /** Not to be handed on: the person gets this sentence. */
  | { readonly kind: "sentence"; readonly text: string };

export interface CallSettings extends Pick<DiscordSettings, "commands" | "directory"> {
  readonly map: CommandMap;
  readonly roleOf: (member: DiscordMember) => Role;
  guildName(guildId: string): string | undefined;
  roleNames(guildId: string, roleIds: readonly string[]): string[];
  /** What the bot may not do in a channel and should, as the server's settings name it. */
  missingPermissions?(channelId: string): readonly string[];
  threadPowers?(channelId: string): ThreadPowers;
  /** What is known of any channel. */
  look?(this: void, channelId: string): Picked | undefined;
  /** The channel that a thread is in. */
  parentOf?(channelId: string): string | undefined;
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
  const { map, directory, commands, look } = settings;
  const missing = (channelId: string): readonly string[] => settings.missingPermissions?.(channelId) ?? [];
  const reader = createAskedReader({
    commands,
    map,
    memberName: directory.memberName,
    rollOf: directory.rollOfMessage,
    classOf: directory.classOfMessage,
    missingPermissions: missing,
    threadPowers: settings.threadPowers,
  });

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
      return last ? { person, language, role: last.role, place: { ...last.place, look } } : undefined;
    }
    // A member may come without; who has no permission told is no manager.
    const permissions = BigInt(member.permissions ?? 0);
    const role = roleIn(guildId, personId, member.roles, permissions);
    const calledIn = interaction.channel?.id ?? interaction.channel_id ?? null;
    // A thread is where one run is called; the class is spoken to in the channel that it is in.
    const around = calledIn === null ? undefined : settings.parentOf?.(calledIn);
    const channelRef = around ?? calledIn;
    const place: Place = {
      classKey: makeChatKey("discord", guildId),
      className: settings.guildName(guildId) ?? "Class",
      channelRef,
      missingPermissions: channelRef === null ? [] : missing(channelRef),
      channelName: around === undefined ? nameOfChannel(interaction.channel) : undefined,
      threads: channelRef === null ? undefined : settings.threadPowers?.(channelRef),
      look,
    };
    return { person, language, role, place };
  }

  function roleIn(guildId: string, personId: string, roleIds: readonly string[], permissions: bigint): Role {
    const roleNames = settings.roleNames(guildId, roleIds);
    const managesServer = (permissions & MANAGING) !== 0n;
    return settings.roleOf({ personId, guildId, roleIds, roleNames, managesServer });
  }

  /** Who calls in one of their classes that is told otherwise than by where they call. */
  function callerIn(interaction: APIInteraction, classKey: string): DiscordCaller | undefined {
    const caller = readCaller(interaction);
    const chosen =
      caller && directory.placesOf(caller.person.id).find((each) => each.place.classKey === classKey);
    return chosen && { ...caller, role: chosen.role, place: { ...chosen.place, look } };
  }

  return {
    readCaller,
    roleIn,
    /** What lines of keys are read by. */
    forms: reader.forms,
    aboutOf: reader.aboutOf,

    /** Undefined for what is no call of ours: other kinds of interaction, other components. */
    readCall(interaction: APIInteraction): ReadCall | undefined {
      const asked = reader.read(interaction);
      if (asked === undefined) return undefined;
      const words = discordWords(languageOfInteraction(interaction));
      if (asked.kind === "oldButton" || asked.kind === "noRoll")
        return { kind: "sentence", text: words[asked.kind] };
      const { classKey } = asked;
      const caller = classKey === undefined ? readCaller(interaction) : callerIn(interaction, classKey);
      if (!caller) return { kind: "sentence", text: words.noClass };
      if (asked.kind === "form") return { kind: "form", asked, caller };
      const command = commands.find(({ name }) => name === asked.name);
      const { name, options, file, picked, pressed } = asked;
      const place = { ...caller.place, picked };
      const call = { callId: interaction.id, name, options, ...caller, place };
      return { kind: "call", command, file, pressed, call };
    },

    readCompletion(interaction: APIApplicationCommandAutocompleteInteraction) {
      const caller = readCaller(interaction);
      const { command, options } = reader.readPath(interaction.data.name, interaction.data.options);
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
}

function nameOfChannel(channel: object | undefined): string | undefined {
  return channel && "name" in channel && typeof channel.name === "string" ? `#${channel.name}` : undefined;
}

export type CallReader = ReturnType<typeof createCallReader>;
