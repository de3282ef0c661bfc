import type { OptionWords } from "./options.en.ts";

export const de: OptionWords = {
  reuse: "Schreib Filme je Liter/Zugabe/höchstens Filme, wie 1/10%/10 oder 4/60s/12.",
};
