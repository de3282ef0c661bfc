import type { Reply } from "../define.ts";
import { makeDilution } from "../measure.ts";
import { formatDilution, formatMl, plain } from "../wording.ts";
import { KIND_WORDS } from "./batch-words.ts";
import type { Shelved } from "./shelf.ts";

export const HOW_MUCH = "Say how much: `packs:2` for what came, or `left:750 ml` to put the shelf right.";
export const NOT_SO_MUCH = (ml: number): string => `Only ${formatMl(ml)} are on the shelf by its notes.`;
export const WHAT_PACK =
  "This product is new to the shelf: say `kind:`, `size:` and `dilution:` too, like `kind:fixer size:1 l dilution:1+4`.";

/** `Pier Fix: 1.5 l of concentrate for fixer 1+4, bottles of 1 l`. */
function shelvedLine({ product, pack, leftMl }: Shelved): string {
  const strength = formatDilution(pack.dilution);
  return pack.form === "liquid"
    ? `${plain(product)}: ${formatMl(leftMl)} of concentrate for ${KIND_WORDS[pack.kind]} ${strength}, bottles of ${formatMl(pack.packMl)}`
    : `${plain(product)}: powder for ${formatMl(leftMl)} of ${KIND_WORDS[pack.kind]} ${strength}, packs for ${formatMl(pack.packMl)}`;
}

function shelvedFields({ product, pack, leftMl }: Shelved) {
  return {
    product,
    leftMl,
    kind: pack.kind,
    form: pack.form,
    packMl: pack.packMl,
    dilution: makeDilution(pack.dilution),
  };
}

export function shelfReply(shelf: readonly Shelved[]): Reply {
  const text =
    shelf.length === 0
      ? "Nothing is noted on the shelf. An aide or the teacher notes what comes: `/batch stock`."
      : ["**On the shelf**", ...shelf.map((each) => `- ${shelvedLine(each)}`)].join("\n");
  return { text, fields: { shelf: shelf.map(shelvedFields) } };
}

export function stockedReply(shelved: Shelved): Reply {
  return {
    text: `**${formatMl(shelved.leftMl)}** now. ${shelvedLine(shelved)}.`,
    fields: shelvedFields(shelved),
  };
}
