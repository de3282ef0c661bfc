import { countOf } from "../../../commands/speech/wording.ts";
const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** `about`: what the option is for, as its form says it. `shown`: what was given, made harmless. */
export const en = {
  unknown: (command: string, key: string, hint: string) => `\`/${command}\` has no option ${key}. ${hint}`,
  didYouMean: (near: string) => `Did you mean ${near}?`,
  takes: (names: string) => `It takes ${names}.`,
  takesNone: "It takes none.",
  missing: (option: string, about: string) =>
    `${option} is missing. Add \`${option}:…\` (${lowerFirst(about)}).`,
  tooShort: (option: string, about: string) => `${option} is too short. ${about}.`,
  tooSmall: (option: string, shown: string, least: string) =>
    `${option}:${shown} is too small: at least ${least}.`,
  tooLong: (option: string, characters: number, most: string) =>
    `${option} is too long: ${countOf(characters, "character")}, at most ${most}.`,
  tooLarge: (option: string, shown: string, most: string) =>
    `${option}:${shown} is too large: at most ${most}.`,
  notKnown: (option: string, shown: string, choices: string) =>
    `There is no ${option}:${shown}. Use ${choices}.`,
  notWhole: (option: string, shown: string) => `${option}:${shown} must be a whole number.`,
  notA: (option: string, shown: string, kind: string, about: string) =>
    `${option}:${shown} is not a ${kind}. ${about}.`,
};
export type OptionWords = typeof en;
