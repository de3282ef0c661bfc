import type { Print } from "../../../store/shapes/print.ts";
import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { formatBothScales, makeNumber, plain, saySeconds } from "../../speech/wording.ts";
import { listCauses } from "../../roll/fault/cause-list.ts";
import { keptFault, lookHelp, lookWord } from "../look-words.ts";
import { PRINT_LOOKS, type PrintLook } from "../looks.ts";
import { stopsWord } from "../print-words.ts";
import { againAction, showAction } from "../recipe-words.ts";
import { causeTitle, sourceOfCause, wordsOfCause } from "./causes.ts";
import type { Finding } from "./evidence.ts";
import type { Weighed } from "./weigh.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

const nameOf = ({ number }: Print): string => makeNumber("print", number);
const faultLine = (print: Print, more: Readonly<Record<string, string>>): string =>
  makeLine("print fault", { print: nameOf(print), ...more });

/** The first question: what is seen? */
export function askLook(print: Print): Reply {
  const lines = PRINT_LOOKS.map((look) => `- ${words().look(lookWord(look), lookHelp(look))}`);
  return {
    text: [words().ask(nameOf(print)), ...lines].join("\n"),
    fields: { print: print.number, question: "look", choices: [...PRINT_LOOKS] },
    actions: PRINT_LOOKS.map((look) => ({ label: lookWord(look), line: faultLine(print, { look }) })),
  };
}

export function causesReply(print: Print, look: PrintLook, weighed: readonly Weighed[]): Reply {
  const { paragraphs, causes, actions } = listCauses(weighed, {
    wordsOf: wordsOfCause,
    sourceOf: sourceOfCause,
    findingWords,
    lineOf: (cause) => faultLine(print, { look, cause }),
  });
  return {
    text: [words().causes(nameOf(print), lookWord(look)), ...paragraphs, words().whichWasIt].join("\n\n"),
    fields: { print: print.number, look, causes },
    actions,
  };
}

function findingWords(finding: Finding): string {
  const say = words().findings;
  switch (finding.kind) {
    case "developed-short":
    case "developed-long":
    case "developed-full":
      return say[finding.kind](saySeconds(finding.seconds));
    case "warm":
    case "cold":
    case "temperature-right":
      return say[finding.kind](formatBothScales(finding.tenthsC));
    case "developer-bad":
      return say["developer-bad"](finding.label, words().standings[finding.standing]);
    case "developer-good":
      return say["developer-good"](finding.label);
    case "more-light":
    case "less-light":
      return say[finding.kind](makeNumber("print", finding.print), stopsWord(finding.stops));
    case "harder":
    case "softer":
      return say[finding.kind](makeNumber("print", finding.print));
    case "others-alike":
      return say["others-alike"](finding.count);
    case "fibre":
    case "condenser":
      return say[finding.kind];
  }
}

export function blamedReply(print: Print, look: PrintLook, cause: string | null): Reply {
  const title = cause === null ? undefined : causeTitle(cause);
  const name = nameOf(print);
  return {
    text:
      title === undefined
        ? words().notedUnknown(name, lookWord(look))
        : words().noted(name, lookWord(look), title),
    fields: { print: print.number, fault: keptFault(look), cause },
    actions: [againAction(print), { label: words().others, line: makeLine("print find", { fault: "yes" }) }],
  };
}

export const clearedReply = (print: Print): Reply => ({
  text: words().cleared(nameOf(print)),
  fields: { print: print.number, fault: "", cause: null },
  actions: [showAction(print)],
});

export const unknownCause = (code: string): string => words().unknownCause(plain(code));
