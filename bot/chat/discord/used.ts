import {
  type APIComponentInMessageActionRow,
  type APIMessage,
  type APIMessageTopLevelComponent,
  ComponentType,
} from "discord-api-types/v10";
import type { Reply } from "../../../commands/define.ts";
import { READS } from "../../../commands/reads.ts";
import { type LineForm, parseLine } from "../../../commands/speech/line.ts";
import { readClass } from "./key-class.ts";

/* Keys that have done their work, so that nobody presses them a second time. Pure. */

/** The message a key stood in, and the key's line without the class it carries. */
export interface Pressed {
  readonly message: Pick<APIMessage, "id" | "channel_id" | "components" | "flags" | "mentions">;
  readonly line: string;
}

/** Whether what was called is over and done with: what only shows something, names nothing, or asks first is not. */
export function isSpentBy(line: string, name: string, { actions = [] }: Reply): boolean {
  const isQuestion = actions.some((each) => each.line.startsWith(`${line} `));
  return line.includes(":") && !READS.has(name) && !isQuestion;
}

/** What a key is about: its command, and the first thing it names. Ratings of one roll are about the same, runs of two people are not. */
function aboutOf(line: string, forms: readonly LineForm[]): string | undefined {
  const parsed = parseLine(line, forms);
  if (!parsed.ok) return undefined;
  const [first] = Object.entries(parsed.value.options);
  return `${parsed.value.name} ${first?.join(":") ?? ""}`;
}

/** A message's keys without the one that was pressed and those about the same; undefined where none goes. */
export function withoutUsed(
  { message, line }: Pressed,
  forms: readonly LineForm[],
): APIMessageTopLevelComponent[] | undefined {
  const used = aboutOf(line, forms);
  let gone = 0;
  const isUsed = (key: string): boolean => {
    const { line: each } = readClass(key);
    return each === line || aboutOf(each, forms) === used;
  };
  const rows = (message.components ?? []).flatMap((row): APIMessageTopLevelComponent[] => {
    if (row.type !== ComponentType.ActionRow) return [row];
    const components = row.components.flatMap((each): APIComponentInMessageActionRow[] => {
      if (each.type === ComponentType.StringSelect) {
        const options = each.options.filter(({ value }) => !isUsed(value));
        gone += each.options.length - options.length;
        return options.length > 0 ? [{ ...each, options }] : [];
      }
      const isGone = "custom_id" in each && isUsed(each.custom_id);
      if (isGone) gone += 1;
      return isGone ? [] : [each];
    });
    return components.length > 0 ? [{ ...row, components }] : [];
  });
  return gone === 0 ? undefined : rows;
}
