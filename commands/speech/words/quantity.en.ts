import type { MeasureFaultCode } from "../measure.ts";

/** `typed`: what was typed, in quotes. `value`: what it would mean, with its unit. */
type Sentence = (typed: string, value: string) => string;

export const en = {
  ERR_TEXT_TOO_LONG: (typed) => `${typed} is too long for a quantity. Write it short: 20C, 300 ml, 9:00.`,
  ERR_NO_TEMPERATURE: (typed) => `I can't read ${typed} as a temperature. Write it like 20C or 68F.`,
  ERR_WHICH_SCALE: (typed, value) =>
    `Which scale is ${typed}? Write F after it if it is Fahrenheit (that would be ${value}), C if it is Celsius.`,
  ERR_TWO_SCALES: (typed, value) =>
    `The two scales in ${typed} do not agree: the first is ${value}. Read the thermometer again and write one of them.`,
  ERR_NO_LIQUID: (typed) => `${typed} is not a temperature of liquid water. Write one from 0C to 100C.`,
  ERR_NO_VOLUME: (typed) => `I can't read ${typed} as a volume. Write it like 300 ml, 0.3 l or 10 oz (US).`,
  ERR_THOUSANDS: (typed) =>
    `${typed} could mean a thousand or a little more than one. Write it without the comma: 1000 ml or 1 l.`,
  ERR_VOLUME_RANGE: (typed) => `${typed} is not a volume to work with. Write from 1 ml to 200 l.`,
  ERR_NO_DURATION: (typed) => `I can't read ${typed} as a time. Write it like 9:00, 9 min or 540 s.`,
  ERR_WHICH_UNIT: (typed) => `Is ${typed} minutes or seconds? Write it like 9:00, 9 min or 540 s.`,
  ERR_MINUTES_OR_SECONDS: (typed) =>
    `${typed} can mean parts of a minute or minutes and seconds. Write it like 9:30 or 9.5 min.`,
  ERR_DURATION_RANGE: (typed) => `${typed} is not a time to work with. Write from 1 s to 24 h.`,
  ERR_NO_DILUTION: (typed) =>
    `I can't read ${typed} as a dilution. Write concentrate + water, like 1+9, or stock.`,
  ERR_DILUTION_RANGE: (typed) =>
    `${typed} is no dilution I can work with. Write 1 to 100 parts concentrate + up to 1000 parts water.`,
  ERR_NO_AGITATION: (typed) =>
    `I can't read ${typed} as agitation. Write first/each/every, in seconds, like 30/5/60, or continuous.`,
  ERR_AGITATION_RANGE: (typed) =>
    `${typed} can't be done: each agitation is shorter than its cycle, and both are 1 s to 60 min, like 5 s in each 60 s (30/5/60). For no rest at all write continuous.`,
} as const satisfies Record<MeasureFaultCode, Sentence>;
export type QuantityWords = Readonly<Record<keyof typeof en, Sentence>>;
