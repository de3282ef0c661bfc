import { formatSeconds } from "../../speech/wording.ts";
import type { JudgeWords } from "./en.ts";

const films = (count: number): string => `${count} ${count === 1 ? "Film" : "Filme"}`;
const signed = (percent: number): string => `${percent > 0 ? "+" : "-"}${Math.abs(percent)} %`;

export const de: JudgeWords = {
  propose: (percent, sheet) =>
    `**${signed(percent)}** als Vorschlag für ${sheet}: Die Negative werden ${percent > 0 ? "zu schwach" : "zu kräftig"}.`,
  nothing: (sheet) => `**Keine Änderung** als Vorschlag für ${sheet}.`,
  evidence: (rolls, weak, strong, chance) => {
    if (rolls === 0) return "Noch kein Film davon, der etwas sagt.";
    if (weak + strong === 0) return `${films(rolls)} angesehen, keiner zu dünn, flau, dicht oder hart.`;
    const looks = [
      ...(weak > 0 ? [`${weak} zu dünn oder flau`] : []),
      ...(strong > 0 ? [`${strong} zu dicht oder hart`] : []),
    ];
    return `${films(rolls)} angesehen: ${looks.join(", ")}. Allein durch Zufall: ${chance} %.`;
  },
  explained: (rolls) =>
    `${films(rolls)} nicht gezählt: nicht wie geplant entwickelt, das erklärt das Aussehen.`,
  worn: (rolls) =>
    `${films(rolls)} nicht gezählt: laut Flaschenbuch war der Entwickler verbraucht oder abgelaufen.`,
  whichSheet: "Welches Datenblatt? Nenn den Film (und den Entwickler), wie `/sheet list` sie zeigt.",
  else: (camera) =>
    `Was es sonst sein kann: ein falsches Thermometer, Entwickler aus einer Flasche ohne Flaschenbuch, anderes Bewegen${camera > 0 ? `; bei ${camera} vielleicht die Belichtung der Kamera` : ""}. Sieh dort zuerst nach.`,
  few: "Weniger als vier gleiche sagen noch nichts. Trag ein, was du siehst: `/roll fault`.",
  source: "Die Schritte von 10 bis 15 % sind veröffentlicht (Kodak F-4016).",
  adopt: (percent) => `${signed(percent)} übernehmen`,
  moved: (percent, sheet, times) =>
    `**${signed(percent)}** für ${sheet}: ${times}. Die Quelle jeder Zeit sagt, was vorher galt.`,
  time: (before, after) => `aus ${formatSeconds(before)} wird ${formatSeconds(after)}`,
  kept: (percent, date, person, before, source) =>
    `eigene Zeit des Kurses: ${percent > 0 ? "+" : ""}${percent} % auf ${formatSeconds(before)}, ${date}, von ${person}; vorher: ${source}`,
};
