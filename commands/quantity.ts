import { z } from "zod";
import type { Result } from "./result.ts";
import {
  parseAgitation,
  parseDilution,
  parseDuration,
  parseTemperature,
  parseVolume,
  type MeasureFault,
  type MeasureFaultCode,
} from "./measure.ts";
import { formatTenthsC, plain } from "./wording.ts";

/* Options that take a quantity as people write it: text going in, whole numbers of one unit coming out. */

type Word = (fault: MeasureFault) => string;

const typedIn = ({ typed }: MeasureFault): string =>
  `"${plain(typed.length > 24 ? `${typed.slice(0, 24)}…` : typed)}"`;

export const MEASURE_FAULT_TEXT = {
  ERR_TEXT_TOO_LONG: (fault) =>
    `${typedIn(fault)} is too long for a quantity. Write it short: 20C, 300 ml, 9:00.`,
  ERR_NO_TEMPERATURE: (fault) => `I can't read ${typedIn(fault)} as a temperature. Write it like 20C or 68F.`,
  ERR_WHICH_SCALE: (fault) =>
    `Which scale is ${typedIn(fault)}? Write F after it if it is Fahrenheit (that would be ${formatTenthsC(fault.value ?? 0)}), C if it is Celsius.`,
  ERR_TWO_SCALES: (fault) =>
    `The two scales in ${typedIn(fault)} do not agree: the first is ${formatTenthsC(fault.value ?? 0)}. Read the thermometer again and write one of them.`,
  ERR_NO_LIQUID: (fault) =>
    `${typedIn(fault)} is not a temperature of liquid water. Write one from 0C to 100C.`,
  ERR_NO_VOLUME: (fault) =>
    `I can't read ${typedIn(fault)} as a volume. Write it like 300 ml, 0.3 l or 10 oz (US).`,
  ERR_THOUSANDS: (fault) =>
    `${typedIn(fault)} could mean a thousand or a little more than one. Write it without the comma: 1000 ml or 1 l.`,
  ERR_VOLUME_RANGE: (fault) => `${typedIn(fault)} is not a volume to work with. Write from 1 ml to 200 l.`,
  ERR_NO_DURATION: (fault) => `I can't read ${typedIn(fault)} as a time. Write it like 9:00, 9 min or 540 s.`,
  ERR_WHICH_UNIT: (fault) => `Is ${typedIn(fault)} minutes or seconds? Write it like 9:00, 9 min or 540 s.`,
  ERR_MINUTES_OR_SECONDS: (fault) =>
    `${typedIn(fault)} can mean parts of a minute or minutes and seconds. Write it like 9:30 or 9.5 min.`,
  ERR_DURATION_RANGE: (fault) => `${typedIn(fault)} is not a time to work with. Write from 1 s to 24 h.`,
  ERR_NO_DILUTION: (fault) =>
    `I can't read ${typedIn(fault)} as a dilution. Write concentrate + water, like 1+9, or stock.`,
  ERR_DILUTION_RANGE: (fault) =>
    `${typedIn(fault)} is no dilution I can work with. Write 1 to 100 parts concentrate + up to 1000 parts water.`,
  ERR_NO_AGITATION: (fault) =>
    `I can't read ${typedIn(fault)} as agitation. Write first/burst/cycle in seconds, like 30/5/60, or continuous.`,
} as const satisfies Record<MeasureFaultCode, Word>;

/** The sentence for a fault: what is wrong, and how to write it. */
export function wordMeasureFault(fault: MeasureFault): string {
  return MEASURE_FAULT_TEXT[fault.code](fault);
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
