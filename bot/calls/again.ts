import type { z } from "zod";
import type { Action, Again, Command, UserError } from "../../commands/define.ts";
import { fitsKey, makeLine } from "../../commands/speech/line.ts";
import type { CommandCall } from "../chat/port.ts";

/* A refused call made again: by a button where what would do is known, else by a form as it was filled in. */

type Called = Pick<CommandCall, "name" | "options">;
type Given = Readonly<Record<string, string>>;

const givenIn = ({ options }: Called): Given =>
  Object.fromEntries(
    Object.entries(options)
      .filter(([, value]) => value !== undefined)
      .map(([name, value]) => [name, String(value)]),
  );

/** A way for which a button has no room is left out: the form is there for it. */
export function insteadActions({ mending }: UserError, call: Called): Action[] {
  return (mending.instead ?? [])
    .map(({ label, options }) => ({ label, line: makeLine(call.name, { ...givenIn(call), ...options }) }))
    .filter(({ line }) => fitsKey(line));
}

/** Undefined where there is no form to fill in. */
export function againOf({ code, mending }: UserError, call: Called): Again | undefined {
  const given = givenIn(call);
  if (code === "ERR_UNKNOWN_COMMAND" || code === "ERR_ROLE") return undefined;
  if (code !== "ERR_OPTIONS" && Object.keys(given).length === 0) return undefined;
  const first = Object.keys(mending.instead?.[0]?.options ?? {})[0];
  return { line: makeLine(call.name, given), option: mending.option ?? first ?? null };
}

/** The first option at fault: one that there is not, else the first that does not fit or is missing. */
export function faultyOption(
  command: Command,
  given: Readonly<Record<string, unknown>>,
  issues: readonly z.core.$ZodIssue[],
): string | null {
  const known = Object.keys(command.options.shape);
  const wrong = new Set(issues.map(({ path: [key] }) => String(key)));
  return (
    known.find((name) => wrong.has(name)) ?? Object.keys(given).find((name) => !known.includes(name)) ?? null
  );
}
