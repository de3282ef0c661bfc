import type { NameWords } from "./name.en.ts";

export const de: NameWords = {
  somebody: "jemand",
  nameless: "Jemand",
};
