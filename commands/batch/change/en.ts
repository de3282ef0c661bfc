import type { BatchKind } from "../../../store/shapes/batch.ts";
import type { Destination } from "../../../store/shapes/ledger.ts";
import { en as batch } from "../words/batch.en.ts";

/* What is said to somebody who changed a batch. `label` is a batch's number said aloud, `name` the same with its bath. */

export const en = {
  fault: {
    discarded: (label: string) =>
      `${label} was thrown away: nothing can be added to it. If that was a slip, take that line back with \`/batch correct\`.`,
    noReading: "Say what you measured: `clearing:0:45`, `ph:5.5`, `silver:3.5`, or a `note:`.",
    notAFixer: (name: string, kind: BatchKind) =>
      `${name} is a ${batch.kind[kind]}: only a fixer has a clearing time. Give \`ph:\` or a \`note:\`.`,
    notSoMuch: (label: string, ml: string) =>
      `${label} holds ${ml} by its ledger. If there is more, put that right first with \`/batch correct\`.`,
    whereTo:
      "Say where the used bath went: `to:silver` (fixer only), `to:drain`, `to:waste` (a container of its own) or `to:supplier`.",
    overflow: (label: string, bottle: string, left: string, tooMuchMl: number, to: Destination) =>
      `${label}'s bottle holds ${bottle}, with ${left} in it. Take used bath out first: \`remove:${tooMuchMl} ml to:${to}\`.`,
    notReplenished: (label: string) =>
      `${label} is no replenished bath: nobody said how much a roll asks for when it was mixed (\`/batch mix replenish:70 ml\`). Note what was added as \`as:fresh\`.`,
    correctedOverflow: (label: string, bottle: string, ml: string) =>
      `${label}'s bottle holds ${bottle}: it can't have ${ml} in it. Measure again, or take back the line that is wrong (\`line:\`).`,
    nothingToCorrect:
      "Say what is wrong: `line:4` takes that line back, `ml:-200` or `rolls:2` add to what the ledger says.",
    belowZeroMl: (label: string, ml: string) =>
      `${label} holds ${ml} by its ledger: no more than that can be taken off it. Measure again, or take a line back (\`line:\`).`,
    belowZeroRolls: (label: string, rolls: string) =>
      `By its ledger ${rolls} went through ${label}: no more than that can be taken off. Count again, or take a line back (\`line:\`).`,
    quarters: "Write rolls in quarters: a sheet of 4x5 is 0.25.",
    noSuchLine: (label: string, line: number, lines: number) =>
      `${label}'s ledger has no line ${line}: it has ${lines}. See them with \`/batch ledger batch:${label}\`.`,
    lineStays:
      "That line stays: a mixing is undone by `/batch discard`, a correction by one more correction.",
    takenBack: "That line was taken back before. Nothing was changed.",
    notWorn: (label: string) => `${label} is ready for use: no permission needed.`,
    unknownPerson: (name: string) =>
      `Nobody in this class is called ${name}. Write the name as the class uses it.`,
  },
  fit: (name: string, state: string) => `${name}: ${state}.`,
  unfit: (name: string, standing: string, why: string) => `${name} is ${standing}: ${why}.`,
  noted: (name: string) => `Noted for ${name}.`,
  reckoned: (seconds: string) => ` Between tests I had reckoned with ${seconds}.`,
  exhausted: (label: string, clearing: string, fresh: string, twice: string, thrice: string) =>
    `**${label} is exhausted: don't use it.** It clears in ${clearing}, and fresh it did in ${fresh}: at twice that it ends (US Navy NAVEDTRA 14209). A film that is in it now needs ${twice}, tabular-grain film ${thrice}. It goes into the silver collection.`,
  longer: (films: number) =>
    films === 1
      ? "**1 film under way is fixed longer now**, and its owner told."
      : `**${films} films under way are fixed longer now**, and their owners told.`,
  again: (films: number) =>
    films === 1
      ? "**1 film has left it too soon:** its owner was told to fix it again."
      : `**${films} films have left it too soon:** their owners were told to fix them again.`,
  silverOut: (label: string, grams: string, limit: string) =>
    `**${label} is exhausted: don't use it.** ${grams} g of silver in a litre; its limit is ${limit} g. It goes into the silver collection.`,
  silverWithin: (label: string, grams: string, limit: string) =>
    `**${grams} g** of silver in a litre of ${label}; it ends at ${limit} g.`,
  silverSources:
    "_Sources differ: 2 g/l for sodium and 4 g/l for ammonium thiosulfate (a compliance text for printers), 8 to 10 g/l for film (a maker's sheet, from memory). `/batch mix silver:` sets your own._",
  cleared: (label: string, clearing: string, twice: string, thrice: string, end: string) =>
    `**${clearing}** to clear: plans with ${label} fix at least ${twice} from now on, tabular-grain film ${thrice}. It ends at ${end}.`,
  topped: (label: string, now: string, before: string) =>
    `**${now}** in ${label} now, ${before} before. Its warnings begin anew.`,
  stillToReplenish: (ml: string) => `${ml} of replenisher are still to come for the film so far.`,
  testNext: "Test its clearing time before the next roll.",
  noRevival: "Fresh bath does not revive an exhausted one: when in doubt, mix new.",
  went: {
    silver: (ml: string, name: string) => `**${ml}** of ${name} into the silver collection.`,
    drain: (ml: string, name: string) => `**${ml}** of ${name} to the drain.`,
    waste: (ml: string, name: string) => `**${ml}** of ${name} into its waste container.`,
    supplier: (ml: string, name: string) => `**${ml}** of ${name} back to the supplier.`,
  } satisfies ByDestination<(ml: string, name: string) => string>,
  gone: (label: string) => ` ${label} is gone; its label is not used again.`,
  stillInTanks: (films: number) =>
    `**${films === 1 ? "1 film is" : `${films} films are`} in it still.** Tell them: when it is over, that bath goes where the rest went, into no bottle.`,
  stays: (ml: string) => ` ${ml} is left in it.`,
  cautions: {
    silver:
      "Close and label the collecting vessel; keep acids out of it. See what is collected with `/batch waste`.",
    drain: "Only where local rules allow it, with much water, and never into a septic tank.",
    waste:
      "A container for this kind alone: close it, label it, never fixer or acid to it. Whoever takes the school's chemical waste collects it.",
    supplier: "Ask the supplier how it is to be packed.",
  } satisfies ByDestination<string> as ByDestination<string>,
  rulesFirst: "The label, the safety data sheet and local rules come first.",
  corrected: "Corrected by a new line; what was written stays to be read.",
  beforeAndNow: (before: string, now: string) => `Before: ${before}. Now: ${now}`,
  allowed: (person: string, label: string, why: string) =>
    `**${person}** may use ${label} for one tank, although ${why}. The ledger keeps who allowed it.`,
  fixLonger: "Fix twice as long as it takes to clear, and once more in fresh fixer as soon as there is some.",
};
type ByDestination<T> = Record<Destination, T>;
export type ChangeWords = typeof en;
