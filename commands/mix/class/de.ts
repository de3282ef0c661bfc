import { formatMl, joinAnd } from "../../speech/wording.ts";
import type { ClassWords } from "./en.ts";

const films = (rolls: number, film: string): string => `${rolls} ${rolls === 1 ? "Film" : "Filme"} ${film}`;

export const de: ClassWords = {
  dayGone: "Dieser Tag ist vorbei. Nenn heute, morgen oder ein kommendes Datum.",
  caution:
    "Das Etikett auf der Packung geht vor. Trag jede Flasche mit `/batch mix` ein, dann bekommt sie ihr Etikett.",
  nothing: (rolls, film, date) =>
    `**Nichts anzusetzen** für ${films(rolls, film)} am ${date}: Was bereit ist, reicht.`,
  baths: (count, rolls, film, date) =>
    `**${count} ${count === 1 ? "Bad" : "Bäder"} anzusetzen** für ${films(rolls, film)} am ${date}:`,

  noneReady: "nichts bereit",
  enough: "genug",
  readyIn: (amount, bottles) => `${amount} bereit in ${joinAnd(bottles)}`,
  nothingToMix: (name, need, ready) => `- ${name}: für ${need}, ${ready}. Nichts anzusetzen.`,
  mix: (name, need, ready, mixMl, recipe) =>
    `- ${name}: für ${need}, ${ready}. **${formatMl(mixMl)} ansetzen**: ${recipe}.`,

  asLabelSays: "wie auf dem Etikett",
  powder: ({ madeMl, spareMl, dilution }) =>
    `Pulver für ${formatMl(madeMl)}${dilution === null ? "" : " Stammlösung"}, ganze Packungen${spareMl > 0 ? `; ${formatMl(spareMl)} Stammlösung übrig` : ""}${dilution === null ? "" : `; am Becken ${dilution} verdünnen`}`,
  undiluted: (ml) => `${formatMl(ml)} unverdünnt`,
  diluted: (concentrateMl, waterMl) =>
    `${formatMl(concentrateMl)} Konzentrat oder Stammlösung + ${formatMl(waterMl)} Wasser`,

  ofSize: (count, ml) => `${count} zu ${formatMl(ml)}`,
  bottles: (sizes) => `Flaschen: ${joinAnd(sizes)}.`,

  usualNotNoted: "Was der Kurs benutzt, ist nicht eingetragen: `/batch restock`.",
  notOnShelf: (ml) =>
    `Im Regal ist nichts eingetragen (\`/batch restock\`): Halte ${formatMl(ml)} davon bereit.`,
  shelfEnough: (ml) => `Im Regal: ${formatMl(ml)}. Das ist genug.`,
  buy: (shelfMl, packs, packMl) =>
    `Im Regal: ${formatMl(shelfMl)}. **Kauf ${packs} ${packs === 1 ? "Packung" : "Packungen"}** zu ${formatMl(packMl)}.`,
};
