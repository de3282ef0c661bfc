import { createRequire } from "node:module";
import { createLines } from "./lines.ts";

type Fields = Readonly<Record<string, unknown>>;

/** Fields first, message last; never what people wrote. */
export interface Log {
  debug(fields: Fields, message: string): void;
  info(fields: Fields, message: string): void;
  warn(fields: Fields, message: string): void;
  error(fields: Fields, message: string): void;
}

const LEVELS = ["debug", "info", "warn", "error"] as const;

/** Where nobody reads the log for so long, its newest lines are dropped rather than the memory filled. */
const MOST_WAITING_BYTES = 8 * 1024 * 1024;

/**
 * JSON lines on the standard error stream, so that the terminal's own line stays readable. Written beside the work: whoever
 * reads them slowly must not hold up a cue. At the end of the process what waits is written at once. What writes them is read
 * at the first line: that takes a while, and calls that are owed are usually made before it.
 */
export function createLog(level: string): Log {
  let made: Log | undefined;
  const make = (): Log => {
    const { pino } = createRequire(import.meta.url)("pino") as typeof import("pino");
    return pino({ level, base: null }, createLines(2, MOST_WAITING_BYTES));
  };
  const least = LEVELS.findIndex((each) => each === level);
  const entries = LEVELS.map((each, at) => [
    each,
    (fields: Fields, message: string) => at < least || (made ??= make())[each](fields, message),
  ]);
  return Object.fromEntries(entries) as Log;
}
