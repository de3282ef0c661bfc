import { mayActAs } from "../../store/shapes/person.ts";
import type { Run } from "../../store/shapes/run.ts";
import { UserError, type Context } from "../define.ts";
import { parseNumber } from "../speech/wording.ts";
import { findUnreadable, refuseUnreadable } from "../unreadable.ts";
import * as words from "./reply.ts";

/* Which run a call means. */

/** A student's own runs; all of the class's for an aide or the teacher. */
export function runsInReach(context: Context): Run[] {
  return context.stores.runs.open(
    context.class.id,
    mayActAs(context.role, "aide") ? undefined : context.person.id,
  );
}

/** `verb` and `rest`: the call that is made, for keys that say which run is meant. */
export function findRun(
  context: Context,
  text: string | undefined,
  verb: string,
  rest: Readonly<Record<string, string>> = {},
): Run {
  const { stores, person, role } = context;
  if (text === undefined) return onlyRun(context, verb, rest);
  const number = parseNumber("run", text);
  const run = number === undefined ? undefined : stores.runs.find(context.class.id, number);
  if (!run) {
    refuseUnreadable(context, "run", number);
    throw new UserError("ERR_UNKNOWN_RUN", words.unknownRun(text));
  }
  if (run.personId !== person.id && !mayActAs(role, "aide")) {
    throw new UserError("ERR_NOT_YOURS", words.notYours(run));
  }
  return run;
}

function onlyRun(context: Context, verb: string, rest: Readonly<Record<string, string>>): Run {
  const own = context.stores.runs.open(context.class.id, context.person.id);
  const [only] = own;
  if (!only) throw new UserError("ERR_NO_RUN", words.noRun());
  if (own.length > 1) {
    const { text, actions } = words.whichRun(own, verb, rest);
    throw new UserError("ERR_WHICH_RUN", text, actions);
  }
  return only;
}

/** Whether this number's run can't be read and is this person's to end. */
export function isLostRun(context: Context, text: string | undefined): boolean {
  const lost = findUnreadable(context, "run", text === undefined ? undefined : parseNumber("run", text));
  return lost !== undefined && (lost.personId === context.person.id || mayActAs(context.role, "aide"));
}
