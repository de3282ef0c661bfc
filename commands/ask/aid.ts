import type { Reply } from "../define.ts";
import { speaking } from "../speech/language.ts";
import type { Language } from "../../store/shapes/language.ts";
import { harmAnswer } from "./class-answers.ts";
import { readSentence } from "./read.ts";

const NO_NAMES = { films: [], developers: [] };

/** First aid, where a sentence tells of harm: it needs neither a class nor a store. */
export function aidFor(text: string, language: Language): Reply | null {
  const reading = readSentence(text, NO_NAMES);
  if (reading.wanted[0] !== "harm") return null;
  const { text: said, keys } = speaking(language, () => harmAnswer(reading));
  return { text: said, actions: keys };
}
