import { parseLine, type LineForm } from "../../../commands/speech/line.ts";
import { pointDecimal } from "../../../commands/speech/decimal.ts";
import type { Suggestion } from "../../../commands/define.ts";
import type { CommandCard, OptionCard } from "../room/card.ts";
import type { Refusal } from "../room/wire.ts";
import type { Words } from "./words.en.ts";

/* What is wrong with a line, told while it is typed. The room checks everything again. */

export type LineFaultHere =
  | { readonly code: Refusal["code"]; readonly refusal: Refusal }
  | { readonly code: "ERR_UNKNOWN_OPTION"; readonly option: string; readonly command: string }
  | { readonly code: "ERR_WHOLE" | "ERR_NUMBER"; readonly option: string }
  | {
      readonly code: "ERR_LEAST" | "ERR_MOST" | "ERR_LONGEST";
      readonly option: string;
      readonly bound: number;
    }
  | { readonly code: "ERR_CHOICE"; readonly option: string; readonly choices: readonly string[] };

export interface LineCheck {
  readonly card: CommandCard | null;
  readonly faults: readonly LineFaultHere[];
  /** Options without which the command does nothing. */
  readonly missing: readonly string[];
}

/** Options that buttons carry and no form shows. */
const UNLISTED: readonly string[] = ["step", "sure", "as"];

/** `skip`: the option being typed just now, which is not judged yet. */
export function checkLine(line: string, cards: readonly CommandCard[], skip: string | null): LineCheck {
  const parsed = parseLine(line, cards.map(formOf));
  if (!parsed.ok)
    return { card: null, faults: [{ code: parsed.fault.code, refusal: parsed.fault }], missing: [] };
  const card = cards.find(({ name }) => name === parsed.value.name) ?? null;
  if (!card) return { card: null, faults: [], missing: [] };
  const faults = Object.entries(parsed.value.options).flatMap(([name, value]): LineFaultHere[] => {
    if (name === skip || UNLISTED.includes(name)) return [];
    const option = card.options.find((each) => each.name === name);
    if (!option) return [{ code: "ERR_UNKNOWN_OPTION", option: name, command: card.name }];
    const fault = checkValue(option, value);
    return fault ? [fault] : [];
  });
  const missing = card.options
    .filter(({ name, isRequired }) => isRequired && !parsed.value.options[name])
    .map(({ name }) => name);
  return { card, faults, missing };
}

function formOf({ name, rest, options }: CommandCard): LineForm {
  return { name, rest, options: [...options.map((option) => option.name), ...UNLISTED] };
}

export function checkValue(option: OptionCard, value: string): LineFaultHere | undefined {
  const { name } = option;
  // Read in any language there; here in the page's.
  const said = value.trim().toLowerCase();
  const isCalledSo = (each: Suggestion): boolean =>
    [each.value, each.label].some((word) => word.toLowerCase() === said);
  if (option.kind === "choice" && !option.choices.some(isCalledSo))
    return { code: "ERR_CHOICE", option: name, choices: option.choices.map(({ label }) => label) };
  if (option.longest !== null && [...value].length > option.longest)
    return { code: "ERR_LONGEST", option: name, bound: option.longest };
  if (option.kind !== "whole" && option.kind !== "number") return undefined;
  const number = value.trim() === "" ? Number.NaN : Number(pointDecimal(value));
  if (Number.isNaN(number))
    return { code: option.kind === "whole" ? "ERR_WHOLE" : "ERR_NUMBER", option: name };
  if (option.kind === "whole" && !Number.isInteger(number)) return { code: "ERR_WHOLE", option: name };
  if (option.least !== null && number < option.least)
    return { code: "ERR_LEAST", option: name, bound: option.least };
  if (option.most !== null && number > option.most)
    return { code: "ERR_MOST", option: name, bound: option.most };
  return undefined;
}

/** The sentence for a fault, in the reader's language. */
export function wordFault(fault: LineFaultHere, words: Words): string {
  const say = words.lineFaults;
  switch (fault.code) {
    case "ERR_UNKNOWN_OPTION":
      return say.ERR_UNKNOWN_OPTION(fault.option, fault.command);
    case "ERR_WHOLE":
    case "ERR_NUMBER":
      return say[fault.code](fault.option);
    case "ERR_LEAST":
    case "ERR_MOST":
    case "ERR_LONGEST":
      return say[fault.code](fault.option, fault.bound);
    case "ERR_CHOICE":
      return say.ERR_CHOICE(fault.option, fault.choices.join("; "));
    default:
      return wordRefusal(fault.refusal, words);
  }
}

export function wordRefusal(refusal: Refusal, { lineFaults: say }: Words): string {
  switch (refusal.code) {
    case "ERR_UNKNOWN_COMMAND":
      return say.ERR_UNKNOWN_COMMAND(
        refusal.word ?? "",
        (refusal.near ?? []).map((name) => `/${name}`).join(", "),
      );
    case "ERR_OPEN_QUOTE":
    case "ERR_TWICE":
      return say[refusal.code](refusal.option ?? "");
    case "ERR_STRAY_WORDS":
      return say.ERR_STRAY_WORDS(refusal.words ?? "", refusal.command ?? "");
    default:
      return say[refusal.code]();
  }
}
