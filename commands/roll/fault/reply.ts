import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { makeNumber, plain } from "../../speech/wording.ts";
import { listCauses } from "./cause-list.ts";
import { causeTitle, sourceOfCause, wordsOfCause } from "./causes.ts";
import { findingWords } from "./finding-words.ts";
import { keptFault, lookHelp, lookWord } from "../look-words.ts";
import {
  EDGES,
  LOOK_GROUP_NAMES,
  LOOK_GROUPS,
  MARGINS,
  EXTENTS,
  type Answers,
  type Edge,
  type Look,
  type LookGroup,
  type Margin,
  type Extent,
  type Question,
} from "../looks.ts";
import type { Roll } from "../../../store/shapes/roll.ts";
import type { Weighed } from "./weigh.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

const faultLine = (roll: Roll, answers: Partial<Answers>, more: Record<string, string> = {}): string =>
  makeLine("roll fault", {
    roll: roll.number,
    ...Object.fromEntries(Object.entries(answers).filter(([, value]) => value !== null)),
    ...more,
  });

/** The first question: roughly what is seen? */
export function askKind(roll: Roll): Reply {
  return {
    text: words().askKind(makeNumber("roll", roll.number)),
    fields: { roll: roll.number, question: "kind", choices: [...LOOK_GROUP_NAMES] },
    actions: LOOK_GROUP_NAMES.map((kind) => ({
      label: words().kinds[kind],
      line: faultLine(roll, {}, { kind }),
    })),
  };
}

/** The second: which look of that kind is it? */
export function askLook(roll: Roll, kind: LookGroup): Reply {
  const looks = LOOK_GROUPS[kind];
  const lines = looks.map((look) => `- ${words().look(lookWord(look), lookHelp(look))}`);
  return {
    text: [words().ask(makeNumber("roll", roll.number)), ...lines].join("\n"),
    fields: { roll: roll.number, question: "look", choices: [...looks] },
    actions: [
      ...looks.map((look) => ({ label: lookWord(look), line: faultLine(roll, { look }) })),
      { label: words().otherKind, line: faultLine(roll, {}) },
    ],
  };
}

const CHOICES = { edge: EDGES, margin: MARGINS, place: EXTENTS } as const satisfies Record<
  Question,
  readonly (Edge | Margin | Extent)[]
>;

export function askQuestion(roll: Roll, answers: Answers, question: Question): Reply {
  const choices: readonly (Edge | Margin | Extent)[] = CHOICES[question];
  return {
    text: words()
      .asked(lookWord(answers.look), words().questions[question])
      .replace(/^./, (letter) => letter.toUpperCase()),
    fields: { roll: roll.number, question, choices: [...choices] },
    actions: [
      ...choices.map((value) => ({
        label: words().choices[value],
        line: faultLine(roll, { ...answers, [question]: value }),
      })),
      { label: words().cannotTell, line: faultLine(roll, answers, { sure: "no" }) },
    ],
  };
}

export function causesReply(roll: Roll, answers: Answers, weighed: readonly Weighed[]): Reply {
  const { paragraphs, causes, actions } = listCauses(weighed, {
    wordsOf: wordsOfCause,
    sourceOf: sourceOfCause,
    findingWords,
    lineOf: (cause) => makeLine("roll fault", { roll: roll.number, look: answers.look, cause }),
  });
  const head = words().causes(makeNumber("roll", roll.number), lookWord(answers.look));
  return {
    text: [head, ...paragraphs, words().whichWasIt].join("\n\n"),
    fields: { roll: roll.number, look: answers.look, causes },
    actions,
  };
}

export function blamedReply(roll: Roll, look: Look, cause: string | null): Reply {
  const title = cause === null ? undefined : causeTitle(cause);
  const name = makeNumber("roll", roll.number);
  return {
    text:
      title === undefined
        ? words().notedUnknown(name, lookWord(look))
        : words().noted(name, lookWord(look), title),
    fields: { roll: roll.number, fault: keptFault(look), cause },
    actions: [{ label: words().others, line: makeLine("roll find", { fault: keptFault(look) }) }],
  };
}

export function clearedReply(roll: Roll): Reply {
  return {
    text: words().cleared(makeNumber("roll", roll.number)),
    fields: { roll: roll.number, fault: "", cause: null },
  };
}

export const unknownCause = (code: string): string => words().unknownCause(plain(code));
