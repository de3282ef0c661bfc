import type { Agitation } from "../../../store/shapes/sheet.ts";
import { countOf, formatSeconds, instant, saySeconds } from "../../speech/wording.ts";
import type { Titled } from "./titled.ts";

const MOVE = {
  inversion: "Turn the tank over and back",
  rotation: "Turn the reel",
  continuous: "Keep the tank moving",
} as const satisfies Record<Agitation["manner"], string>;

/** `does` is the action with its length, `how` follows it; `leaving` and `doing` end a step and begin one. */
export const en = {
  late: (seconds: number, dueAtMs: number) =>
    `**${saySeconds(seconds)} late**: this was for ${instant(dueAtMs, "time")}.`,
  missedBefore: (missed: number) =>
    `${countOf(missed, "call")} before it ${missed === 1 ? "was" : "were"} missed.`,
  /** A page that goes on without the room may have called it in time. */
  doItNow: "Do it now if you have not yet.",
  leftOf: (seconds: number) => `Only ${saySeconds(seconds)} left.`,
  stillIn: (leaving: string) => `Still in? ${leaving}`,
  missed: (missed: number) =>
    `**${countOf(missed, "call")} before this ${missed === 1 ? "was" : "were"} missed.**`,
  early: (dueAtMs: number) => `At ${instant(dueAtMs, "time")}, ${instant(dueAtMs, "relative")}:`,
  agitateSome: "Agitate.",
  agitate: (seconds: number) => `Agitate ${saySeconds(seconds)}.`,
  move: ({ manner, taps }: Agitation) =>
    `${MOVE[manner]}${taps > 0 ? `, then tap it firmly on the bench ${taps === 1 ? "once" : `${taps} times`}` : ""}.`,
  keepMoving: "Keep it moving",
  untilPourOut: "until I say pour out.",
  position: (goneSeconds: number, ofSeconds: number) =>
    `${formatSeconds(goneSeconds)} of ${formatSeconds(ofSeconds)}.`,
  toPourOut: (seconds: number) => `Pour out in ${saySeconds(seconds)}.`,
  toEnd: (seconds: number, step: Titled) => `${capital(step.title)} ends in ${saySeconds(seconds)}.`,
  getReady: (next: Titled) => `Get ready: ${next.title}.`,
  pourOut: (seconds: number) => `Pour out now (${saySeconds(seconds)}).`,
  andThen: (next: Titled) => `Then: ${next.title}.`,
  done: (title: string) => `${title} is done.`,
  nextBath: (next: Titled) => `Now: ${next.title}.`,
  /** `flows`: a wash is no bath that is poured in. */
  isItIn: (step: Titled, flows: boolean) => `Is the ${step.title} ${flows ? "running" : "in"}?`,
  goesOn: (before: Titled) => `The ${before.title} goes on working.`,

  /** As a voice says it: no signs, and units in full. */
  spokenAgitate: (seconds: number) => `Agitate, ${countOf(seconds, "second")}.`,
  spokenToPourOut: (seconds: number) => `Pour out in ${countOf(seconds, "second")}.`,
  spokenToEnd: (seconds: number, step: Titled) =>
    `${capital(step.title)} ends in ${countOf(seconds, "second")}.`,
  spokenPourOut: "Pour out now.",

  /** Of prints in trays. */
  tray: {
    rock: (seconds: number) => `Rock the tray ${saySeconds(seconds)}.`,
    spokenRock: (seconds: number) => `Rock the tray, ${countOf(seconds, "second")}.`,
    keepRocking: "Keep rocking the tray",
    untilLift: "until I say lift it out.",
    toPourOut: (seconds: number) => `Lift it out in ${saySeconds(seconds)}.`,
    spokenToPourOut: (seconds: number) => `Lift it out in ${countOf(seconds, "second")}.`,
    pourOut: (seconds: number) => `Lift it out now, drain ${saySeconds(seconds)}.`,
    spokenPourOut: "Lift it out now.",
    isItIn: (step: Titled, isOut: boolean) =>
      isOut ? "Is the print out of the wash?" : `Is the print in the ${step.title}?`,
  },
};
export type CueWords = typeof en;

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
