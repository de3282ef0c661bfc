import type { Agitation } from "../../../store/shapes/sheet.ts";
import { countOf, formatSeconds, instant, saySeconds } from "../../speech/wording.ts";
import type { Titled } from "./titled.ts";

const MOVE = {
  inversion: "turn the tank over and back",
  rotation: "turn the reel",
  continuous: "keep the tank moving",
} as const satisfies Record<Agitation["manner"], string>;

/** `leaving` and `doing`: what a person does at the end of a step, and at the beginning of one. */
export const en = {
  late: (seconds: number, dueAtMs: number) =>
    `**${saySeconds(seconds)} late**: this was for ${instant(dueAtMs, "time")}.`,
  lateAndMissed: (seconds: number, dueAtMs: number, missed: number) =>
    `${en.late(seconds, dueAtMs)}${missed > 0 ? ` ${countOf(missed, "call")} before it ${missed === 1 ? "was" : "were"} missed.` : ""} Do it now.`,
  missed: (missed: number) =>
    `**${countOf(missed, "call")} before this ${missed === 1 ? "was" : "were"} missed.**`,
  early: (dueAtMs: number) => `At ${instant(dueAtMs, "time")}, ${instant(dueAtMs, "relative")}:`,
  agitateSome: "Agitate.",
  agitate: (seconds: number, { manner, taps }: Agitation) =>
    `**${seconds} s** agitate: ${MOVE[manner]}${taps > 0 ? `, then rap it ${taps === 1 ? "once" : `${taps} times`}` : ""}.`,
  keepMoving: "**Keep it moving** until I call pour-out.",
  position: (goneSeconds: number, ofSeconds: number) =>
    `${formatSeconds(goneSeconds)} of ${formatSeconds(ofSeconds)}.`,
  toPourOut: (seconds: number) => `**${seconds} s** to pour-out.`,
  toEnd: (seconds: number, step: Titled) => `**${seconds} s** to the end of ${step.title}.`,
  haveReady: (next: Titled) => `Have ready: ${next.title}.`,
  pourOut: (seconds: number, leaving: string) => `**${seconds} s: pour out now.** ${leaving}`,
  andThen: (next: Titled) => `Then: ${next.title}.`,
  done: (title: string, leaving: string) => `**${title} is done.** ${leaving}`,
  nextBath: (next: Titled) => `**Now: ${next.title}.**`,
  isItIn: (step: Titled) => `**Is it in?** I wait for ${step.title}.`,
  goesOn: (before: Titled) => `The ${before.title} goes on working.`,
};
export type CueWords = typeof en;
