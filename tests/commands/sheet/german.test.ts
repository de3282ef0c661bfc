import { describe, expect, it } from "vitest";
import { speaking } from "../../../commands/speech/language.ts";
import { COLUMNS, likeOf } from "../../../commands/sheet/columns.ts";
import type { FileFault } from "../../../commands/sheet/file-faults.ts";
import { sayFileFault, saySheetFault } from "../../../commands/sheet/file-words.ts";
import { readSheets } from "../../../commands/sheet/file.ts";
import { writeJson } from "../../../commands/sheet/json.ts";
import { pickSheet } from "../../../commands/sheet/pick.ts";
import { mergeSheets } from "../../../commands/sheet/merge.ts";
import * as imports from "../../../commands/sheet/import/reply.ts";
import * as replies from "../../../commands/sheet/reply.ts";
import type { Point, Sheet } from "../../../store/shapes/sheet.ts";
import { forms } from "../../../commands/sheet/words/form.de.ts";
import { ENGLISH_WORDS } from "../../support/english.ts";
import { aSheet } from "../../support/make.ts";
import { createRoom, type Room } from "../../support/room.ts";
import { expectForms } from "../../support/forms.ts";

/* The German terms of the trade are common practice, no source; the sentences are our own. */

const german = <T>(work: () => T): T => speaking("de", work);

function germanRoom(): Room {
  const room = createRoom();
  room.says("Iris", "/mine language de", "teacher");
  return room;
}

const ADD = '/sheet add film:"Test 400" developer:"Test MQ" dilution:1:9 temp:20C time:9:00';
const LINES = [
  "/sheet list",
  "/sheet list xyz",
  '/sheet show film:"Lantern 400"',
  '/sheet show film:"Lantern 400" dilution:1+1',
  '/sheet show film:"Lantern 400" dilution:1+40',
  "/sheet show film:Nobody",
  "/sheet show film:Lantern",
  "/sheet export",
  "/sheet export format:json film:quay",
  "/sheet export film:nobody",
  ADD,
  `${ADD} speed:400 factor:2.3 tabular:yes reuse:1/10%/10 coldest:18 hottest:24 minimum:20 ml source:x`,
  '/sheet show film:"Test 400"',
  ADD.replace("9:00", "8:00"),
  ADD.replace("20C", "22C").replace("9:00", "9:30"),
  ADD.replace("20C", "26C").replace("9:00", "6:00"),
  ADD.replace("20C", "90C"),
  ADD.replace("9:00", "0:05"),
  `${ADD} coldest:24 hottest:18`,
  `${ADD} reuse:often`,
  `${ADD} replace:yes`,
  '/sheet import file:"x"',
  '/sheet import file:"{"',
  `/sheet import file:'{"films": []}'`,
];

/** Names of columns and what stands in quotation marks are typed in English in every language. */
function worded(text: string): string {
  const names = COLUMNS.map(({ name }) => name.replace(/_/g, "\\\\_")).join("|");
  return text
    .replace(/`[^`]*`/g, "")
    .replace(/„[^“]*“/g, "")
    .replace(/"[^"]*"/g, "")
    .replace(new RegExp(`\\b(${names})\\b`, "g"), "");
}

describe("every call of /sheet in German", () => {
  it("answers without an English word, buttons and pictures included", () => {
    const [room, english] = [germanRoom(), createRoom()];
    for (const line of LINES) {
      const { reply } = room.asks("Iris", line, "teacher");
      const pictures = (reply.pictures ?? []).flatMap(({ alt, svg }) => [alt, svg.replace(/<[^>]*>/g, "\n")]);
      const said = [reply.text, ...(reply.actions ?? []).map(({ label }) => label), ...pictures].join("\n");
      expect([line, ENGLISH_WORDS.exec(worded(said))?.[0]]).toEqual([line, undefined]);
      expect(said).not.toBe(english.asks("Iris", line, "teacher").reply.text);
    }
  });

  it("keeps codes, fields, files and the lines of buttons as they are in English", () => {
    const [de, en] = [germanRoom(), createRoom()];
    const facts = ({ code, reply }: ReturnType<Room["asks"]>): unknown => [
      code,
      reply.fields,
      reply.attachments,
      (reply.actions ?? []).map(({ line }) => line),
    ];
    for (const line of LINES)
      expect(facts(de.asks("Iris", line, "teacher"))).toEqual(facts(en.asks("Iris", line, "teacher")));
  });

  it("counts one and several", () => {
    const room = germanRoom();
    expect(room.says("Iris", `${ADD} speed:400`, "teacher")).toBe(
      "**9:00** bei 20 °C steht auf dem Datenblatt von Test 400 in Test MQ 1+9. Es hat jetzt 1 Zeit.\n" +
        "Ich lese die Verdünnung als 1+9: 1:9 heißt bei Herstellern 1+9.",
    );
    expect(
      room.says("Iris", ADD.replace("1:9", "1+9").replace("20C", "21,5C").replace("9:00", "8:00"), "teacher"),
    ).toBe(
      "**8:00** bei 21,5 °C steht auf dem Datenblatt von Test 400 in Test MQ 1+9. Es hat jetzt 2 Zeiten.",
    );
    expect(room.says("Iris", '/sheet show film:"Test 400"')).toContain("(eingetragen von Iris)\n");
    const sheets = [aSheet(), aSheet({ film: "Quay 100" })];
    const imported = (known: readonly Sheet[]): string =>
      german(() => imports.imported(mergeSheets(known, sheets)).text);
    expect(imported([]).split("\n")).toEqual([
      "Eingelesen: 2 neue Datenblätter und 2 neue Zeiten. `/sheet list` zeigt sie.",
      "- Lantern 400 in House MQ 1+1, EI 400: 9:00 bei 20 °C",
      "- Quay 100 in House MQ 1+1, EI 400: 9:00 bei 20 °C",
      "Vergleich sie mit dem Papier.",
    ]);
    expect(imported(sheets)).toBe("In der Datei steht nichts Neues: Alle ihre Zeiten gibt es schon.");
    expect(german(() => replies.listed(sheets, undefined).text)).toMatch(/^2 Datenblätter:\n/);
    expect(german(() => replies.exported(sheets.slice(1), "csv", "").text)).toMatch(
      /^1 Datenblatt als CSV\. /,
    );
  });

  it("asks which sheet, or offers near names", () => {
    const sheets = [aSheet({ film: "Quay 100" }), aSheet({ film: "Quay 200" })];
    const fault = (film: string): string =>
      german(() => {
        const picked = pickSheet(sheets, { film });
        return picked.ok ? "" : picked.fault.text;
      });
    expect(fault("Quay 300")).toBe(
      "Einen Film „Quay 300“ gibt es nicht. Meintest du Quay 100 oder Quay 200?",
    );
    expect(fault("Zzz")).toBe(
      "Einen Film „Zzz“ gibt es nicht. Die 2 Datenblätter, die es gibt, zeigt `/sheet list`.",
    );
  });
});

describe("the faults of a file in German", () => {
  const HEAD = "film,developer,dilution,film_speed,temperature,exposure_index,time,source";
  const said = (text: string): string[] =>
    german(() => {
      const read = readSheets(text);
      return read.ok ? [] : read.fault.map(sayFileFault);
    });

  it("name the line, the column and how to write it", () => {
    expect(said(`${HEAD}\nLantern 400,House MQ,1+9,400,20C,,neun,erfunden`)).toEqual([
      "Zeile 2: time kann nicht „neun“ sein. Schreib dort: 9:00 oder 540 s, von 0:15 bis 3:00:00.",
    ]);
    expect(said(`${HEAD}\n`)).toEqual(["Zeile 1: Es stehen keine Datenblätter darin."]);
    expect(said(writeJson([aSheet()]).replace('"boxSpeed": 400', '"boxSpeed": 0'))).toEqual([
      expect.stringMatching(/^Zeile \d+: Bei „sheets\.0\.boxSpeed“ erwarte ich mindestens 1\.$/),
    ]);
    expect(said(writeJson([aSheet({ film: "  " })]))[0]).toContain("erwarte ich Namen, die nicht leer sind.");
    expect(said(writeJson([aSheet()]).replace('"film": ', '"film" '))[0]).toMatch(
      /^Zeile 6: Das ist kein JSON \(ein Doppelpunkt fehlt\)\.$/,
    );
    expect(german(() => imports.importFaults([{ code: "ERR_NO_SHEETS", line: 1 }]))).toMatch(
      /^Es wurde nichts eingelesen\. 1 Fehler in der Datei:\n- Zeile 1: /,
    );
  });

  it("each have a sentence of their own, without an English word", () => {
    const [first, second]: Point[] = [
      { tenthsC: 200, exposureIndex: 400, seconds: 540, source: "x" },
      { tenthsC: 245, exposureIndex: 400, seconds: 600, source: "x" },
    ] as const;
    if (!first || !second) throw new Error("no points");
    const sheetFaults = [
      { code: "ERR_CONTRADICTION", first, second },
      { code: "ERR_TWO_TIMES", first, second },
      { code: "ERR_TWO_TIMES", first, second: first },
      { code: "ERR_OUTSIDE_RANGE", point: first, min: 210, max: 240 },
      { code: "ERR_OUTSIDE_RANGE", point: first, min: -Infinity, max: 190 },
      { code: "ERR_OUTSIDE_RANGE", point: first, min: 210, max: Infinity },
      { code: "ERR_EMPTY_RANGE", min: 240, max: 180 },
      { code: "ERR_SCHEME" },
    ] as const;
    const faults: FileFault[] = [
      { code: "ERR_NO_SHEETS", line: 1 },
      { code: "ERR_QUOTES", line: 1 },
      { code: "ERR_TOO_MANY_CELLS", line: 1 },
      { code: "ERR_TOO_LONG", line: 1 },
      { code: "ERR_TOO_MANY_POINTS", line: 1 },
      { code: "ERR_COLUMN_UNKNOWN", line: 1, name: "xx", known: ["yy", "zz"] },
      { code: "ERR_COLUMN_TWICE", line: 1, name: "xx" },
      { code: "ERR_COLUMN_MISSING", line: 1, name: "xx" },
      { code: "ERR_CELL_EMPTY", line: 1, name: "xx" },
      ...COLUMNS.map(({ name }): FileFault => ({
        code: "ERR_CELL",
        line: 1,
        name: "xx",
        text: "yy",
        like: german(() => likeOf(name)),
      })),
      { code: "ERR_DIFFERS", line: 1, name: "xx", otherLine: 2 },
      { code: "ERR_SHEET_TWICE", line: 1, otherLine: 2 },
      { code: "ERR_JSON", line: 1, what: "yy" },
      { code: "ERR_NOT_OUR_FORMAT", line: 1 },
      { code: "ERR_VALUE", line: 1, path: "", what: "yy" },
      ...sheetFaults.map((fault): FileFault => ({ code: "ERR_SHEET", line: 1, fault, otherLine: 2 })),
    ];
    for (const fault of faults) {
      const [de, en] = [german(() => sayFileFault(fault)), sayFileFault(fault)];
      expect([fault, de]).not.toEqual([fault, en]);
      expect([de, ENGLISH_WORDS.exec(worded(de))?.[0]]).toEqual([de, undefined]);
    }
    expect(german(() => saySheetFault(sheetFaults[0]))).toBe(
      "Diese beiden Zeilen widersprechen sich: 9:00 bei 20 °C, EI 400, aber 10:00 bei 24,5 °C, EI 400. " +
        "Ein wärmerer Entwickler braucht nie länger, ein niedrigerer Belichtungsindex auch nicht. Prüf beide in der Quelle.",
    );
  });

  it("say what JSON lacks in German whatever is broken in it", () => {
    const good = writeJson([aSheet()]);
    for (let at = 1; at < good.length; at += 7) {
      for (const fault of said(`${good.slice(0, at)}@${good.slice(at + 1)}`))
        expect([at, ENGLISH_WORDS.exec(worded(fault))?.[0]]).toEqual([at, undefined]);
    }
    expect(said("{")).toEqual(["Zeile 1: Das ist kein JSON (eine } fehlt)."]);
  });
});

describe("the forms of /sheet", () => {
  it("have German for each option, at most 100 characters", () => {
    expectForms("sheet", forms);
  });
});
