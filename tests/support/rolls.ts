import { recordRolls } from "../../commands/roll/record.ts";
import { createWriter, type LogRecord } from "../../commands/roll/export/file.ts";
import { type LogStores, piecesOf } from "../../commands/print/export/pieces.ts";
import type { Reply } from "../../commands/define.ts";
import type { LogFormat } from "../../store/shapes/log-file.ts";
import type { NewRoll, Roll, RollBody } from "../../store/shapes/roll.ts";
import { aRun, START } from "./make.ts";

/* Makers of rolls as the log has them. All of it is invented. */

export function aNewRoll(over: Partial<NewRoll> = {}, body: Partial<RollBody> = {}): NewRoll {
  const [roll] = recordRolls(
    aRun({
      phase: { kind: "finished", atMs: START + 3_600_000 },
      marks: [
        { step: 0, plannedSeconds: 540, startedAtMs: START, endedAtMs: START + 546_000 },
        {
          step: 1,
          plannedSeconds: 30,
          startedAtMs: START + 546_000,
          endedAtMs: START + 580_000,
        },
        {
          step: 3,
          plannedSeconds: 300,
          startedAtMs: START + 620_000,
          endedAtMs: START + 925_000,
        },
      ],
    }),
    "Mina",
    { late: 0, missed: 0 },
  );
  if (!roll) throw new Error("no roll was recorded");
  return { ...roll, ...over, body: { ...roll.body, ...body } };
}

export function aRoll(over: Partial<Roll> = {}, body: Partial<RollBody> = {}): Roll {
  return { ...aNewRoll({}, body), id: 1, number: 1, rating: null, fault: "", note: "", ...over };
}

/** A file of the log, its records in portions of so many. */
export function writeLog(records: readonly LogRecord[], format: LogFormat, portion = records.length): string {
  const writer = createWriter(format);
  const pieces = [writer.head];
  for (let from = 0; from < records.length; from += portion)
    pieces.push(writer.write(records.slice(from, from + portion)));
  return [...pieces, writer.tail].join("");
}

/** The file that an answer offers. */
export const takeLog = (stores: LogStores, { log }: Reply): string =>
  log ? [...piecesOf(stores, log)].join("") : "";
