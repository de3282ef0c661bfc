import {
  type APIActionRowComponent,
  type APIButtonComponentWithCustomId,
  type APIComponentInMessageActionRow,
  type APIMessageTopLevelComponent,
  type APIStringSelectComponent,
  ButtonStyle,
  ComponentType,
} from "discord-api-types/v10";
import type { Action } from "../../../commands/define.ts";
import type { Language } from "../../../store/shapes/language.ts";
import { chunk } from "./chunk.ts";
import { LONGEST_KEY, readClass, withClass } from "./key-class.ts";
import type { DiscordSettings } from "./settings.ts";
import { shorten } from "./text.ts";
import { discordWords } from "./words/discord.ts";

/* A reply's actions as the platform's keys: buttons, and a list where one of many is chosen. */

const ROWS = 5;
const BUTTONS_PER_ROW = 5;
export const BUTTONS_PER_MESSAGE = ROWS * BUTTONS_PER_ROW;
const CHOICES_PER_LIST = 25;
/** More than one row of the same kind of choice reads better as a list. */
const LISTED_FROM = BUTTONS_PER_ROW + 1;

const STYLES = {
  main: ButtonStyle.Primary,
  plain: ButtonStyle.Secondary,
  danger: ButtonStyle.Danger,
} as const;

/** What a key calls, without what it says of it. */
const commandOf = ({ line }: Action): string => line.replace(/ [a-z][a-z0-9-]*:.*$/s, "");
/** What a hand has to find at once stays a button. */
const isPlain = ({ weight = "plain" }: Action): boolean => weight === "plain";

export interface Keys {
  readonly actions: readonly Action[];
  readonly language?: Language | undefined;
  /** The class they carry, where a press will not tell it. */
  readonly keysOf?: string | undefined;
}

/** A key carries its line; one the platform could not take is left out, and the log says so. */
export function makeRows(
  { actions, language, keysOf }: Keys,
  log: DiscordSettings["log"],
): APIMessageTopLevelComponent[] {
  const leaveOut = ({ label, line }: Action): void =>
    log.warn({ label, characters: line.length }, "a button was left out");
  const seen = new Set<string>();
  const fit = actions.filter((action) => {
    const { label, line } = action;
    const isFit = line.length >= 1 && line.length <= LONGEST_KEY && label.trim() !== "" && !seen.has(line);
    if (isFit) seen.add(line);
    else leaveOut(action);
    return isFit;
  });
  const alike = groupBy(fit.filter(isPlain), commandOf);
  const isListed = (action: Action): boolean =>
    isPlain(action) && (alike.get(commandOf(action))?.length ?? 0) >= LISTED_FROM;
  const lists = [...alike.values()]
    .filter(({ length }) => length >= LISTED_FROM)
    .flatMap((several) => chunk(several, CHOICES_PER_LIST));
  const buttons = chunk(
    fit.filter((action) => !isListed(action)),
    BUTTONS_PER_ROW,
  );
  const placeholder = discordWords(language).choose;
  const rows = [
    ...buttons.map((several) => rowOf(several.map((each) => makeButton(each, keysOf)))),
    ...lists.map((several, at) => rowOf([makeList(several, at, { placeholder, keysOf })])),
  ];
  for (const left of [...buttons, ...lists].slice(ROWS).flat()) leaveOut(left);
  return rows.slice(0, ROWS);
}

const rowOf = (
  components: APIComponentInMessageActionRow[],
): APIActionRowComponent<APIComponentInMessageActionRow> => ({ type: ComponentType.ActionRow, components });

const makeButton = (
  { label, line, weight }: Action,
  keysOf: string | undefined,
): APIButtonComponentWithCustomId => ({
  type: ComponentType.Button,
  style: STYLES[weight ?? "plain"],
  label: shorten(label, 80),
  custom_id: withClass(line, keysOf),
});

const makeList = (
  several: readonly Action[],
  at: number,
  { placeholder, keysOf }: { readonly placeholder: string; readonly keysOf: string | undefined },
): APIStringSelectComponent => ({
  type: ComponentType.StringSelect,
  custom_id: `list ${at}`,
  placeholder,
  options: several.map(({ label, line }) => ({ label: shorten(label, 100), value: withClass(line, keysOf) })),
});

function groupBy(actions: readonly Action[], nameOf: (action: Action) => string): Map<string, Action[]> {
  const groups = new Map<string, Action[]>();
  for (const action of actions) groups.set(nameOf(action), [...(groups.get(nameOf(action)) ?? []), action]);
  return groups;
}

/** A message's keys, in order, as the platform has them. */
export function listKeys(rows: readonly APIMessageTopLevelComponent[]): string[] {
  return rows
    .flatMap((row) => (row.type === ComponentType.ActionRow ? row.components : []))
    .flatMap((each) => {
      if (each.type === ComponentType.StringSelect) return each.options.map(({ value }) => value);
      return "custom_id" in each ? [each.custom_id] : [];
    });
}

/** Their lines, without the class they carry. */
export const listLines = (rows: readonly APIMessageTopLevelComponent[]): string[] =>
  listKeys(rows).map((key) => readClass(key).line);
