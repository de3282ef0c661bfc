import { inEach } from "../speech/language.ts";
import { plain } from "../speech/wording.ts";
import { de } from "./words/find.de.ts";
import { en } from "./words/find.en.ts";

const words = inEach({ en, de });

export const noSuchRoll = (typed: string): string => words().noSuchRoll(plain(typed.slice(0, 20)));
