import { isSheetFilm } from "../../../store/shapes/film.ts";
import type { PaperName } from "../cut.ts";
import type { Plan } from "../../../store/shapes/plan.ts";
import { countOf, formatMl, formatSeconds, joinAnd } from "../../speech/wording.ts";

export const en = {
  noTank: (typed: string) => `There is no tank ${typed} in this class. See the tanks with \`/tank list\`.`,
  noPlan: (typed: string) => `There is no plan ${typed}. Make one with \`/plan\`.`,
  /** `why`: what hinders the plan, as sentences. */
  timeAnyway: (time: string, why: string) => `${time}. But this can't start as it is:\n${why}`,
  noPlanYet: "You have no plan yet. Make one with `/plan film:… temp:…`.",
  notSameBath: (film: string) =>
    `${film} has no data sheet for the same developer and dilution, so it can't share the tank. Add one with \`/sheet add\`, or use two tanks.`,

  films: (rolls: number, format: Plan["format"]) =>
    isSheetFilm(format)
      ? countOf(rolls, `sheet of ${format}`, `sheets of ${format}`)
      : countOf(rolls, `roll of ${format}`, `rolls of ${format}`),
  tank: (tank: number) => `tank ${tank}`,
  load: (sheet: string, exposureIndex: number, also: readonly string[], load: string, plan: string) =>
    `${sheet}, EI ${exposureIndex}${also.length > 0 ? `, with ${joinAnd(also)}` : ""}; ${load}. Plan ${plan}.`,
  readRatio: (dilution: string) => `I read the dilution as ${dilution}: makers' 1:9 means 1+9.`,
  start: "Start",
  showCurve: "Show the curve",

  curveHead: (plan: string, sheet: string, temperature: string, exposureIndex: number) =>
    `Plan ${plan}: ${sheet} at ${temperature}, EI ${exposureIndex}.`,
  printsHead: (plan: string, prints: number, temperature: string) =>
    `**${plan}**: ${countOf(prints, "print")} at ${temperature}`,
  whatItRestsOn: "What each number rests on:",

  pourOutFrom: (seconds: number) => `pour out from ${formatSeconds(seconds)}`,
  replenish: (ml: number) => `then ${formatMl(ml)} of replenisher into its bottle`,
  fillAndEmpty: (times: number) => `fill and empty ${times === 1 ? "once" : `${times} times`}`,
  fromBottle: (bottle: string) => `from ${bottle}`,
  ofStock: (ml: number) => `${formatMl(ml)} of stock`,
  /** `bottle`: of stock, to be diluted. */
  stockAndWater: (stockMl: number, bottle: string, waterMl: number) =>
    `${formatMl(stockMl)} stock (${bottle}) + ${formatMl(waterMl)} water`,
  /** `bottle`: as it is poured in. */
  readyToPour: (ml: number, bottle: string) => `${formatMl(ml)} from ${bottle}, as it is`,
  concentrateAndWater: (concentrateMl: number, waterMl: number) =>
    `${formatMl(concentrateMl)} concentrate + ${formatMl(waterMl)} water`,

  sleeveEach: "one sleeve for each sheet",
  /** `6 strips of 5`, then `1 of 4`. */
  firstStrips: (count: number, frames: number) => `${countOf(count, "strip")} of ${frames}`,
  moreStrips: (count: number, frames: number) => `${count} of ${frames}`,
  keepsTail: "the single frame keeps its blank tail",
  contactSheet: (paper: PaperName) => `contact sheet on ${paper}`,

  tankKey: (tank: number) => `Tank ${tank}`,
  tankOffer: (tank: number, reels: number, volumeMl: number, isReported: boolean) =>
    `Tank ${tank}: ${countOf(reels, "reel")}, ${formatMl(volumeMl)}${isReported ? " (reported)" : ""}`,
};
export type ReplyWords = typeof en;
