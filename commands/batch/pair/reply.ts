import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeNumber } from "../../speech/wording.ts";
import { isForPaper, type Batch } from "../../../store/shapes/batch.ts";
import type { Destination } from "../../../store/shapes/ledger.ts";
import type { FixPair, Habits } from "../../../store/shapes/school.ts";
import { labelOf, nameOf, standingWord, wornWords } from "../batch-words.ts";
import type { BatchState } from "../state.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });
const bottle = (number: number): string => makeNumber("batch", number);

export const notAFixer = (batch: Batch): string => words().fault.notAFixer(nameOf(batch));
export const notReady = (batch: Batch, state: BatchState): string =>
  words().fault.notReady(labelOf(batch), standingWord(state.standing), wornWords(batch, state));
export const sameBath = (batch: Batch): string => words().fault.sameBath(labelOf(batch));
export const filmAndPaper = (one: Batch, other: Batch): string => {
  const [film, paper] = isForPaper(one.kind) ? [other, one] : [one, other];
  return words().fault.filmAndPaper(labelOf(film), labelOf(paper));
};
export const inPair = (batch: Batch): string => words().fault.inPair(labelOf(batch));
export const bothNew = ({ first, second, rotations }: FixPair, most: number): string =>
  words().fault.bothNew(bottle(first), bottle(second), rotations, most);
export const noPair = (pairs: readonly FixPair[]): string =>
  words().fault.noPair(pairs.map(({ first, second }) => `${bottle(first)} + ${bottle(second)}`));

export function pairedReply(first: Batch, second: Batch, { fixRotations }: Habits): Reply {
  const { paired, pairedForPaper, rule, sources, paperSources } = words();
  const ofPaper = isForPaper(first.kind);
  return {
    text: [
      (ofPaper ? pairedForPaper : paired)(nameOf(first), nameOf(second)),
      rule(fixRotations),
      ofPaper ? paperSources : sources,
    ].join("\n"),
    fields: { first: labelOf(first), second: labelOf(second), rotations: 0, mostRotations: fixRotations },
  };
}

export function rotatedReply(old: FixPair, next: FixPair, most: number, to: Destination): Reply {
  const left = most - next.rotations;
  return {
    text: [
      words().rotated(bottle(old.first), bottle(next.first), bottle(next.second), to),
      left === 0 ? words().bothNewNext : words().left(left),
    ].join("\n"),
    fields: {
      dropped: bottle(old.first),
      first: bottle(next.first),
      second: bottle(next.second),
      rotations: next.rotations,
      mostRotations: most,
    },
  };
}
