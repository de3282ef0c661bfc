import type { Action, FieldValue, Reply } from "../define.ts";
import { makeLine } from "../line.ts";
import { joinAnd, makeNumber, plain } from "../wording.ts";
import { causeTitle } from "./causes.ts";
import { findingWords } from "./finding-words.ts";
import { LOOK_HELP, LOOK_WORDS } from "./look-words.ts";
import {
  LOOKS,
  type Answers,
  type Edge,
  type Look,
  type Margin,
  type Place,
  type Question,
} from "./looks.ts";
import type { Roll } from "./roll.ts";
import type { Likelihood, Weighed } from "./weigh.ts";

const faultLine = (roll: Roll, answers: Partial<Answers>, more: Record<string, string> = {}): string =>
  makeLine("roll fault", {
    roll: roll.number,
    ...Object.fromEntries(Object.entries(answers).filter(([, value]) => value !== null)),
    ...more,
  });

/** The first question: what is seen? */
export function askLook(roll: Roll): Reply {
  return {
    text: [
      `**What do you see on ${makeNumber("roll", roll.number)}?** Hold it before a light; choose what fits best.`,
      ...LOOKS.map((look) => `- ${LOOK_WORDS[look]}: ${LOOK_HELP[look]}`),
    ].join("\n"),
    fields: { roll: roll.number, question: "look", choices: [...LOOKS] },
    actions: LOOKS.map((look) => ({ label: LOOK_WORDS[look], line: faultLine(roll, { look }) })),
  };
}

const QUESTIONS = {
  edge: {
    text: "**Look at the film's border:** the maker's names and numbers there. Dark and sharp, faint, or none?",
    choices: [
      ["Dark", "dark"],
      ["Faint", "faint"],
      ["None", "none"],
    ],
  },
  margin: {
    text: "**Look at the border and between the frames:** clear there, or grey as well?",
    choices: [
      ["Clear", "clear"],
      ["Grey as well", "grey"],
    ],
  },
  place: {
    text: "**How far does it go:** everywhere, or only in patches?",
    choices: [
      ["Everywhere", "everywhere"],
      ["Patches", "patches"],
    ],
  },
} as const satisfies Record<
  Question,
  { text: string; choices: readonly (readonly [string, Edge | Margin | Place])[] }
>;

export function askQuestion(roll: Roll, answers: Answers, question: Question): Reply {
  const { text, choices } = QUESTIONS[question];
  return {
    text: `${LOOK_WORDS[answers.look]}. ${text}`.replace(/^./, (letter) => letter.toUpperCase()),
    fields: { roll: roll.number, question, choices: choices.map(([, value]) => value) },
    actions: [
      ...choices.map(([label, value]) => ({
        label,
        line: faultLine(roll, { ...answers, [question]: value }),
      })),
      { label: "I can't tell", line: faultLine(roll, answers, { sure: "no" }) },
    ],
  };
}

const MOST_CAUSES = 4;

export function causesReply(roll: Roll, answers: Answers, weighed: readonly Weighed[]): Reply {
  const shown = weighed.slice(0, MOST_CAUSES);
  const name = makeNumber("roll", roll.number);
  return {
    text: [
      `**${name}, ${LOOK_WORDS[answers.look]}:** weighed by what the log has of this roll.`,
      ...shown.map((each, at) => causeWords(each, at)),
      "Which was it? Telling it teaches the next one, and shows when a bottle is to blame.",
    ].join("\n\n"),
    fields: {
      roll: roll.number,
      look: answers.look,
      causes: shown.map(({ cause, likelihood, speaksFor, speaksAgainst }): FieldValue => ({
        code: cause.code,
        likelihood,
        for: speaksFor.map(({ kind }) => kind),
        against: speaksAgainst.map(({ kind }) => kind),
        source: cause.source,
      })),
    },
    actions: [
      ...shown.map(({ cause }, at): Action => ({
        label: `${at + 1}: ${cause.title}`.slice(0, 80),
        line: makeLine("roll fault", { roll: roll.number, look: answers.look, cause: cause.code }),
      })),
      {
        label: "Note it, cause unknown",
        line: makeLine("roll fault", { roll: roll.number, look: answers.look, cause: "unknown" }),
      },
    ],
  };
}

const LIKELIHOODS = {
  likely: "likely",
  possible: "possible",
  unlikely: "less likely",
} as const satisfies Record<Likelihood, string>;

function causeWords({ cause, likelihood, speaksFor, speaksAgainst }: Weighed, at: number): string {
  return [
    `**${at + 1}. ${cause.title}** (${LIKELIHOODS[likelihood]})`,
    speaksFor.length > 0 ? `For it: ${joinAnd(speaksFor.map(findingWords))}.` : "",
    speaksAgainst.length > 0 ? `Against it: ${joinAnd(speaksAgainst.map(findingWords))}.` : "",
    at < 2 ? `Now: ${cause.now}` : "",
    `Next time: ${cause.next}`,
    `_Source: ${cause.source}_`,
  ]
    .filter(Boolean)
    .join("\n");
}

export function blamedReply(roll: Roll, look: Look, cause: string | null): Reply {
  const title = cause === null ? undefined : causeTitle(cause);
  const why = title === undefined ? "cause unknown" : title;
  return {
    text: `Noted on ${makeNumber("roll", roll.number)}: **${LOOK_WORDS[look]}**, ${why.replace(/^[A-Z]/, (letter) => letter.toLowerCase())}.`,
    fields: { roll: roll.number, fault: LOOK_WORDS[look], cause },
    actions: [
      {
        label: "Others like it",
        line: makeLine("roll find", { fault: LOOK_WORDS[look] }),
      },
    ],
  };
}

export function clearedReply(roll: Roll): Reply {
  return {
    text: `${makeNumber("roll", roll.number)} has no fault on record now.`,
    fields: { roll: roll.number, fault: "", cause: null },
  };
}

export const UNKNOWN_CAUSE = (code: string): string =>
  `I know no cause ${plain(code)}. Choose one of those offered, or \`cause:unknown\`.`;
