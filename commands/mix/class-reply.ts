import { formatRolls } from "../batch/area.ts";
import { KIND_WORDS } from "../batch/batch-words.ts";
import type { Reply } from "../define.ts";
import { makeDilution } from "../measure.ts";
import { countOf, formatDilution, formatMl, instant, joinAnd, makeNumber, plain } from "../wording.ts";
import type { ClassDay, MixItem } from "./class.ts";

export const DAY_GONE = "That day is over. Give today, tomorrow or a date to come.";

const CAUTION =
  "Gloves and goggles on, fan on, acid into water. The label on the pack comes first. Note each bottle with `/batch mix`, so that it gets its label.";

export function classReply(day: ClassDay, items: readonly MixItem[], film: string, atMs: number): Reply {
  const toMix = items.filter(({ mixMl }) => mixMl > 0);
  const head =
    toMix.length === 0
      ? `**Nothing to mix** for ${countOf(day.rolls, "roll")} of ${plain(film)} on ${instant(atMs, "date")}: what is ready is enough.`
      : `**${countOf(toMix.length, "bath")} to mix** for ${countOf(day.rolls, "roll")} of ${plain(film)} on ${instant(atMs, "date")}:`;
  return {
    text: [head, ...items.map(itemWords), toMix.length > 0 ? CAUTION : ""].filter(Boolean).join("\n"),
    fields: {
      rolls: day.rolls,
      atMs,
      items: items.map((item) => ({
        ...item,
        dilution: makeDilution(item.dilution),
        readyFrom: [...item.readyFrom],
        bottlesMl: [...item.bottlesMl],
      })),
    },
  };
}

function itemWords(item: MixItem): string {
  const { kind, product, dilution, mixMl } = item;
  const name =
    product === null
      ? KIND_WORDS[kind]
      : `${plain(product)} ${formatDilution(dilution)} (${KIND_WORDS[kind]})`;
  const ready =
    item.readyFrom.length === 0
      ? "none ready"
      : `${readyWords(item)} ready in ${joinAnd(item.readyFrom.map((number) => makeNumber("batch", number)))}`;
  const need = item.needMl === null ? formatRolls(item.needSqIn ?? 0) : formatMl(item.needMl);
  if (mixMl === 0) return `- ${name}: for ${need}, ${ready}. Nothing to mix.`;
  return `- ${name}: for ${need}, ${ready}. **Mix ${formatMl(mixMl)}**: ${recipeWords(item)}. ${bottleWords(item)} ${shelfWords(item)}`.trim();
}

function readyWords({ readyMl, readySqIn }: MixItem): string {
  if (readyMl !== null) return formatMl(readyMl);
  return readySqIn === null ? "enough" : formatRolls(readySqIn);
}

function recipeWords({ isPowder, concentrateMl, waterMl, mixMl, product, dilution }: MixItem): string {
  if (product === null) return "as its label says";
  if (isPowder) {
    const spare = concentrateMl - (mixMl - waterMl);
    const left = spare > 0 ? `; ${formatMl(spare)} of stock stay over` : "";
    return waterMl === 0
      ? `powder for ${formatMl(concentrateMl)}, whole packs${left}`
      : `powder for ${formatMl(concentrateMl)} of stock, whole packs${left}; dilute ${formatDilution(dilution)} at the sink`;
  }
  return waterMl === 0
    ? `${formatMl(concentrateMl)} undiluted`
    : `${formatMl(concentrateMl)} of concentrate or stock + ${formatMl(waterMl)} of water`;
}

function bottleWords({ bottlesMl }: MixItem): string {
  const sizes = [...new Set(bottlesMl)].map(
    (size) => `${bottlesMl.filter((each) => each === size).length} of ${formatMl(size)}`,
  );
  return `Bottles: ${joinAnd(sizes)}.`;
}

function shelfWords({ shelfMl, packMl, buyPacks, product, concentrateMl }: MixItem): string {
  if (product === null) return "What the class uses is not noted: `/batch stock`.";
  if (shelfMl === null || packMl === null || buyPacks === null)
    return `Not noted on the shelf (\`/batch stock\`): have ${formatMl(concentrateMl)} of it.`;
  return buyPacks === 0
    ? `The shelf has ${formatMl(shelfMl)}: enough.`
    : `The shelf has ${formatMl(shelfMl)}: **buy ${countOf(buyPacks, "pack")}** of ${formatMl(packMl)}.`;
}
