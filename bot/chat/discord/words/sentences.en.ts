export const en = {
  noClass:
    "I don't know yet which class you belong to. Use one command in your class's server, then write to me here.",
  whichClass: "You are in several classes. Which one is it about?",
  ofClass: (name: string) => `_${name}_`,
  broken: "Something broke on my side. Look where your run stands before you try again.",
};
export type SentenceWords = typeof en;
