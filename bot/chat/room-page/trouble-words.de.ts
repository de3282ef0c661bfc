import type { TroubleWords } from "./trouble-words.en.ts";

export const trouble: TroubleWords = {
  forStudents:
    "Der Rechner des Kurses kann nichts mehr aufschreiben: Sein Speicher ist voll oder defekt. Dieses Handy gibt dir die Signale allein weiter. Sag deiner Lehrkraft Bescheid.",
  forStaff:
    "Der Speicher des Kursrechners ist voll oder defekt: Von hier kommen keine Signale, und nichts wird aufgeschrieben. Schaff jetzt Platz darauf. Die Handys der anderen geben die Signale so lange allein.",
  localCall:
    "Nach der Uhr dieses Handys: Der Rechner des Kurses kann nichts aufschreiben und gibt keine Signale",
};
