import { PAPER_KINDS, type Paper, type PaperKind } from "../../store/shapes/paper.ts";
import { type Completer, type Context, UserError } from "../define.ts";
import { completePaper, findPaper } from "../print/options.ts";
import { makeNumber, parseNumber } from "../speech/wording.ts";
import * as words from "./tray-words.ts";

/* What prints are made on: a kind of paper, or one of the class's boxes, which tells its kind and its size. */

export interface PaperAsked {
  readonly kind: PaperKind;
  /** null: only the kind was said. */
  readonly box: Paper | null;
}

/** @throws UserError where it is neither a kind nor a box of the class. */
export function paperAsked(context: Context, typed: string): PaperAsked {
  const kind = PAPER_KINDS.find((each) => [each, words.paperWord(each)].some((name) => isSame(name, typed)));
  if (kind) return { kind, box: null };
  const number = parseNumber("paper", typed);
  if (number === undefined)
    throw new UserError("ERR_UNKNOWN_PAPER", words.noSuchPaper(typed), [], { option: "paper" });
  const box = findPaper(context, number);
  return { kind: box.kind, box };
}

const isSame = (name: string, typed: string): boolean => name.toLowerCase() === typed.trim().toLowerCase();

/** The kinds, then the boxes. */
export const completePaperAsked: Completer = (typed, context, others) => [
  ...PAPER_KINDS.map((kind) => ({ label: words.paperWord(kind), value: kind })).filter(({ label, value }) =>
    `${label} ${value}`.toLowerCase().includes(typed.trim().toLowerCase()),
  ),
  ...completePaper(typed, context, others).map(({ label, value }) => ({
    label,
    value: makeNumber("paper", Number(value)),
  })),
];
