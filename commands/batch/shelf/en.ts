import type { BatchKind } from "../../../store/shapes/batch.ts";
import { en as batch } from "../words/batch.en.ts";

export const en = {
  howMuch: "Say how much: `packs:2` for what came, or `left:750 ml` to put the shelf right.",
  notSoMuch: (ml: string) => `Only ${ml} is on the shelf by its notes.`,
  whatPack:
    "This product is new to the shelf: say `kind:`, `size:` and `dilution:` too, like `kind:fixer size:1 l dilution:1+4`.",
  concentrate: (product: string, ml: string, kind: BatchKind, strength: string, size: string) =>
    `${product}: ${ml} of concentrate for ${batch.kind[kind]} ${strength}, bottles of ${size}`,
  powder: (product: string, ml: string, kind: BatchKind, strength: string, size: string) =>
    `${product}: powder for ${ml} of ${batch.kind[kind]} ${strength}, packs for ${size}`,
  empty: "Nothing is noted on the shelf. An aide or the teacher notes what comes: `/batch restock`.",
  title: "**On the shelf**",
  now: (ml: string, line: string) => `**${ml}** now. ${line}.`,
};
export type ShelfWords = typeof en;
