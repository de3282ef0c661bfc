import { countOf, formatMl, joinAnd } from "../../speech/wording.ts";

/** The strength to dilute a stock to at the sink, and what of the stock stays over: ml, or none. */
interface Powder {
  readonly madeMl: number;
  readonly spareMl: number;
  readonly dilution: string | null;
}

export const en = {
  dayGone: "That day is over. Give today, tomorrow or a date to come.",
  caution:
    "The label on the pack comes first. Note each bottle with `/batch mix`, so that it gets its label.",
  nothing: (rolls: number, film: string, date: string) =>
    `**Nothing to mix** for ${countOf(rolls, "roll")} of ${film} on ${date}: what is ready is enough.`,
  baths: (count: number, rolls: number, film: string, date: string) =>
    `**${countOf(count, "bath")} to mix** for ${countOf(rolls, "roll")} of ${film} on ${date}:`,

  noneReady: "none ready",
  enough: "enough",
  readyIn: (amount: string, bottles: readonly string[]) => `${amount} ready in ${joinAnd(bottles)}`,
  nothingToMix: (name: string, need: string, ready: string) =>
    `- ${name}: for ${need}, ${ready}. Nothing to mix.`,
  mix: (name: string, need: string, ready: string, mixMl: number, recipe: string) =>
    `- ${name}: for ${need}, ${ready}. **Mix ${formatMl(mixMl)}**: ${recipe}.`,

  asLabelSays: "as its label says",
  powder: ({ madeMl, spareMl, dilution }: Powder) =>
    `powder for ${formatMl(madeMl)}${dilution === null ? "" : " of stock"}, whole packs${spareMl > 0 ? `; ${formatMl(spareMl)} of stock is left over` : ""}${dilution === null ? "" : `; dilute ${dilution} at the sink`}`,
  undiluted: (ml: number) => `${formatMl(ml)} undiluted`,
  diluted: (concentrateMl: number, waterMl: number) =>
    `${formatMl(concentrateMl)} of concentrate or stock + ${formatMl(waterMl)} of water`,

  ofSize: (count: number, ml: number) => `${count} of ${formatMl(ml)}`,
  bottles: (sizes: readonly string[]) => `Bottles: ${joinAnd(sizes)}.`,

  usualNotNoted: "What the class uses is not noted: `/batch restock`.",
  notOnShelf: (ml: number) => `Not noted on the shelf (\`/batch restock\`): have ${formatMl(ml)} of it.`,
  shelfEnough: (ml: number) => `The shelf has ${formatMl(ml)}: enough.`,
  buy: (shelfMl: number, packs: number, packMl: number) =>
    `The shelf has ${formatMl(shelfMl)}: **buy ${countOf(packs, "pack")}** of ${formatMl(packMl)}.`,
};
export type ClassWords = typeof en;
