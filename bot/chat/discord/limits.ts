import {
  ApplicationCommandOptionType as OptionType,
  type APIApplicationCommandOption,
  type RESTPostAPIChatInputApplicationCommandsJSONBody as CommandBody,
} from "discord-api-types/v10";

/*
 * Every limit the platform sets to application commands, in one place. Source: Discord's developer documentation,
 * "Application Commands" (naming, structure, 8000 characters), read in August 2026. Pure.
 */

const NAME = /^[-_'\p{L}\p{N}\p{sc=Deva}\p{sc=Thai}]{1,32}$/u;
const COMMANDS = 100;
const OPTIONS = 25;
const CHOICES = 25;
const CHARACTERS = 8000;

/** One sentence for each thing the platform would refuse; none for commands that are fit to register. */
export function listLimitFaults(bodies: readonly CommandBody[]): string[] {
  const faults = bodies.flatMap((body) => [
    ...listNodeFaults(`/${body.name}`, body.name, describedIn(body), body.options ?? []),
    ...(countCharacters(body) > CHARACTERS
      ? [
          `/${body.name}: ${countCharacters(body)} characters in names and descriptions; ${CHARACTERS} at most`,
        ]
      : []),
  ]);
  if (bodies.length > COMMANDS) faults.push(`${bodies.length} commands; ${COMMANDS} at most`);
  return [...faults, ...listRepeats("commands", bodies)];
}

function listNodeFaults(
  path: string,
  name: string,
  descriptions: readonly string[],
  options: readonly APIApplicationCommandOption[],
): string[] {
  const faults: string[] = [];
  if (!NAME.test(name) || name !== name.toLowerCase())
    faults.push(`${path}: a name has 1 to 32 small letters, numbers, - or _`);
  if (descriptions.some((text) => text.length === 0)) faults.push(`${path}: has no description`);
  for (const { length } of descriptions)
    if (length > 100) faults.push(`${path}: its description has ${length} characters; 100 at most`);
  if (options.length > OPTIONS) faults.push(`${path}: ${options.length} options; ${OPTIONS} at most`);
  const optionalAt = options.findIndex((option) => !option.required);
  if (optionalAt !== -1 && options.slice(optionalAt).some((option) => option.required))
    faults.push(`${path}: required options come first`);
  const subs = options.filter(({ type }) => type === OptionType.Subcommand);
  if (subs.length > 0 && subs.length < options.length) faults.push(`${path}: options beside sub-commands`);
  return [
    ...faults,
    ...listRepeats(path, options),
    ...options.flatMap((option) => listOptionFaults(path, option)),
  ];
}

function listOptionFaults(parent: string, option: APIApplicationCommandOption): string[] {
  const path =
    option.type === OptionType.Subcommand ? `${parent} ${option.name}` : `${parent} ${option.name}:`;
  const inner = "options" in option ? (option.options ?? []) : [];
  const faults = listNodeFaults(path, option.name, describedIn(option), inner);
  const choices = "choices" in option ? (option.choices ?? []) : [];
  if (choices.length > CHOICES)
    faults.push(`${path} ${choices.length} choices; ${CHOICES} at most: give it a completer instead`);
  if (choices.length > 0 && "autocomplete" in option && option.autocomplete)
    faults.push(`${path} choices and completion together`);
  for (const { name, value } of choices) {
    if (name.length < 1 || name.length > 100 || `${value}`.length > 100)
      faults.push(`${path} the choice “${name}” has not 1 to 100 characters`);
  }
  if (new Set(choices.map(({ value }) => value)).size < choices.length)
    faults.push(`${path} the same choice twice`);
  return faults;
}

function listRepeats(path: string, list: readonly { readonly name: string }[]): string[] {
  const names = list.map(({ name }) => name);
  const repeated = new Set(names.filter((name, index) => names.indexOf(name) !== index));
  return [...repeated].map((name) => `${path}: the name ${name} twice`);
}

/** A description in every language it is registered in. */
function describedIn(node: CommandBody | APIApplicationCommandOption): string[] {
  return [node.description, ...Object.values(node.description_localizations ?? {})].filter(
    (text) => typeof text === "string",
  );
}

/**
 * What counts towards the 8000: names, descriptions and values of the command, its options and their choices; of a text in
 * several languages the longest (the platform's documentation on application commands).
 */
function countCharacters(node: CommandBody | APIApplicationCommandOption): number {
  const inner = "options" in node ? (node.options ?? []) : [];
  const choices = "choices" in node ? (node.choices ?? []) : [];
  return (
    node.name.length +
    describedIn(node).reduce((most, text) => Math.max(most, text.length), 0) +
    choices.reduce((sum, { name, value }) => sum + name.length + `${value}`.length, 0) +
    inner.reduce((sum, option) => sum + countCharacters(option), 0)
  );
}
