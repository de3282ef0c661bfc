export const en = {
  head: (set: string, from: string, stops: string) => `**${set}** in place of ${from} (${stops}).`,
  same: (set: string) => `**${set}**: nothing changes.`,
  cost: (stops: string, step: string) => `The timer's steps of ${step} make it ${stops}.`,
  tooLong: "That would be over an hour. Open the lens, or lower the head.",
};
export type TimeWords = typeof en;
