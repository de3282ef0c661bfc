import {
  type APIApplicationCommandBasicOption,
  type APIApplicationCommandSubcommandOption,
  ApplicationCommandOptionType as OptionType,
  ChannelType,
  type RESTPostAPIChatInputApplicationCommandsJSONBody as CommandBody,
} from "discord-api-types/v10";
import { z } from "zod";
import { type Command, type FileOption, type Pick, PICKS } from "../../../commands/define.ts";
import { aboutOf, summaryOf } from "../../../commands/forms.ts";
import { DEFAULT_LANGUAGE, type Language, LANGUAGES } from "../../../store/shapes/language.ts";
import { listLimitFaults } from "./limits.ts";
import { shorten } from "./text.ts";

/* Command definitions as Discord's application commands. Pure. */

/**
 * A command of one word beside sub-commands of the same word (`plan` beside `plan curve`) can't be called on this
 * platform: there it is a sub-command of this name.
 */
export const BARE_WORD = "make";

export interface CommandMap {
  readonly bodies: readonly CommandBody[];
  /** The command a person called: the first word, and the sub-command where there is one. */
  find(group: string, sub: string | undefined): Command | undefined;
  /** A reply's `/plan` (in code marks, as replies write commands) as it is called here: `/plan make`. */
  sayPaths(text: string): string;
}

/** Throws one error that tells everything the platform would refuse. */
export function mapCommands(commands: readonly Command[]): CommandMap {
  const byGroup = new Map<string, Command[]>();
  for (const command of commands) {
    const [group = ""] = command.name.split(" ");
    byGroup.set(group, [...(byGroup.get(group) ?? []), command]);
  }
  const byPath = new Map<string, Command>();
  const renamed: RegExp[] = [];
  const faults: string[] = [];
  const bodies = [...byGroup].map(([group, members]): CommandBody => {
    const [first] = members;
    if (first && members.length === 1 && first.name === group) {
      byPath.set(group, first);
      return {
        name: group,
        ...describe((language) => summaryOf(first, language)),
        options: makeOptions(first),
      };
    }
    const subs = members.map((command): APIApplicationCommandSubcommandOption => {
      const name = command.name === group ? BARE_WORD : command.name.slice(group.length + 1);
      const path = `${group} ${name}`;
      if (byPath.has(path)) faults.push(`/${path}: two commands come to this name here`);
      byPath.set(path, command);
      return {
        type: OptionType.Subcommand,
        name,
        ...describe((language) => summaryOf(command, language)),
        options: makeOptions(command),
      };
    });
    const names = subs.map(({ name }) => name);
    if (members.some(({ name }) => name === group))
      renamed.push(new RegExp(`(?<=\`/)${group}(?! (?:${names.join("|")})\\b)(?![\\w-])`, "g"));
    return { name: group, description: shorten(`${group}: ${names.join(", ")}`, 100), options: subs };
  });
  faults.push(...listLimitFaults(bodies));
  if (faults.length > 0)
    throw new Error(`Discord would refuse these commands:\n${faults.map((each) => `- ${each}`).join("\n")}`);
  return {
    bodies,
    find: (group, sub) => byPath.get(sub === undefined ? group : `${group} ${sub}`),
    sayPaths: (text) => renamed.reduce((said, path) => said.replace(path, `$& ${BARE_WORD}`), text),
  };
}

/** The slice of JSON Schema that option schemas come to. */
const propertySchema = z.looseObject({
  picks: z.enum(PICKS).optional(),
  type: z.union([z.string(), z.array(z.string())]).optional(),
  enum: z.array(z.union([z.string(), z.number(), z.boolean(), z.null()])).optional(),
  const: z.union([z.string(), z.number(), z.boolean(), z.null()]).optional(),
  minimum: z.number().optional(),
  maximum: z.number().optional(),
  exclusiveMinimum: z.number().optional(),
  exclusiveMaximum: z.number().optional(),
  minLength: z.number().optional(),
  maxLength: z.number().optional(),
  get anyOf() {
    return z.array(propertySchema).optional();
  },
});
type Property = z.output<typeof propertySchema>;

const objectSchema = z.looseObject({
  properties: z.record(z.string(), propertySchema).default({}),
  required: z.array(z.string()).default([]),
});

function makeOptions(command: Command): APIApplicationCommandBasicOption[] {
  const schema = objectSchema.parse(z.toJSONSchema(command.options, { io: "input", unrepresentable: "any" }));
  const options = Object.entries(schema.properties).map(([name, property]) =>
    makeOption(command, name, property, schema.required.includes(name)),
  );
  if (command.file) options.push(makeFileOption(command, command.file));
  return [...options.filter(({ required }) => required), ...options.filter(({ required }) => !required)];
}

/** The platform shows each person the description in the language of their client. */
function describe(textIn: (language: Language) => string): {
  description: string;
  description_localizations?: Partial<Record<Language, string>>;
} {
  const description = textIn(DEFAULT_LANGUAGE);
  const others = LANGUAGES.map((language) => [language, textIn(language)] as const).filter(
    ([, text]) => text !== description,
  );
  if (others.length === 0) return { description };
  return { description, description_localizations: Object.fromEntries(others) };
}

function makeFileOption(command: Command, { name }: FileOption): APIApplicationCommandBasicOption {
  const description = describe((language) => aboutOf(command, name, language));
  return { type: OptionType.Attachment, name, ...description, required: false };
}

function makeOption(
  command: Command,
  name: string,
  raw: Property,
  isRequired: boolean,
): APIApplicationCommandBasicOption {
  const property = narrow(raw);
  const description = describe((language) => aboutOf(command, name, language));
  const common = { name, ...description, required: isRequired };
  if (property.picks !== undefined) return { ...common, ...LISTS[property.picks] };
  if (command.complete?.[name] !== undefined) return { ...common, ...readType(property), autocomplete: true };
  const choices = readChoices(property);
  if (choices.length > 0) {
    return choices.every((value) => typeof value === "number")
      ? { ...common, type: OptionType.Number, choices: choices.map((value) => ({ name: `${value}`, value })) }
      : {
          ...common,
          type: OptionType.String,
          choices: choices.map((value) => ({ name: `${value}`, value: `${value}` })),
        };
  }
  return property.type === "boolean"
    ? { ...common, type: OptionType.Boolean }
    : { ...common, ...readType(property) };
}

/** The platform's own lists; a class is spoken to in channels where text is written. */
const LISTS = {
  channel: {
    type: OptionType.Channel as const,
    channel_types: [ChannelType.GuildText, ChannelType.GuildAnnouncement, ChannelType.PublicThread] as (
      ChannelType.GuildText | ChannelType.GuildAnnouncement | ChannelType.PublicThread
    )[],
  },
  role: { type: OptionType.Role as const },
  person: { type: OptionType.User as const },
  file: { type: OptionType.Attachment as const },
} satisfies Record<Pick, object>;

/** `x or null` is x: what is left out is not sent. */
function narrow(property: Property): Property {
  const others = property.anyOf?.filter(({ type }) => type !== "null");
  return others?.length === 1 && others[0] ? others[0] : property;
}

function readChoices(property: Property): (string | number)[] {
  const values = property.enum ?? (property.const === undefined ? [] : [property.const]);
  const consts = property.anyOf?.map((each) => each.const) ?? [];
  const all = values.length > 0 ? values : consts.every((each) => each !== undefined) ? consts : [];
  return all.filter((each) => typeof each === "string" || typeof each === "number");
}

type TypedPart =
  | { type: OptionType.String; min_length?: number; max_length?: number }
  | { type: OptionType.Integer; min_value?: number; max_value?: number }
  | { type: OptionType.Number; min_value?: number; max_value?: number };

function readType(property: Property): TypedPart {
  if (property.type !== "integer" && property.type !== "number") return readLengths(property);
  const isWhole = property.type === "integer";
  const lowest =
    property.minimum ?? (isWhole ? above(property.exclusiveMinimum, 1) : property.exclusiveMinimum);
  const highest =
    property.maximum ?? (isWhole ? above(property.exclusiveMaximum, -1) : property.exclusiveMaximum);
  const bounds = {
    ...(isBound(lowest) ? { min_value: lowest } : {}),
    ...(isBound(highest) ? { max_value: highest } : {}),
  };
  return isWhole ? { type: OptionType.Integer, ...bounds } : { type: OptionType.Number, ...bounds };
}

const above = (bound: number | undefined, by: number): number | undefined =>
  bound === undefined ? undefined : bound + by;

/** Whole numbers without bounds of their own come with the largest safe ones. */
const isBound = (bound: number | undefined): bound is number =>
  bound !== undefined && Math.abs(bound) < Number.MAX_SAFE_INTEGER;

function readLengths({ type, minLength, maxLength }: Property): TypedPart {
  const isText = type === "string";
  return {
    type: OptionType.String,
    ...(isText && minLength ? { min_length: Math.min(minLength, 6000) } : {}),
    ...(isText && maxLength ? { max_length: Math.min(maxLength, 6000) } : {}),
  };
}
