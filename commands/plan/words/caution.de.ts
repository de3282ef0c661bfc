import { formatApart, formatBothScales, formatMl, saySeconds } from "../../speech/wording.ts";
import type { CautionWords } from "./caution.en.ts";

const uneven = "Unter 5 Minuten kann die Entwicklung ungleichmäßig werden.";
const better = (seconds: number, tenthsC: number): string =>
  `Besser: ${saySeconds(seconds)} bei ${formatBothScales(tenthsC)}.`;

export const de: CautionWords = {
  shortOnly: `${uneven} Kein kühleres Bad dieses Datenblatts dauert länger: Nimm eine schwächere Verdünnung, wenn es dafür ein Datenblatt gibt.`,
  shortCool: (seconds, tenthsC) =>
    `${uneven} ${better(seconds, tenthsC)} Kühl die Flasche in kaltem Wasser; nie Eis in den Entwickler.`,
  shortMix: (seconds, tenthsC, waterTenthsC, roomTenthsC) =>
    `${uneven} ${better(seconds, tenthsC)} Misch ihn mit Wasser von ${formatBothScales(waterTenthsC)}, das Konzentrat bei ${formatBothScales(roomTenthsC)}, dann miss nach.`,
  agitation: {
    over: "So häufiges Kippen kann Schlieren von der Perforation her ziehen. Lass die Dose zwischendurch ruhen.",
    under: "So lange Ruhe kann Schlieren geben. In jeder Minute einmal bewegen ist sicherer.",
    "no-start":
      "Beweg mindestens die ersten 5 Sekunden, damit der Film gleichmäßig nass wird und sich Luftblasen lösen.",
  },
  wornFixer: (clearingSeconds, freshSeconds, seconds) =>
    `**Das Fixierbad ist verbraucht**: Es klärt in ${saySeconds(clearingSeconds)}, frisch waren es ${saySeconds(freshSeconds)}. Nimm frisches; in diesem braucht der Film ${saySeconds(seconds)}.`,
  slowFixer: (clearingSeconds, seconds) =>
    `**${saySeconds(clearingSeconds)} ist langsam**: Ein frisches Schnellfixierbad klärt Film in 1 bis 3 Minuten. Nimm frisches; in diesem braucht der Film ${saySeconds(seconds)}.`,
  cool: "Unter 18 °C arbeiten alle Bäder langsam und vielleicht unvollständig. Wärm sie an, wenn du kannst.",
  warm: "Über 24 °C ist die Gelatine des Films weich, und die Zeiten sind kurz. Fass ihn sacht an, halt alle Bäder gleich warm.",
  onePoint: (factor) =>
    `Das Datenblatt hat nur eine Zeit: Diese folgt aus einem Faktor von ${factor} je 10 °C, und Entwickler sind verschieden.`,
  beyond: (factor) =>
    `Das liegt jenseits der Zeiten des Datenblatts: Es folgt aus einem Faktor von ${factor} je 10 °C, und Entwickler sind verschieden.`,
  ruleOfThumb:
    "Ein Teil dieser Zeit ist eine Faustregel, kein veröffentlichter Wert. Probier sie an einem Film, an dem weniger hängt.",
  otherAgitation: (seconds) =>
    seconds < 0
      ? `Du bewegst mehr, als das Datenblatt annimmt: ${saySeconds(-seconds)} weniger. Das ist eine Schätzung; so wie auf dem Datenblatt braucht es keine.`
      : `Du bewegst weniger, als das Datenblatt annimmt: ${saySeconds(seconds)} mehr. Das ist eine Schätzung; so wie auf dem Datenblatt braucht es keine.`,
  washShort: (handbookSeconds, seconds, leftPercent) =>
    `Ohne Wässerungshilfe verlangen Handbücher ${saySeconds(handbookSeconds)} bis 30 min fließendes Wasser; ${saySeconds(seconds)} lassen etwa ${leftPercent} % des Fixierbads zurück (US Navy NAVEDTRA 14209). Für Negative, die halten sollen, wässere länger oder nimm eine Wässerungshilfe.`,
  reticulation: (stepTenths, limitTenths, looseTenths) =>
    `Zwei Bäder liegen ${formatApart(stepTenths)} auseinander: Das kann Runzelkorn geben. Halt sie innerhalb von ${formatApart(limitTenths)} (US Army SS0509-8; Hersteller nennen ${formatApart(looseTenths)}).`,
  longFix: (seconds) =>
    `${saySeconds(seconds)} ist lang für ein Schnellfixierbad: Nach 10 Minuten kann es zu bleichen beginnen. Besser ist ein frisches, wärmeres Fixierbad.`,
  littleConcentrate: (ml, films, neededMl, enoughMl) =>
    `${formatMl(ml)} Konzentrat ist zu wenig für ${films === 1 ? "diesen Film" : `${films} Filme`}: Das Datenblatt verlangt ${formatMl(neededMl)}. Nimm ${formatMl(enoughMl)} Entwickler in einer größeren Dose, oder weniger Filme.`,
  strength: (percent) =>
    `So wenig lässt sich nicht genau abmessen: Die Mischung ist ${Math.abs(percent)} % ${percent < 0 ? "schwächer" : "stärker"} als verlangt. Mit mehr Entwickler kommst du näher heran.`,
  bottleShort: (label, ml, volumeMl) =>
    `**${label} enthält ${formatMl(ml)}, und in die Dose gehört mehr: ${formatMl(volumeMl)}.** Lass sie erst auffüllen, oder nimm eine andere Flasche.`,
  covered: (volumeMl) =>
    `Ist der Film mit ${formatMl(volumeMl)} bedeckt? Das steht auf der Dose. Nenn sie (\`tank:\`), dann weiß ich es.`,
  drift: (roomTenthsC, seconds) =>
    `Die Dose folgt dem Raum (${formatBothScales(roomTenthsC)}): Die Zeit ist dafür um ${saySeconds(Math.abs(seconds))} ${seconds < 0 ? "verkürzt" : "verlängert"}. Ein Wasserbad so warm wie der Entwickler würde die Dose auf Temperatur halten.`,
  tankLeaks: (tank, condition) =>
    `Dose ${tank} ist gemeldet: ${condition}. Nimm eine andere, wenn du kannst.`,
  sharedTank: (percent) =>
    `Die Filme teilen sich die Dose mit ihrer mittleren Zeit: Jeder liegt bis zu ${percent} % daneben.`,
  waterTemperature: (tenthsC) =>
    `Wasser von ${formatBothScales(tenthsC)} zum Wässern liegt außerhalb von 15,6 bis 23,9 °C: Temperiere es.`,
  chemicals:
    "Handschuhe und Schutzbrille an, Luft in Bewegung, kein Essen. Gebrauchtes Fixierbad enthält Silber: zurück in seine Flasche, nie in den Ausguss. Etikett, Sicherheitsdatenblatt und die Regeln am Ort gehen vor.",
};
