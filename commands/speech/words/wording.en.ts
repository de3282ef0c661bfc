export const en = {
  decimalMark: ".",
  stock: "stock",
  and: "and",
  or: "or",
  quoted: (text: string) => `"${text}"`,
  bothScales: (celsius: string, fahrenheit: string) => `${celsius} (${fahrenheit})`,
  /** For the platform's own formats of clock and calendar. */
  locale: "en-GB",
  ahead: (duration: string) => `in ${duration}`,
  /** A day behind a number. */
  day: "d",
  ago: (duration: string) => `${duration} ago`,
};
export type WordingWords = typeof en;
