import { de as batch } from "../words/batch.de.ts";
import type { StatusWords } from "./en.ts";

const bottles = (count: number): string => (count === 1 ? "1 Flasche" : `${count} Flaschen`);
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const de: StatusWords = {
  noneYet:
    "Noch ist keine Flasche notiert. Wenn eine Hilfskraft oder die Lehrkraft eine angesetzt hat: `/batch mix kind:fixer product:… dilution:1+4 volume:2 l`.",
  allFit: (count) => `**${bottles(count)}**, ${count === 1 ? "brauchbar" : "alle brauchbar"}.`,
  someWorn: (labels, fit) =>
    `**${labels} nicht nehmen.** ${fit === 1 ? "1 Flasche ist" : `${fit} Flaschen sind`} brauchbar.`,
  usedUpBy: (date) => `; geht es so weiter, am ${date} verbraucht`,
  keepsUntil: (date) => `; haltbar bis ${date}`,
  one: (left, name, kind) => `**${capital(left)}**: ${name} (${batch.kind[kind]}).`,
  oneWorn: (label, standing, name, why) => `**${label} ist ${standing}: nicht nehmen.** ${name}: ${why}.`,
  inBottle: (ml, rolls, mixed) => `In der Flasche: ${ml}; ${rolls} seit dem Ansetzen am ${mixed}.`,
  carried: (inMl, outMl, strengthPercent) =>
    `Film hat ${inMl} eingeschleppt und ${outMl} ausgeschleppt: gerechnet ${strengthPercent} % der Stärke beim Ansetzen.`,
  wantsReplenisher: (ml) => `Es braucht ${ml} Regenerat: \`/batch topup\`.`,
  limits: (source) => `_Grenzen: ${source}._`,
  neverTested: "Eine Klärprobe gab es noch nie: Es gilt allein die Mindestzeit des Kurses zum Fixieren.",
  tested: (clears, last) =>
    `Es ${clears}${last === null ? "" : `, letzte Probe am ${last.date}: ${last.seconds}`}.`,
  keeps: (date, isPartFull) => `Es hält bis ${date}${isPartFull ? ", weil die Flasche angebrochen ist" : ""}`,
  tooEarly: (keeps) => `${keeps}. Wie lange es reicht, zeigt sich nach zwei Wochen Gebrauch.`,
  usedUp: (rollsPerWeek, ofPaper, weeks, date) =>
    `Beim Verbrauch dieses Kurses (${rollsPerWeek} ${ofPaper ? "Blatt 20x25 cm" : "Filme"} je Woche, aus ${weeks === 1 ? "1 Woche" : `${weeks} Wochen`}) reicht es bis ${date}`,
  between: (earliest, latest) => `, in acht von zehn Fällen zwischen ${earliest} und ${latest}`,
  keepsAndUsedUp: (keeps, usedUp) => `${keeps}; ${usedUp.charAt(0).toLowerCase()}${usedUp.slice(1)}.`,
  page: (page, pages) => `Seite ${page} von ${pages}.`,
  itsLedger: "Flaschenbuch dieser Flasche",
  earlier: "Früher",
  later: "Später",
};
