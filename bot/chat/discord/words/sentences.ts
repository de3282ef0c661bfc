import { DEFAULT_LANGUAGE, type Language } from "../../../../store/shapes/language.ts";
import { de } from "./sentences.de.ts";
import { en, type SentenceWords } from "./sentences.en.ts";

const EACH: Readonly<Record<Language, SentenceWords>> = { en, de };

/** Words around sentences that people type, in the language they read. */
export const sentenceWords = (language: Language = DEFAULT_LANGUAGE): SentenceWords => EACH[language];
