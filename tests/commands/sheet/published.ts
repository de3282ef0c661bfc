import { TABLE_1A, TABLE_1C } from "../plan/tables.ts";

/* Published rows of three times and more, each with its source: what the spreads between rows are calibrated on. */

export interface Cell {
  readonly tenthsC: number;
  readonly exposureIndex: number;
  readonly seconds: number;
}
export interface Series {
  readonly name: string;
  readonly source: string;
  /** A: maker or armed service; B: handbook; C: somebody's copy. */
  readonly grade: "A" | "B" | "C" | "from memory";
  readonly cells: readonly Cell[];
}

const at = (tenthsC: number, minutes: number, exposureIndex = 100): Cell => ({
  tenthsC,
  exposureIndex,
  seconds: minutes * 60,
});
/** 63, 68, 70, 76 and 80 °F. */
const TO_TENTHS = [172, 200, 211, 244, 267];
const TO_33B =
  "T.O. 33B-1-1, Table 6-16, hand tank, radiographic film (chemical-biological.tpub.com/TM-1-1500-335-23/css/TM-1-1500-335-23_582.htm)";

/** Several temperatures, one exposure index. */
export const BY_TEMPERATURE: readonly Series[] = [
  ...TABLE_1A.map(({ film, developer, source, grade, cells }) => ({
    name: `${film}, ${developer}`,
    source,
    grade,
    cells: cells.flatMap(({ tenthsC, exposureIndex, minutes }) =>
      minutes === null ? [] : [at(tenthsC, minutes, exposureIndex)],
    ),
  })),
  {
    name: "radiographic, normal",
    source: TO_33B,
    grade: "A",
    cells: [6, 5, 4.5, 3.75, 3.25].map((minutes, column) => at(TO_TENTHS[column] ?? 0, minutes)),
  },
  {
    name: "radiographic, maximum",
    source: TO_33B,
    grade: "A",
    cells: [9, 8, 7.5, 6.75, 6.25].map((minutes, column) => at(TO_TENTHS[column] ?? 0, minutes)),
  },
  {
    // Contradicts the table above (5 1/2 and 3 3/4 min at 68 and 76 °F): both stand.
    name: "radiographic, another list",
    source: "haaram.com, x-ray time and temperature list",
    grade: "C",
    // 65, 68, 70, 72 and 76 °F.
    cells: [at(183, 6), at(200, 5), at(211, 4), at(222, 4), at(244, 3)],
  },
];

const memory = (name: string, minutes: readonly number[]): Series => ({
  name,
  source: "a maker's sheet, from memory, medium",
  grade: "from memory",
  cells: minutes.map((each, stop) => at(200, each, 400 * 2 ** stop)),
});

/** Several exposure indexes at one temperature. */
export const BY_STOP: readonly Series[] = [
  ...TABLE_1C.flatMap(({ film, source, grade, lines }) =>
    ([200, 240] as const).map((tenthsC) => ({
      name: `${film}, ${tenthsC / 10} °C`,
      source,
      grade,
      cells: lines.flatMap(({ exposureIndex, minutes20, minutes24 }) => {
        const minutes = tenthsC === 200 ? minutes20 : minutes24;
        return minutes === null ? [] : [at(tenthsC, minutes, exposureIndex)];
      }),
    })),
  ),
  memory("400 film, one MQ stock", [7.5, 10.5, 14]),
  memory("400 film, one PQ stock", [6.5, 8, 11, 16]),
].filter(({ cells }) => cells.length > 2);
