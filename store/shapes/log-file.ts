import { z } from "zod";
import { printFilterSchema } from "./print.ts";
import { rollFilterSchema } from "./roll.ts";

export const LOG_FORMATS = ["csv", "json"] as const;
export type LogFormat = (typeof LOG_FORMATS)[number];

const shared = {
  classId: z.int(),
  format: z.enum(LOG_FORMATS),
  /** Only entries with smaller numbers: what is logged later is not in it. */
  below: z.int(),
  /** The call that makes it, as a line. With `before:` it goes on elsewhere. */
  line: z.string(),
};

/** A log as a file that is made while it is taken. Of those that are kept, older ones do not say of what: of rolls. */
export const logFileSchema = z.union([
  z.object({ of: z.literal("print"), filter: printFilterSchema, ...shared }),
  z.object({ of: z.literal("roll").default("roll"), filter: rollFilterSchema, ...shared }),
]);
export type LogFile = z.output<typeof logFileSchema>;

/** One portion of a walk through a log. */
export interface LogSlice<T> {
  /** Of so many rows as were asked for those that fit, with numbers below the one given; perhaps none. */
  readonly list: readonly T[];
  /** Below which number to go on; null: there are no more. */
  readonly next: number | null;
}
