import type { RollTotals, ValueKind } from "../../store/rolls.ts";
import type { Action, Reply } from "../define.ts";
import { makeLine } from "../line.ts";
import { countOf, formatSeconds, instant, joinAnd, makeNumber, plain } from "../wording.ts";
import { fieldsOf } from "./reply.ts";
import type { Roll } from "./roll.ts";

export interface Found {
  readonly rolls: readonly Roll[];
  readonly total: number;
  /** Counting stopped here: there are more. */
  readonly isCapped: boolean;
  readonly totals: RollTotals;
  readonly taken: readonly { readonly typed: string; readonly value: string }[];
  readonly page: number;
  readonly pageSize: number;
  /** Nothing narrows the search. */
  readonly isEverything: boolean;
}

export function foundReply(found: Found, lineOfPage: (page: number) => string): Reply {
  const { rolls, total, isCapped, totals, page, pageSize } = found;
  const taken = found.taken
    .map(({ typed, value }) => `I took "${plain(typed)}" for ${plain(value)}.`)
    .join(" ");
  if (total === 0) {
    const none = found.isEverything
      ? "The log is empty yet: a run that ends writes a roll into it."
      : "No roll in the log is like that. Try fewer words.";
    const text = `${taken} ${none}`.trim();
    return { text, fields: { total: 0, rolls: [] } };
  }
  const pages = Math.ceil(total / pageSize);
  if (rolls.length === 0) {
    const text = isCapped
      ? `Nobody pages that far: narrow the search down, by film, person or \`when:\`.`
      : `There are only ${countOf(pages, "page")}.`;
    return { text, fields: { total, page, rolls: [] } };
  }
  const count = isCapped ? `More than ${total} rolls` : countOf(total, "roll");
  const head = `**${count}**${pages > 1 ? `, page ${page}${isCapped ? "" : ` of ${pages}`}` : ""}.`;
  return {
    text: [taken, `${head} ${totalsWords(totals, total)}`.trim(), ...rolls.map((roll) => `- ${lineOf(roll)}`)]
      .filter(Boolean)
      .join("\n"),
    fields: { total, isCapped, page, pages, totals: { ...totals }, rolls: rolls.map(fieldsOf) },
    actions: [...rolls.slice(0, 3).map(showAction), ...turnActions(page, pages, lineOfPage)],
  };
}

function totalsWords(
  { counted, stopped, late, faulty, rated, ratingSum }: RollTotals,
  total: number,
): string {
  const parts = [
    stopped > 0 ? `${stopped} stopped` : "",
    late > 0 ? `${late} with late calls` : "",
    faulty > 0 ? `${faulty} with a fault` : "",
    rated > 0 ? `${(ratingSum / rated).toFixed(1)} of 5 on average (${rated} rated)` : "",
  ].filter(Boolean);
  if (parts.length === 0 || counted < 2) return "";
  return `${counted < total ? `Of the newest ${counted}: ` : ""}${joinAnd(parts)}.`;
}

export function showAction(roll: Roll): Action {
  return { label: makeNumber("roll", roll.number), line: makeLine("roll show", { roll: roll.number }) };
}

/** A button carries at most 100 characters; a longer search is paged by typing. */
function turnActions(page: number, pages: number, lineOfPage: (page: number) => string): Action[] {
  const turns: Action[] = [];
  if (page > 1) turns.push({ label: "Newer", line: lineOfPage(page - 1) });
  if (page < pages) turns.push({ label: "Older", line: lineOfPage(page + 1) });
  return turns.filter(({ line }) => line.length <= 100);
}

function lineOf(roll: Roll): string {
  const parts = [
    `${makeNumber("roll", roll.number)} ${plain(roll.personName)}: ${plain(roll.film)} at ${roll.body.exposureIndex} in ${plain(roll.developer)} ${roll.dilution}`,
    roll.body.developedSeconds === null ? "never developed" : formatSeconds(roll.body.developedSeconds),
    instant(roll.endedAt, "date"),
  ];
  if (roll.outcome === "stopped") parts.push("stopped");
  if (roll.rating !== null) parts.push(`rated ${roll.rating} of 5`);
  if (roll.fault !== "") parts.push(`fault: ${plain(roll.fault)}`);
  return parts.join(", ");
}

const KINDS = {
  film: "film",
  developer: "developer",
  person: "person",
  fault: "fault",
} as const satisfies Record<ValueKind, string>;

export const UNKNOWN_VALUE = (kind: ValueKind, typed: string, near: readonly string[]): string =>
  `The log has no ${KINDS[kind]} "${plain(typed)}".${near.length > 0 ? ` Did you mean ${near.map(plain).join(" or ")}?` : ""}`;
export const DAYS_ORDER = "The first day comes after the last one. Put them the other way round.";
