import { z } from "zod";
import { inEach } from "./language.ts";
import type { Result } from "../result.ts";
import {
  parseAgitation,
  parseDilution,
  parseDuration,
  parseTemperature,
  parseVolume,
  type MeasureFault,
} from "./measure.ts";
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
function quantityOption<T>(parse: (text: string) => Result<T, MeasureFault>) {
  return z.string().transform((text, context): T => {
    const read = parse(text);
    if (read.ok) return read.value;
    context.addIssue({
      code: "custom",
      message: wordMeasureFault(read.fault),
      params: { code: read.fault.code },
    });
    return z.NEVER;
  });
}

/** Tenths of a degree Celsius. */
export const temperatureOption = quantityOption(parseTemperature);
/** Whole ml. */
export const volumeOption = quantityOption(parseVolume);
/** Whole seconds. */
export const durationOption = quantityOption(parseDuration);
/** Parts, and whether they were written as a ratio. */
export const dilutionOption = quantityOption(parseDilution);
/** A scheme in seconds. */
export const agitationOption = quantityOption(parseAgitation);
