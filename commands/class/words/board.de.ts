import { joinAnd } from "../../speech/wording.ts";
import type { BoardWords } from "./board.en.ts";

export const de: BoardWords = {
  somebody: "jemand",
  none: "**Keine Dose ist in Gebrauch.**",
  head: (tanks, late) =>
    `**${tanks === 1 ? "1 Dose" : `${tanks} Dosen`} in Gebrauch**${late > 0 ? `, **${late} zu spät**` : ""}`,
  more: (count) => `und noch ${count}`,
  row: (tank, person, step, state) => `**${tank}** ${person}, ${step}: ${state}`,
  unreached: "(**Signale kommen nicht an**)",
  until: (time, relative) => `bis ${time}, ${relative}`,
  late: (since) => `**ZU SPÄT**, fällig ${since}`,
  waiting: "als Nächstes, wenn bereit",
  loading: "noch nicht eingegossen",
  waitsForTank: (tank) => `wartet auf Dose ${tank}`,
  again: "Noch einmal ansehen",
  placed: "Die Tafel steht von jetzt an in diesem Kanal: eine Nachricht, immer auf dem neuesten Stand.",
  takenDown:
    "Die Tafel wird nicht mehr aktualisiert. Ihre letzte Nachricht bleibt; lösche sie, wenn du magst.",
  hasAPage: "Im Raum ist die Tafel eine eigene Seite: Öffne sie auf dem Rechner mit dem großen Bildschirm.",
  isTheTeachers: "Wo die Tafel steht, sagt nur die Lehrkraft. Lass `channel` weg, um sie zu sehen.",
  noChannel:
    "Dieser Befehl kam aus keinem Kanal, in dem ich sprechen kann. Gib ihn in dem Kanal ein, der die Tafel zeigen soll.",
  lacks: (missing, channel) =>
    `**In ${channel ?? "diesem Kanal"} fehlt mir ${joinAnd(missing)}.** Öffne die Einstellungen des Kanals, dann die Berechtigungen, wähle meine Rolle und schalte ein: ${joinAnd(missing)}.`,
};
