import papa from "papaparse";
import { z } from "zod";
import type { LogFormat } from "../../../store/shapes/log-file.ts";

/*
 * A log as a file in our own format: a record for each entry, the unit in each name. What was written can be read back whole.
 *
 * JSON: { "format": …, "version": 1, <list>: [ … ] }, a line for each record.
 * CSV: the same names as columns, in the order of the schema. A text that a spreadsheet could take for a formula has an
 * apostrophe before it.
 */

/** A file that is written piece by piece: its head, portions of its records, its end. */
export interface LogWriter<R> {
  readonly head: string;
  /** Portions follow each other; one may be empty. */
  write(records: readonly R[]): string;
  readonly tail: string;
}

/** How a column's cells are written and read that hold neither a text nor a number. */
export interface Cell {
  write(value: unknown): string;
  read(cell: string): unknown;
}

export const JSON_CELL: Cell = {
  write: (value) => guardCell(JSON.stringify(value)),
  read: (cell) => JSON.parse(bareCell(cell)) as unknown,
};

/** One of our own words, or nothing. */
export const WORD_CELL: Cell = {
  write: (value) => (value === null ? "" : String(value)),
  read: (cell) => (cell === "" ? null : cell),
};

export interface LogKind<S extends z.ZodRawShape> {
  /** What the file says it is. */
  readonly name: string;
  /** What its records are called in JSON. */
  readonly list: string;
  readonly schema: z.ZodObject<S>;
  readonly cells: Readonly<Record<string, Cell>>;
}

export function createLogFormat<S extends z.ZodRawShape>({ name, list, schema, cells }: LogKind<S>) {
  type Entry = z.output<z.ZodObject<S>>;
  const columns = Object.keys(schema.shape);
  const cellOf = (column: string): Cell =>
    cells[column] ?? ((schema.shape[column] as z.ZodType).safeParse("x").success ? TEXT_CELL : NUMBER_CELL);

  function createJsonWriter(): LogWriter<Entry> {
    let between = "\n";
    return {
      head: `{"format":${JSON.stringify(name)},"version":1,"${list}":[`,
      write(records) {
        let text = "";
        for (const record of records) {
          text += between + JSON.stringify(record);
          between = ",\n";
        }
        return text;
      },
      tail: "\n]}\n",
    };
  }

  function createCsvWriter(): LogWriter<Entry> {
    const inOrder = columns.map((column) => ({ column, ...cellOf(column) }));
    const toRow = (record: Readonly<Record<string, unknown>>): string[] =>
      inOrder.map(({ column, write }) => write(record[column]));
    return {
      head: writeRows([columns]),
      write: (records) => (records.length === 0 ? "" : writeRows(records.map(toRow))),
      tail: "",
    };
  }

  return {
    createWriter: (format: LogFormat) => (format === "json" ? createJsonWriter() : createCsvWriter()),
    /** Throws where it is not such a file. */
    readJson(text: string): Entry[] {
      const head = { format: z.literal(name), version: z.literal(1) };
      const file = z.strictObject({ ...head, [list]: z.array(schema) }).parse(JSON.parse(text));
      return (file as Record<string, unknown>)[list] as Entry[];
    },
    /** Throws where it is not such a file. */
    readCsv(text: string): Entry[] {
      const { data } = papa.parse<string[]>(text.replace(/^\ufeff/, "").trimEnd(), { delimiter: "," });
      const [head = [], ...rows] = data;
      return rows.map((row) =>
        schema.parse(
          Object.fromEntries(head.map((column, at) => [column, cellOf(column).read(row[at] ?? "")])),
        ),
      );
    },
  };
}

const writeRows = (rows: string[][]): string => `${papa.unparse(rows)}\r\n`;

/**
 * A spreadsheet must not take a text for a formula; nor a part of it, where it splits cells at semicolons or tabs, as those
 * of many countries do whatever the quotes say.
 */
export function guardCell(text: string): string {
  const inside = text.replaceAll(/([;\t\r\n]\s*)(['=+\-@])/g, "$1'$2");
  return /^['=+\-@\t\r]/.test(text) ? `'${inside}` : inside;
}

/** The reverse. */
export function bareCell(cell: string): string {
  const inside = cell.startsWith("'") ? cell.slice(1) : cell;
  return inside.replaceAll(/([;\t\r\n]\s*)'(['=+\-@])/g, "$1$2");
}

const TEXT_CELL: Cell = { write: (value) => guardCell(String(value)), read: bareCell };
const NUMBER_CELL: Cell = {
  write: (value) => (value === null ? "" : String(value)),
  read: (cell) => (cell === "" ? null : Number(cell)),
};
