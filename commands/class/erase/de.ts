import type { EraseWords } from "./en.ts";

export const de: EraseWords = {
  wrongName: "**So heißt der Kurs nicht. Es wurde nichts geplant.**",
  ask: (days) =>
    `**Das löscht den Kurs:** Leute, Pläne, Läufe, das Filmbuch, Flaschen, Nachrichten, Fotos. Es geschieht ${days} Tage, nachdem du bestätigt hast; bis dahin lässt es sich zurücknehmen. Danach hilft nur noch eine Sicherung.`,
  how: (className) => `Um es zu planen, tippe \`/class erase name:${className}\`.`,
  takeLog: "Zuerst das Filmbuch mitnehmen",
  planned: (day, time, relative) =>
    `**Geplant.** Der Kurs wird am ${day} um ${time} gelöscht, ${relative}. Der Kurs weiß Bescheid.`,
  keep: "Den Kurs doch behalten",
  kept: "**Der Kurs bleibt.** Er weiß Bescheid.",
  wasNotPlanned: "Es war nichts geplant: Der Kurs bleibt.",
  announcement: (day) =>
    `**Dieser Kurs mit allem darin wird am ${day} gelöscht.** Nimm zuerst deine eigenen Sachen mit: \`/mine export\`.`,
  takenBack: "**Der Kurs bleibt doch:** Nichts wird gelöscht.",
};
