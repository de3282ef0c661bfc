import { exposureTenthsSchema, type Strip } from "../../../store/shapes/print.ts";
import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { limitsOf } from "../../speech/shaped.ts";
import { type Bar, CALL_TENTHS, exposuresOf, moveBy, SHORT_TENTHS } from "../bars.ts";
import { factorOf, stopsBetween, stopsOfAperture } from "../light.ts";
import { stopsWord } from "../print-words.ts";
import { tableOf } from "../strip-words.ts";
import { formatAperture, formatExposure } from "../stops.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export const MOST_TENTHS = limitsOf(exposureTenthsSchema).most;

export const tooLong = (): string => words().tooLong;

export function stripReply(strip: Strip, bars: readonly Bar[], isTimerGuessed: boolean): Reply {
  const exposures = exposuresOf(bars, strip.way);
  const [first, last] = [bars[0], bars.at(-1)];
  const shortest = Math.min(...exposures.map(({ tenths }) => tenths));
  const cost = Math.max(...bars.map((bar) => Math.abs(bar.cost)));
  const lines = [
    words().head(
      bars.length,
      formatExposure(first?.totalTenths ?? 0),
      formatExposure(last?.totalTenths ?? 0),
      stepWord(strip),
    ),
    words().how[strip.way],
    ...tableOf(strip, bars),
    words().read,
    ...(cost >= LEAST_COST ? [words().cost(stopsWord(cost), formatExposure(strip.timerTenths))] : []),
    ...(strip.step.kind === "seconds" ? [equalLine(bars)] : []),
    moveLine(strip, bars),
    shortest < CALL_TENTHS
      ? words().noCalls(formatExposure(shortest))
      : words().slow(formatExposure(shortest)),
    ...(shortest < SHORT_TENTHS ? [words().short] : []),
    ...(isTimerGuessed ? [words().guessed(formatExposure(strip.timerTenths))] : []),
  ];
  return {
    text: lines.join("\n"),
    fields: {
      way: strip.way,
      timerTenths: strip.timerTenths,
      bars: bars.map(({ number, totalTenths, addTenths, cost: each }) => ({
        number,
        totalTenths,
        addTenths,
        costStops: Math.round(each * 1000) / 1000,
      })),
      exposures: exposures.map((each) => ({ ...each })),
    },
    actions: [
      ...bars.map(({ number }) => ({
        label: words().bar(number),
        line: makeLine("print read", { bar: number }),
      })),
      ...(shortest < CALL_TENTHS ? [] : [{ label: words().callIt, line: makeLine("print call", {}) }]),
    ],
  };
}

/** Less than this nobody sees (a published trial tells 9 from 10 s, 0.15 stop). */
const LEAST_COST = 0.02;

function stepWord({ step }: Strip): string {
  return step.kind === "stops"
    ? words().apart(stopsWord(step.twelfths / 12))
    : words().more(formatExposure(step.tenths));
}

/** Equal seconds are not equal steps: the first and the last of them in stops. */
function equalLine(bars: readonly Bar[]): string {
  const between = (a: Bar | undefined, b: Bar | undefined): string =>
    stopsWord(a && b ? stopsBetween(a.totalTenths, b.totalTenths) : 0);
  return words().equal(between(bars[0], bars[1]), between(bars.at(-2), bars.at(-1)));
}

function moveLine({ apertureTenths }: Strip, bars: readonly Bar[]): string {
  const by = moveBy(bars);
  if (apertureTenths === null) return words().move(stopsWord(by));
  const at = stopsOfAperture(apertureTenths / 10);
  const [open, closed] = [at - by, at + by].map((place) => nameOfStop(place));
  return open === undefined || closed === undefined
    ? words().move(stopsWord(by))
    : words().moveTo(open, closed);
}

/** Names of whole stops and halves as lenses bear them. */
const NAMES = [
  1.4, 1.7, 2, 2.4, 2.8, 3.3, 4, 4.8, 5.6, 6.7, 8, 9.5, 11, 13.5, 16, 19, 22, 27, 32, 38, 45, 54, 64,
];

function nameOfStop(place: number): string | undefined {
  const exact = factorOf(place / 2);
  const name = NAMES.find((each) => Math.abs(Math.log2(each / exact)) < 0.05);
  return name === undefined ? undefined : formatAperture(Math.round(name * 10));
}
