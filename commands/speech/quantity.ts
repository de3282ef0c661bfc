import { z } from "zod";
import { inEach } from "./language.ts";
import type { Limits } from "../../store/shapes/limits.ts";
import type { Result } from "../result.ts";
import {
  parseAgitation,
  parseAmount,
  parseDilution,
  parseDuration,
  parseTemperature,
  parseVolume,
  type MeasureFault,
} from "./measure.ts";
import { FORMATS, ouncesWords, outsideWords } from "./limits.ts";
import { limitsOf, type NumberShape } from "./shaped.ts";
import { formatTenthsC, plain, quoted } from "./wording.ts";
import { de } from "./words/quantity.de.ts";
import { en } from "./words/quantity.en.ts";

/* Options that take a quantity as people write it: text going in, whole numbers of one unit coming out. */

export const measureFaultWords = inEach({ en, de });

const typedIn = ({ typed }: MeasureFault): string =>
  quoted(plain(typed.length > 24 ? `${typed.slice(0, 24)}…` : typed));

/** The sentence for a fault: what is wrong, and how to write it. */
export function wordMeasureFault(fault: MeasureFault): string {
  return measureFaultWords()[fault.code](typedIn(fault), formatTenthsC(fault.value ?? 0));
}

/** A text option read by one of the parsers; its JSON Schema is a plain string. Add `.optional()` and `.describe()` last. */
function quantityOption<T>(
  parse: (text: string) => Result<T, MeasureFault>,
  wordOutside: (value: T, text: string) => string | undefined = () => undefined,
) {
  return z.string().transform((text, context): T => {
    const read = parse(text);
    const outside = read.ok ? wordOutside(read.value, text) : undefined;
    if (read.ok && outside === undefined) return read.value;
    context.addIssue({
      code: "custom",
      message: read.ok ? (outside ?? "") : wordMeasureFault(read.fault),
      params: { code: read.ok ? "ERR_OUTSIDE" : read.fault.code },
    });
    return z.NEVER;
  });
}

type Read = (text: string) => Result<number, MeasureFault>;

/** A quantity within limits: those of the shape that keeps it, or of sense. */
function quantityIn(parse: Read, limits: NumberShape | Limits, unit: keyof typeof FORMATS) {
  const { least, most } = limitsOf(limits);
  return quantityOption(parse, (value, text) => {
    if (value >= least && value <= most) return undefined;
    const ounces = unit === "ml" ? ouncesOf(text.trim(), least, most) : null;
    const outside = outsideWords(value, { least, most }, FORMATS[unit]);
    return ounces === null ? outside : `${outside} ${ouncesWords(ounces)}`;
  });
}

/** `10` as `10 oz` where that would do. */
function ouncesOf(typed: string, least: number, most: number): string | null {
  const isBare = /^\d+(?:[.,]\d+)?$/.test(typed);
  const read = isBare ? parseVolume(`${typed} oz`) : undefined;
  return read?.ok && read.value >= least && read.value <= most ? `${typed} oz` : null;
}

/** Tenths of a degree Celsius. */
export const temperatureOption = quantityOption(parseTemperature);
/** Whole ml. */
export const volumeOption = quantityOption(parseVolume);
/** ml to a tenth: of a concentrate, of which little is needed. */
export const amountOption = quantityOption(parseAmount);
/** Whole seconds. */
export const durationOption = quantityOption(parseDuration);

/* The same within limits. */

export const temperatureIn = (limits: NumberShape | Limits) =>
  quantityIn(parseTemperature, limits, "tenthsC");
export const volumeIn = (limits: NumberShape | Limits) => quantityIn(parseVolume, limits, "ml");
export const durationIn = (limits: NumberShape | Limits) => quantityIn(parseDuration, limits, "seconds");

/** Parts, and whether they were written as a ratio. */
export const dilutionOption = quantityOption(parseDilution);
/** A scheme in seconds. */
export const agitationOption = quantityOption(parseAgitation);
