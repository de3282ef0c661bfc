export const en = {
  empty: "Type a command, for example /help.",
  unknownCommand: (word: string, near: readonly string[]) =>
    `There is no /${word}. ${near.length === 0 ? "Try /help." : `Did you mean ${near.join(" or ")}?`}`,
  openQuote: (option: string) => `The quote after ${option}: is not closed. Add a " at its end.`,
  twice: (option: string) => `${option}: is there twice. Say it once.`,
  strayWords: (words: string, command: string) =>
    `I can't tell what ${words} is. Write options as name:value, for example /${command} name:value.`,
};
export type LineWords = typeof en;
