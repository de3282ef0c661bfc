import type { Agitation } from "../../../store/shapes/sheet.ts";
import { formatSeconds, instant, saySeconds } from "../../speech/wording.ts";
import { inside, nominative } from "./articles.de.ts";
import type { CueWords } from "./cue.en.ts";

const MOVE = {
  inversion: "Dose kippen und wieder aufrichten",
  rotation: "Spirale drehen",
  continuous: "Dose ständig bewegen",
} as const satisfies Record<Agitation["manner"], string>;

const callsMissed = (missed: number): string =>
  missed === 1 ? "1 Signal davor ist ausgefallen." : `${missed} Signale davor sind ausgefallen.`;

const seconds = (count: number): string => (count === 1 ? "1 Sekunde" : `${count} Sekunden`);

export const de: CueWords = {
  late: (late, dueAtMs) => `**${saySeconds(late)} zu spät**: Das war für ${instant(dueAtMs, "time")}.`,
  missedBefore: callsMissed,
  doItNow: "Tu es jetzt, wenn noch nicht geschehen.",
  leftOf: (left) => `Nur noch ${saySeconds(left)}.`,
  stillIn: (leaving) => `Noch drin? ${leaving}`,
  missed: (missed) => `**${callsMissed(missed)}**`,
  early: (dueAtMs) => `Um ${instant(dueAtMs, "time")}, ${instant(dueAtMs, "relative")}:`,
  agitateSome: "Bewegen.",
  agitate: (long) => `${saySeconds(long)} bewegen.`,
  move: ({ manner, taps }) =>
    `${MOVE[manner]}${taps > 0 ? `, dann ${taps === 1 ? "einmal" : `${taps}-mal`} fest aufklopfen` : ""}.`,
  keepMoving: "Ständig bewegen,",
  untilPourOut: "bis ich sage: ausgießen.",
  position: (goneSeconds, ofSeconds) => `${formatSeconds(goneSeconds)} von ${formatSeconds(ofSeconds)}.`,
  toPourOut: (left) => `In ${saySeconds(left)} ausgießen.`,
  toEnd: (left, step) => `In ${saySeconds(left)} endet ${nominative(step)}.`,
  getReady: (next) => `Stell bereit: ${next.title}.`,
  pourOut: (long) => `Jetzt ausgießen (${saySeconds(long)}).`,
  andThen: (next) => `Dann: ${next.title}.`,
  done: (title) => `Fertig: ${title}.`,
  nextBath: (next) => `Jetzt: ${next.title}.`,
  isItIn: (step, flows) => (flows ? `Läuft ${nominative(step)}?` : `Ist ${nominative(step)} drin?`),
  goesOn: (before) => `${nominative(before, true)} wirkt weiter.`,

  spokenAgitate: (long) => `Bewegen, ${seconds(long)}.`,
  spokenToPourOut: (left) => `In ${seconds(left)} ausgießen.`,
  spokenToEnd: (left, step) => `In ${seconds(left)} endet ${nominative(step)}.`,
  spokenPourOut: "Jetzt ausgießen.",

  tray: {
    rock: (long) => `Schale ${saySeconds(long)} schaukeln.`,
    spokenRock: (long) => `Schale schaukeln, ${seconds(long)}.`,
    keepRocking: "Schale ständig schaukeln,",
    untilLift: "bis ich sage: herausheben.",
    toPourOut: (left) => `In ${saySeconds(left)} herausheben.`,
    spokenToPourOut: (left) => `In ${seconds(left)} herausheben.`,
    pourOut: (long) => `Jetzt herausheben, ${saySeconds(long)} abtropfen.`,
    spokenPourOut: "Jetzt herausheben.",
    isItIn: (step, isOut) =>
      isOut ? "Ist der Abzug aus der Wässerung heraus?" : `Liegt der Abzug ${inside(step)}?`,
  },
};
