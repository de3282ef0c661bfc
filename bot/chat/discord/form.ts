import {
  type APIApplicationCommandBasicOption as Option,
  type APILabelComponent,
  type APIModalInteractionResponseCallbackData as FormBody,
  type APISelectMenuOption,
  ApplicationCommandOptionType as OptionType,
  ComponentType,
  TextInputStyle,
} from "discord-api-types/v10";
import type { Command, Suggestion } from "../../../commands/define.ts";
import { summaryOf } from "../../../commands/forms.ts";
import { makeLine } from "../../../commands/speech/line.ts";
import { DEFAULT_LANGUAGE, type Language } from "../../../store/shapes/language.ts";
import { makeOptions } from "./option.ts";
import { LONGEST_KEY as LONGEST_LINE, withClass } from "./key-class.ts";
import { shorten } from "./text.ts";

/*
 * A command's form, for keys that need filling in, calls that lack something, and refused calls as they were made. The
 * platform's forms have five fields at most; what else was given goes along in the form's own line. Pure.
 */

const MOST_FIELDS = 5;
const MOST_LISTED = 25;
/** From so many characters on a field has several lines. */
const LONG_TEXT = 300;
/** So much has to be said before a form is easier than the platform's own row of options. */
const FORMED_FROM = 3;

type Given = Readonly<Record<string, unknown>>;

/** Options that the platform's forms here have no field for. */
const UNFIT: ReadonlySet<OptionType> = new Set([
  OptionType.Channel,
  OptionType.Role,
  OptionType.User,
  OptionType.Attachment,
]);

/** Options whose value is one of what there is, so that it can be chosen from a list. */
const CHOSEN: ReadonlySet<string> = new Set(["batch", "devbatch", "fixbatch", "tank", "run", "roll"]);
const NAMED: ReadonlySet<string> = new Set(["film", "developer"]);
/** Here a film or a developer may be one that nobody has named yet. */
const NAMES_ANEW: ReadonlySet<string> = new Set(["sheet add", "sheet tablet", "mix class"]);

const isChosen = (command: Command, option: string): boolean =>
  CHOSEN.has(option) || (NAMED.has(option) && !NAMES_ANEW.has(command.name));

const isLong = (option: Option): boolean =>
  option.type === OptionType.String && "max_length" in option && (option.max_length ?? 0) >= LONG_TEXT;

/** The options that must be given and are not. */
export function missingOf(command: Command, given: Given): string[] {
  return Object.entries(command.options.shape).flatMap(([name, option]) =>
    given[name] === undefined && !option.safeParse(undefined).success ? [name] : [],
  );
}

/** Whether a command opens a form where something is missing, so that the platform need not ask for it first. */
export function isFormed(command: Command): boolean {
  const required = makeOptions(command).filter((option) => option.required);
  return (
    required.length > 0 &&
    required.every(({ type }) => !UNFIT.has(type)) &&
    (required.length >= FORMED_FROM || required.some(isLong))
  );
}

const MARK = /^\?([a-z0-9-]*)\?(.*)$/s;

/** The line of a key that opens a form, filled in; undefined where a key has no room for it. */
export function makeFormKey(line: string, first: string | null): string | undefined {
  const key = `?${first ?? ""}?${line}`;
  return key.length <= LONGEST_LINE ? key : undefined;
}

export function readFormKey(
  key: string,
): { readonly line: string; readonly first: string | null } | undefined {
  const match = MARK.exec(key);
  return match ? { line: match[2] ?? "", first: match[1] === "" ? null : (match[1] ?? null) } : undefined;
}

export interface Asking {
  readonly command: Command;
  readonly given: Given;
  /** The option to look at first. */
  readonly first: string | null;
  readonly language: Language | undefined;
  /** The class it carries, where sending it will not tell it. */
  readonly classKey?: string | undefined;
  /** What there is to choose from. */
  suggest(option: string): readonly Suggestion[];
}

/** undefined where there is nothing to fill in, or no room for what was given beside it. */
export function makeForm({
  command,
  given,
  first,
  language,
  classKey,
  suggest,
}: Asking): FormBody | undefined {
  const options = makeOptions(command).filter(({ type }) => !UNFIT.has(type));
  const wanted = [
    ...(first === null ? [] : [first]),
    ...missingOf(command, given),
    ...(command.first ?? []),
    ...Object.keys(given),
    ...(first === null ? options.map(({ name }) => name) : []),
  ];
  const shown = [...new Set(wanted)].flatMap((name) => options.find((option) => option.name === name) ?? []);
  const fields = shown.slice(0, MOST_FIELDS);
  // A channel, a file: what must be given and has no field here is refused in words.
  const isWhole = missingOf(command, given).every((name) => fields.some((field) => field.name === name));
  const others = Object.entries(given).filter(([name]) => !fields.some((field) => field.name === name));
  const line = makeLine(
    command.name,
    Object.fromEntries(others.map(([name, value]) => [name, String(value)])),
  );
  if (!isWhole || fields.length === 0 || line.length > LONGEST_LINE) return undefined;
  return {
    custom_id: withClass(line, classKey),
    title: shorten(summaryOf(command, language), 45),
    components: fields.map((option) => {
      const value = given[option.name];
      const listed = isChosen(command, option.name) ? suggest(option.name) : [];
      return makeField(option, value === undefined ? undefined : String(value), listed, language);
    }),
  };
}

function makeField(
  option: Option,
  value: string | undefined,
  listed: readonly Suggestion[],
  language: Language = DEFAULT_LANGUAGE,
): APILabelComponent {
  const about = inLanguage(option.description_localizations, language) ?? option.description;
  const list = listOf(option, listed, language).map((each) => ({
    ...each,
    ...(each.value === value ? { default: true } : {}),
  }));
  // A list that lacks what was given would lose it; one that is full may lack more.
  const isListed =
    list.length > 0 &&
    list.length < MOST_LISTED + (listed.length > 0 ? 0 : 1) &&
    (value === undefined || list.some((each) => each.value === value));
  return {
    type: ComponentType.Label,
    label: shorten(option.name, 45),
    description: shorten(about, 100),
    component: isListed
      ? {
          type: ComponentType.StringSelect,
          custom_id: option.name,
          options: list,
          required: option.required ?? false,
        }
      : makeTextField(option, value),
  };
}

const inLanguage = (others: object | null | undefined, language: Language): string | undefined =>
  (others as Partial<Record<Language, string>> | null | undefined)?.[language];

function makeTextField(option: Option, value: string | undefined): APILabelComponent["component"] {
  const lengths = option.type === OptionType.String ? option : undefined;
  const most = Math.min(4000, (lengths && "max_length" in lengths ? lengths.max_length : undefined) ?? 200);
  return {
    type: ComponentType.TextInput,
    custom_id: option.name,
    style: most >= LONG_TEXT ? TextInputStyle.Paragraph : TextInputStyle.Short,
    required: option.required ?? false,
    max_length: most,
    ...(value === undefined ? {} : { value: value.slice(0, most) }),
  };
}

function listOf(option: Option, listed: readonly Suggestion[], language: Language): APISelectMenuOption[] {
  if ("choices" in option && option.choices)
    return option.choices.map(({ name, name_localizations: others, value }) => ({
      label: shorten(inLanguage(others, language) ?? name, 100),
      value: String(value),
    }));
  if (option.type === OptionType.Integer && "min_value" in option) {
    const { min_value: least, max_value: most } = option;
    if (least !== undefined && most !== undefined && most - least < MOST_LISTED - 1)
      return Array.from({ length: most - least + 1 }, (_, at) => ({
        label: `${least + at}`,
        value: `${least + at}`,
      }));
  }
  const known = new Map(listed.map(({ label, value }) => [value, label]));
  return [...known]
    .filter(([value]) => value !== "" && value.length <= 100)
    .map(([value, label]) => ({ label: shorten(label.trim() === "" ? value : label, 100), value }));
}
