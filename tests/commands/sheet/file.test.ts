import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Sheet, simplifyParts } from "../../../store/shapes/sheet.ts";
import { writeCsv } from "../../../commands/sheet/csv.ts";
import { sortPoints } from "../../../commands/sheet/edit.ts";
import { sayFileFault } from "../../../commands/sheet/file-words.ts";
import { readSheets } from "../../../commands/sheet/file.ts";
import { writeJson } from "../../../commands/sheet/json.ts";
import { aSheet } from "../../support/make.ts";
import { schemeArbitrary, sheetArbitrary } from "../plan/arbitrary.ts";

const HEAD = "film,developer,dilution,film_speed,temperature,exposure_index,time,source";

function read(text: string): Sheet[] {
  const result = readSheets(text);
  if (!result.ok) throw new Error(result.fault.map(sayFileFault).join("\n"));
  return result.value;
}

function faults(text: string): string[] {
  const result = readSheets(text);
  return result.ok ? [] : result.fault.map(sayFileFault);
}

const name = fc
  .oneof(
    fc.string({ minLength: 1, maxLength: 40 }),
    fc.constantFrom(
      "=SUM(A1)",
      '@"x"',
      "-5",
      "🎞️ Höhenfilm",
      "a, b",
      "'); drop table sheets;--",
      "**bold**",
      "+1",
    ),
  )
  .map((text) => text.replace(/\s+/g, " ").trim())
  .filter((text) => text !== "" && !/^'[=+\-@]/.test(text));

const namedSheet = fc
  .record({ sheet: sheetArbitrary, film: name, developer: name, agitation: schemeArbitrary, source: name })
  .map(({ sheet, ...over }) => ({
    ...sheet,
    ...over,
    dilution: simplifyParts(sheet.dilution),
    reuse: sheet.reuse && (sheet.reuse.addPercent > 0 || sheet.reuse.addSeconds > 0) ? sheet.reuse : null,
    factorPer10C: sheet.factorPer10C === null ? null : Math.round(sheet.factorPer10C * 100) / 100,
    points: sortPoints(sheet.points).map((point) => ({ ...point, source: over.source })),
  }));

describe("what is exported is imported the same", () => {
  test("as JSON and as CSV, whatever the names hold", () => {
    fc.assert(
      fc.property(namedSheet, (sheet) => {
        expect(read(writeJson([sheet]))).toEqual([sheet]);
        expect(read(writeCsv([sheet]))).toEqual([sheet]);
      }),
      { numRuns: 300 },
    );
  });

  test("a name that looks like a formula is written so that a table program takes it for text", () => {
    expect(writeCsv([aSheet({ film: "=1+1" })])).toContain("'=1+1");
  });
});

describe("CSV", () => {
  test("one line is a sheet: what is left out is not stated", () => {
    const [sheet] = read(`${HEAD}\nLantern 400,House MQ,1+9,400,20C,,9:00,invented\n`);
    expect(sheet).toMatchObject({
      film: "Lantern 400",
      boxSpeed: 400,
      points: [{ tenthsC: 200, exposureIndex: 400, seconds: 540 }],
      factorPer10C: null,
      tabularGrain: false,
      source: "invented",
    });
  });

  test("lines of one sheet belong together in any order and spelling, with semicolons too", () => {
    const sheets = read(
      [
        HEAD.replaceAll(",", ";"),
        "Lantern 400;House MQ;1+9;400;20C;;9:00;a",
        "Quay 100;House MQ;1+9;100;20C;;8:00;a",
        "LANTERN 400;house mq;1:9;;75F;;6 min 45 s;b",
      ].join("\r\n"),
    );
    expect(sheets.map(({ points }) => points.length)).toEqual([2, 1]);
    expect(sheets[0]?.points[1]).toMatchObject({ tenthsC: 239, seconds: 405 });
  });

  test("every fault of a file is told at once, with its line", () => {
    const found = faults(
      [
        HEAD,
        "Lantern 400,House MQ,1+9,400,20C,,9:00,invented",
        "Lantern 400,House MQ,1+9,200,24C,,7:00,invented",
        "Lantern 400,House MQ,1+9,,68,,nine,invented",
        ",House MQ,1+9,100,20C,,9:00,invented",
        "",
        "Quay 100,House MQ,1+9,100,20C,,9:00,invented",
        "Quay 100,House MQ,1+9,100,24C,,9:30,invented",
        'Quay 100,"two\nlines",1+9,100,20C,,1:00:00:00,invented',
      ].join("\n"),
    );
    expect(found.map((fault) => fault.split(":")[0])).toEqual([
      "Line 3",
      "Line 4",
      "Line 4",
      "Line 5",
      "Line 8",
      "Line 9",
    ]);
    expect(found.join("\n")).toContain("differs from line 2");
    expect(found.join("\n")).toContain("(with line 7)");
  });

  test("wrong columns are named, with those there are", () => {
    expect(faults("film,developer,dillution\na,b,1+9")).toEqual([
      expect.stringContaining('no column "dillution"'),
      expect.stringContaining("dilution is missing"),
      expect.stringContaining("film\\_speed is missing"),
      expect.stringContaining("temperature is missing"),
      expect.stringContaining("time is missing"),
      expect.stringContaining("source is missing"),
    ]);
  });

  test("an open quotation mark, an empty file and a bare heading are refused", () => {
    expect(faults(`${HEAD}\n"Lantern,House MQ`)[0]).toMatch(/quotation mark/);
    expect(faults("").length).toBeGreaterThan(0);
    expect(faults(`${HEAD}\n`)).toEqual(["Line 1: there are no data sheets in it."]);
  });
});

describe("JSON", () => {
  const good = writeJson([aSheet({ reuse: null })]);

  test("what does not fit is named with its line and path, all at once", () => {
    const bad = good
      .replace('"seconds": 540', '"seconds": "540"')
      .replace('"boxSpeed": 400', '"boxSpeed": 0')
      .replace('"tabularGrain": false', '"tabularGrain": false, "colour": "red"');
    const found = faults(bad);
    expect(found).toHaveLength(3);
    const lines = bad.split("\n");
    for (const fault of found) {
      const line = Number(/^Line (\d+)/.exec(fault)?.[1]);
      expect(lines[line - 1], fault).toMatch(/"540"|"boxSpeed": 0|\{/);
    }
    expect(found.join("\n")).toContain("sheets.0.points.0.seconds");
    expect(found.join("\n")).toContain("colour");
  });

  test("broken JSON is refused with the line it breaks in", () => {
    const found = faults(good.replace('"film": ', '"film" '));
    expect(found[0]).toMatch(/^Line 6: this is not JSON/);
  });

  test("someone else's JSON, a sheet twice, a contradiction and a blank name are refused", () => {
    expect(faults('{"films": []}')[0]).toMatch(/sinkside sheets/);
    expect(faults("[1,2]")[0]).toMatch(/sinkside sheets/);
    expect(faults(writeJson([aSheet(), aSheet({ film: "LANTERN 400" })]))[0]).toMatch(/already in line/);
    expect(faults(writeJson([aSheet({ film: "  " })]))[0]).toMatch(/blank/);
    const twice = aSheet().points.concat({ ...aSheet().points[0]!, tenthsC: 240, seconds: 600 });
    expect(faults(writeJson([aSheet({ points: twice })]))[0]).toMatch(/contradict/);
  });
});

test("any text is read or refused with lines, never a crash", () => {
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string({ maxLength: 300 }),
        fc.json(),
        fc.string().map((text) => `${HEAD}\n${text}`),
      ),
      (text) => {
        const result = readSheets(text);
        if (!result.ok) for (const fault of result.fault) expect(sayFileFault(fault)).toMatch(/^Line \d+: ./);
      },
    ),
    { numRuns: 3_000 },
  );
});
