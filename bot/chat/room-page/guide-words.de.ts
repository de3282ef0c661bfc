import type { GuideWords } from "./guide-words.en.ts";

/* The tour's words, in German. */

export const guide: GuideWords = {
  title: "So läuft ein Film",
  show: "Zeig mir alles",
  showHint: "Ein ganzer Lauf mit 60-facher Geschwindigkeit, in zwei Minuten. Nichts davon bleibt.",
  leave: "Rundgang beenden",
  planLine: "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1",
  askForTime: "Nach der Zeit fragen",
  start: "Den Lauf beginnen",
  correct: "Ich habe 20 s früher eingegossen",
  done: "Das war es: in den Raum",
  steps: [
    {
      title: "Nach der Zeit fragen",
      text: "Film, Entwickler, Temperatur: Der Plan sagt, wie lange jedes Bad dauert und worauf die Zeit beruht.",
    },
    {
      title: "Den Lauf beginnen",
      text: "Der Plan steht. Beginne, wenn der Film eingespult ist und der Entwickler seine Temperatur hat.",
    },
    {
      title: "Den Signalen folgen",
      text: "Drück den Knopf, wenn die Dose voll ist. Von da an meldet sich die Seite: Sie piept, vibriert und füllt den Bildschirm, bis du antwortest. Die Uhr des Rundgangs geht 60-mal so schnell und wartet, während du liest.",
    },
    {
      title: "Bad um Bad",
      text: "Jeder Wechsel wartet auf deinen Druck. Zu spät gedrückt? Sag, wann du eingegossen hast, und jedes Signal des Schritts rückt mit.",
    },
    {
      title: "Das Filmbuch behält es",
      text: "Jeder Film bleibt mit dem, was wirklich geschah, damit sich ein Fehler noch nach Wochen finden lässt. Kontaktbögen und Abzüge gehen denselben Weg: Plan, Schalen, Signale, Buch. Die Buchstaben: P ist ein Plan, R ein Lauf, T eine Dose, B eine Flasche, L ein Film im Filmbuch, V ein Abzug.",
    },
  ],
};
