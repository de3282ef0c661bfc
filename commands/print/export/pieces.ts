import type { Stores } from "../../../store/index.ts";
import type { LogFile, LogSlice } from "../../../store/shapes/log-file.ts";
import { createWriter as createRollWriter, toRecord as toRollRecord } from "../../roll/export/file.ts";
import type { LogWriter } from "../../roll/export/log-format.ts";
import { createWriter as createPrintWriter, toRecord as toPrintRecord } from "./file.ts";

/*
 * A log as a file, piece by piece: of rolls or of prints. Between two pieces nothing is held: what is logged meanwhile is not in
 * the file (it has higher numbers), what is erased meanwhile is in no piece that follows, and what is changed meanwhile is
 * written as it is when its piece is made.
 */

/** A piece is made within two milliseconds: calls come between. */
const ENTRIES_A_PIECE = 25;

export type LogStores = Pick<Stores, "rolls" | "prints">;

export interface Portion {
  /** Empty where none of the entries that were looked through fits. */
  readonly text: string;
  /** Below which number the next one goes on; null: this is the last. */
  readonly next: number | null;
}

/** The file's beginning and end, and what comes between, made as it is asked for. */
export interface OpenedLog {
  readonly head: string;
  readonly portions: Iterable<Portion>;
  readonly tail: string;
}

export function openLog({ rolls, prints }: LogStores, file: LogFile): OpenedLog {
  const { classId, format } = file;
  return file.of === "print"
    ? walk(
        file,
        (below) => prints.slice(classId, file.filter, below, ENTRIES_A_PIECE),
        createPrintWriter(format),
        toPrintRecord,
      )
    : walk(
        file,
        (below) => rolls.slice(classId, file.filter, below, ENTRIES_A_PIECE),
        createRollWriter(format),
        toRollRecord,
      );
}

function walk<T, R>(
  file: LogFile,
  slice: (below: number) => LogSlice<T>,
  { head, write, tail }: LogWriter<R>,
  toRecord: (entry: T) => R,
): OpenedLog {
  function* portions(): Generator<Portion> {
    let below: number | null = file.below;
    while (below !== null) {
      const { list, next } = slice(below);
      yield { text: write(list.map(toRecord)), next };
      below = next;
    }
  }
  return { head, portions: portions(), tail };
}

export function* piecesOf(stores: LogStores, file: LogFile): Generator<string> {
  const { head, portions, tail } = openLog(stores, file);
  yield head;
  for (const { text } of portions) yield text;
  yield tail;
}

export const logName = ({ of, format }: Pick<LogFile, "of" | "format">): string =>
  `${of === "print" ? "prints" : "log"}.${format}`;

export const LOG_TYPES = { csv: "text/csv", json: "application/json" } as const;
