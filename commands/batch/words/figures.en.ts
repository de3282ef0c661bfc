import { countOf } from "../../speech/wording.ts";

export const en = {
  fault: {
    ERR_NO_CAPACITY: (typed: string) =>
      `I can't read "${typed}" as a capacity. Write it like 20 films/l, 50 prints/l (of 8x10 in), 1600 sq in/l or 1 m2/l.`,
    ERR_CAPACITY_OF_WHAT: (typed: string) =>
      `${typed}: of a litre, or of the whole bottle? Write what one litre takes, like 20 films/l. A figure for a whole bottle is divided by its litres.`,
    ERR_CAPACITY_RANGE: (typed: string) =>
      `${typed} is no bath's capacity: it lies between 0.25 and 100 films a litre (20 to 8000 sq in/l). Read the label again.`,
    ERR_NO_SHELF_LIFE: (typed: string) =>
      `I can't read "${typed}" as a shelf life. Write it like 24 h, 7 days, 6 weeks or 6 months.`,
    ERR_NO_DATE: (typed: string) =>
      `I can't read "${typed}" as a date. Write it like 2026-05-31, today or tomorrow.`,
  },
  months: (months: number) => countOf(months, "month"),
  days: (days: number) => countOf(days, "day"),
};
export type FigureWords = typeof en;
