/** Times come as they are written. */
export const en = {
  tooQuick: (shortest: string, least: string) =>
    `**${shortest} is too quick for a chat**: a call needs ${least} and more. Go by the timer and this table:`,
  slower:
    "For calls close the lens a stop or two, and make a strip with a longer base: `/print strip base:30`.",
  head: (plan: string, bars: number, from: string, to: string) =>
    `**${bars} bars, ${from} to ${to}**, in whole seconds (${plan}): I call when the lamp goes off.`,
  step: (count: number, move: string, seconds: string) => `${count}. ${move}, lamp on: **${seconds}**`,
  hand: "One hand at the lamp's switch, the other at the card. Lay the phone face down, away from the paper, and go by its sound; move the card only while the lamp is off.",
  start: "Start",
};
export type CallWords = typeof en;
