/* Times of day come as `18:00`, durations as `saySeconds` has them. */

export const en = {
  noted: "Noted.",
  before: (lead: string, upcoming: string) =>
    `**${lead}** before each period: what is ready, what is tired, what to mix. ${upcoming}`,
  nextComes: (relative: string) => `The next one comes ${relative}.`,
  noPeriods: "The class has no periods yet: `/class periods`.",
  week: (day: string, time: string) => `**${day} ${time}**: the week's rolls, litres and waste.`,
  quiet: (from: string, to: string) =>
    `**${from}-${to}** quiet: warnings that can wait do. Calls at the sink never do.`,
  neverQuiet: "Never quiet: warnings come at once.",
  clock: (zone: string) => `All by the class's own clock (${zone}).`,
  periods: "Periods",
  setup: "Set-up",
  leadRange: (most: string) => `At most ${most} before a period. Write it like \`before:60 min\`.`,
};
export type DigestWords = typeof en;
