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

/** Columns of a strict table hold what was written; of many rows only the bodies are examined. */
export const bodyRead =
  <S extends z.ZodType>(schema: S) =>
  <R extends { readonly body: string }>(row: R): (Omit<R, "body"> & { body: z.output<S> })[] => {
    const { data } = schema.safeParse(JSON.parse(row.body));
    return data ? [Object.assign(row, { body: data })] : [];
  };
