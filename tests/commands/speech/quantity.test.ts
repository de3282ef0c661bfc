import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { z } from "zod";
import {
  makeAgitation,
  makeTemperature,
  MEASURE_FAULT_CODES,
  parseAgitation,
  parseDilution,
  parseDuration,
  parseTemperature,
  parseVolume,
} from "../../../commands/speech/measure.ts";
import {
  agitationOption,
  dilutionOption,
  durationOption,
  measureFaultWords,
  temperatureOption,
  volumeOption,
  wordMeasureFault,
} from "../../../commands/speech/quantity.ts";
import type { Result } from "../../../commands/result.ts";
import { schemeArbitrary } from "../plan/arbitrary.ts";

type Fault = { readonly code: string };

function value<T>(result: Result<T, Fault>): T | string {
  return result.ok ? result.value : result.fault.code;
}

describe("temperatures", () => {
  test.each([
    ["20", 200],
    ["20.5", 205],
    ["20,5", 205],
    ["20C", 200],
    ["20 °C", 200],
    ["20 ℃", 200],
    [" 20  degrees C ", 200],
    ["68F", 200],
    ["68 °F", 200],
    ["75f", 239],
    ["125 F", 517],
    ["0", 0],
    ["-0", 0],
    ["45", 450],
    ["99C", 990],
    ["68 °F (20 °C)", 200],
    ["75 °F (24 °C)", 239],
    ["20C / 68F", 200],
  ])("%s is %d tenths", (text, tenthsC) => {
    expect(value(parseTemperature(text))).toBe(tenthsC);
  });

  test.each([
    ["68", "ERR_WHICH_SCALE"],
    ["99", "ERR_WHICH_SCALE"],
    ["-3C", "ERR_NO_LIQUID"],
    ["101C", "ERR_NO_LIQUID"],
    ["213F", "ERR_NO_LIQUID"],
    ["warm", "ERR_NO_TEMPERATURE"],
    ["20K", "ERR_NO_TEMPERATURE"],
    ["NaN", "ERR_NO_TEMPERATURE"],
    ["1e3", "ERR_NO_TEMPERATURE"],
    ["", "ERR_NO_TEMPERATURE"],
    ["🌡️", "ERR_NO_TEMPERATURE"],
  ])("%s is refused as %s", (text, code) => {
    expect(value(parseTemperature(text))).toBe(code);
  });

  test("a published slip is caught: 125 °F printed as 50.7 °C (US Army SS0573; true 51.7 °C)", () => {
    expect(value(parseTemperature("125 °F (50.7 °C)"))).toBe("ERR_TWO_SCALES");
    expect(value(parseTemperature("125 °F (51.7 °C)"))).toBe(517);
  });

  test("the makers' pairs of scales agree within their rounding: 65/18, 68/20, 70/21, 72/22, 75/24", () => {
    for (const pair of ["65F (18C)", "68F (20C)", "70F (21C)", "72F (22C)", "75F (24C)"])
      expect(typeof value(parseTemperature(pair)), pair).toBe("number");
  });
});

describe("volumes", () => {
  test.each([
    ["300", 300],
    ["300 ml", 300],
    ["300ml", 300],
    ["0.3 l", 300],
    ["0,5 L", 500],
    ["1 litre", 1000],
    // Class notes (transcribed, grade C): 10 US oz is 296 ml.
    ["10 oz", 296],
    ["10 US fl oz", 296],
    ["1 gal", 3785],
    ["33 cl", 330],
  ])("%s is %d ml", (text, ml) => {
    expect(value(parseVolume(text))).toBe(ml);
  });

  test.each([
    ["-5 ml", "ERR_VOLUME_RANGE"],
    ["0", "ERR_VOLUME_RANGE"],
    ["9999999", "ERR_VOLUME_RANGE"],
    ["1,000 ml", "ERR_THOUSANDS"],
    ["a cup", "ERR_NO_VOLUME"],
    ["300 constructor", "ERR_NO_VOLUME"],
    ["Infinity", "ERR_NO_VOLUME"],
  ])("%s is refused as %s", (text, code) => {
    expect(value(parseVolume(text))).toBe(code);
  });
});

describe("durations", () => {
  test.each([
    ["9:00", 540],
    ["0:45", 45],
    ["1:02:03", 3723],
    ["90:00", 5400],
    ["540 s", 540],
    ["540s", 540],
    ["9 min", 540],
    ["9.5 min", 570],
    ["6,5 min", 390],
    ["9 min 30 s", 570],
    ["9m30s", 570],
    ["9'30\"", 570],
    ["1 h", 3600],
    ["1h 30min", 5400],
  ])("%s is %d s", (text, seconds) => {
    expect(value(parseDuration(text))).toBe(seconds);
  });

  test.each([
    ["9", "ERR_WHICH_UNIT"],
    ["9.5", "ERR_WHICH_UNIT"],
    // Which unit does not matter: none is below zero.
    ["-9", "ERR_DURATION_RANGE"],
    ["-5 s", "ERR_DURATION_RANGE"],
    ["9:61", "ERR_NO_DURATION"],
    ["0:00", "ERR_DURATION_RANGE"],
    ["25 h", "ERR_DURATION_RANGE"],
    ["soon", "ERR_NO_DURATION"],
    ["", "ERR_NO_DURATION"],
  ])("%s is refused as %s", (text, code) => {
    expect(value(parseDuration(text))).toBe(code);
  });

  test("9.30 min is refused: a published table writes minutes.seconds that way (DD-X times, grade C)", () => {
    expect(value(parseDuration("9.30 min"))).toBe("ERR_MINUTES_OR_SECONDS");
  });
});

describe("dilutions and agitation", () => {
  test("1:9 is read as 1+9, as the makers mean it, and says so", () => {
    expect(value(parseDilution("1+9"))).toEqual({ concentrateParts: 1, waterParts: 9, wasRatio: false });
    expect(value(parseDilution("1 : 9"))).toEqual({ concentrateParts: 1, waterParts: 9, wasRatio: true });
    expect(value(parseDilution("Stock"))).toEqual({ concentrateParts: 1, waterParts: 0, wasRatio: false });
  });

  test("2+18 and 10+90 are 1+9", () => {
    for (const text of ["2+18", "10+90"])
      expect(value(parseDilution(text)), text).toMatchObject({ concentrateParts: 1, waterParts: 9 });
  });

  test.each(["1-9", "B", "0+9", "101+1", "1+1001", "1+9+1", "1+x"])("%s is refused", (text) => {
    expect(value(parseDilution(text))).toMatch(/^ERR_/);
  });

  test("the US Navy's tank scheme is 30/5/60 (NAVEDTRA 14209)", () => {
    expect(value(parseAgitation("30/5/60"))).toEqual({
      initialSeconds: 30,
      burstSeconds: 5,
      cycleSeconds: 60,
      manner: "inversion",
      taps: 1,
    });
  });

  test.each(["30/5", "30/5/60 dance", "often"])("%s is no agitation", (text) => {
    expect(value(parseAgitation(text))).toBe("ERR_NO_AGITATION");
  });

  test.each(["60/5/5", "30/70/60", "30/0/60", "9999/1/60", "30/5/60 20 taps"])("%s can't be done", (text) => {
    expect(value(parseAgitation(text))).toBe("ERR_AGITATION_RANGE");
  });
});

describe("round trips and anything at all", () => {
  test("what is made is read back the same", () => {
    fc.assert(
      fc.property(schemeArbitrary, fc.integer({ min: 0, max: 1000 }), (scheme, tenthsC) => {
        expect(value(parseAgitation(makeAgitation(scheme)))).toEqual(scheme);
        expect(value(parseTemperature(makeTemperature(tenthsC)))).toBe(tenthsC);
      }),
    );
  });

  test("any text gives whole numbers or a coded fault with a sentence", () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: "binary", maxLength: 80 }),
          fc.stringMatching(/^[0-9.,:+/ °cfmlinsozh-]{0,12}$/),
        ),
        (text) => {
          for (const parse of [parseTemperature, parseVolume, parseDuration]) {
            const read: Result<number, Parameters<typeof wordMeasureFault>[0]> = parse(text);
            if (read.ok) expect(Number.isSafeInteger(read.value)).toBe(true);
            else {
              seen.add(read.fault.code);
              expect(wordMeasureFault(read.fault).length).toBeGreaterThan(20);
            }
          }
        },
      ),
      { numRuns: 5_000 },
    );
    expect(seen.size).toBeGreaterThan(5);
  });

  test("five thousand characters are refused in one short sentence", () => {
    const read = parseVolume("9".repeat(5000));
    expect(value(read)).toBe("ERR_TEXT_TOO_LONG");
    if (!read.ok) expect(wordMeasureFault(read.fault).length).toBeLessThan(150);
  });

  test("every fault has a sentence", () => {
    expect(Object.keys(measureFaultWords()).sort()).toEqual([...MEASURE_FAULT_CODES].sort());
  });

  test("typed markdown is shown harmless", () => {
    const read = parseVolume("**@everyone**");
    if (read.ok) throw new Error("read");
    expect(wordMeasureFault(read.fault)).not.toMatch(/\*\*@everyone/);
  });
});

test("each option is a plain string going in, so that every chat can offer it", () => {
  for (const option of [temperatureOption, volumeOption, durationOption, dilutionOption, agitationOption]) {
    const schema = z.toJSONSchema(option.optional().describe("x"), { io: "input", unrepresentable: "any" });
    expect(schema).toMatchObject({ type: "string", description: "x" });
    const wrong = option.safeParse("?");
    expect(wrong.error?.issues[0]?.message).toMatch(/Write/);
  }
});
