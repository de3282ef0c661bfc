import { joinAnd } from "../../speech/wording.ts";
import type { FitWords } from "./en.ts";

export const de: FitWords = {
  somebody: "jemand",
  load: (number) => `Dosenfüllung ${number}`,
  loads: (numbers) => `Dosenfüllungen ${numbers}`,
  noBell: (count, last) =>
    `**${loads(count)}**: alles trocken um ${last}. Der Kurs hat keine Klingel, an der sich das messen ließe: \`/class periods\`.`,
  allDone: (count, bell) =>
    `**Alle Filme aus ${loads(count)}** können bis zur Klingel um ${bell} trocken, geschnitten und in der Hülle sein.`,
  allHung: (count, bell, done) =>
    `**Alle Filme aus ${loads(count)}** können bis zur Klingel um ${bell} hängen und über Nacht trocknen. ${doneBy(done)}`,
  someHung: (hung, count, bell, done) =>
    `**Die Filme aus ${hung} von ${loads(count)}** können bis zur Klingel um ${bell} hängen. ${doneBy(done)}`,
  stages: {
    sinks: ({ sinks }) => `die Becken (${places(sinks)})`,
    wash: ({ washPlaces }) => `die Wässerung (${places(washPlaces)})`,
    dryer: ({ drySlots }) => `das Trocknen (${drySlots === 1 ? "1 Film" : `${drySlots} Filme`} zugleich)`,
    tanks: ({ tanks }) =>
      `die Dosen (${tanks === 1 ? "1 intakte" : `${tanks ?? 0} intakte`}, dazwischen gespült und neu beschickt)`,
    "waited-for": () => "eine Dose, auf die jemand wartet",
    longest: () => "der längste Plan allein; auf einen Platz muss niemand warten",
  },
  bottleneck: (stage, least) => `Engpass: ${stage}. Keine Reihenfolge ist in weniger als ${least} fertig.`,
  mustWait: (labels) => `**Bis zum nächsten Mal warten:** ${joinAnd(labels)}.`,
  begunLate: (labels) =>
    `Begonnen und zu spät: ${joinAnd(labels)}. Nach dem Fixierbad darf das in klarem Wasser liegen, bis die Lehrkraft etwas sagt.`,
  dry: (time) => `trocken ${time}`,
  hung: (time) => `aufgehängt ${time}`,
  underWay: (label, end) => `${label}: läuft, ${end}`,
  pourIn: (label, time, latest, end) =>
    `${label}: eingießen ${time}${latest === null ? "" : `, spätestens **${latest}**`}; ${end}`,
  nothing:
    "Kein Film hat jetzt einen Plan oder einen Lauf. Frag nach so vielen Dosenfüllungen: `/class turns loads:12 developing:9:00`.",
  waitsForTank: (tank, holder, until, waiting) =>
    `**Dose ${tank}** hat ${holder}${until === null ? "" : ` bis etwa ${until}`}. Darauf ${waiting.length === 1 ? "wartet" : "warten"}: ${joinAnd(waiting)}.`,
  trays: {
    head: (line, there) => `**Schalen ${line}**: ${there.length === 0 ? "leer" : `darin ${joinAnd(there)}`}.`,
    waits: (label, when, isAfterBell) =>
      `${label}: ${when}${isAfterBell ? ", **erst nach dem Klingeln fertig gewässert**" : ""}`,
    when: {
      now: "jetzt einlegen",
      at: (time) => `einlegen ${time}`,
      never: "für so viele Blätter sind die Schalen zu klein",
    },
  },
  bellPast: (typed) =>
    `${typed} ist schon vorbei. Nenn eine spätere Klingel, oder lass sie weg: Dann gilt die des Kurses.`,
};

function loads(count: number): string {
  return count === 1 ? "1 Dosenfüllung" : `${count} Dosenfüllungen`;
}

function places(count: number): string {
  return count === 1 ? "1 Platz" : `${count} Plätze`;
}

function doneBy(done: number): string {
  return done === 0
    ? "Trocken und in der Hülle ist bis dahin keiner."
    : `Bis dahin trocken und in der Hülle: ${done}.`;
}
