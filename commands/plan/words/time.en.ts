export const en = {
  at: (time: string, temperature: string) => `**${time}** at ${temperature}`,
  between: (time: string, temperature: string, low: string, high: string) =>
    `**${time}** at ${temperature}, estimate: ${low} to ${high}`,
  /** Within a sentence. */
  betweenOf: (time: string, temperature: string, low: string, high: string) =>
    `**${time}** at ${temperature}, estimated ${low} to ${high}`,
  of: (timeAt: string, sheet: string) => `${timeAt}: ${sheet}`,
};
export type TimeWords = typeof en;
