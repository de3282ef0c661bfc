import { de as batch } from "../words/batch.de.ts";
import type { ShelfWords } from "./en.ts";

export const de: ShelfWords = {
  howMuch:
    "Sag, wie viel: `packs:2` für das, was gekommen ist, oder `left:750 ml`, um das Regal richtigzustellen.",
  notSoMuch: (ml) => `Im Regal notiert: nur ${ml}.`,
  whatPack:
    "Dieses Produkt ist neu im Regal: Sag auch `kind:`, `size:` und `dilution:`, zum Beispiel `kind:fixer size:1 l dilution:1+4`.",
  concentrate: (product, ml, kind, strength, size) =>
    `${product}: ${ml} Konzentrat für ${batch.kind[kind]} ${strength}, Flaschen zu ${size}`,
  powder: (product, ml, kind, strength, size) =>
    `${product}: Pulver für ${ml} ${batch.kind[kind]} (${strength}), Packungen für ${size}`,
  empty:
    "Im Regal ist nichts notiert. Eine Hilfskraft oder die Lehrkraft notiert, was kommt: `/batch restock`.",
  title: "**Im Regal**",
  now: (ml, line) => `Jetzt **${ml}**. ${line}.`,
};
