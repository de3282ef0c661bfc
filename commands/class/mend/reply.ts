import type { SetAside, Unreadable } from "../../../store/shapes/unreadable.ts";
import type { Action, Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import {
  kindUnreadable,
  nameUnreadable,
  sayIn,
  setAsideKey,
  whyUnreadable,
} from "../../speech/unreadable.ts";
import { joinAnd, plain, quoted } from "../../speech/wording.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

const MOST_SHOWN = 20;

/** What puts a row out of the way: its number, or its kind and its row's own. */
export function handleOf({ kind, number, name, id }: Unreadable): string {
  if (kind === "habit") return name ?? "";
  return number === null || kind === "sheet" || kind === "shelf"
    ? `${kind} ${id}`
    : nameUnreadable({ kind, number, name });
}

export function mendReply(rows: readonly Unreadable[], aside: readonly SetAside[]): Reply {
  const shown = rows.slice(0, MOST_SHOWN);
  const lines = shown.map((row) =>
    words().entry(
      nameUnreadable(row),
      kindUnreadable(row),
      whyUnreadable(row.faults),
      words().advice(row.kind),
    ),
  );
  const text = [
    rows.length === 0 ? words().allReadable : words().title(rows.length),
    ...lines,
    ...(rows.length > shown.length ? [words().more(rows.length - shown.length)] : []),
    ...(aside.length > 0 ? [words().wasAside, ...aside.map(asideLine)] : []),
  ].join("\n");
  return {
    text,
    fields: { unreadable: rows.map((row) => ({ kind: row.kind, what: handleOf(row) })) },
    actions: shown.map((row): Action => ({
      label: setAsideKey(row).slice(0, 80),
      line: makeLine("class mend", { what: handleOf(row) }),
    })),
  };
}

/** What stood there, as far as a line holds it. */
function asideLine(row: SetAside): string {
  const body = JSON.parse(row.body) as Readonly<Record<string, unknown>>;
  const facts = Object.entries(body).flatMap(([field, value]) =>
    typeof value === "number" && /(Ml|Seconds|enthsC)$/.test(field) ? [sayIn(field, value)] : [],
  );
  return words().asideEntry(nameUnreadable(row), facts.join(", "));
}

export const unknownMend = (typed: string): string => words().unknown(quoted(plain(typed)));

export function teacherNotice(rows: readonly Unreadable[]): { text: string; actions: Action[] } {
  const names = joinAnd(rows.slice(0, MOST_SHOWN).map(nameUnreadable));
  return {
    text: words().toTeachers(names, rows.length),
    actions: [{ label: words().show, line: makeLine("class mend", {}) }],
  };
}

export const ownerNotice = (row: Unreadable): string => words().toOwner(nameUnreadable(row));
