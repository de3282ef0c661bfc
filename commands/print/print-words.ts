import type { Light } from "../../store/shapes/enlarger.ts";
import type { Enlarger } from "../../store/shapes/enlarger.ts";
import type { Paper, PaperKind } from "../../store/shapes/paper.ts";
import type { Local } from "../../store/shapes/print.ts";
import type { Action } from "../define.ts";
import { inEach } from "../speech/language.ts";
import { makeLine } from "../speech/line.ts";
import { formatNumber, joinAnd, makeNumber, plain, quoted } from "../speech/wording.ts";
import { localTenths } from "./locals.ts";
import { formatSize } from "./sizes.ts";
import { formatExposure, formatGrade, formatStops, type PrintFault } from "./stops.ts";
import { de } from "./words/print.de.ts";
import { en } from "./words/print.en.ts";

/* Words that all commands of prints share. */

const words = inEach({ en, de });

export const faultWords = ({ code, typed }: PrintFault): string =>
  words().faults[code](quoted(plain(typed.length > 40 ? `${typed.slice(0, 40)}…` : typed)));

export function unknown(kind: "enlarger" | "paper", number: number, known: readonly number[]): string {
  const name = makeNumber(kind, number);
  const have = joinAnd(known.map((each) => makeNumber(kind, each)));
  return known.length === 0 ? words().unknownAndNone[kind](name) : words().unknown[kind](name, have);
}

export const lightWord = (light: Light): string => words().lights[light];
export const kindWord = (kind: PaperKind): string => words().kinds[kind];

/** `grade 2 1/2`; `no filter`. */
export const gradeWord = (gradeTenths: number | null): string =>
  gradeTenths === null ? words().noFilter : words().grade(formatGrade(gradeTenths));

/** `1/3 stop`, `1 1/2 stops`, `+1 stop` where it is a change. */
export function stopsWord(stops: number, isChange = false): string {
  const text = formatStops(stops);
  const sign = isChange && stops > 0 && text !== "0" ? "+" : "";
  return words().stops(`${sign}${text}`, Math.abs(stops) <= 1.001);
}

/** `E1 Left bench: condenser, 50 mm lens, timer in steps of 0.5 s`. */
export const enlargerLine = ({ number, name, light, lensMm, timerTenths }: Enlarger): string =>
  words().enlarger(
    makeNumber("enlarger", number),
    plain(name),
    lightWord(light),
    lensMm,
    formatExposure(timerTenths),
  );

/** `X2 Harbour Gloss, resin-coated, variable contrast, 18x24 cm, lot 4711`. */
export const paperName = ({ number, name, kind, gradeTenths, size, lot }: Omit<Paper, "filters">): string =>
  [
    `${makeNumber("paper", number)} ${plain(name)}`,
    kindWord(kind),
    gradeTenths === null ? words().variable : gradeWord(gradeTenths),
    formatSize(size),
    ...(lot === null ? [] : [words().lot(plain(lot))]),
  ].join(", ");

/** What is known of a paper's speed and dry-down, empty where nothing is. */
export const paperFigures = ({ speed, dryDownPercent, filters }: Paper): string =>
  [
    ...(speed === null ? [] : [words().speed(formatNumber(speed.tenths / 10), words().bases[speed.basis])]),
    ...(dryDownPercent === null ? [] : [words().dryDown(dryDownPercent)]),
    ...(filters.length === 0 ? [] : [words().filters(filters.length)]),
  ].join(", ");

/** `burn sky 1/2 stop`. */
export const localWord = ({ kind, place, milliStops }: Local): string =>
  words().localName[kind](plain(place), stopsWord(milliStops / 1000));

/** `burn sky 1/2 stop: 4 s more`. */
export function localLine(local: Local, exposureTenths: number, timerTenths: number): string {
  const seconds = formatExposure(localTenths(local, exposureTenths / 10, timerTenths));
  return words().local[local.kind](plain(local.place), stopsWord(local.milliStops / 1000), seconds);
}

/** `null`: there are too many places. */
export const tooMuchLocal = (place: string | null): string =>
  place === null ? words().tooManyLocals : words().tooMuchLocal(quoted(plain(place)));

export const gearAction = (): Action => ({ label: words().gear, line: makeLine("print gear", {}) });
