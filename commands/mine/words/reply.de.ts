import { joinAnd } from "../../speech/wording.ts";
import type { MineWords } from "./reply.en.ts";

const count = (number: number, one: string, many: string): string => `${number} ${number === 1 ? one : many}`;

/** What stays, without a name; empty where nothing does. */
function keptOf(rolls: number, prints: number, whose: string): string {
  const kept = [
    ...(rolls > 0 ? [count(rolls, "Film", "Filme")] : []),
    ...(prints > 0 ? [count(prints, "Abzug", "Abzüge")] : []),
  ];
  const where = prints > 0 ? "Buch" : "Filmbuch";
  const stay = rolls + prints === 1 ? "bleibt" : "bleiben";
  return kept.length === 0 ? "" : `${joinAnd(kept)}${whose} ${stay} ohne Namen im ${where}. `;
}

export const de: MineWords = {
  statement: [
    "**Was ich von dir behalte:** den Namen, den du angegeben hast, deine Sprache und was du im Kurs bist (Schüler:in, Hilfskraft, Lehrkraft); deine Pläne, Läufe, Filme und Abzüge mit Zeiten, Temperaturen, Wertungen, Notizen und Fotos, und deinen letzten Teststreifen; welche Zeilen im Flaschenbuch von dir sind; im Raum, was du getippt hast und was dir gesagt wurde, was an einem gemeinsamen Gerät für dich gedrückt wurde, welche Geräte angemeldet sind und welche davon bei geschlossener Seite Signale bekommen.",
    "**Was ich nicht behalte:** Geburtsdatum, Adresse, wo du bist, und von deinem Handy nichts als das, was du tippst.",
    "**Wer es sieht:** Dein Kurs sieht das Filmbuch mit deinem Namen, sonst niemand. Sicherungskopien enthalten dasselbe, bis sie ersetzt werden.",
  ],
  held: (held, name, since) =>
    `**Von dir, ${name},** seit ${since}: ${joinAnd([
      count(held.plans, "Plan", "Pläne"),
      count(held.runs, "Lauf", "Läufe"),
      count(held.rolls, "Film", "Filme"),
      count(held.photos, "Foto", "Fotos"),
      count(held.prints, "Abzug", "Abzüge"),
      count(held.messages, "Nachricht", "Nachrichten"),
      `${count(held.ledgerLines, "Zeile", "Zeilen")} im Flaschenbuch`,
      count(held.devices, "Gerät", "Geräte"),
    ])}.`,
  takeAlong: "Mitnehmen",
  eraseIt: "Löschen",
  exported: "Hier ist alles, was ich in diesem Kurs von dir behalte, als eine Datei.",
  wrongName: "**So heißt du bei mir nicht. Es wurde nichts gelöscht.**",
  finalErase:
    "**Das lässt sich nicht zurücknehmen.** Deine Pläne, Läufe, Nachrichten, Notizen und Fotos sind sofort weg, auch aus Antworten, die andere bekommen haben. Deine Filme und Abzüge bleiben ohne deinen Namen im Buch, damit die Zahlen des Kurses stimmen; ebenso die Zeilen einer Flasche. Was der Chat selbst behält, kann ich nicht löschen, und ältere Sicherungskopien verschwinden, wenn sie ersetzt werden.",
  toErase: (name) => `Willst du das, tippe \`/mine erase name:${name}\`.`,
  takeAlongFirst: "Erst mitnehmen",
  erased: (rolls, prints) =>
    `**Erledigt.** Ich kenne dich nicht mehr. ${keptOf(rolls, prints, " von dir")}Die Datei selbst wird in den nächsten ruhigen Minuten bereinigt.`,
  forgotten: (rolls, prints) =>
    `**Erledigt.** Diese Person ist nicht mehr im Speicher dieses Kurses. ${keptOf(rolls, prints, "")}`.trim(),
  askForget: (name) =>
    `**Das lässt sich nicht zurücknehmen.** Alles von ${name} wird gelöscht, außer Filmen und Abzügen ohne Namen im Buch. Willst du das, tippe \`/class forget person:${name} sure:yes\`.`,
  runGoing: (runs) =>
    runs.length === 1
      ? `${joinAnd(runs)} läuft noch: Ein Film braucht seine Signale. Mach ihn fertig oder brich ihn ab.`
      : `${joinAnd(runs)} laufen noch: Ein Film braucht seine Signale. Mach sie fertig oder brich sie ab.`,
  lastTeacher:
    "Du bist die einzige Lehrkraft des Kurses. Mach zuerst jemand anderen zur Lehrkraft, oder lösch den Kurs: `/class erase`.",
  unknownPerson: (name) => `In diesem Kurs gibt es niemanden namens ${name}.`,
  language:
    "Ab jetzt spreche ich **Deutsch** mit dir: Antworten, Signale und Erinnerungen. Der Kanal des Kurses behält seine eigene Sprache.",
};
