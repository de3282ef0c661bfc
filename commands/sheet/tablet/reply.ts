import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { plain, quoted } from "../../speech/wording.ts";
import type { Measured, WantedTime } from "./gradient.ts";
import { drawFamily } from "./picture.ts";
import type { ReadingFault, Strip } from "./readings.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export function readingFault(fault: ReadingFault): string {
  switch (fault.code) {
    case "ERR_NO_STRIP_TIME":
      return words().noTime(quoted(plain(fault.typed)));
    case "ERR_NO_DENSITY":
      return words().noDensity(quoted(plain(fault.typed)));
    case "ERR_FEW_STEPS":
      return words().fewSteps(fault.seconds, fault.count);
  }
}

export const noReadings = (): string => words().noReadings;
export const needForSave = (): string => words().needForSave;
export const nothingToSave = (): string => words().nothingToSave;
export const sourceOf = (date: string, person: string): string => words().source(date, person);
export const savedWords = (seconds: number, tenthsC: number, sheet: string): string =>
  words().saved(seconds, tenthsC, sheet);

export interface Found {
  readonly strips: readonly Strip[];
  readonly stepLog: number;
  readonly measured: readonly Measured[];
  readonly aim: number;
  readonly wanted: WantedTime | null;
  /** Of each strip; null: no step was metered, or the readings do not reach the speed point. */
  readonly indexes: readonly (number | null)[];
}

export function tabletReply(found: Found, saved: string | null): Reply {
  const { strips, stepLog, measured, aim, wanted, indexes } = found;
  const text = [
    headWords(measured, aim, wanted),
    ...measured.map(stripWords),
    ...indexes.flatMap((index, at) =>
      index === null ? [] : [words().speed(Math.round(index), measured[at]?.seconds ?? 0)],
    ),
    ...measured.flatMap(({ seconds, kinks }) => (kinks.length > 0 ? [words().kinks(seconds, kinks)] : [])),
    words().differ,
    ...(saved === null ? [] : [saved]),
  ];
  return {
    text: text.join("\n"),
    fields: {
      wantedSeconds: wanted === null ? null : Math.round(wanted.seconds),
      lowSeconds: wanted === null ? null : Math.round(wanted.lowSeconds),
      highSeconds: wanted === null ? null : Math.round(wanted.highSeconds),
      strips: measured.map((each, at) => ({
        ...each,
        kinks: [...each.kinks],
        exposureIndex: indexes[at] ?? null,
      })),
    },
    pictures: [drawFamily(strips, stepLog)],
  };
}

function headWords(measured: readonly Measured[], aim: number, wanted: WantedTime | null): string {
  const wish = words().number(aim);
  if (wanted) return words().wanted(wanted.seconds, wanted.lowSeconds, wanted.highSeconds, wish);
  return measured.length === 1 ? words().oneStrip : words().notBracketed(wish);
}

function stripWords({ seconds, triangle, mean, index, gamma, fog }: Measured): string {
  const { number } = words();
  const values = [
    triangle === null ? words().tooShort : words().triangle(number(triangle)),
    ...(mean === null ? [] : [words().mean(number(mean))]),
    ...(index === null ? [] : [words().index(number(index))]),
    words().gamma(number(gamma)),
    words().fog(number(fog)),
  ];
  return words().strip(seconds, values);
}
