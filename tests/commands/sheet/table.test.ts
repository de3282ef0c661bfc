import { describe, expect, test } from "vitest";
import { sayFileFault } from "../../../commands/sheet/file-words.ts";
import { readFile } from "../../../commands/sheet/file.ts";
import { timeOf } from "../../../commands/sheet/table.ts";
import type { Given } from "../../../commands/sheet/rows.ts";

/*
 * Tables as they are printed and pasted. The film, the developer and the times are invented; that 65, 68, 70 and 75 °F are
 * 18.3, 20, 21.1 and 23.9 °C is arithmetic.
 */

const OURS: Given = {
  cells: { film: "Kelp 50", developer: "Brine", dilution: "1+9", film_speed: "50", source: "label" },
  known: [],
};

/** `°C/10 EI seconds` of every point, sheet by sheet. */
function read(text: string, given = OURS): string[] {
  const found = readFile(text, given);
  if (!found.ok) return found.fault.map(sayFileFault);
  return found.value.sheets.map(
    ({ film, developer, dilution, points }) =>
      `${film}|${developer}|1+${dilution.waterParts}: ${points.map(({ tenthsC, exposureIndex, seconds }) => `${tenthsC} ${exposureIndex} ${seconds}`).join(", ")}`,
  );
}

const WANTED = ["Kelp 50|Brine|1+9: 180 50 660, 200 50 540, 240 50 390, 180 100 780, 200 100 630"];
const CELLS = [
  ["EI", "18 °C", "20 °C", "24 °C"],
  ["50", "11:00", "9:00", "6 1/2"],
  ["100", "13", "10.5 min", "-"],
];

describe("a pasted table", () => {
  test.each([
    ["tabs", "\t"],
    ["semicolons", ";"],
    ["several spaces", "    "],
    ["upright lines", " | "],
  ])("is read with %s between its columns", (_, between) => {
    expect(read(CELLS.map((cells) => cells.join(between)).join("\n"))).toEqual(WANTED);
    expect(read(CELLS.map((cells) => cells.join(between)).join("\r\n"))).toEqual(WANTED);
  });

  test("reads commas where no cell has a decimal one, and quoted cells where one has", () => {
    expect(read('EI,18 °C,20 °C,24 °C\n50,11:00,9:00,"6,5"\n100,13,"10,5 min",')).toEqual(WANTED);
  });

  test("temperatures in Fahrenheit, with and without the sign at each", () => {
    const wanted = ["Kelp 50|Brine|1+9: 183 50 600, 200 50 540, 211 50 480, 239 50 390"];
    expect(read("\t65 °F\t68°F\t70F\t75 °F\n50\t10\t9\t8\t6.5")).toEqual(wanted);
    expect(read("EI;65 F;68;70;75\n50;10;9;8;6,5")).toEqual(wanted);
    expect(read("EI;65;68;70;75\n50;10;9;8;6½")).toEqual(wanted);
    expect(read("EI\t20 °C (68 °F)\n50\t9")).toEqual(["Kelp 50|Brine|1+9: 200 50 540"]);
  });

  test("rows by film, developer and dilution, what is as above left out, in German too", () => {
    const table = [
      "Zeiten in Minuten",
      "Film\tEntwickler\tVerdünnung\tISO\t20 °C\t24 °C",
      "Kelp 50\tBrine\t1+9\t50\t9\t6,5",
      "\t\t1:19\t50\t14\t10",
      "Reef 200\tBrine\t1+9\tISO 200/24°\t8\tn/a",
    ].join("\n");
    const found = readFile(table, {
      cells: { source: "label" },
      known: [],
    });
    // The film's own speed is nowhere: it is asked for, with the line.
    expect(found.ok).toBe(false);
    const given = { cells: { film_speed: "50", source: "label" }, known: [] };
    expect(read(table, given)).toEqual([
      "Kelp 50|Brine|1+9: 200 50 540, 240 50 390",
      "Kelp 50|Brine|1+19: 200 50 840, 240 50 600",
      "Reef 200|Brine|1+9: 200 200 480",
    ]);
    const aside = readFile(table, given);
    expect(aside.ok && aside.value.aside).toEqual([1]);
  });

  test("a first column without a head is told by what stands in it", () => {
    expect(read("\t20 °C\n50\t9\n100\t10:30")).toEqual(["Kelp 50|Brine|1+9: 200 50 540, 200 100 630"]);
    expect(read("   18 °C   20 °C\n50   11   9")).toEqual(["Kelp 50|Brine|1+9: 180 50 660, 200 50 540"]);
    expect(read("Temp.\t20 °C\n1+9\t9\n1+19\t14")).toEqual([
      "Kelp 50|Brine|1+9: 200 50 540",
      "Kelp 50|Brine|1+19: 200 50 840",
    ]);
  });

  test("what the class has stated of a film stays where the table says nothing of it", () => {
    const before = readFile(
      "film,developer,dilution,film_speed,agitation,tabular_grain,temperature,time,source\nKelp 50,Brine,1+9,50,60/10/30,yes,20C,9:00,label",
      { cells: {}, known: [] },
    );
    if (!before.ok) throw new Error("the class's own file is not read");
    const after = readFile("EI\t24 °C\n50\t6:30", {
      ...OURS,
      cells: { ...OURS.cells, film: "kelp 50" },
      known: before.value.sheets,
    });
    expect(after.ok && after.value.sheets[0]).toMatchObject({
      tabularGrain: true,
      agitation: { initialSeconds: 60, burstSeconds: 10, cycleSeconds: 30 },
    });
  });

  test("faults are told with their lines, and all of them", () => {
    expect(read("EI\t18 °C\t20 °C\n50\t11:00\tnine\n100\t13\n200\t1\t2\t3")).toEqual([
      "Line 3: 2 cells where the heads are 3. Write - where there is no time.",
      "Line 4: more cells than the first line has names.",
    ]);
    expect(read("title\n\nEI\t18 °C\t20 °C\n50\t11:00\tnine\n100\t9.30\t9:00")).toEqual([
      expect.stringMatching(/^Line 4: time can't be "nine"/),
      expect.stringMatching(/^Line 5: time can't be "9.30"/),
    ]);
    expect(read("EI\t20 °C\n50\t9", { cells: { source: "label" }, known: [] })).toEqual([
      expect.stringMatching(/^Line 1: the table doesn't say the film/),
      expect.stringMatching(/^Line 1: the table doesn't say the developer/),
      expect.stringMatching(/^Line 1: the table doesn't say the dilution/),
    ]);
    // The hotter bath takes longer: both lines of it are named.
    expect(read("EI\t20 °C\n50\t9:00\n50\t8:00")[0]).toMatch(/^Line 3: \(with line 2\) Two times/);
    expect(read("a shopping list")).toEqual([expect.stringMatching(/^Line 1: no columns can be told/)]);
    expect(read("Grade\t20 °C\n2\t9")[0]).toMatch(/^Line 1: There is no column "Grade"/);
  });

  test.each([
    ["9:30", "9:30"],
    ["9 1/2", "9:30"],
    ["9½", "9:30"],
    ["9 ½ min", "9:30"],
    ["9.5 min", "9:30"],
    ["9,5", "9:30"],
    ["9.5", "9:30"],
    ["9'30\"", "9:30"],
    ["9 min 30 s", "9:30"],
    ["9 3/4", "9:45"],
    ["¾", "0:45"],
    ["570 s", "9:30"],
    ["9", "9:00"],
  ])("%s is %s", (cell, time) => expect(timeOf(cell)).toBe(time));

  test("two decimals of a minute are no time: lists write minutes and seconds so, too", () => {
    expect(timeOf("9.30")).toBe("9.30");
    expect(timeOf("9-11")).toBe("9-11");
  });
});
