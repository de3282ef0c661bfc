import { formatRolls } from "../../batch/batch-words.ts";
import { kindWord } from "../../batch/batch-words.ts";
import { cautionsOf } from "../../batch/hazards.ts";
import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeDilution } from "../../../store/shapes/sheet.ts";
import { formatDilution, formatMl, instant, makeNumber, plain } from "../../speech/wording.ts";
import type { ClassDay, MixItem } from "./needs.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

/* Every sentence of /mix class. */

const words = inEach({ en, de });

export const dayGone = (): string => words().dayGone;

export function classReply(day: ClassDay, items: readonly MixItem[], film: string, atMs: number): Reply {
  const count = items.filter(({ mixMl }) => mixMl > 0).length;
  const date = instant(atMs, "date");
  const head =
    count === 0
      ? words().nothing(day.rolls, plain(film), date)
      : words().baths(count, day.rolls, plain(film), date);
  return {
    text: [head, ...items.map(itemWords), ...(count > 0 ? cautionWords(items) : [])].join("\n"),
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

function cautionWords(items: readonly MixItem[]): string[] {
  const mixed = items.filter(({ mixMl }) => mixMl > 0);
  const own = cautionsOf(
    mixed.map(({ kind, isPowder }) => ({ kind, from: isPowder ? ("powder" as const) : ("liquid" as const) })),
  );
  return [...own, words().caution];
}

function itemWords(item: MixItem): string {
  const { kind, product, dilution, mixMl } = item;
  const name =
    product === null ? kindWord(kind) : `${plain(product)} ${formatDilution(dilution)} (${kindWord(kind)})`;
  const ready =
    item.readyFrom.length === 0
      ? words().noneReady
      : words().readyIn(
          readyWords(item),
          item.readyFrom.map((number) => makeNumber("batch", number)),
        );
  const need = item.needMl === null ? formatRolls(item.needSqIn ?? 0, kind) : formatMl(item.needMl);
  if (mixMl === 0) return words().nothingToMix(name, need, ready);
  return [words().mix(name, need, ready, mixMl, recipeWords(item)), bottleWords(item), shelfWords(item)].join(
    " ",
  );
}

function readyWords({ kind, readyMl, readySqIn }: MixItem): string {
  if (readyMl !== null) return formatMl(readyMl);
  return readySqIn === null ? words().enough : formatRolls(readySqIn, kind);
}

function recipeWords({ isPowder, concentrateMl, waterMl, mixMl, product, dilution }: MixItem): string {
  if (product === null) return words().asLabelSays;
  if (isPowder)
    return words().powder({
      madeMl: concentrateMl,
      spareMl: Math.max(0, concentrateMl - (mixMl - waterMl)),
      dilution: waterMl === 0 ? null : formatDilution(dilution),
    });
  return waterMl === 0 ? words().undiluted(concentrateMl) : words().diluted(concentrateMl, waterMl);
}

function bottleWords({ bottlesMl }: MixItem): string {
  const sizes = [...new Set(bottlesMl)];
  return words().bottles(
    sizes.map((size) => words().ofSize(bottlesMl.filter((each) => each === size).length, size)),
  );
}

function shelfWords({ shelfMl, packMl, buyPacks, product, concentrateMl }: MixItem): string {
  if (product === null) return words().usualNotNoted;
  if (shelfMl === null || packMl === null || buyPacks === null) return words().notOnShelf(concentrateMl);
  return buyPacks === 0 ? words().shelfEnough(shelfMl) : words().buy(shelfMl, buyPacks, packMl);
}
