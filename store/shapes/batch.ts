import { z } from "zod";
import type { Step, StepKind } from "./plan.ts";
import { dilutionSchema } from "./sheet.ts";

/* What a batch is. What has become of it is never stored: it follows from its ledger (ledger.ts, state.ts). */

export const FILM_BATHS = ["developer", "stop", "fixer", "wash-aid", "wetting-agent"] as const;
/** Baths that paper goes through: film never does, and paper through none of film's. */
export const PAPER_BATHS = ["paper-developer", "paper-stop", "paper-fixer", "paper-wash-aid"] as const;
export const BATCH_KINDS = [...FILM_BATHS, ...PAPER_BATHS] as const;
export type FilmBath = (typeof FILM_BATHS)[number];
export type PaperBath = (typeof PAPER_BATHS)[number];
export type BatchKind = FilmBath | PaperBath;

export const isForPaper = (kind: BatchKind): kind is PaperBath =>
  (PAPER_BATHS as readonly BatchKind[]).includes(kind);
/** Whether it takes silver up, which is collected. */
export const isFixer = (kind: BatchKind): boolean => kind === "fixer" || kind === "paper-fixer";

/** The step of a plan that a batch of this kind serves. */
export const STEP_OF_KIND = {
  developer: "develop",
  stop: "stop",
  fixer: "fix",
  "wash-aid": "wash-aid",
  "wetting-agent": "wetting-agent",
  "paper-developer": "develop",
  "paper-stop": "stop",
  "paper-fixer": "fix",
  "paper-wash-aid": "wash-aid",
} as const satisfies Record<BatchKind, StepKind>;

export function kindOfStep({ kind: step, medium }: Pick<Step, "kind" | "medium">): BatchKind | undefined {
  const kinds: readonly BatchKind[] = medium === "paper" ? PAPER_BATHS : FILM_BATHS;
  return kinds.find((kind) => STEP_OF_KIND[kind] === step);
}

/** `once`: portioned, used and thrown away, counted in ml. `again`: poured back, counted in film area. */
export const USAGES = ["once", "again"] as const;
export type Usage = (typeof USAGES)[number];

export const batchBodySchema = z.object({
  dilution: dilutionSchema,
  /** As mixed. */
  volumeMl: z.int().min(1).max(200_000),
  /** What the bottle holds: clearly less in it than this, and it ages as a part-full one. */
  bottleMl: z.int().min(1).max(200_000),
  usage: z.enum(USAGES),
  /** Shelf life in hours, in a full and in a part-full bottle; null: not known. */
  fullHours: z.int().min(1).nullable(),
  partHours: z.int().min(1).nullable(),
  /** Film or paper a litre takes, sq in (a roll of 135-36 or 120 is 80, and so is a sheet of 8x10 in); null: no limit is known. */
  capacitySqInPerLitre: z.int().min(1).nullable(),
  /** The same for tabular-grain film, which loads a fixer more; of a bath for paper: for fibre paper. */
  tabularSqInPerLitre: z.int().min(1).nullable(),
  /** Silver by strip at which a fixer is exhausted, mg in a litre; absent or null: no cap is known. */
  silverCapMgPerLitre: z.int().min(100).max(20_000).nullish(),
  /** ml that a roll carried over in this class when the bath was mixed; absent or null: not reckoned. */
  carryMlPerRoll: z.number().min(0).max(100).nullish(),
  /** ml of replenisher for a roll (80 sq in) of film; absent or null: it is not replenished. */
  replenishMlPerRoll: z.int().min(1).max(500).nullish(),
  /** Where capacity and shelf life come from. */
  source: z.string().min(1).max(300),
});

export const batchSchema = batchBodySchema.extend({
  id: z.int(),
  classId: z.int(),
  /** The label: B7. Never used again in this class. */
  number: z.int().min(1),
  kind: z.enum(BATCH_KINDS),
  product: z.string().min(1).max(60),
  mixedAtMs: z.int(),
});
export type Batch = z.output<typeof batchSchema>;
export type NewBatch = Omit<Batch, "id" | "number">;
