export const en = {
  /** In the middle of a sentence. */
  somebody: "somebody",
  nameless: "Somebody",
};
export type NameWords = typeof en;
