import type { RowFault, Unreadable } from "../../store/shapes/unreadable.ts";
import { inEach } from "./language.ts";
import { formatBothScales, formatMl, formatSeconds, joinAnd, makeNumber, plain } from "./wording.ts";
import { de } from "./words/unreadable.de.ts";
import { en } from "./words/unreadable.en.ts";

/* Rows that can't be read, in plain words: which, and why. */

const words = inEach({ en, de });

type Named = Pick<Unreadable, "kind" | "number" | "name">;

/** `T3`, `R7`, `Lantern 400, House MQ 1+1`, `room temperature`. */
export function nameUnreadable({ kind, number, name, id }: Named & { readonly id?: number }): string {
  if (kind === "handover") return words().handoverOf(id ?? 0);
  if (kind === "habit") return words().field(name ?? "");
  if (number === null || kind === "sheet" || kind === "shelf") return plain(name ?? "");
  return makeNumber(kind, number);
}

export const kindUnreadable = ({ kind }: Named): string => words().kind(kind);

const MOST_FAULTS = 3;

/** Why: `volume: 10 ml, must be at least 50 ml`. */
export function whyUnreadable(faults: readonly RowFault[]): string {
  const shown = faults.slice(0, MOST_FAULTS).map(sayFault);
  const more = faults.length - shown.length;
  return [...new Set(shown), ...(more > 0 ? [words().more(more)] : [])].join("; ");
}

function sayFault({ field, value, least, most }: RowFault): string {
  const { below, above, wrong, field: fieldWord } = words();
  if (typeof value !== "number") return wrong(fieldWord(field));
  const say = (number: number): string => sayIn(field, number);
  if (least !== null) return below(fieldWord(field), say(value), say(least));
  return most === null ? wrong(fieldWord(field)) : above(fieldWord(field), say(value), say(most));
}

/** A field's name ends in its unit. */
export function sayIn(field: string, value: number): string {
  if (field.endsWith("Ml")) return formatMl(value);
  if (/seconds$/i.test(field)) return formatSeconds(value);
  return field.endsWith("enthsC") ? formatBothScales(value) : String(value);
}

export function setAsideText(row: Unreadable): string {
  const name = nameUnreadable(row);
  return row.kind === "run" ? words().freed(name) : words().setAside(name);
}

export const setAsideKey = (row: Unreadable): string => words().setAsideKey(nameUnreadable(row));

export const refusedText = (row: Unreadable): string => words().refused(nameUnreadable(row));

/** Under a list from which rows are left out; empty where none is. */
export function leftOutText(rows: readonly Unreadable[]): string {
  return rows.length === 0 ? "" : words().leftOut(joinAnd(rows.map(nameUnreadable)), rows.length === 1);
}
