import type { DiscordWords } from "./discord.en.ts";

export const de: DiscordWords = {
  noClass:
    "Ich weiß noch nicht, zu welchem Kurs du gehörst. Gib einen Befehl auf dem Server deines Kurses, dann komm hierher zurück.",
  oldButton: "Dieser Knopf ist aus einer älteren Version. Tippe stattdessen den Befehl.",
  broken: "Es ist ein Fehler aufgetreten. Sieh nach, wo dein Lauf steht, bevor du es noch einmal versuchst.",
  fileTooLarge: (megabytes, most) =>
    `Die Datei hat ${Math.ceil(megabytes)} MB; höchstens ${most}. Mach sie kleiner, oder schneide sie zu.`,
  fileNotFetched: "Die Datei ließ sich nicht holen, und nichts ist geändert. Schick sie noch einmal.",
  photoOf: (roll) => `Der Kontaktbogen von ${roll}`,
  done: "Erledigt.",
  lostPicture: (alt) => `Das Bild ließ sich nicht zeichnen. Es zeigt: ${alt}`,
  tooLarge: (name, megabytes) =>
    `${name} ist zu groß für diesen Chat (${megabytes} MB). Frag nach weniger auf einmal.`,
};
