import { z } from "zod";
import { sheetSchema } from "./sheet.ts";

/** A sheet that an import made another; `before` null: it made it. */
export const changeSchema = z.object({ before: sheetSchema.nullable(), after: sheetSchema });
export type Change = z.output<typeof changeSchema>;

/** What an import changed, so that it can be taken back. */
export const importBodySchema = z.object({ changes: z.array(changeSchema).min(1) });
