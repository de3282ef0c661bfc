import { countOf, formatBothScales, formatSeconds, instant, saySeconds } from "../../speech/wording.ts";
import { inside, named } from "./articles.en.ts";
import type { Titled } from "./titled.ts";

/** `name`: `R7, tank 3`. A step that is null lies behind the last one. */
export const en = {
  name: (run: string, tank: number | null, trays: number | null) =>
    trays !== null ? `${run}, trays ${trays}` : tank === null ? run : `${run}, tank ${tank}`,
  iSeeIt: "I see it",
  seen: (afterSeconds: number, factor: string, toSeconds: number, isLeast: boolean) =>
    `Seen after ${saySeconds(afterSeconds)}, times ${factor}: **${formatSeconds(toSeconds)}** in all${isLeast ? ", the least that full black needs" : ""}.`,
  /** Of a safelight's test. */
  lamp: {
    started: (name: string, lamp: string) =>
      `**${name}**: a test of the safelight ${lamp}, on paper with a light grey.`,
    done: (name: string) => `**${name}** is finished. Now note which coins you can see.`,
    note: "Note what I saw",
  },
  /** Of a test strip. */
  strip: {
    what: "test strip",
    started: (name: string, bars: number) => `**${name}**: a test strip of ${countOf(bars, "bar")}.`,
    done: (name: string) => `**${name}** is finished. Which bar is right?`,
    sureToStop: (name: string) => `Stop **${name}**? No more calls come: lamp off first.`,
    bar: (bar: number) => `Bar ${bar}`,
    over: (name: string) => `${name} is over. Nothing was changed. Make another strip with \`/print strip\`.`,
    tooEarly: (_: Titled | null, left: number) =>
      `**${formatSeconds(left)} to go: leave the lamp on.** Nothing was changed. Or has the next exposure begun already?`,
    yesItIsIn: "Yes, the next one",
  },
  /** Of prints in trays. */
  tray: {
    finished: (name: string) => `**${name}** is finished.`,
    stopped: (name: string, title: string) => `**${name}** is stopped at ${title}.`,
    pourOutNow: (leaving: string) => `Lift it out now. ${leaving}`,
    pourOutAt: (atMs: number) => `Lift it out at ${instant(atMs, "time")}, ${instant(atMs, "relative")}.`,
    newTemperature: (tenthsC: number, change: string) =>
      `${formatBothScales(tenthsC)} in the tray. ${change} What the print has had so far counts as planned.`,
    over: (name: string) => `${name} is over. Nothing was changed. Plan another print with \`/tray plan\`.`,
    tooEarly: (at: Titled | null, left: number) =>
      `${formatSeconds(left)} are left in ${at?.title ?? "the end"}. Nothing was changed. Is it really in the next tray already?`,
    tooEarlyToPull: (left: number, least: string) =>
      `**${formatSeconds(left)} to go: leave it in.** Under ${least} a print has no full black and looks mottled; more exposure can't put that right. Too dark already? Leave it, and give the next one half the exposure.`,
    pouringOut: (name: string) =>
      `${name} is being lifted out: a new temperature changes nothing now. Move the print on.`,
    notDeveloping: (name: string) => `${name} is not in the developer: there is nothing to see appear.`,
    noFactor: (name: string) =>
      `${name} is developed by time. For first appearance plan it with a factor: \`/tray plan factor:10\`.`,
    alreadySeen: "Got it already: the end is set by when you first saw it.",
    sureToStop: (name: string) =>
      `Stop **${name}**? Calls end now, but the bath keeps working: move the print on by the clock.`,
    yesItIsIn: "Yes, it is in",
    logPrint: (prints: number): string => (prints === 1 ? "Log the print" : "Log a print"),
  },
  /** `Trial R7`. */
  trialName: (name: string) => `Trial ${name}`,
  trial: (speed: number) =>
    `Its clock goes ${speed} times as fast. No film, no bath: nothing of it is kept. Press each key as you would at the sink.`,
  trialOver: (name: string) => `**${name}** is over. Nothing of it is in the log.`,
  trialGoing: (name: string) => `**${name}** goes on already.`,
  noTrialTime: "There is no developing time yet to try. Add one first: `/sheet add` or `/sheet import`.",
  addTime: "Add a time",
  whereAmI: "Where am I?",
  stopThis: "Stop this run",
  started: (name: string, seconds: number, tenthsC: number) =>
    `**${name}**: ${saySeconds(seconds)} in the developer at ${formatBothScales(tenthsC)}.`,
  queuedForTank: (tank: number) => `**Wait: tank ${tank} is not free yet.** I call you when it is.`,
  queued: (isAtTrays: boolean, atMs: number | null) =>
    `**Wait: ${isAtTrays ? "the trays are full" : "there is no place at the sink"}**${atMs === null ? "" : ` until ${instant(atMs, "time")}`}. I call you when it is your turn.`,
  next: (doing: string) => `Next: ${doing}`,
  finished: (name: string) => `**${name}** is finished. Well done: the roll is in the log.`,
  stopped: (name: string, title: string) => `**${name}** is stopped at ${title}. The log keeps it.`,
  waiting: (name: string, step: Titled, doing: string) => `**${name}**, ${step.title}. ${doing}`,
  left: (seconds: number, step: Titled, untilMs: number, name: string) =>
    `**${formatSeconds(seconds)}** left ${inside(step)}, until ${instant(untilMs, "time")} (**${name}**).`,
  until: (step: Titled, untilMs: number) => `Until **${instant(untilMs, "time")}** ${inside(step)}.`,
  agitate: (how: string) => `Agitate: ${how}.`,
  pourOutNow: (leaving: string) => `Pour out now. ${leaving}`,
  pourOutAt: (atMs: number) => `Pour out at ${instant(atMs, "time")}, ${instant(atMs, "relative")}.`,
  moved: "Noted. Every call of this step has moved.",
  newTemperature: (tenthsC: number, change: string) =>
    `${formatBothScales(tenthsC)} in the tank. ${change} What the film has had so far counts as planned.`,
  timeStays: "The time stays as it is.",
  timeChanged: (bySeconds: number, left: number, before: number) =>
    `**${saySeconds(Math.abs(bySeconds))} ${bySeconds > 0 ? "longer" : "shorter"}**: ${formatSeconds(left)} left instead of ${formatSeconds(before)}.`,
  noneGoing: "No run is going. Make one with `/plan`.",

  over: (name: string) => `${name} is over. Nothing was changed. See it with \`/roll find\`.`,
  oldButton: (name: string, at: Titled | null) =>
    `That button is from another step. Nothing was changed: ${name} is at ${at ? named(at) : "the end"}. Use the newest button.`,
  alreadyRunning: (at: Titled | null, left: number) =>
    `Noted already: ${at ? named(at) : "the end"} is running, ${formatSeconds(left)} left.`,
  tooEarly: (at: Titled | null, left: number) =>
    `${formatSeconds(left)} is left ${at ? inside(at) : "until the end"}. Nothing was changed. Is the next bath really in already?`,
  beforeLastStep: (at: Titled | null, mostSeconds: number) =>
    `${at ? named(at, true) : "The end"} can't have begun before the bath in front of it. Say at most ${saySeconds(mostSeconds)} ago.`,
  nothingRunning: (name: string, at: Titled | null) =>
    `${name} waits for ${at ? named(at) : "the end"}: no bath is timed now. Put it in first, then give its temperature.`,
  pouringOut: (name: string) =>
    `Pour-out of ${name} has begun: a new temperature changes nothing now. Pour out.`,
  yesItIsIn: "Yes, it is in",

  sureToStop: (name: string) =>
    `Stop **${name}**? Calls end now, but the bath keeps working: finish by the clock or ask the teacher. The log keeps what was done.`,
  yesStop: "Yes, stop it",
  doneWithRolls: (name: string, rolls: number) =>
    `**${name}** is finished. ${countOf(rolls, "roll")} of negatives, ready for the contact sheet.`,
  fixedShort: (name: string, seconds: string) =>
    `**${name} is finished, but it was fixed ${seconds} too short: tell the teacher.** It is fixed again, in a fixer that is in order, and washed anew, before anything is made of it.`,
  washedShort: (name: string, seconds: string) =>
    `**${name} is finished, but it was washed ${seconds} too short: wash it again.** Else it spoils in its sleeve.`,
  doneWithPrints: (name: string, prints: number) =>
    `**${name}** is finished: ${countOf(prints, "print")} fixed and washed, lying to dry.`,
  stoppedNow: (name: string) => `**${name}** is stopped.`,
  keptAs: (labels: string) => `In the log as ${labels}.`,
  showRoll: "Show the roll",

  whichRun: (count: number, names: string) => `You have ${count} runs going. Say which: ${names}.`,
  noRun: "You have no run going. Make a plan first: `/plan`.",
  notYours: (name: string) =>
    `${name} belongs to somebody else. Only its owner, an aide or the teacher can change it.`,
  unknownRun: (text: string) => `There is no run ${text}. See yours with \`/run status\`.`,
  unknownPlan: (text: string) => `There is no plan ${text}. Make one with \`/plan\`, then press Start.`,
  noPlan: "You have made no plan yet. Make one with `/plan`, then press Start.",
  nothingToCorrect:
    "Say what to correct: `ago:20` if you poured 20 s ago, or `temp:21.5` for a new temperature.",
  planNotYours: (plan: string, owner: string) =>
    `${plan} is ${owner}'s plan. Make your own with \`/plan\`: it takes the same film and bath.`,
  noTimeFor: "The data sheet gives no time for that temperature. Nothing was changed.",
  nearest: (tenthsC: number) =>
    `The data sheet goes to ${formatBothScales(tenthsC)}: bring the tank back to that.`,
};
export type ReplyWords = typeof en;
