import type { RollTotals, ValueKind } from "../../../store/rolls.ts";
import type { Action, Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { turnActions } from "../../speech/turns.ts";
import {
  formatNumber,
  formatSeconds,
  instant,
  joinAnd,
  makeNumber,
  plain,
  sayDilution,
} from "../../speech/wording.ts";
import { fieldsOf } from "../fields.ts";
import { sayFault } from "../look-words.ts";
import { type Taken, takenWords } from "../taken-words.ts";
import type { Roll } from "../../../store/shapes/roll.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

export interface Found {
  readonly rolls: readonly Roll[];
  readonly total: number;
  /** Counting stopped here: there are more. */
  readonly isCapped: boolean;
  readonly totals: RollTotals;
  readonly taken: readonly Taken[];
  readonly page: number;
  readonly pageSize: number;
  /** Nothing narrows the search. */
  readonly isEverything: boolean;
}

const words = inEach({ en, de });

export function foundReply(found: Found, lineOfPage: (page: number) => string): Reply {
  const { rolls, total, isCapped, totals, page, pageSize } = found;
  const taken = takenWords(found.taken).join(" ");
  if (total === 0) {
    const none = found.isEverything ? words().empty : words().noneLike;
    return { text: `${taken} ${none}`.trim(), fields: { total: 0, rolls: [] } };
  }
  const pages = Math.ceil(total / pageSize);
  if (rolls.length === 0) {
    const text = isCapped ? words().tooFar : words().pagesOnly(pages);
    return { text, fields: { total, page, rolls: [] } };
  }
  const head = `${headWords(found, pages)} ${totalsWords(totals, total)}`.trim();
  return {
    text: [taken, head, ...rolls.map((roll) => `- ${lineOf(roll)}`)].filter(Boolean).join("\n"),
    fields: { total, isCapped, page, pages, totals: { ...totals }, rolls: rolls.map(fieldsOf) },
    actions: [...rolls.slice(0, 3).map(showAction), ...turnActions({ page, pages }, words(), lineOfPage)],
  };
}

function headWords({ total, isCapped, page }: Found, pages: number): string {
  if (isCapped) return words().headCapped(total, page);
  return pages > 1 ? words().headOfPages(total, page, pages) : words().head(total);
}

function totalsWords(
  { counted, stopped, late, faulty, rated, ratingSum }: RollTotals,
  total: number,
): string {
  const parts = [
    stopped > 0 ? words().stopped(stopped) : "",
    late > 0 ? words().late(late) : "",
    faulty > 0 ? words().faulty(faulty) : "",
    rated > 0 ? words().average(formatNumber(ratingSum / rated, 1), rated) : "",
  ].filter(Boolean);
  if (parts.length === 0 || counted < 2) return "";
  return counted < total ? words().ofNewest(counted, joinAnd(parts)) : words().ofAll(joinAnd(parts));
}

export function showAction(roll: Roll): Action {
  return { label: makeNumber("roll", roll.number), line: makeLine("roll show", { roll: roll.number }) };
}

function lineOf(roll: Roll): string {
  const { developedSeconds, exposureIndex } = roll.body;
  const parts = [
    words().roll(
      makeNumber("roll", roll.number),
      plain(roll.personName),
      plain(roll.film),
      exposureIndex,
      `${plain(roll.developer)} ${sayDilution(roll.dilution)}`,
    ),
    developedSeconds === null ? words().neverDeveloped : formatSeconds(developedSeconds),
    instant(roll.endedAt, "date"),
  ];
  if (roll.outcome === "stopped") parts.push(words().wasStopped);
  if (roll.rating !== null) parts.push(words().rated(roll.rating));
  if (roll.fault !== "") parts.push(words().fault(plain(sayFault(roll.fault))));
  return parts.join(", ");
}

export const unknownValue = (kind: ValueKind, typed: string, near: readonly string[]): string =>
  words().unknownValue(
    kind,
    plain(typed),
    near.map((value) => plain(kind === "fault" ? sayFault(value) : value)),
  );
export const daysOrder = (): string => words().daysOrder;
