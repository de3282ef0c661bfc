import {
  formatBothScales,
  formatMl,
  formatNumber,
  formatSeconds,
  joinAnd,
  joinOr,
} from "../../speech/wording.ts";
import type { FaultWords } from "./fault.en.ts";

const doneFilms = (count: number): string => `${formatNumber(count)} ${count === 1 ? "Film" : "Filme"}`;

export const de: FaultWords = {
  tooCold: (tenthsC, nearestTenthsC) =>
    `${formatBothScales(tenthsC)} ist kälter, als dieses Datenblatt erlaubt. Am nächsten liegt ${formatBothScales(nearestTenthsC)}: Wärm den Entwickler darauf an.`,
  tooHot: (tenthsC, nearestTenthsC) =>
    `${formatBothScales(tenthsC)} ist wärmer, als dieses Datenblatt erlaubt. Am nächsten liegt ${formatBothScales(nearestTenthsC)}: Kühl den Entwickler darauf ab.`,
  pulledTooFar: (exposureIndex, nearest) =>
    `EI ${exposureIndex} liegt weiter unter der Empfindlichkeit des Films, als dieses Datenblatt und jede Faustregel reichen. Am nächsten liegt EI ${nearest}.`,
  pushedTooFar: (exposureIndex, nearest) =>
    `EI ${exposureIndex} liegt weiter über der Empfindlichkeit des Films, als dieses Datenblatt und jede Faustregel reichen. Am nächsten liegt EI ${nearest}.`,
  tooManyRolls: (tank, reels, rolls) =>
    `In Dose ${tank} ${reels === 1 ? "passt ein Film" : `passen ${reels} Filme`}, nicht ${rolls}. Nimm eine größere Dose, oder zwei.`,
  wrongFormat: (tank, takes, format) =>
    `Dose ${tank} nimmt Film im Format ${takes}, nicht ${format}. Such dir mit \`/tank list\` eine andere.`,
  notCovered: (volumeMl, neededMl) =>
    `Mit ${formatMl(volumeMl)} ist der Film nicht bedeckt. Nimm mindestens ${formatMl(neededMl)}.`,
  noConcentrate: (volumeMl, dilution, leastMl) =>
    `In ${formatMl(volumeMl)} ${dilution} ist zu wenig Konzentrat, um es abzumessen. Nimm mindestens ${formatMl(leastMl)}.`,
  wrongFrame: (format, frame, takes) =>
    takes.length === 0
      ? `${format} ist Planfilm und hat keine Bilder in Reihe. Lass \`frame:\` weg.`
      : `${frame} gibt es auf ${format}-Film nicht. Darauf passt ${joinOr(takes)}.`,
  oneShot: (filmsDone) =>
    `Dieser Entwickler hat in jedem Liter schon ${doneFilms(filmsDone)} entwickelt, und sein Datenblatt gibt keine Regel, ihn noch einmal zu benutzen. Nimm frischen Entwickler.`,
  usedUp: (filmsDone, maxFilms) =>
    `Dieser Entwickler hat in jedem Liter schon ${doneFilms(filmsDone)} entwickelt: ${formatNumber(maxFilms)} ist das Höchste. Nimm frischen Entwickler.`,
  filmTime: (film, seconds) => `${film}: ${formatSeconds(seconds)}`,
  cannotShare: (filmTimes) =>
    `Diese Filme können sich keine Dose teilen: Ihre Zeiten liegen mehr als 10 % auseinander (${joinAnd(filmTimes)}). Nimm für jeden eine Dose, den längsten zuerst.`,
};
