import { plain } from "../wording.ts";

export const NO_DAY = (typed: string): string =>
  `I can't read "${plain(typed.slice(0, 40))}" as days. Write 2026-03-01, 2026-03, today, last week or 3 weeks.`;
