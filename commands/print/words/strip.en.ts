/* Of any test strip. Times come as they are written. */

export const en = {
  step: (count: number, open: string, set: string) => `${count}. ${open}: **${set}**`,
  stepTotal: (count: number, cover: string, set: string, bar: number, total: string) =>
    `${count}. ${cover}: **${set}** (bar ${bar} has ${total})`,
  openOne: (bar: number) => `Only bar ${bar} open`,
  openFrom: (bar: number) => `Bar ${bar} open as well`,
  openAll: "All open",
  coverNone: "All open",
  coverOne: "Cover bar 1",
  coverTo: (bar: number) => `Cover to bar ${bar}`,
  tooFine: (step: string, bar: number) =>
    `Bar ${bar} would get no more than the bar before it: a timer in steps of ${step} can't make it. Take a longer base time or a larger step.`,
  noStrip: "You have made no strip yet. `/print strip base:8` makes one; then tell me which bar is right.",
};
export type StripTableWords = typeof en;
