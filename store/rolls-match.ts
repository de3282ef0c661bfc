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
  const marks = [
    ...anyOf(personMarks(filter.person)),
    ...filmMarks(filter),
    ...(filter.tank === null ? [] : [`t${filter.tank}`]),
    ...anyOf(dayMarks(filter.fromMs, filter.untilMs)),
  ];
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

/** What it was, what it was developed in, what was seen of it: of a film, the others are asked for together with it. */
function filmMarks({ film, developer, ...seen }: RollFilter): string[] {
  const one = film === null ? "" : `f${nameMark(film)}`;
  const both = developer === null ? one : `${one}x${nameMark(developer)}`;
  const ways = waysSeen(`${one}s`, film === null, seen);
  return [...anyOf(ways), ...(both === "" || (both === one && ways.length > 0) ? [] : [both])];
}

/** Each way to be what is asked of lateness, fault, outcome and rating; none where nothing is. */
function waysSeen(
  begun: string,
  mayEnd: boolean,
  { late, fault, outcome, rating }: Pick<RollFilter, "late" | "fault" | "outcome" | "rating">,
): string[] {
  const fields = [
    late === true ? ["1"] : ["0", "1"],
    fault === null ? ["0", "1"] : ["1"],
    outcome === null ? ["0", "1"] : [outcome === "stopped" ? "1" : "0"],
    rating === null ? ["0", "1", "2", "3", "4", "5"] : [String(rating)],
  ];
  const last = fields.findLastIndex(({ length }) => length === 1);
  if (last < 0) return [];
  const told = mayEnd ? fields.slice(0, last + 1) : fields;
  const ways = told.reduce<string[]>(
    (made, field) => made.flatMap((way) => field.map((letter) => way + letter)),
    [begun],
  );
  return told.length < fields.length ? ways.map((way) => `${way}*`) : ways;
}

/** Over more days than these a search finds enough without them. */
const MOST_DAYS = 750;
const DAY_MS = 86_400_000;

/**
 * The days (UTC) that a stretch of time touches, as `m20260314*`; many days by their tens, very many by their months, and so a
 * few too many. None where it is open at an end, or longer.
 */
function dayMarks(fromMs: number | null, untilMs: number | null): string[] {
  if (fromMs === null || untilMs === null || untilMs <= fromMs) return [];
  const first = Math.floor(fromMs / DAY_MS);
  const count = Math.floor((untilMs - 1) / DAY_MS) - first + 1;
  if (count > MOST_DAYS) return [];
  const letters = count <= 31 ? 8 : count <= 200 ? 7 : 6;
  const days = Array.from({ length: count }, (_, at) =>
    new Date((first + at) * DAY_MS).toISOString().slice(0, 10).replaceAll("-", "").slice(0, letters),
  );
  return [...new Set(days)].map((day) => `m${day}*`);
}

function personMarks(person: RollFilter["person"]): string[] {
  const { id = null, name = null } = person ?? {};
  return [...(id === null ? [] : [`p${toHex(id)}`]), ...(name === null ? [] : [`n${nameMark(name)}`])];
}

const anyOf = (marks: readonly string[]): string[] => (marks.length === 0 ? [] : [`(${marks.join(" OR ")})`]);

function quote(word: string): string {
  return `"${word.replaceAll('"', "")}"`;
}

/** As the store's `hex(lower())` does: A to Z only. */
const nameMark = (name: string): string => toHex(name.replace(/[A-Z]/g, (letter) => letter.toLowerCase()));

/** Of the text in UTF-8. */
function toHex(text: string): string {
  return [...new TextEncoder().encode(text)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}
