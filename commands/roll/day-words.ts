import { inEach } from "../speech/language.ts";
import { plain } from "../speech/wording.ts";
import { de } from "./words/day.de.ts";
import { en } from "./words/day.en.ts";

const words = inEach({ en, de });

export const NO_DAY = (typed: string): string => words().noDay(plain(typed.slice(0, 40)));
