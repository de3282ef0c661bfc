import type { Agitation } from "../../../store/shapes/sheet.ts";
import { formatSeconds, instant, saySeconds } from "../../speech/wording.ts";
import { accusative, nominative } from "./articles.de.ts";
import type { CueWords } from "./cue.en.ts";

const MOVE = {
  inversion: "Dose kippen und zurück",
  rotation: "Spirale drehen",
  continuous: "Dose ständig bewegen",
} as const satisfies Record<Agitation["manner"], string>;

const callsMissed = (missed: number): string =>
  missed === 1 ? "1 Signal davor ist ausgefallen." : `${missed} Signale davor sind ausgefallen.`;

export const de: CueWords = {
  late: (seconds, dueAtMs) => `**${saySeconds(seconds)} zu spät**: Das war für ${instant(dueAtMs, "time")}.`,
  lateAndMissed: (seconds, dueAtMs, missed) =>
    `${de.late(seconds, dueAtMs)}${missed > 0 ? ` ${callsMissed(missed)}` : ""} Tu es jetzt.`,
  missed: (missed) => `**${callsMissed(missed)}**`,
  early: (dueAtMs) => `Um ${instant(dueAtMs, "time")}, ${instant(dueAtMs, "relative")}:`,
  agitateSome: "Bewegen.",
  agitate: (seconds, { manner, taps }) =>
    `**${seconds} s** bewegen: ${MOVE[manner]}${taps > 0 ? `, dann ${taps === 1 ? "einmal" : `${taps}-mal`} aufklopfen` : ""}.`,
  keepMoving: "**Ständig bewegen**, bis ich zum Ausgießen rufe.",
  position: (goneSeconds, ofSeconds) => `${formatSeconds(goneSeconds)} von ${formatSeconds(ofSeconds)}.`,
  toPourOut: (seconds) => `**${seconds} s** bis zum Ausgießen.`,
  toEnd: (seconds, step) => `**${seconds} s**, dann endet ${nominative(step)}.`,
  haveReady: (next) => `Stell bereit: ${next.title}.`,
  pourOut: (seconds, leaving) => `**${seconds} s: jetzt ausgießen.** ${leaving}`,
  andThen: (next) => `Dann: ${next.title}.`,
  done: (title, leaving) => `**Fertig: ${title}.** ${leaving}`,
  nextBath: (next) => `**Jetzt: ${next.title}.**`,
  isItIn: (step) => `**Ist es drin?** Ich warte auf ${accusative(step)}.`,
  goesOn: (before) => `${nominative(before, true)} wirkt weiter.`,
};
