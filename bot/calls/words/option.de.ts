import type { OptionWords } from "./option.en.ts";

const KINDS: Readonly<Record<string, string>> = { number: "keine Zahl", string: "kein Text" };

export const de: OptionWords = {
  unknown: (command, key, hint) => `\`/${command}\` kennt keine Angabe ${key}. ${hint}`,
  didYouMean: (near) => `Meintest du ${near}?`,
  takes: (names) => `Es gibt ${names}.`,
  takesNone: "Der Befehl nimmt keine.",
  missing: (option, about) => `${option} fehlt. Füg \`${option}:…\` hinzu (${about}).`,
  tooShort: (option, about) => `${option} ist zu kurz. ${about}.`,
  tooSmall: (option, shown, least) => `${option}:${shown} ist zu klein: mindestens ${least}.`,
  tooLong: (option, characters, most) => `${option} ist zu lang: ${characters} Zeichen, höchstens ${most}.`,
  tooLarge: (option, shown, most) => `${option}:${shown} ist zu groß: höchstens ${most}.`,
  notKnown: (option, shown, choices) => `${option}:${shown} gibt es nicht. Nimm ${choices}.`,
  notWhole: (option, shown) => `${option}:${shown} muss eine ganze Zahl sein.`,
  notA: (option, shown, kind, about) =>
    `${option}:${shown} ist ${KINDS[kind] ?? "nicht, was hier stehen kann"}. ${about}.`,
};
