import type { Reply } from "../define.ts";
import { formatMl, instant, plain } from "../wording.ts";
import type { Collected } from "./silver.ts";

export const NOT_YET = "That day is still to come. Note a handover once it is done.";
export const NOTHING_COLLECTED =
  "No used fixer is noted as collected. It gets there with `/batch discard to:silver` or a top-up that takes some out.";
export const NOT_SO_MUCH = (ml: number): string =>
  `Only ${formatMl(ml)} are noted as collected. If there is more in the vessel, note the missing discard first.`;

const CAUTION =
  "Used fixer carries silver: closed, labelled vessel, no acid into it, gloves and goggles on, never down the drain. What may be collected, stored and handed over, and how, local rules and the safety data sheet decide.";

/** `4.2 g`, `between 2.1 and 6.3 g`. */
function grams({ lowMg, highMg }: Pick<Collected, "lowMg" | "highMg">): string {
  const say = (mg: number): string => (mg / 1000).toFixed(1);
  return say(lowMg) === say(highMg) ? `${say(lowMg)} g` : `between ${say(lowMg)} and ${say(highMg)} g`;
}

function basis({ ml, measuredMl }: Collected): string {
  if (ml > 0 && measuredMl >= ml) return "measured by test strip";
  const rule =
    "a rule of thumb, from memory: 0.1 to 0.3 g from each roll; spent fixer as published holds 3 to 5 g/l (Harvard EHS; printers' guidance)";
  return measuredMl > 0 ? `partly measured by strip, else ${rule}` : rule;
}

export function wasteReply(
  collected: Collected,
  handovers: readonly (Collected & {
    readonly atMs: number;
    readonly to: string;
    readonly personName: string;
  })[],
): Reply {
  const head =
    collected.ml > 0
      ? `**${formatMl(collected.ml)}** of used fixer in the collection, with ${grams(collected)} of silver (${basis(collected)}).`
      : "No used fixer in the collection now.";
  const lines = handovers
    .slice(-8)
    .map(
      (each) =>
        `- ${instant(each.atMs, "date")}: ${formatMl(each.ml)}, ${grams(each)} of silver, to ${plain(each.to)} (${plain(each.personName)})`,
    );
  return {
    text: [head, lines.length > 0 ? "Handed over:" : "", ...lines, CAUTION].filter(Boolean).join("\n"),
    fields: {
      collectedMl: collected.ml,
      silverLowMg: collected.lowMg,
      silverHighMg: collected.highMg,
      measuredMl: collected.measuredMl,
      handovers: handovers.map(({ atMs, ml, lowMg, highMg, to }) => ({ atMs, ml, lowMg, highMg, to })),
    },
  };
}

export function handedReply(handed: Collected, to: string, atMs: number, leftMl: number): Reply {
  return {
    text: [
      `**${formatMl(handed.ml)}** of used fixer handed over to ${plain(to)} on ${instant(atMs, "date")}, with ${grams(handed)} of silver (${basis(handed)}).`,
      leftMl > 0 ? `${formatMl(leftMl)} stay in the collection.` : "The collection is empty now.",
      "Keep the receipt: local rules may ask for it.",
    ].join("\n"),
    fields: { handedMl: handed.ml, silverLowMg: handed.lowMg, silverHighMg: handed.highMg, atMs, leftMl },
  };
}
