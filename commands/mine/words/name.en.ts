export const en = {
  /** In the middle of a sentence. */
  somebody: "somebody",
  nameless: "Somebody",
  /** In place of an answer. */
  withdrawn: "**Taken out:** this told of somebody whose data was erased. Ask again for what is left.",
};
export type NameWords = typeof en;
