import {
  type APIApplicationCommandBasicOption,
  ApplicationCommandOptionType as OptionType,
  ChannelType,
} from "discord-api-types/v10";
import { z } from "zod";
import { choiceWord } from "../../../commands/speech/choices.ts";
import { type Command, type FileOption, type Pick, PICKS } from "../../../commands/define.ts";
import { aboutOf } from "../../../commands/forms.ts";
import { DEFAULT_LANGUAGE, type Language, LANGUAGES } from "../../../store/shapes/language.ts";

/* A command's options as Discord's. Pure. */

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

export function makeOptions(command: Command): APIApplicationCommandBasicOption[] {
  const schema = objectSchema.parse(z.toJSONSchema(command.options, { io: "input", unrepresentable: "any" }));
  const options = Object.entries(schema.properties).map(([name, property]) =>
    makeOption(command, name, property, schema.required.includes(name)),
  );
  if (command.file) options.push(makeFileOption(command, command.file));
  return [...options.filter(({ required }) => required), ...options.filter(({ required }) => !required)];
}

type Texts = Partial<Record<Language, string>>;

/** A text in the default language, and in the others where it differs there. */
function inLanguages(textIn: (language: Language) => string): { text: string; others: Texts | undefined } {
  const text = textIn(DEFAULT_LANGUAGE);
  const others = LANGUAGES.map((language) => [language, textIn(language)] as const).filter(
    ([, other]) => other !== text,
  );
  return { text, others: others.length === 0 ? undefined : (Object.fromEntries(others) as Texts) };
}

/** The platform shows each person the description in the language of their client. */
export function describe(textIn: (language: Language) => string): {
  description: string;
  description_localizations?: Texts;
} {
  const { text, others } = inLanguages(textIn);
  return { description: text, ...(others ? { description_localizations: others } : {}) };
}

/** What is shown is a word of the reader's language; what is sent is the same in all. */
function nameChoice<V extends string | number>(
  command: string,
  option: string,
  value: V,
): { name: string; name_localizations?: Texts; value: V } {
  const { text, others } = inLanguages((language) => choiceWord(command, option, `${value}`, language));
  return { name: text, ...(others ? { name_localizations: others } : {}), value };
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
      ? {
          ...common,
          type: OptionType.Number,
          choices: choices.map((value) => nameChoice(command.name, name, value)),
        }
      : {
          ...common,
          type: OptionType.String,
          choices: choices.map((value) => nameChoice(command.name, name, `${value}`)),
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
