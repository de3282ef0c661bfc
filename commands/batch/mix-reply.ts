import type { Reply } from "../define.ts";
import { countOf, formatMl, formatSeconds, instant } from "../wording.ts";
import { rollsIn } from "./area.ts";
import type { Batch } from "./batch.ts";
import { KIND_WORDS, labelOf, nameOf } from "./batch-words.ts";
import { fieldsOf } from "./fields.ts";
import { formatShelfLife } from "./figures.ts";
import type { Pack } from "./shelf.ts";
import type { BatchState } from "./state.ts";

export const NOT_YET = "That day is still to come. Note a bottle once it is mixed.";
export const BOTTLE_TOO_SMALL = (bottleMl: number, volumeMl: number): string =>
  `A bottle of ${formatMl(bottleMl)} can't hold ${formatMl(volumeMl)}. Note each bottle as a batch of its own: each ages by itself.`;
export const TABULAR_ABOVE =
  "Tabular-grain film loads a fixer more than other film: its capacity can't be above the plain one. Give `capacity:` too.";

export function mixedReply(
  batch: Batch,
  state: BatchState,
  shelf: { readonly pack: Pack; readonly takenMl: number; readonly leftMl: number } | null,
  wasRatio: boolean,
): Reply {
  const lines = [
    `**${labelOf(batch)}**: write it on the bottle. ${formatMl(batch.volumeMl)} of ${nameOf(batch).replace(/^B\d+, /, "")}, ${KIND_WORDS[batch.kind]}, mixed ${instant(batch.mixedAtMs, "date")}.`,
    limitWords(batch, state),
    batch.kind === "fixer" ? testWords(batch, state) : "",
    shelf ? shelfWords(shelf) : "",
    wasRatio ? "I read the ratio as parts of concentrate + parts of water." : "",
    `_Figures: ${batch.source}. The label on the pack comes first._`,
  ];
  return { text: lines.filter(Boolean).join("\n"), fields: fieldsOf(batch, state) };
}

function limitWords(batch: Batch, state: BatchState): string {
  const good = [
    state.leftRolls !== null && batch.usage === "again" ? `good for ${countOf(state.leftRolls, "roll")}` : "",
    batch.tabularSqInPerLitre === null
      ? ""
      : `or ${countOf(rollsIn((batch.tabularSqInPerLitre * batch.volumeMl) / 1000), "roll")} of tabular-grain film`,
    state.expiresAtMs === null ? "" : `until ${instant(state.expiresAtMs, "date")}`,
  ].filter(Boolean);
  const part =
    batch.partHours !== null && batch.partHours !== batch.fullHours && !state.isPartFull
      ? ` (once part-full: ${formatShelfLife(batch.partHours)})`
      : "";
  return good.length === 0 ? "" : `${good.join(", ").replace(/^./, (first) => first.toUpperCase())}${part}.`;
}

function testWords(batch: Batch, { clearing }: BatchState): string {
  return clearing
    ? `Fresh it clears film in ${formatSeconds(clearing.freshSeconds)}; at twice that it is exhausted.`
    : `Next: time how long a scrap of undeveloped film takes to clear in it, and note it: \`/batch test batch:${labelOf(batch)} clearing:0:45\`.`;
}

function shelfWords({ pack, takenMl, leftMl }: { pack: Pack; takenMl: number; leftMl: number }): string {
  const what = pack.form === "liquid" ? "of concentrate" : "worth of powder";
  return leftMl < 0
    ? `${formatMl(takenMl)} ${what} taken: that is ${formatMl(-leftMl)} more than the shelf had. Put the shelf right with \`/batch stock\`.`
    : `${formatMl(takenMl)} ${what} taken from the shelf, ${formatMl(leftMl)} left.`;
}
