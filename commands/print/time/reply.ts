import type { Enlarger } from "../../../store/shapes/enlarger.ts";
import type { Local } from "../../../store/shapes/print.ts";
import type { FieldValue, Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { type Part, sumOf } from "../adjust.ts";
import { cautionLines, partLine } from "../adjust-words.ts";
import { timerCost } from "../light.ts";
import { localTenths } from "../locals.ts";
import { localLine, stopsWord } from "../print-words.ts";
import { formatExposure } from "../stops.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export interface Timed {
  readonly fromTenths: number;
  readonly exact: number;
  readonly setTenths: number;
  readonly timerTenths: number;
  readonly parts: readonly Part[];
  readonly locals: readonly Local[];
  readonly enlarger: Enlarger | null;
}

export const tooLong = (): string => words().tooLong;

export function timeReply(timed: Timed): Reply {
  const { fromTenths, exact, setTenths, timerTenths, parts, locals, enlarger } = timed;
  const cost = timerCost(exact, setTenths);
  const total = stopsWord(sumOf(parts), true);
  return {
    text: [
      parts.length === 0
        ? words().same(formatExposure(setTenths))
        : words().head(formatExposure(setTenths), formatExposure(fromTenths), total),
      ...(Math.abs(cost) >= 0.02 ? [words().cost(stopsWord(cost, true), formatExposure(timerTenths))] : []),
      ...parts.map((part) => `- ${partLine(part)}`),
      ...locals.map((local) => `- ${localLine(local, setTenths, timerTenths)}`),
      ...cautionLines(parts, exact, enlarger),
    ].join("\n"),
    fields: {
      setTenths,
      exactSeconds: Math.round(exact * 1000) / 1000,
      costStops: Math.round(cost * 1000) / 1000,
      stops: Math.round(sumOf(parts) * 1000) / 1000,
      parts: parts.map(({ kind, stops, basis }): FieldValue => ({
        kind,
        stops: Math.round(stops * 1000) / 1000,
        basis,
      })),
      locals: locals.map((local) => ({ ...local, tenths: localTenths(local, setTenths / 10, timerTenths) })),
    },
  };
}
