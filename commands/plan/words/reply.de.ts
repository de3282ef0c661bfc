import { isSheetFilm } from "../../../store/shapes/film.ts";
import type { PaperName } from "../cut.ts";
import { formatMl, formatSeconds, joinAnd } from "../../speech/wording.ts";
import type { ReplyWords } from "./reply.en.ts";

const PAPERS: Record<PaperName, string> = {
  "8x10 in (20.3 x 25.4 cm)": "8x10 Zoll (20,3 x 25,4 cm)",
  "9.5x12 in (24 x 30.5 cm)": "9,5x12 Zoll (24 x 30,5 cm)",
  "11x14 in (27.9 x 35.6 cm)": "11x14 Zoll (27,9 x 35,6 cm)",
  "16x20 in (40.6 x 50.8 cm)": "16x20 Zoll (40,6 x 50,8 cm)",
};

export const de: ReplyWords = {
  noTank: (typed) =>
    `Eine Dose ${typed} gibt es in diesem Kurs nicht. Die Dosen siehst du mit \`/tank list\`.`,
  noPlan: (typed) => `Einen Plan ${typed} gibt es nicht. Mach einen mit \`/plan\`.`,
  timeAnyway: (time, why) => `${time}. Aber so kann es nicht losgehen:\n${why}`,
  noPlanYet: "Du hast noch keinen Plan. Mach einen mit `/plan film:… temp:…`.",
  notSameBath: (film) =>
    `${film} hat kein Datenblatt für denselben Entwickler und dieselbe Verdünnung und kann deshalb nicht mit in die Dose. Trag eines mit \`/sheet add\` ein, oder nimm zwei Dosen.`,

  films: (rolls, format) =>
    isSheetFilm(format)
      ? `${rolls} ${rolls === 1 ? "Planfilm" : "Planfilme"} ${format}`
      : `${rolls} ${rolls === 1 ? "Film" : "Filme"} ${format}`,
  tank: (tank) => `Dose ${tank}`,
  load: (sheet, exposureIndex, also, load, plan) =>
    `${sheet}, EI ${exposureIndex}${also.length > 0 ? `, mit ${joinAnd(also)}` : ""}; ${load}. Plan ${plan}.`,
  readRatio: (dilution) => `Ich lese die Verdünnung als ${dilution}: 1:9 heißt bei Herstellern 1+9.`,
  start: "Start",
  showCurve: "Kurve zeigen",

  curveHead: (plan, sheet, temperature, exposureIndex) =>
    `Plan ${plan}: ${sheet} bei ${temperature}, EI ${exposureIndex}.`,
  printsHead: (plan, prints, temperature) =>
    `**${plan}**: ${prints === 1 ? "1 Abzug" : `${prints} Abzüge`} bei ${temperature}`,
  whatItRestsOn: "Worauf jede Zahl beruht:",

  pourOutFrom: (seconds) => `ausgießen ab ${formatSeconds(seconds)}`,
  replenish: (ml) => `danach ${formatMl(ml)} Regenerat in seine Flasche`,
  fillAndEmpty: (times) => `${times === 1 ? "einmal" : `${times}-mal`} füllen und leeren`,
  fromBottle: (bottle) => `aus ${bottle}`,
  ofStock: (ml) => `${formatMl(ml)} Stammlösung`,
  stockAndWater: (stockMl, bottle, waterMl) =>
    `${formatMl(stockMl)} Stammlösung (${bottle}) + ${formatMl(waterMl)} Wasser`,
  readyToPour: (ml, bottle) => `${formatMl(ml)} aus ${bottle}, so wie es ist`,
  concentrateAndWater: (concentrateMl, waterMl) =>
    `${formatMl(concentrateMl)} Konzentrat + ${formatMl(waterMl)} Wasser`,

  sleeveEach: "für jeden Planfilm eine Hülle",
  firstStrips: (count, frames) => `${count} Streifen zu ${frames}`,
  moreStrips: (count, frames) => `${count} zu ${frames}`,
  keepsTail: "das einzelne Bild behält sein leeres Ende",
  contactSheet: (paper) => `Kontaktbogen auf ${PAPERS[paper]}`,

  tankKey: (tank) => `Dose ${tank}`,
  tankOffer: (tank, reels, volumeMl, isReported) =>
    `Dose ${tank}: ${reels} ${reels === 1 ? "Spirale" : "Spiralen"}, ${formatMl(volumeMl)}${isReported ? " (gemeldet)" : ""}`,
};
