import {
  type APIApplicationCommandSubcommandOption,
  ApplicationCommandOptionType as OptionType,
  PermissionFlagsBits,
  type RESTPostAPIChatInputApplicationCommandsJSONBody as CommandBody,
} from "discord-api-types/v10";
import type { Command } from "../../../commands/define.ts";
import { summaryOf } from "../../../commands/forms.ts";
import { listLimitFaults } from "./limits.ts";
import { isFormed } from "./form.ts";
import { describe, makeOptions } from "./option.ts";
import { shorten } from "./text.ts";
import { discordWords } from "./words/discord.ts";

/* Command definitions as Discord's application commands. Pure. */

/**
 * A command of one word beside sub-commands of the same word (`plan` beside `plan curve`) can't be called on this
 * platform: there it is a sub-command of this name.
 */
export const BARE_WORD = "make";

/**
 * What not everybody may call stands under a word of its own (`/staff-batch mix`), since the platform hides whole commands
 * only: these are shown to whoever manages the server, until a server says otherwise in its settings.
 */
const STAFF = "staff";
const STAFF_ALONE = String(PermissionFlagsBits.ManageGuild);

export interface CommandMap {
  readonly bodies: readonly CommandBody[];
  /** The command a person called, by the words of its path. */
  find(...path: readonly (string | undefined)[]): Command | undefined;
  /** How a command is called here, without the slash. */
  pathOf(name: string): string;
  /** A reply's `/plan` (in code marks, as replies write commands) as it is called here: `/plan make`. */
  sayPaths(text: string): string;
}

/** Throws one error that tells everything the platform would refuse. */
export function mapCommands(commands: readonly Command[]): CommandMap {
  const byPath = new Map<string, Command>();
  const paths = new Map<string, string>();
  const renamed: (readonly [from: RegExp, to: string])[] = [];
  const faults: string[] = [];

  function place(path: string, command: Command): void {
    if (byPath.has(path)) faults.push(`/${path}: two commands come to this name here`);
    byPath.set(path, command);
    paths.set(command.name, path);
    if (path !== command.name) renamed.push([patternOf(command, commands), path]);
  }

  const makeLeaf = (name: string, command: Command): APIApplicationCommandSubcommandOption => ({
    type: OptionType.Subcommand,
    name,
    ...describe((language) => summaryOf(command, language)),
    options: offer(command),
  });

  function makeLeaves(parent: string, noun: string, members: readonly Command[]) {
    return members.map((command) => {
      const name = command.name === noun ? BARE_WORD : command.name.slice(noun.length + 1);
      place(`${parent} ${name}`, command);
      return makeLeaf(name, command);
    });
  }

  function makeBody(top: string, noun: string, members: readonly Command[]): CommandBody {
    const [first] = members;
    if (first && members.length === 1 && first.name === noun) {
      place(top, first);
      return { name: top, ...describe((language) => summaryOf(first, language)), options: offer(first) };
    }
    return { name: top, ...describeGroup(top, noun, members), options: makeLeaves(top, noun, members) };
  }

  const forAll = groupByNoun(commands.filter(({ who }) => who === "student"));
  const forStaff = groupByNoun(commands.filter(({ who }) => who !== "student"));
  const bodies = [
    ...[...forAll].map(([noun, members]) => makeBody(noun, noun, members)),
    ...[...forStaff].map(([noun, members]): CommandBody => ({
      ...makeBody(`${STAFF}-${noun}`, noun, members),
      default_member_permissions: STAFF_ALONE,
    })),
  ];
  faults.push(...listLimitFaults(bodies));
  if (faults.length > 0)
    throw new Error(`Discord would refuse these commands:\n${faults.map((each) => `- ${each}`).join("\n")}`);
  return {
    bodies,
    find: (...path) => byPath.get(path.filter((each) => each !== undefined).join(" ")),
    pathOf: (name) => paths.get(name) ?? name,
    sayPaths: (text) => renamed.reduce((said, [from, to]) => said.replace(from, to), text),
  };
}

/** Where a text names this command, and no other whose name begins with its. */
function patternOf({ name }: Command, commands: readonly Command[]): RegExp {
  const longer = commands.flatMap((other) =>
    other.name.startsWith(`${name} `) ? [other.name.slice(name.length + 1)] : [],
  );
  const others = longer.length === 0 ? "" : `(?! (?:${longer.join("|")})\\b)`;
  return new RegExp(`(?<=\`/)${name}${others}(?![\\w-])`, "g");
}

function groupByNoun(commands: readonly Command[]): Map<string, Command[]> {
  const groups = new Map<string, Command[]>();
  for (const command of commands) {
    const [noun = ""] = command.name.split(" ");
    groups.set(noun, [...(groups.get(noun) ?? []), command]);
  }
  return groups;
}

function describeGroup(top: string, noun: string, members: readonly Command[]) {
  const verbs = members.map(({ name }) => name.replace(`${noun} `, "")).join(", ");
  return describe((language) => discordWords(language).groups[top] ?? shorten(`${noun}: ${verbs}`, 100));
}

/** Where a form asks for what is missing, nothing has to be filled in before. */
function offer(command: Command): ReturnType<typeof makeOptions> {
  const options = makeOptions(command);
  return isFormed(command) ? options.map((option) => ({ ...option, required: false })) : options;
}
