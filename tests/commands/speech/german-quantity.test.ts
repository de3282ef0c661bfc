import { pointDecimal } from "../../../commands/speech/decimal.ts";
import { describe, expect, test } from "vitest";
import { speaking } from "../../../commands/speech/language.ts";
import {
  MEASURE_FAULT_CODES,
  parseAgitation,
  parseDuration,
  parseTemperature,
  parseVolume,
} from "../../../commands/speech/measure.ts";
import { lineFaultWords } from "../../../commands/speech/line-words.ts";
import { measureFaultWords, wordMeasureFault } from "../../../commands/speech/quantity.ts";
import { checkValue } from "../../../bot/chat/room-page/check.ts";
import type { OptionCard } from "../../../bot/chat/room/card.ts";
import { readCsv } from "../../../commands/sheet/csv.ts";
import { ENGLISH_WORDS } from "../../support/english.ts";

const german = <T>(work: () => T): T => speaking("de", work);

describe("quantities as somebody who reads German types them", () => {
  // Each is the same quantity as beside it in the point form: what a decimal comma means (ISO 80000-1, 7.3.2).
  test.each([
    [parseTemperature, "20,5", "20.5"],
    [parseTemperature, "20,5C", "20.5C"],
    [parseTemperature, "20,5 Grad", "20.5 °C"],
    [parseTemperature, "20 Grad Celsius", "20C"],
    [parseVolume, "0,3 l", "0.3 l"],
    [parseVolume, "1,5 Liter", "1500 ml"],
    [parseVolume, "2,5l", "2.5 l"],
    [parseDuration, "9,5 min", "9:30"],
    [parseDuration, "9 Minuten 30 Sekunden", "9:30"],
    [parseDuration, "1 Minute", "1:00"],
    [parseDuration, "1,5 Stunden", "1:30:00"],
    [parseDuration, "2 Std. 10 min", "2:10:00"],
    [parseDuration, "40 Sek.", "40 s"],
    [parseAgitation, "ständig", "continuous"],
    [parseAgitation, "30/5/60 kippen 2 mal", "30/5/60 inversion 2 taps"],
    [parseAgitation, "30/5/60 drehen", "30/5/60 rotation"],
  ] as const)("%o reads %s as %s", (parse, typed, plain) => {
    const read = parse(typed);
    expect(read.ok ? read.value : read.fault).toEqual((parse(plain) as { value: unknown }).value);
    expect(read.ok).toBe(true);
  });

  test("a comma that may part thousands is asked about, in either language", () => {
    const read = parseVolume("1,000 ml");
    expect(read.ok ? "" : german(() => wordMeasureFault(read.fault))).toBe(
      "„1,000 ml“ kann tausend heißen oder wenig mehr als eins. Schreib es ohne Komma: 1000 ml oder 1 l.",
    );
  });

  test.each([
    ["5,5", "5.5"],
    [" -0,25", " -0.25"],
    ["5.5", "5.5"],
    ["1,2,5", "1,2,5"],
    ["EI 400, push", "EI 400, push"],
    ["", ""],
  ])("%j with a decimal point is %j", (typed, point) => expect(pointDecimal(typed)).toBe(point));
});

test("a table of sheets as a German table program writes it: semicolons between cells, commas in numbers", () => {
  const table = (mark: string, between: string): string =>
    [
      [
        "film",
        "developer",
        "dilution",
        "film_speed",
        "temperature",
        "exposure_index",
        "time",
        "factor_per_10c",
        "source",
      ],
      [
        "Lantern 400",
        "House MQ",
        "1+1",
        "400",
        `20${mark}5C`,
        "400",
        `9${mark}5 min`,
        `2${mark}1`,
        "invented",
      ],
    ]
      .map((cells) => cells.join(between))
      .join("\n");
  const read = readCsv(table(",", ";"));
  expect(read).toEqual(readCsv(table(".", ",")));
  expect(read.ok && read.value[0]).toMatchObject({
    factorPer10C: 2.1,
    points: [{ tenthsC: 205, seconds: 570 }],
  });
});

test("the room's page takes a decimal comma in a number's field, and still holds it to its bounds", () => {
  const ph: OptionCard = {
    name: "ph",
    about: "",
    isRequired: false,
    isFirst: true,
    kind: "number",
    choices: [],
    least: 0,
    most: 14,
    longest: null,
    preset: null,
    hasOffers: false,
  };
  expect(checkValue(ph, "5,5")).toBeUndefined();
  expect(checkValue(ph, "15,5")).toMatchObject({ code: "ERR_MOST", bound: 14 });
  expect(checkValue(ph, "5,5,5")).toMatchObject({ code: "ERR_NUMBER" });
  expect(checkValue({ ...ph, kind: "whole" }, "5,5")).toMatchObject({ code: "ERR_WHOLE" });
});

describe("what is wrong with a quantity or a line is said in German", () => {
  test("the scale of a temperature, with a comma in the number", () => {
    const read = parseTemperature("69");
    expect(read.ok ? "" : german(() => wordMeasureFault(read.fault))).toBe(
      "Welche Skala ist „69“? Schreib F dahinter, wenn es Fahrenheit ist (das wären 20,6 °C), C bei Celsius.",
    );
  });

  test.each(MEASURE_FAULT_CODES)("%s", (code) => {
    const text = german(() => measureFaultWords()[code]("„x“", "20 °C"));
    expect(text).not.toMatch(ENGLISH_WORDS);
    expect(text).not.toBe(measureFaultWords()[code]("„x“", "20 °C"));
    expect(text).toMatch(/[.?]$/);
  });

  test("a command there is not, a word out of place, a quote left open", () => {
    expect(
      german(() => [
        lineFaultWords({ code: "ERR_UNKNOWN_COMMAND", word: "plann", near: ["plan", "help"] }),
        lineFaultWords({ code: "ERR_UNKNOWN_COMMAND", word: "xyz", near: [] }),
        lineFaultWords({ code: "ERR_STRAY_WORDS", words: "hallo", command: "plan" }),
        lineFaultWords({ code: "ERR_OPEN_QUOTE", option: "film" }),
        lineFaultWords({ code: "ERR_TWICE", option: "film" }),
        lineFaultWords({ code: "ERR_EMPTY_LINE" }),
      ]),
    ).toEqual([
      "Den Befehl /plann gibt es nicht. Meintest du /plan oder /help?",
      "Den Befehl /xyz gibt es nicht. Versuch /help.",
      "„hallo“ gehört zu keiner Angabe. Schreib Name:Wert, zum Beispiel /plan name:wert.",
      'Das Anführungszeichen nach film: ist nicht geschlossen. Setz ein " ans Ende.',
      "film: steht zweimal da. Schreib es einmal.",
      "Tippe einen Befehl, zum Beispiel /help.",
    ]);
  });
});
