import type { SettingWords } from "./standing.en.ts";

export const de: SettingWords = {
  setting: (seconds, aperture, grade, height, paper) =>
    `**${seconds}** bei ${aperture}, ${grade}, Kopf auf ${height}${paper === null ? "" : `, Papier ${paper}`}`,
  rule: "_Die Regel: die kürzeste Zeit, bei der der klare Filmrand so schwarz wird wie das bloße Papier daneben; wie die Bilder dann aussehen, sagt etwas über die Negative (Kontakt auf größtes Schwarz)._",
  rivals:
    "_Andere Regeln: etwas weniger, sodass man den Rand der Perforation gerade noch sieht, weil volles Schwarz Schatten schluckt; oder nach den Lichtern, wenig dunkler als bloßes Papier und mit Zeichnung (ein Lehrgang der US Army)._",
};
