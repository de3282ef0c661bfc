export const en = {
  own: "**Your calls don't reach you: keep the time yourself.** Open your direct messages to me, or ask the teacher for a channel in which I may write.",
  others: "**Calls don't reach them.**",
  teacher: (run: string, person: string) =>
    `**${run}: calls don't reach ${person}. Tell them to keep the time themselves.** They take no direct messages, and I can't write in the class's channel. \`/class setup\` says what I lack there.`,
};
export type UnreachedWords = typeof en;
