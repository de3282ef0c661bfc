import type { z } from "zod";

/*
 * One row that can't be read takes only itself out: lists go on without it, and what looks for it by name finds nothing.
 * The unreadable store names it.
 */

export function readable<S extends z.ZodType>(schema: S, rows: readonly unknown[]): z.output<S>[] {
  return rows.flatMap((row) => {
    const read = schema.safeParse(row);
    return read.success ? [read.data] : [];
  });
}

export function readableOne<S extends z.ZodType>(schema: S, row: unknown): z.output<S> | undefined {
  const read = row === undefined ? undefined : schema.safeParse(row);
  return read?.success ? read.data : undefined;
}
