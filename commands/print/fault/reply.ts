import type { Print } from "../../../store/shapes/print.ts";
import type { Action, FieldValue, Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { formatBothScales, joinAnd, makeNumber, plain, saySeconds } from "../../speech/wording.ts";
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

const MOST_CAUSES = 4;

export function causesReply(print: Print, look: PrintLook, weighed: readonly Weighed[]): Reply {
  const shown = weighed.slice(0, MOST_CAUSES);
  return {
    text: [words().causes(nameOf(print), lookWord(look)), ...shown.map(causeWords), words().whichWasIt].join(
      "\n\n",
    ),
    fields: {
      print: print.number,
      look,
      causes: shown.map(({ cause, likelihood, speaksFor, speaksAgainst }): FieldValue => ({
        code: cause.code,
        likelihood,
        for: speaksFor.map(({ kind }) => kind),
        against: speaksAgainst.map(({ kind }) => kind),
        source: sourceOfCause(cause.code),
      })),
    },
    actions: [
      ...shown.map(({ cause }, at): Action => ({
        label: `${at + 1}: ${wordsOfCause(cause.code).title}`.slice(0, 80),
        line: faultLine(print, { look, cause: cause.code }),
      })),
      { label: words().unknownToo, line: faultLine(print, { look, cause: "unknown" }) },
    ],
  };
}

function causeWords({ cause, likelihood, speaksFor, speaksAgainst }: Weighed, at: number): string {
  const { title, now, next, source } = wordsOfCause(cause.code);
  return [
    `**${at + 1}. ${title}** (${words().likelihoods[likelihood]})`,
    speaksFor.length > 0 ? words().speaksFor(joinAnd(speaksFor.map(findingWords))) : "",
    speaksAgainst.length > 0 ? words().speaksAgainst(joinAnd(speaksAgainst.map(findingWords))) : "",
    at < 2 ? words().now(now) : "",
    words().next(next),
    words().source(source),
  ]
    .filter(Boolean)
    .join("\n");
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
