import { pino } from "pino";

type Fields = Readonly<Record<string, unknown>>;

/** Fields first, message last; never what people wrote. */
export interface Log {
  debug(fields: Fields, message: string): void;
  info(fields: Fields, message: string): void;
  warn(fields: Fields, message: string): void;
  error(fields: Fields, message: string): void;
}

/** JSON lines on the standard error stream, so that the terminal's own line stays readable. */
export function createLog(level: string): Log {
  return pino({ level, base: null }, pino.destination({ fd: 2, sync: true }));
}
