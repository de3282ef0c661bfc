export const en = {
  set: (set: string, where: string) => `**${set}** (${where}).`,
  bar: (bar: number) => `bar ${bar}`,
  between: (bar: number, next: number) => `half-way between bars ${bar} and ${next}, in stops`,
  grades: (from: string, to: string, stops: string) => `From ${from} to ${to}: ${stops}.`,
  measured: "By what the class measured on this paper.",
  rule: (before: string) =>
    `By the published rule: one time from 00 to 3 1/2, twice it from 4 on (${before} before). Another printer's own light wanted 1.22 times from 2 to 1 1/2: make a strip to be sure.`,
  noHarder: (grade: string) => `Nothing goes beyond ${grade}: the grade stays.`,
  cost: (stops: string) => `The timer's steps make it ${stops}.`,
  next: "Make the print with it, then log it: `/print log`.",
  log: "Log the print",
  finer: (stops: string) => `Strip around it, ${stops}`,
  noBar: (bars: number) =>
    `Your strip has bars 1 to ${bars}. Press the one that is right, or write 2-3 for between two.`,
  gradeUnknown:
    "The strip has no grade on record. Make it anew with `grade:2`, then half a grade more means something.",
  isGraded: "This is a graded paper: another grade is another box. Make a strip on that one.",
};
export type ReadWords = typeof en;
