import { formatBothScales, formatMl } from "../../speech/wording.ts";
import type { ReplyWords } from "./reply.en.ts";

export const de: ReplyWords = {
  nothingGiven: "Sag, wie viel: `total:300 ml`, oder `concentrate:` oder `water:`, wenn du das hast.",
  sum: (concentrateMl, waterMl, totalMl) =>
    `${formatMl(concentrateMl)} und ${formatMl(waterMl)} ergeben nicht ${formatMl(totalMl)}. Miss noch einmal, oder lass \`total:\` weg.`,
  otherDilution: (given, asked, rightWaterMl) =>
    `Das ist ${given}, nicht ${asked}. Für ${asked} braucht so viel Konzentrat ${formatMl(rightWaterMl)} Wasser.`,
  tooLittle: (leastTotalMl) =>
    `Darin ist zu wenig Konzentrat, um es abzumessen. Mach mindestens ${formatMl(leastTotalMl)}.`,
  stockHasNoWater: "In die Stammlösung kommt kein Wasser. Sag, wie viel du brauchst: `total:300 ml`.",

  stockOnly: (ml) => `**${formatMl(ml)}** Stammlösung, kein Wasser.`,
  diluted: (concentrateMl, waterMl, totalMl, dilution) =>
    `**${formatMl(concentrateMl)} Konzentrat + ${formatMl(waterMl)} Wasser** = ${formatMl(totalMl)} in der Verdünnung ${dilution}.`,
  strength: (percent, mixed) =>
    `Abgemessen ist das ${mixed}, ${Math.abs(percent)} % ${percent < 0 ? "schwächer" : "stärker"} als verlangt. Eine größere Menge kommt näher heran.`,
  percent: (have, want) => `Aus ${have} % werden ${want} %.`,
  isRight: (mix) => `${mix} Das stimmt.`,
  readRatio: (dilution) => `Ich lese es als ${dilution}: 1:9 heißt bei Herstellern 1+9.`,
  howToMix:
    "Erst das Wasser, dann das Konzentrat. Säure kommt ins Wasser, nie Wasser in die Säure. Handschuhe und Schutzbrille an; das Etikett geht vor.",

  stockCare: "Handschuhe und Schutzbrille an; das Etikett geht vor.",

  noWaterLeft: (concentrateMl, totalMl) =>
    `Neben ${formatMl(concentrateMl)} Konzentrat bleibt in ${formatMl(totalMl)} kein Platz für Wasser. Stell die Flasche lieber in warmes oder kaltes Wasser, und miss.`,
  hotIsCold: (hotTenthsC, coldTenthsC) =>
    `Das heiße Wasser (${formatBothScales(hotTenthsC)}) ist kälter als das kalte (${formatBothScales(coldTenthsC)}). Vertausche sie.`,
  hotFallsShort: (nearestTenthsC) =>
    `Selbst mit heißem Wasser allein kommst du nicht dahin. Am nächsten liegt ${formatBothScales(nearestTenthsC)}: Nimm heißeres Wasser.`,
  coldFallsShort: (nearestTenthsC) =>
    `Selbst mit kaltem Wasser allein kommst du nicht dahin. Am nächsten liegt ${formatBothScales(nearestTenthsC)}: Kühl das Gefäß von außen mit Eiswasser, nie Eis ins Bad.`,

  tempered: (hotMl, coldMl, totalMl, reachedTenthsC) =>
    `**${formatMl(hotMl)} heiß + ${formatMl(coldMl)} kalt** = ${formatMl(totalMl)} bei ${formatBothScales(reachedTenthsC)}.`,
  temperedWith: (hotMl, coldMl, concentrateMl, totalMl, reachedTenthsC) =>
    `**${formatMl(hotMl)} heiß + ${formatMl(coldMl)} kalt + ${formatMl(concentrateMl)} Konzentrat** = ${formatMl(totalMl)} bei ${formatBothScales(reachedTenthsC)}.`,
  readParts: "Ich lese die Verdünnung als Teile: 1:9 heißt bei Herstellern 1+9.",
  jugTakesHeat:
    "Auch der Krug nimmt etwas Wärme auf: Miss nach, und gib dann etwas heißes oder kaltes Wasser dazu.",
};
