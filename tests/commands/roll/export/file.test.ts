import * as fc from "fast-check";
import papa from "papaparse";
import { describe, expect, it } from "vitest";
import { readCsv, readJson, toRecord, type LogRecord } from "../../../../commands/roll/export/file.ts";
import { LOG_FORMATS } from "../../../../store/shapes/log-file.ts";
import { aRoll, writeLog } from "../../../support/rolls.ts";

const text = fc.string({ unit: "grapheme", maxLength: 30 });

const records: fc.Arbitrary<LogRecord[]> = fc.array(
  fc
    .record({
      note: text,
      person: text,
      film: text,
      reason: text,
      fault: text,
      rating: fc.option(fc.integer({ min: 1, max: 5 })),
      tank: fc.option(fc.integer({ min: 1, max: 99 })),
    })
    .map((over) => ({
      ...toRecord(aRoll()),
      ...over,
    })),
  { minLength: 1, maxLength: 5 },
);

describe("the log as a file", () => {
  it("comes back from JSON as it went", () => {
    fc.assert(
      fc.property(records, (list) => {
        expect(readJson(writeLog(list, "json"))).toEqual(list);
      }),
    );
  });

  it("comes back from CSV as it went, whatever people wrote", () => {
    fc.assert(
      fc.property(records, (list) => {
        expect(readCsv(writeLog(list, "csv"))).toEqual(list);
      }),
    );
    for (const note of ["=1+1", "'=1", "-", "a,b", 'say "x"', "two\nlines", "\ttab", "  ", "'"]) {
      const list = [{ ...toRecord(aRoll()), note }];
      expect(readCsv(writeLog(list, "csv"))).toEqual(list);
    }
  });

  it("is the same in whatever portions it was written, and whole when it is empty", () => {
    fc.assert(
      fc.property(records, fc.integer({ min: 1, max: 4 }), (list, portion) => {
        for (const format of LOG_FORMATS)
          expect(writeLog(list, format, portion)).toBe(writeLog(list, format));
      }),
    );
    expect(readJson(writeLog([], "json"))).toEqual([]);
    expect(readCsv(writeLog([], "csv"))).toEqual([]);
  });

  it("lets no table program take a text for a formula", () => {
    const cells = papa
      .parse<string[]>(writeLog([toRecord(aRoll({ note: '=HYPERLINK("x")', personName: "@x" }))], "csv"))
      .data.flat();
    expect(cells.filter((cell) => /^[=+\-@\t\r]/.test(cell))).toEqual([]);
  });

  it("names the unit in each column and gives nobody's inner number away", () => {
    const csv = writeLog([toRecord(aRoll({ personId: "room:secret" }))], "csv");
    expect(csv.split("\r\n")[0]).toContain("temperature_c");
    expect(csv).not.toContain("room:secret");
    expect(csv).toContain("2026-01-15T19:00:00.000Z");
  });

  it("refuses a file that is not one", () => {
    expect(() => readJson("{}")).toThrow();
    expect(() => readCsv("roll,person\n1,Mina")).toThrow();
  });
});

it("lets no part of a text become a formula where a table program splits at semicolons or tabs", () => {
  const record = { ...toRecord(aRoll()), note: "thin;=1+1; +2;'=3\t-4", person: "a\t@b" };
  const file = writeLog([record], "csv");
  for (const delimiter of [";", "\t"]) {
    const cells = papa.parse<string[]>(file, { delimiter, quoteChar: "\u0000" }).data.flat();
    expect(cells.filter((cell) => /^\s*[=+\-@]/.test(cell))).toEqual([]);
  }
  expect(readCsv(file)).toEqual([record]);
});
