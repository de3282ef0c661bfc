import type { Strip } from "../../store/shapes/print.ts";
import { inEach } from "../speech/language.ts";
import { type Bar, type Exposure, exposuresOf } from "./bars.ts";
import { formatExposure } from "./stops.ts";
import { de } from "./words/strip.de.ts";
import { en } from "./words/strip.en.ts";

/* What is said of a test strip, whichever command it comes by. */

const words = inEach({ en, de });

export const tooFine = ({ timerTenths }: Strip, bar: number): string =>
  words().tooFine(formatExposure(timerTenths), bar);
export const noStrip = (): string => words().noStrip;

/** A line for each setting of the timer. */
export const tableOf = (strip: Strip, bars: readonly Bar[]): string[] =>
  exposuresOf(bars, strip.way).map((exposure, at) => lineOf(exposure, at, strip, bars));

function lineOf(
  { tenths, fromBar, toBar }: Exposure,
  at: number,
  { way }: Strip,
  bars: readonly Bar[],
): string {
  const set = formatExposure(tenths);
  if (way === "uncover") {
    const open =
      fromBar === toBar
        ? words().openOne(toBar)
        : fromBar === 1
          ? words().openAll
          : words().openFrom(fromBar);
    return words().step(at + 1, open, set);
  }
  const cover = at === 0 ? words().coverNone : at === 1 ? words().coverOne : words().coverTo(fromBar - 1);
  const total = bars[fromBar - 1]?.totalTenths ?? tenths;
  return words().stepTotal(at + 1, cover, set, fromBar, formatExposure(total));
}
