export const en = {
  noDay: (typed: string) =>
    `I can't read "${typed}" as days. Write 2026-03-01, 2026-03, today, last week or 3 weeks.`,
};
export type DayWords = typeof en;
