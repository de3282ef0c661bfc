import {
  type APIApplicationCommandInteractionDataBasicOption as GivenOption,
  type APIApplicationCommandInteractionDataOption as DataOption,
  type APIApplicationCommandInteraction,
  type APIAttachment,
  type APIInteraction,
  type APIMessage,
  type APIMessageApplicationCommandInteraction,
  type APIMessageComponentInteraction,
  type APIModalSubmitInteraction,
  ApplicationCommandOptionType as OptionType,
  ApplicationCommandType,
  ComponentType,
  InteractionType,
} from "discord-api-types/v10";
import type { Command } from "../../../commands/define.ts";
import { lineFormsOf } from "../../../commands/forms.ts";
import { parseLine } from "../../../commands/speech/line.ts";
import { readChoice } from "./choose-class.ts";
import { missingOf, readFormKey } from "./form.ts";
import { readClass } from "./key-class.ts";
import { listKeys } from "./keys.ts";
import { RATE_ROLL, rollOfMessage } from "./menu.ts";
import type { CommandMap } from "./options.ts";
import { type PickSettings, readPicks } from "./picked.ts";
import type { AboutDirect } from "./settings.ts";
import type { Pressed } from "./used.ts";
import type { Picked } from "../port.ts";

/* What an interaction asks for: a call, a form for one, or nothing of ours. */

export interface AskedCall {
  readonly kind: "call";
  readonly name: string;
  readonly options: Readonly<Record<string, unknown>>;
  readonly picked?: Picked | undefined;
  readonly file?: APIAttachment;
  /** The key it came from. */
  readonly pressed?: Pressed;
  /** The class it is about, where that was asked, or what it came from tells it. */
  readonly classKey?: string | undefined;
}

export interface AskedForm {
  readonly kind: "form";
  readonly command: Command;
  readonly given: Readonly<Record<string, unknown>>;
  readonly first: string | null;
  readonly classKey?: string | undefined;
}

export type Asked = AskedCall | AskedForm | { readonly kind: "oldButton" } | { readonly kind: "noRoll" };

export interface AskedSettings extends PickSettings {
  readonly commands: readonly Command[];
  readonly map: CommandMap;
  /** The roll in the log that a message of the bot's is about. */
  rollOf(messageRef: string): number | null;
  /** The class that a message of the bot's speaks to. */
  classOf(messageRef: string): string | null;
}

export function createAskedReader(settings: AskedSettings) {
  const { commands, map } = settings;
  const forms = lineFormsOf(commands);
  const commandOf = (name: string): Command | undefined => commands.find((each) => each.name === name);

  /** A call that lacks what it must have opens its form. */
  function complete(call: AskedCall): AskedCall | AskedForm {
    const command = commandOf(call.name);
    const isWhole = !command || call.file !== undefined || missingOf(command, call.options).length === 0;
    const { options, classKey } = call;
    return isWhole ? call : { kind: "form", command, given: options, first: null, classKey };
  }

  function readSlash(
    data: { readonly name: string; readonly options?: readonly DataOption[]; readonly resolved?: Resolved },
    guildId: string | undefined,
  ): Asked {
    const { command, path, options } = readPath(data.name, data.options ?? []);
    const isFile = ({ type }: GivenOption): boolean => type === OptionType.Attachment;
    const given = options.filter((option) => !isFile(option)).map(({ name, value }) => [name, value]);
    const picks = readPicks(options, data.resolved, guildId, settings);
    const fileId = options.find(isFile)?.value;
    const file = data.resolved?.attachments?.[String(fileId)];
    return complete({
      kind: "call",
      name: command?.name ?? path,
      options: { ...Object.fromEntries(given), ...picks.values } as Record<string, unknown>,
      picked: picks.channel,
      ...(file ? { file } : {}),
    });
  }

  /** On a server the server is the class; alone it is the one that a key carries, or that its message was for. */
  const classAlone = (
    { guild_id: guildId }: APIInteraction,
    carried: string | undefined,
    ref: string | undefined,
  ): string | undefined =>
    guildId !== undefined ? undefined : (carried ?? (ref && settings.classOf(ref)) ?? undefined);

  function readKey(key: string, interaction: APIMessageComponentInteraction): Asked {
    const { message } = interaction;
    const { line, classKey: carried } = readClass(key);
    const chosen = readChoice(line);
    if (chosen) return complete({ kind: "call", ...chosen });
    const formKey = readFormKey(line);
    const parsed = parseLine(formKey?.line ?? line, forms);
    const command = parsed.ok ? commandOf(parsed.value.name) : undefined;
    if (!parsed.ok) return { kind: "oldButton" };
    const classKey = classAlone(interaction, carried, refOf(message));
    if (formKey && command)
      return { kind: "form", command, given: parsed.value.options, first: formKey.first, classKey };
    return complete({ kind: "call", ...parsed.value, pressed: { message, line }, classKey });
  }

  function readPress(interaction: APIMessageComponentInteraction): Asked | undefined {
    const key = keyOf(interaction);
    return key === undefined ? undefined : readKey(key, interaction);
  }

  function readForm(interaction: APIModalSubmitInteraction): Asked {
    const { data, message } = interaction;
    const { line, classKey: carried } = readClass(data.custom_id);
    const parsed = parseLine(line, forms);
    if (!parsed.ok) return { kind: "oldButton" };
    const filled = data.components.flatMap((each) => {
      const inner =
        each.type === ComponentType.Label
          ? [each.component]
          : each.type === ComponentType.ActionRow
            ? each.components
            : [];
      return inner.flatMap((field): [string, string][] => {
        const value = "value" in field ? field.value : "values" in field ? field.values[0] : undefined;
        return typeof value === "string" && value.trim() !== "" ? [[field.custom_id, value.trim()]] : [];
      });
    });
    const { name, options } = parsed.value;
    const classKey = classAlone(interaction, carried, message && refOf(message));
    return { kind: "call", name, options: { ...options, ...Object.fromEntries(filled) }, classKey };
  }

  function readMenu(interaction: MenuInteraction): Asked | undefined {
    const command = commandOf(RATE_ROLL.command);
    if (interaction.data.name !== RATE_ROLL.name || !command) return undefined;
    const about = aboutTarget(interaction);
    const roll = rollOfMessage(targetOf(interaction), forms) ?? settings.rollOf(about.ref);
    const classKey = classAlone(interaction, about.classKey, about.ref);
    return roll === null
      ? { kind: "noRoll" }
      : { kind: "form", command, given: { roll: `L${roll}` }, first: null, classKey };
  }

  /** Down to the sub-command, through the group it is in. */
  function readPath(top: string, given: readonly DataOption[]) {
    const path = [top];
    let options = given;
    for (let [inner] = options; inner && !isGiven(inner); [inner] = options) {
      path.push(inner.name);
      options = inner.options ?? [];
    }
    return { path: path.join(" "), options: options.filter(isGiven), command: map.find(...path) };
  }

  return {
    forms,
    readPath,
    /** The class that a key, a form, or the message of a menu names itself, and that message; nothing is looked up. */
    aboutOf(interaction: APIInteraction): AboutDirect {
      if (interaction.type === InteractionType.ApplicationCommand)
        return isMenu(interaction) ? aboutTarget(interaction) : {};
      const isForm = interaction.type === InteractionType.ModalSubmit;
      if (!isForm && interaction.type !== InteractionType.MessageComponent) return {};
      const key = isForm ? interaction.data.custom_id : keyOf(interaction);
      const { message } = interaction;
      return {
        classKey: key === undefined ? undefined : (readClass(key).classKey ?? readChoice(key)?.classKey),
        ref: message && refOf(message),
      };
    },
    /** Undefined for what is nothing of ours. */
    read(interaction: APIInteraction): Asked | undefined {
      if (interaction.type === InteractionType.ModalSubmit) return readForm(interaction);
      if (interaction.type === InteractionType.MessageComponent) return readPress(interaction);
      if (interaction.type !== InteractionType.ApplicationCommand) return undefined;
      const { data } = interaction;
      if (data.type === ApplicationCommandType.ChatInput) return readSlash(data, interaction.guild_id);
      return isMenu(interaction) ? readMenu(interaction) : undefined;
    },
  };
}

type Resolved = Parameters<typeof readPicks>[1] & {
  readonly attachments?: Readonly<Record<string, APIAttachment>>;
};

/** Of a button, or of what was chosen in a list. */
function keyOf({ data }: APIMessageComponentInteraction): string | undefined {
  if (data.component_type === ComponentType.Button) return data.custom_id;
  return data.component_type === ComponentType.StringSelect ? data.values[0] : undefined;
}

const refOf = (message: Pick<APIMessage, "id" | "channel_id">): string =>
  `${message.channel_id}/${message.id}`;

type MenuInteraction = APIMessageApplicationCommandInteraction;

const targetOf = ({ data }: MenuInteraction): APIMessage | undefined =>
  data.resolved.messages[data.target_id];

/** A message's own keys carry its class. */
function aboutTarget(interaction: MenuInteraction): AboutDirect & { readonly ref: string } {
  const message = targetOf(interaction);
  const [classKey] = listKeys(message?.components ?? []).flatMap((key) => readClass(key).classKey ?? []);
  return { classKey, ref: `${message?.channel_id ?? interaction.channel.id}/${interaction.data.target_id}` };
}

const isMenu = (interaction: APIApplicationCommandInteraction): interaction is MenuInteraction =>
  interaction.data.type === ApplicationCommandType.Message;

function isGiven(option: DataOption): option is GivenOption {
  return option.type !== OptionType.Subcommand && option.type !== OptionType.SubcommandGroup;
}
