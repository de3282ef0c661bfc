import type { RollFilter } from "./shapes/roll.ts";

const MOST_WORDS = 12;

/**
 * The words of a search, as the index knows them: letters and digits only, at most twelve. A few signs of New Tai Lue and
 * Vedic are letters here and none to the index.
 */
export function splitWords(text: string): string[] {
  const words = text.normalize("NFC").match(/(?:(?![\u19b0-\u19c9\u1cf2\u1cf3])[\p{L}\p{N}])+/gu) ?? [];
  return words.slice(0, MOST_WORDS);
}

/**
 * The filter in the index's own language. Every fact of a roll stands there as a word (see the table's `marks`), so that
 * one lookup answers all of it. Nothing a person wrote gets in unquoted. `others`: the other classes of the log where this
 * one holds most of it; to go through the mark that nearly every roll has would take longer than all the rest.
 */
export function toMatch(classId: number, filter: RollFilter, others: readonly number[] | null): string {
  const marks: string[] = [];
  if (filter.person) marks.push(personMark(filter.person));
  if (filter.film !== null) marks.push(`f${toHex(lowerAscii(filter.film))}`);
  if (filter.developer !== null) marks.push(`d${toHex(lowerAscii(filter.developer))}`);
  if (filter.tank !== null) marks.push(`t${filter.tank}`);
  if (filter.rating !== null) marks.push(`r${filter.rating}`);
  if (filter.outcome !== null) marks.push(`o${filter.outcome}`);
  if (filter.fault !== null) marks.push("fault");
  if (filter.late === true) marks.push("late");
  const months = monthsOf(filter.fromMs, filter.untilMs);
  if (months.length > 0) marks.push(`(${months.map((month) => `m${month}`).join(" OR ")})`);
  const asked = [
    ...(marks.length > 0 ? [`marks : (${marks.join(" AND ")})`] : []),
    ...splitWords(filter.batch ?? "").map((word) => `batches : ${quote(word)}`),
    ...(filter.fault ?? []).map((word) => `fault : ${quote(word)}`),
    ...filter.words.map((word, at) => wordMatch(word, filter.readAs[at] ?? [])),
  ];
  if (others === null || asked.length === 0) return [`marks : k${classId}`, ...asked].join(" AND ");
  const ofOthers = others.map((id) => `k${id}`).join(" OR ");
  return `(${asked.join(" AND ")})${others.length > 0 ? ` NOT marks : (${ofOthers})` : ""}`;
}

/** A word anywhere in it; of a fault also as it is read. */
function wordMatch(word: string, faults: readonly string[]): string {
  const ways = [
    `{person_name film developer dilution batches fault note} : ${quote(word)} *`,
    // The index knows no order of words.
    ...faults.map((fault) => `fault : (${splitWords(fault).map(quote).join(" AND ")})`),
  ];
  return `(${ways.join(" OR ")})`;
}

/** Over more months than this a search finds enough without them. */
const MOST_MONTHS = 24;

/** The months (UTC) that a stretch of time touches, as `202603`; none where it is open at an end, or long. */
function monthsOf(fromMs: number | null, untilMs: number | null): string[] {
  if (fromMs === null || untilMs === null || untilMs <= fromMs) return [];
  const first = new Date(fromMs);
  const last = new Date(untilMs - 1);
  const count =
    (last.getUTCFullYear() - first.getUTCFullYear()) * 12 + last.getUTCMonth() - first.getUTCMonth() + 1;
  if (count > MOST_MONTHS) return [];
  return Array.from({ length: count }, (_, at) =>
    new Date(Date.UTC(first.getUTCFullYear(), first.getUTCMonth() + at, 1))
      .toISOString()
      .slice(0, 7)
      .replace("-", ""),
  );
}

function personMark({ id, name }: NonNullable<RollFilter["person"]>): string {
  const ways = [
    ...(id === null ? [] : [`p${toHex(id)}`]),
    ...(name === null ? [] : [`n${toHex(lowerAscii(name))}`]),
  ];
  return `(${ways.join(" OR ")})`;
}

function quote(word: string): string {
  return `"${word.replaceAll('"', "")}"`;
}

/** As the store's `lower()` does: A to Z only. */
function lowerAscii(text: string): string {
  return text.replace(/[A-Z]/g, (letter) => letter.toLowerCase());
}

/** As the store's `hex()` does, of the text in UTF-8. */
function toHex(text: string): string {
  return [...new TextEncoder().encode(text)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}
