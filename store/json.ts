import { z } from "zod";

/** A column that holds JSON text, read as `schema`. */
export function json<S extends z.ZodType>(schema: S) {
  return z
    .string()
    .transform((text, context): unknown => {
      try {
        return JSON.parse(text);
      } catch {
        context.addIssue({ code: "custom", message: "not JSON" });
        return z.NEVER;
      }
    })
    .pipe(schema);
}
