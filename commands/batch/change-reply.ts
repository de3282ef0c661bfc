import type { Reply } from "../define.ts";
import { formatMl, formatSeconds, plain } from "../wording.ts";
import type { Batch } from "./batch.ts";
import {
  clearingWords,
  KIND_WORDS,
  labelOf,
  leftWords,
  nameOf,
  STANDING_WORDS,
  wornWords,
} from "./batch-words.ts";
import { EXHAUSTED_TIMES } from "./clearing.ts";
import { fieldsOf } from "./fields.ts";
import type { Destination } from "./ledger.ts";
import type { BatchState } from "./state.ts";

/* What is said to somebody who changed a batch. */

export const DISCARDED = (batch: Batch): string =>
  `${labelOf(batch)} was thrown away: nothing can be added to it. If that was a slip, take that line back with \`/batch correct\`.`;
export const NO_READING = "Say what you measured: `clearing:0:45`, `ph:5.5`, `silver:3.5`, or a `note:`.";
export const NOT_A_FIXER = (batch: Batch): string =>
  `${nameOf(batch)} is a ${KIND_WORDS[batch.kind]}: only a fixer has a clearing time. Give \`ph:\` or a \`note:\`.`;
export const NOT_SO_MUCH = (batch: Batch, leftMl: number): string =>
  `${labelOf(batch)} holds ${formatMl(Math.max(0, leftMl))} by its ledger. If there is more, put that right first with \`/batch correct\`.`;
export const WHERE_TO =
  "Say where the used bath went: `to:silver` (the silver collection), `to:drain` or `to:supplier`.";
export const OVERFLOW = (batch: Batch, leftMl: number): string =>
  `${labelOf(batch)}'s bottle holds ${formatMl(batch.bottleMl)}, and ${formatMl(leftMl)} are in it. Take used bath out first: \`remove:300 ml to:silver\`.`;
export const SILVER_DRAIN = (batch: Batch): string =>
  `**Not down the drain**: used fixer carries silver. Collect ${labelOf(batch)} (\`to:silver\`) or give it back to its supplier (\`to:supplier\`).`;
export const NOTHING_TO_CORRECT =
  "Say what is wrong: `line:4` takes that line back, `ml:-200` or `rolls:2` add to what the ledger says.";
export const NO_SUCH_LINE = (batch: Batch, line: number, lines: number): string =>
  `${labelOf(batch)}'s ledger has no line ${line}: it has ${lines}. See them with \`/batch ledger batch:${labelOf(batch)}\`.`;
export const LINE_STAYS =
  "That line stays: a mixing is undone by `/batch discard`, a correction by one more correction.";
export const TAKEN_BACK = "That line was taken back before. Nothing is changed.";
export const NOT_WORN = (batch: Batch): string =>
  `${labelOf(batch)} is ready for use: nobody needs leave for it.`;
export const UNKNOWN_PERSON = (name: string): string =>
  `I know nobody called ${plain(name)} in this class. Write the name as the class uses it.`;

function reply(batch: Batch, state: BatchState, lines: readonly string[]): Reply {
  return { text: lines.filter(Boolean).join("\n"), fields: fieldsOf(batch, state) };
}

const summary = (batch: Batch, state: BatchState): string =>
  state.standing === "ready"
    ? `${nameOf(batch)}: ${[leftWords(batch, state), clearingWords(state)].filter(Boolean).join(", ")}.`
    : `${nameOf(batch)} is ${STANDING_WORDS[state.standing]}: ${wornWords(state)}.`;

export function testedReply(
  batch: Batch,
  before: BatchState,
  after: BatchState,
  clearing: number | null,
): Reply {
  if (clearing === null) return reply(batch, after, [`Noted for ${nameOf(batch)}.`]);
  const fresh = after.clearing?.freshSeconds ?? clearing;
  const predicted =
    before.predictedSeconds === null
      ? ""
      : ` Between tests I had reckoned with ${formatSeconds(before.predictedSeconds)}.`;
  const isOut = clearing >= EXHAUSTED_TIMES * fresh;
  const verdict = isOut
    ? `**${labelOf(batch)} is exhausted: don't use it.** It clears in ${formatSeconds(clearing)}, and fresh it did in ${formatSeconds(fresh)}: at twice that it ends (US Navy NAVEDTRA 14209). It goes into the silver collection.`
    : `**${formatSeconds(clearing)}** to clear: plans with ${labelOf(batch)} fix at least ${formatSeconds(2 * clearing)} from now on, tabular-grain film ${formatSeconds(3 * clearing)}. It ends at ${formatSeconds(EXHAUSTED_TIMES * fresh)}.`;
  return reply(batch, after, [`${verdict}${predicted}`, isOut ? "" : summary(batch, after)]);
}

export function toppedReply(batch: Batch, before: BatchState, after: BatchState): Reply {
  return reply(batch, after, [
    `**${formatMl(after.volumeMl)}** in ${labelOf(batch)} now, ${formatMl(Math.max(0, before.volumeMl))} before. Its warnings begin anew.`,
    summary(batch, after),
    batch.kind === "fixer" ? "Test its clearing time before the next roll." : "",
    "Fresh bath does not revive a dead one: when in doubt, mix new.",
  ]);
}

const WENT = {
  silver: "into the silver collection",
  drain: "to the drain",
  supplier: "back to the supplier",
} as const satisfies Record<Destination, string>;

export function discardedReply(batch: Batch, state: BatchState, ml: number, to: Destination): Reply {
  const isGone = state.standing === "discarded";
  const cautions = {
    silver:
      "Close and label the collecting vessel; keep acids out of it. See what is collected with `/batch waste`.",
    drain: "Only where local rules allow it, with much water, and never into a septic tank.",
    supplier: "Ask the supplier how it is to be packed.",
  } as const satisfies Record<Destination, string>;
  return reply(batch, state, [
    `**${formatMl(ml)}** of ${nameOf(batch)} ${WENT[to]}.${isGone ? ` ${labelOf(batch)} is gone; its label is not used again.` : ` ${formatMl(state.volumeMl)} are left in it.`}`,
    cautions[to],
    "The label, the safety data sheet and local rules come first.",
  ]);
}

export function correctedReply(batch: Batch, before: BatchState, after: BatchState): Reply {
  return reply(batch, after, [
    "Corrected by a new line; what was written stays to be read.",
    `Before: ${leftWords(batch, before)}. Now: ${summary(batch, after)}`,
  ]);
}

export function allowedReply(batch: Batch, state: BatchState, name: string): Reply {
  return reply(batch, state, [
    `**${plain(name)}** may use ${labelOf(batch)} for one tank, although ${wornWords(state)}. The ledger keeps who allowed it.`,
    batch.kind === "fixer"
      ? "Fix twice as long as it takes to clear, and once more in fresh fixer as soon as there is some."
      : "",
  ]);
}
