import type { Action, FieldValue } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { joinAnd } from "../../speech/wording.ts";
import type { Weighed } from "./weigh.ts";
import { de } from "./cause-list.de.ts";
import { en } from "./cause-list.en.ts";

/* The weighed causes as they are told, of a roll and of a print. */

const words = inEach({ en, de });

const MOST_CAUSES = 4;
/** What helps now is told of the first ones alone. */
const MOST_NOW = 2;
const MOST_LABEL = 80;

export interface CauseParts<Code extends string, F> {
  wordsOf(code: Code): {
    readonly title: string;
    readonly now: string;
    readonly next: string;
    readonly source: string;
  };
  /** In one language, whoever asks. */
  sourceOf(code: Code): string;
  findingWords(finding: F): string;
  /** The line that notes this cause. */
  lineOf(cause: Code | "unknown"): string;
}

export interface CauseList {
  readonly paragraphs: string[];
  readonly causes: FieldValue[];
  readonly actions: Action[];
}

/** The best of them: a paragraph each, as programs read it, and a key to note it; a last key for none of them. */
export function listCauses<Code extends string, F extends { readonly kind: string }>(
  weighed: readonly Weighed<{ readonly code: Code }, F>[],
  { wordsOf, sourceOf, findingWords, lineOf }: CauseParts<Code, F>,
): CauseList {
  const shown = weighed.slice(0, MOST_CAUSES);
  const say = words();
  const paragraph = ({ cause, likelihood, speaksFor, speaksAgainst }: (typeof shown)[number], at: number) => {
    const { title, now, next, source } = wordsOf(cause.code);
    return [
      `**${at + 1}. ${title}** (${say.likelihoods[likelihood]})`,
      speaksFor.length > 0 ? say.speaksFor(joinAnd(speaksFor.map(findingWords))) : "",
      speaksAgainst.length > 0 ? say.speaksAgainst(joinAnd(speaksAgainst.map(findingWords))) : "",
      at < MOST_NOW ? say.now(now) : "",
      say.next(next),
      say.source(source),
    ]
      .filter(Boolean)
      .join("\n");
  };
  return {
    paragraphs: shown.map(paragraph),
    causes: shown.map(({ cause, likelihood, speaksFor, speaksAgainst }): FieldValue => ({
      code: cause.code,
      likelihood,
      for: speaksFor.map(({ kind }) => kind),
      against: speaksAgainst.map(({ kind }) => kind),
      source: sourceOf(cause.code),
    })),
    actions: [
      ...shown.map(({ cause }, at): Action => ({
        label: `${at + 1}: ${wordsOf(cause.code).title}`.slice(0, MOST_LABEL),
        line: lineOf(cause.code),
      })),
      { label: say.unknownToo, line: lineOf("unknown") },
    ],
  };
}
