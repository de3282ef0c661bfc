export const en = {
  /** In place of an answer. */
  withdrawn: "**Taken out:** this told of somebody whose data was erased. Ask again for what is left.",
};
export type RedactWords = typeof en;
