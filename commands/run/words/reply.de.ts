import { formatBothScales, formatSeconds, instant, saySeconds } from "../../speech/wording.ts";
import { accusative, inside, nominative } from "./articles.de.ts";
import type { ReplyWords } from "./reply.en.ts";

export const de: ReplyWords = {
  name: (run, tank, trays) =>
    trays !== null ? `${run}, Schalen ${trays}` : tank === null ? run : `${run}, Dose ${tank}`,
  iSeeIt: "Ich sehe es",
  seen: (afterSeconds, factor, toSeconds, isLeast) =>
    `Erschienen nach ${saySeconds(afterSeconds)}, mal ${factor}: **${formatSeconds(toSeconds)}** im Ganzen${isLeast ? ", so lang braucht volles Schwarz mindestens" : ""}.`,
  lamp: {
    started: (name, lamp) =>
      `**${name}**: eine Probe des Dunkelkammerlichts ${lamp}, auf Papier mit hellem Grau.`,
    done: (name) => `**${name}** ist fertig. Notiere jetzt, welche Münzen man sieht.`,
    note: "Notieren, was ich sah",
  },
  strip: {
    what: "Teststreifen",
    started: (name, bars) => `**${name}**: ein Teststreifen mit ${bars} Feldern.`,
    done: (name) => `**${name}** ist fertig. Welches Feld stimmt?`,
    sureToStop: (name) => `**${name}** abbrechen? Es kommt kein Signal mehr: Mach zuerst das Licht aus.`,
    bar: (bar) => `Feld ${bar}`,
    over: (name) =>
      `${name} ist vorbei. Es wurde nichts geändert. Einen neuen Streifen gibt es mit \`/print strip\`.`,
    tooEarly: (_, left) =>
      `**Noch ${formatSeconds(left)}: Lass das Licht an.** Es wurde nichts geändert. Oder hat die nächste Belichtung schon begonnen?`,
    yesItIsIn: "Ja, die nächste",
  },
  tray: {
    finished: (name) => `**${name}** ist fertig.`,
    stopped: (name, title) => `**${name}** ist abgebrochen, beim Schritt ${title}.`,
    pourOutNow: (leaving) => `Jetzt herausheben. ${leaving}`,
    pourOutAt: (atMs) => `Herausheben um ${instant(atMs, "time")}, ${instant(atMs, "relative")}.`,
    newTemperature: (tenthsC, change) =>
      `${formatBothScales(tenthsC)} in der Schale. ${change} Was der Abzug bisher bekam, zählt wie geplant.`,
    over: (name) =>
      `${name} ist vorbei. Es wurde nichts geändert. Den nächsten Abzug planst du mit \`/tray plan\`.`,
    tooEarly: (at, left) =>
      `Noch ${formatSeconds(left)} ${at ? inside(at) : "bis zum Ende"}. Es wurde nichts geändert. Liegt er wirklich schon in der nächsten Schale?`,
    tooEarlyToPull: (left, least) =>
      `**Noch ${formatSeconds(left)}: lass ihn drin.** Unter ${least} fehlt dem Abzug das volle Schwarz, er wird fleckig; mehr Belichtung ersetzt das nicht. Schon zu dunkel? Lass ihn, und belichte den nächsten halb so lang.`,
    pouringOut: (name) =>
      `${name} wird schon herausgehoben: Eine neue Temperatur ändert jetzt nichts mehr. Leg den Abzug weiter.`,
    notDeveloping: (name) => `${name} liegt nicht im Entwickler: Da erscheint nichts.`,
    noFactor: (name) =>
      `${name} wird nach Zeit entwickelt. Fürs erste Erscheinen plan mit einem Faktor: \`/tray plan factor:10\`.`,
    alreadySeen: "Schon notiert: Das Ende richtet sich danach, wann du es zuerst gesehen hast.",
    sureToStop: (name) =>
      `**${name}** abbrechen? Die Signale enden jetzt, aber das Bad wirkt weiter: Leg den Abzug nach der Uhr weiter.`,
    yesItIsIn: "Ja, er liegt drin",
    logPrint: (prints) => (prints === 1 ? "Abzug eintragen" : "Einen Abzug eintragen"),
  },
  trialName: (name) => `Probelauf ${name}`,
  trial: (speed) =>
    `Seine Uhr läuft ${speed}-mal so schnell. Kein Film, kein Bad: Nichts davon wird aufgehoben. Drück jeden Knopf wie am Becken.`,
  trialOver: (name) => `**${name}** ist vorbei. Nichts davon steht im Filmbuch.`,
  trialGoing: (name) => `**${name}** läuft schon.`,
  noTrialTime:
    "Es gibt noch keine Entwicklungszeit zum Probieren. Gib erst eine an: `/sheet add` oder `/sheet import`.",
  addTime: "Zeit angeben",
  whereAmI: "Wo bin ich?",
  stopThis: "Lauf abbrechen",
  started: (name, seconds, tenthsC) =>
    `**${name}**: ${saySeconds(seconds)} im Entwickler bei ${formatBothScales(tenthsC)}.`,
  queuedForTank: (tank) =>
    `**Warte: Dose ${tank} ist noch nicht frei.** Du bekommst ein Signal, wenn sie es ist.`,
  queued: (isAtTrays, atMs) =>
    `**Warte: ${isAtTrays ? "Die Schalen sind voll" : "Am Becken ist kein Platz frei"}**${atMs === null ? "" : `, bis ${instant(atMs, "time")}`}. Du bekommst ein Signal, wenn du dran bist.`,
  next: (doing) => `Als Nächstes: ${doing}`,
  finished: (name) => `**${name}** ist fertig. Gut gemacht: Der Film steht im Filmbuch.`,
  stopped: (name, title) => `**${name}** ist abgebrochen, beim Schritt ${title}. Im Filmbuch steht es.`,
  waiting: (name, step, doing) => `**${name}**, ${step.title}. ${doing}`,
  left: (seconds, step, untilMs, name) =>
    `**${formatSeconds(seconds)}** noch ${inside(step)}, bis ${instant(untilMs, "time")} (**${name}**).`,
  until: (step, untilMs) => `Bis **${instant(untilMs, "time")}** ${inside(step)}.`,
  agitate: (how) => `Bewegen: ${how}.`,
  pourOutNow: (leaving) => `Jetzt ausgießen. ${leaving}`,
  pourOutAt: (atMs) => `Ausgießen um ${instant(atMs, "time")}, ${instant(atMs, "relative")}.`,
  moved: "Notiert. Alle Signale dieses Schritts sind verschoben.",
  newTemperature: (tenthsC, change) =>
    `${formatBothScales(tenthsC)} in der Dose. ${change} Was der Film bisher bekam, zählt wie geplant.`,
  timeStays: "Die Zeit bleibt, wie sie ist.",
  timeChanged: (bySeconds, left, before) =>
    `**${saySeconds(Math.abs(bySeconds))} ${bySeconds > 0 ? "länger" : "kürzer"}**: noch ${formatSeconds(left)} statt ${formatSeconds(before)}.`,
  noneGoing: "Gerade gibt es keinen Lauf. Mach erst einen Plan: `/plan`.",

  over: (name) => `${name} ist vorbei. Es wurde nichts geändert. Du findest den Film mit \`/roll find\`.`,
  oldButton: (name, at) =>
    `Dieser Knopf gehört zu einem anderen Schritt. Es wurde nichts geändert: ${name} ist ${at ? `beim Schritt ${at.title}` : "am Ende"}. Nimm den neuesten Knopf.`,
  alreadyRunning: (at, left) =>
    `Schon notiert: ${at ? nominative(at) : "das Ende"} läuft, noch ${formatSeconds(left)}.`,
  tooEarly: (at, left) =>
    `Noch ${formatSeconds(left)} ${at ? inside(at) : "bis zum Ende"}. Es wurde nichts geändert. Ist das nächste Bad wirklich schon drin?`,
  beforeLastStep: (at, mostSeconds) =>
    `${at ? nominative(at, true) : "Das Ende"} kann nicht vor dem Bad davor begonnen haben. Gib höchstens ${saySeconds(mostSeconds)} an.`,
  nothingRunning: (name, at) =>
    `${name} wartet auf ${at ? accusative(at) : "das Ende"}: Gerade läuft keine Zeit. Erst eingießen, dann die Temperatur angeben.`,
  pouringOut: (name) =>
    `${name} wird schon ausgegossen: Eine neue Temperatur ändert jetzt nichts mehr. Gieß aus.`,
  yesItIsIn: "Ja, es ist drin",

  sureToStop: (name) =>
    `**${name}** abbrechen? Die Signale enden jetzt, aber das Bad wirkt weiter: Mach nach der Uhr fertig oder frag die Lehrkraft. Im Filmbuch bleibt, was getan wurde.`,
  yesStop: "Ja, abbrechen",
  doneWithRolls: (name, rolls) =>
    `**${name}** ist fertig. ${rolls === 1 ? "1 Film" : `${rolls} Filme`} mit Negativen, bereit für den Kontaktbogen.`,
  fixedShort: (name, seconds) =>
    `**${name} ist fertig, war aber ${seconds} zu kurz im Fixierbad: Sag es der Lehrkraft.** Bevor etwas daraus wird, kommt der Film noch einmal in ein Fixierbad, das in Ordnung ist, und wird neu gewässert.`,
  washedShort: (name, seconds) =>
    `**${name} ist fertig, wurde aber ${seconds} zu kurz gewässert: Wässere den Film noch einmal.** Sonst verdirbt er in der Hülle.`,
  doneWithPrints: (name, prints) =>
    `**${name}** ist fertig: ${prints === 1 ? "1 Abzug" : `${prints} Abzüge`} fixiert und gewässert, zum Trocknen gelegt.`,
  stoppedNow: (name) => `**${name}** ist abgebrochen.`,
  keptAs: (labels) => `Im Filmbuch als ${labels}.`,
  showRoll: "Film zeigen",

  whichRun: (count, names) => `Du hast ${count} Läufe. Sag, welchen du meinst: ${names}.`,
  noRun: "Du hast gerade keinen Lauf. Mach erst einen Plan: `/plan`.",
  notYours: (name) =>
    `${name} gehört jemand anderem. Ändern dürfen ihn nur die Person selbst, eine Hilfskraft oder die Lehrkraft.`,
  unknownRun: (text) => `Einen Lauf ${text} gibt es nicht. Deine siehst du mit \`/run status\`.`,
  unknownPlan: (text) => `Einen Plan ${text} gibt es nicht. Mach einen mit \`/plan\`, dann drück auf Start.`,
  noPlan: "Du hast noch keinen Plan. Mach einen mit `/plan`, dann drück auf Start.",
  nothingToCorrect:
    "Sag, was zu berichtigen ist: `ago:20`, wenn du vor 20 s eingegossen hast, oder `temp:21,5` für eine neue Temperatur.",
  planNotYours: (plan, owner) =>
    `${plan} gehört ${owner}. Mach deinen eigenen Plan mit \`/plan\`: Er nimmt denselben Film und dasselbe Bad.`,
  noTimeFor: "Für diese Temperatur hat das Datenblatt keine Zeit. Es wurde nichts geändert.",
  nearest: (tenthsC) =>
    `Das Datenblatt reicht bis ${formatBothScales(tenthsC)}: Bring die Dose wieder dorthin.`,
};
