import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeDilution } from "../../../store/shapes/sheet.ts";
import { formatDilution, formatMl, plain } from "../../speech/wording.ts";
import type { Shelved } from "../../../store/shapes/shelf.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export const howMuch = (): string => words().howMuch;
export const notSoMuch = (ml: number): string => words().notSoMuch(formatMl(ml));
export const whatPack = (): string => words().whatPack;

/** `Pier Fix: 1.5 l of concentrate for fixer 1+4, bottles of 1 l`. */
function shelvedLine({ product, pack, leftMl }: Shelved): string {
  const say = pack.form === "liquid" ? words().concentrate : words().powder;
  return say(
    plain(product),
    formatMl(leftMl),
    pack.kind,
    formatDilution(pack.dilution),
    formatMl(pack.packMl),
  );
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
      ? words().empty
      : [words().title, ...shelf.map((each) => `- ${shelvedLine(each)}`)].join("\n");
  return { text, fields: { shelf: shelf.map(shelvedFields) } };
}

export function stockedReply(shelved: Shelved): Reply {
  return {
    text: words().now(formatMl(shelved.leftMl), shelvedLine(shelved)),
    fields: shelvedFields(shelved),
  };
}
