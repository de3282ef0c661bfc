export const en = {
  again: (head: string) => `Again ${head}`,
  asItWas: "As it was: nothing has changed.",
  changed: (before: string, stops: string) => `It had ${before} (${stops}). What changed:`,
  cost: (stops: string, step: string) => `The timer's steps of ${step} make it ${stops}.`,
  log: "Made: log it",
  tooLong: "That would be over an hour. Open the lens, or lower the head.",
};
export type AgainWords = typeof en;
