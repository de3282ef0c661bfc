import type { GradeWords } from "./en.ts";

const ofRange = (log: string, iso: number): string => `einen Umfang von ${log} (ISO R ${iso})`;

export const de: GradeWords = {
  either: (filter, grade, log, iso) =>
    `**Filter ${filter}** oder Papier fester Gradation **${grade}** für ${ofRange(log, iso)}.`,
  byFilter: (filter, log, iso, paper) => `**Filter ${filter}** für ${ofRange(log, iso)}, auf ${paper}.`,
  byGrade: (grade, log, iso) => `**Gradation ${grade}** für ${ofRange(log, iso)}.`,
  fits: (paper) => `Das ist ${paper}.`,
  tooHard: (paper, grade) =>
    `${paper} hat ${grade}: zu hart dafür. Nimm eine weichere Schachtel, oder belichte die Lichter nach.`,
  tooSoft: (paper, grade) => `${paper} hat ${grade}: zu weich dafür. Nimm eine härtere Schachtel.`,
  tooLong: "Das ist mehr, als der weichste Filter fasst: Die Lichter müssen nachbelichtet werden.",
  tooShort: "Das ist weniger, als der härteste Filter braucht: Der Abzug bleibt flau.",
  filter: (filter) =>
    `Filter ${filter}: das Datenblatt eines Herstellers für ein Papier mit variablem Kontrast, wie eine Seite es zitiert. Andere weichen ab, und einzelne Packungen auch.`,
  graded: (grade) =>
    `Papier fester Gradation ${grade}: Grenzen bei 0,65, 0,80, 0,95, 1,15 und 1,40; aus dem Gedächtnis, ohne Quelle.`,
  old: (grade) =>
    grade === null
      ? "Die ältere Norm (ANSI PH2.2-1966, 1981 aufgegeben) hat dafür keine Gradation: Sie teilte 0,50 bis 1,70 in sechs."
      : `Gradation ${grade} nach der älteren Norm (ANSI PH2.2-1966, 1981 aufgegeben): Sie teilte 0,50 bis 1,70 in sechs, nach unserer Lesart gleiche Teile.`,
  draft:
    "Die ältere Norm (ANSI PH2.2-1966) endete bei 0,50; ein Entwurf von 1978 nannte 0,35 bis 0,50 Gradation 6. Beides wurde 1981 aufgegeben.",
  middles: (one, other) =>
    `Die Mitte von Gradation 2 liegt nach einem Praktiker bei ${one.range} (Motivumfang ${one.scene}, also Steigung ${one.slope}), nach einer anderen Schule bei ${other.range} (${other.scene}, ${other.slope}).`,
  agree: "Sie stimmen auf eine halbe Gradation überein. Der Teststreifen entscheidet.",
  differ: (softest, hardest) =>
    `Sie stimmen nicht überein: ${softest} bis ${hardest}. Fang mit der ersten Zeile an; der Teststreifen entscheidet.`,
  strip: "Teststreifen damit",
};
