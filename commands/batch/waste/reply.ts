import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { nameWords } from "../../speech/name-words.ts";
import { formatMl, formatNumber, instant, plain } from "../../speech/wording.ts";
import type { Collected } from "../../../store/shapes/shelf.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export const notYet = (): string => words().notYet;
export const nothingCollected = (): string => words().nothingCollected;
export const notSoMuch = (ml: number): string => words().notSoMuch(formatMl(ml));

/** `4.2 g`, `between 2.1 and 6.3 g`. */
function grams({ lowMg, highMg }: Pick<Collected, "lowMg" | "highMg">): string {
  const [low, high] = [lowMg, highMg].map((mg) => formatNumber(mg / 1000, 1)) as [string, string];
  return low === high ? `${low} g` : words().gramsBetween(low, high);
}

function basis({ ml, measuredMl }: Collected): string {
  const { measured, rule, partly } = words();
  if (ml > 0 && measuredMl >= ml) return measured;
  return measuredMl > 0 ? partly(rule) : rule;
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
      ? words().collected(formatMl(collected.ml), grams(collected), basis(collected))
      : words().empty;
  const lines = handovers
    .slice(-8)
    .map((each) =>
      words().handover(
        instant(each.atMs, "date"),
        formatMl(each.ml),
        grams(each),
        plain(each.to),
        nameWords(each.personName),
      ),
    );
  return {
    text: [head, lines.length > 0 ? words().handovers : "", ...lines, words().caution]
      .filter(Boolean)
      .join("\n"),
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
      words().handed(formatMl(handed.ml), plain(to), instant(atMs, "date"), grams(handed), basis(handed)),
      leftMl > 0 ? words().stays(formatMl(leftMl)) : words().emptied,
      words().receipt,
    ].join("\n"),
    fields: { handedMl: handed.ml, silverLowMg: handed.lowMg, silverHighMg: handed.highMg, atMs, leftMl },
  };
}
