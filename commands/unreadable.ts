import { mayActAs } from "../store/shapes/person.ts";
import type { Unreadable, UnreadableKind } from "../store/shapes/unreadable.ts";
import { UserError, type Context, type Reply } from "./define.ts";
import { leftOutText, refusedText, setAsideText } from "./speech/unreadable.ts";

/* What commands do about a row that is there and can't be read. */

export function findUnreadable(
  { stores, class: { id } }: Context,
  kind: UnreadableKind,
  number: number | undefined,
): Unreadable | undefined {
  return number === undefined
    ? undefined
    : stores.unreadable.list(id, [kind]).find((row) => row.number === number);
}

/** @throws UserError where there is such a row: nobody is to be told that there is none. */
export function refuseUnreadable(context: Context, kind: UnreadableKind, number: number | undefined): void {
  const row = findUnreadable(context, kind, number);
  if (row) throw new UserError("ERR_ROW_UNREADABLE", refusedText(row));
}

/** Puts the row out of the way, and says so; undefined where this number's row can be read, or is not there. */
export function setAsideNumber(
  context: Context,
  kind: UnreadableKind,
  number: number | undefined,
): Reply | undefined {
  const row = findUnreadable(context, kind, number);
  if (!row) return undefined;
  context.stores.unreadable.setAside(context.class.id, [row], context.now);
  return { text: setAsideText(row), fields: { kind, number: number ?? null, setAside: true } };
}

/** The reply with a line on what its list leaves out; a student is told of their own runs only. */
export function withLeftOut(context: Context, kinds: readonly UnreadableKind[], reply: Reply): Reply {
  const isTheirs = ({ personId }: Unreadable): boolean =>
    personId === null || personId === context.person.id || mayActAs(context.role, "aide");
  const leftOut = leftOutText(context.stores.unreadable.list(context.class.id, kinds).filter(isTheirs));
  return leftOut === "" ? reply : { ...reply, text: `${reply.text}\n\n${leftOut}` };
}
