import type { Titled } from "./titled.ts";

/* A step in an English sentence: most are baths, which take an article; drying and cutting are no baths. */

const isBath = ({ kind }: Titled): boolean => !["dry", "cut", "expose", "judge"].includes(kind);

/** `the developer`, `drying`; for the beginning of a sentence, `capital`. */
export function named(step: Titled, capital = false): string {
  const text = isBath(step) ? `the ${step.title}` : step.title;
  return capital ? text.charAt(0).toUpperCase() + text.slice(1) : text;
}

/** Where the film is: `in the developer`, `for drying`. */
export function inside(step: Titled): string {
  return isBath(step) ? `in ${named(step)}` : `for ${step.title}`;
}
