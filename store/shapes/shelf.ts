import { z } from "zod";
import { dilutionSchema } from "./sheet.ts";
import { BATCH_KINDS } from "./batch.ts";

/* Concentrates and powders on the class's shelf. */

export const FORMS = ["liquid", "powder"] as const;

export const packSchema = z.object({
  kind: z.enum(BATCH_KINDS),
  form: z.enum(FORMS),
  /** Of a liquid, what one bottle of concentrate holds; of a powder, the stock one pack makes: it can't be split. */
  packMl: z.int().min(1).max(200_000),
  /** Working strength; of a powder, the stock. */
  dilution: dilutionSchema,
});
export type Pack = z.output<typeof packSchema>;

/** What is there of one product. */
export interface Shelved {
  readonly product: string;
  readonly pack: Pack;
  /** Concentrate, or stock that the powder still makes. */
  readonly leftMl: number;
}

/** Concentrate (or powder's stock) that a mix takes, whole ml. */
export function concentrateFor(volumeMl: number, dilution: Pack["dilution"]): number {
  return Math.round(
    (volumeMl * dilution.concentrateParts) / (dilution.concentrateParts + dilution.waterParts),
  );
}

/** Used fixer that went to the silver collection. */
export const collectedSchema = z.object({
  ml: z.int().min(0),
  lowMg: z.int().min(0),
  highMg: z.int().min(0),
  /** ml whose silver was measured, not estimated. */
  measuredMl: z.int().min(0),
});

export type Collected = z.output<typeof collectedSchema>;
