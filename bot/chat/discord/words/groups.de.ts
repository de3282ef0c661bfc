/** Wovon jedes Wort handelt, das auf dieser Plattform vor anderen steht; höchstens 100 Zeichen. */
export const groups: Readonly<Record<string, string>> = {
  plan: "Die Zeiten für einen Film ausrechnen",
  run: "Der Film in deiner Dose: starten, weitermachen, nachsehen, stoppen",
  roll: "Das Filmbuch des Kurses",
  sheet: "Datenblätter: die Entwicklungszeiten, die der Kurs hat",
  mix: "Lösungen ansetzen und temperieren",
  batch: "Die Flaschen des Kurses",
  class: "Der Kurs: Tafel, Reihenfolge an den Becken, Einstellungen",
  mine: "Was über dich aufbewahrt wird: ansehen, mitnehmen, löschen",
  tank: "Die Dosen des Kurses",
  print: "Vergrößerungen und Kontaktbögen",
  "staff-roll": "Für die Lehrkraft: das Filmbuch als Datei",
  "staff-print": "Für Lehrkraft und Hilfskräfte: Papier und Vergrößerer",
  "staff-sheet": "Für Lehrkraft und Hilfskräfte: die Entwicklungszeiten",
  "staff-batch": "Für Lehrkraft und Hilfskräfte: Flaschen ansetzen, prüfen, auffüllen, entsorgen",
  "staff-class": "Für Lehrkraft und Hilfskräfte: der Kurs und seine Einstellungen",
  "staff-tank": "Für Lehrkraft und Hilfskräfte: die Dosen",
};
