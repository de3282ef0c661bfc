import type { RollSlice, RollStore } from "../../../store/rolls.ts";
import type { LogFile } from "../../../store/shapes/roll.ts";
import { createLogWriter, toRecord } from "./file.ts";

/*
 * The log as a file, piece by piece. Between two pieces nothing is held: what is logged meanwhile is not in the file (it has
 * higher numbers), what is erased meanwhile is in no piece that follows, and a roll that is changed meanwhile is written as it
 * is when its piece is made.
 */

/** A piece is made within two milliseconds: calls come between. */
const ROLLS_A_PIECE = 25;

export function* slicesOf(rolls: Pick<RollStore, "slice">, file: LogFile): Generator<RollSlice> {
  let below: number | null = file.below;
  while (below !== null) {
    const slice = rolls.slice(file.classId, file.filter, below, ROLLS_A_PIECE);
    yield slice;
    below = slice.next;
  }
}

/** Some are empty: of the rolls that were looked through none fits. */
export function* piecesOf(rolls: Pick<RollStore, "slice">, file: LogFile): Generator<string> {
  const writer = createLogWriter(file.format);
  yield writer.head;
  for (const slice of slicesOf(rolls, file)) yield writer.write(slice.rolls.map(toRecord));
  yield writer.tail;
}

export const logName = ({ format }: Pick<LogFile, "format">): string => `log.${format}`;

export const LOG_TYPES = { csv: "text/csv", json: "application/json" } as const;
