import type { StripWay } from "../../../store/shapes/print.ts";

/** Times, stops and f-numbers come as they are written. */
export const en = {
  head: (bars: number, from: string, to: string, step: string) =>
    `**${bars} bars, ${from} to ${to}**, ${step}.`,
  apart: (stops: string) => `${stops} apart`,
  more: (seconds: string) => `${seconds} more each`,
  how: {
    cover: "Expose the whole strip, then cover one bar more before each exposure.",
    uncover: "Cover all but the last bar, then open one bar more before each exposure.",
  } satisfies Record<StripWay, string>,
  read: "Develop it in full, look at it in white light, and press the bar that is right.",
  cost: (stops: string, step: string) => `Rounding to steps of ${step} is off by up to ${stops}.`,
  equal: (first: string, last: string) =>
    `Equal seconds mislead: from bar 1 to 2 is ${first}, at the end only ${last}. Steps in stops look even.`,
  move: (stops: string) => `All too pale? Open the lens ${stops}. All too dark? Close it ${stops}.`,
  moveTo: (open: string, closed: string) => `All too pale? ${open}. All too dark? ${closed}.`,
  noCalls: (shortest: string) =>
    `No calls for this: ${shortest} is too quick for a chat. Go by the timer and this table.`,
  slow: (shortest: string) =>
    `Go by the timer; with ${shortest} and more there is time to move the card, and to be called.`,
  callIt: "Call it",
  short: "Under 2 s a lamp is still glowing up: better a smaller aperture and longer times.",
  guessed: (step: string) => `Your timer is taken to go in steps of ${step}. Another one: \`timer:0.1\`.`,
  bar: (bar: number) => `Bar ${bar}`,
  tooLong: "The last bar would take over an hour. Open the lens, or take fewer bars.",
};
export type StripWords = typeof en;
