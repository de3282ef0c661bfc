import type { FirstDayWords } from "./first-day.en.ts";

export const de: FirstDayWords = {
  title: "Vor dem ersten Film",
  titles: {
    name: "Name und Zeitzone",
    tanks: "Dosen",
    times: "Entwicklungszeiten",
    bottles: "Entwickler und Fixierbad",
    code: "Der Zugang für alle",
    trial: "Ein Probelauf",
  },

  name: (name, zone) =>
    `Der Kurs heißt ${name}, und seine Uhr geht nach ${zone}. Behalt beides, oder ändere es: \`/class setup name:… zone:…\``,
  keep: "Beides behalten",
  tanks:
    "Gib die Nummern an, die auf den Dosen stehen (gern als Bereich), und wie viel Flüssigkeit alle Spiralen einer Dose bedeckt. Einmal für jede Sorte, zum Beispiel `/tank add numbers:1-12 reels:2 volume:500 ml`",
  enterTanks: "Dosen angeben",
  times:
    "Sie stehen im Datenblatt des Herstellers von Film oder Entwickler: Füg seine Tabelle ein, nimm eine Datei, oder gib eine Zeit nach der anderen an. Eine Tabelle kann so aussehen:\n```\nEI     18 °C   20 °C   24 °C\n400    11:00   9 1/2   6,5 min\n```",
  paste: "Tabelle oder Datei einfügen",
  oneTime: "Eine Zeit angeben",
  bottles: (missing) =>
    missing.length === 2
      ? "Beschrifte von beiden eine Flasche, dann zähle ich mit, was sie geleistet haben. Was ein Liter schafft, steht auf dem Etikett. Zum Beispiel `/batch mix kind:fixer product:… volume:1 l dilution:1+4`"
      : "Eine Sorte fehlt noch. Was ein Liter schafft, steht auf dem Etikett. Zum Beispiel `/batch mix kind:fixer product:… volume:1 l dilution:1+4`",
  bottleOf: { developer: "Entwickler angeben", fixer: "Fixierbad angeben" },
  code: (code) =>
    `Wer mitmacht, öffnet die Adresse dieser Seite oder hält die Kamera auf das Bild und gibt den Code **${code}** und einen Namen ein. Das ist erledigt, sobald jemand da war.`,
  channel: "Wähl den Kanal, in dem ich zum ganzen Kurs spreche: Wer ihn sieht, kann mich dort benutzen.",
  thisChannel: "Dieser Kanal",
  trial:
    "Geh einen ganzen Lauf ohne Film und Bäder durch. Seine Uhr läuft 60-mal so schnell, also dauert er etwa zwei Minuten; nichts davon wird aufgehoben. Mit Ton hörst du jedes Signal, wie es alle hören werden.",
  startTrial: "Probelauf starten",
  later: "Später",
  all: "Alles vor dem ersten Film",
};
