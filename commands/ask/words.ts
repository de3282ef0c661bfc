import { inEach } from "../speech/language.ts";
import type { Term } from "./terms.ts";
import { de as aidDe } from "./words/aid.de.ts";
import { en as aidEn } from "./words/aid.en.ts";
import { de as aroundDe } from "./words/around.de.ts";
import { type AroundWords, en as aroundEn } from "./words/around.en.ts";
import { de as basicsDe } from "./words/basics.de.ts";
import { en as basicsEn } from "./words/basics.en.ts";
import { de as deskDe } from "./words/desk.de.ts";
import { en as deskEn } from "./words/desk.en.ts";
import { de } from "./words/ask.de.ts";
import { en } from "./words/ask.en.ts";
import { de as sinkDe } from "./words/sink.de.ts";
import { en as sinkEn } from "./words/sink.en.ts";
import { de as termsDe } from "./words/terms.de.ts";
import { en as termsEn } from "./words/terms.en.ts";
import { de as worryDe } from "./words/worry.de.ts";
import { en as worryEn } from "./words/worry.en.ts";

export type { WorryWords } from "./words/worry.en.ts";
export const worryWords = inEach({ en: worryEn, de: worryDe });
/** Those that hold no value. */
export type AroundTexts = Exclude<keyof AroundWords, "order" | "bellAt" | "bellFits" | "bellInWater">;
export const aroundWords = inEach({ en: aroundEn, de: aroundDe });
export type { BasicsWords } from "./words/basics.en.ts";
export const basicsWords = inEach({ en: basicsEn, de: basicsDe });
export const deskWords = inEach({ en: deskEn, de: deskDe });
export const sinkWords = inEach({ en: sinkEn, de: sinkDe });
export const askWords = inEach({ en, de });
export const aidWords = inEach({ en: aidEn, de: aidDe });
const terms = inEach({ en: termsEn, de: termsDe });

export const termText = (term: Term): string => terms()[term];
