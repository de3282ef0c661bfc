export const en = {
  notYet: "That day is still to come. Note a handover once it is done.",
  nothingCollected:
    "No used fixer is noted as collected. It gets there with `/batch discard to:silver` or a top-up that takes some out.",
  notSoMuch: (ml: string) =>
    `Only ${ml} is noted as collected. If there is more in the vessel, note the missing discard first.`,
  caution:
    "Used fixer carries silver: closed, labelled vessel, no acid into it, gloves and goggles on, never down the drain. What may be collected, stored and handed over, and how, local rules and the safety data sheet decide.",
  gramsBetween: (low: string, high: string) => `between ${low} and ${high} g`,
  measured: "measured by test strip",
  rule: "a rule of thumb, from memory: 0.1 to 0.3 g from each roll; spent fixer as published holds 3 to 5 g/l (Harvard EHS; printers' guidance)",
  partly: (rule: string) => `partly measured by strip, else ${rule}`,
  collected: (ml: string, grams: string, basis: string) =>
    `**${ml}** of used fixer in the collection, with ${grams} of silver (${basis}).`,
  empty: "No used fixer in the collection now.",
  handovers: "Handed over:",
  handover: (date: string, ml: string, grams: string, to: string, by: string) =>
    `- ${date}: ${ml}, ${grams} of silver, to ${to} (${by})`,
  handed: (ml: string, to: string, date: string, grams: string, basis: string) =>
    `**${ml}** of used fixer handed over to ${to} on ${date}, with ${grams} of silver (${basis}).`,
  stays: (ml: string) => `${ml} stays in the collection.`,
  emptied: "The collection is empty now.",
  receipt: "Keep the receipt: local rules may ask for it.",
};
export type WasteWords = typeof en;
