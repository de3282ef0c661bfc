import { z } from "zod";

/* The ledger of a batch: lines are only ever added. A mistake is put right by a further line that names its reason. */

/** Where used chemistry went; `waste`: a container of its own, for whoever takes chemical waste. What may go where is in ways.ts. */
export const DESTINATIONS = ["silver", "drain", "waste", "supplier"] as const;
export type Destination = (typeof DESTINATIONS)[number];

/** Of bath in ml, of film in sq in. */
const amountSchema = z.int().min(0).max(200_000);
/** ml of what may be little: to 0.1. */
const measuredSchema = z.number().min(0).max(200_000);
const changeSchema = z.int().min(-200_000).max(200_000);
const noteSchema = z.string().max(300);
const reasonSchema = z.string().min(1).max(300);
/** By paper, tenths of a pH. */
const phSchema = z.int().min(0).max(140);

/** By test strip, mg a litre. */
const silverSchema = z.int().min(0).max(20_000);

/** What options are made of. */
export const LINE_PARTS = {
  amount: amountSchema,
  change: changeSchema,
  note: noteSchema,
  reason: reasonSchema,
  phTenths: phSchema,
  silverMgPerLitre: silverSchema,
} as const;

/** What film brings along from the bath before and takes away into the next. */
export const carrySchema = z.object({
  inMl: measuredSchema,
  outMl: measuredSchema,
  /** How much of what came in is this bath itself, by its strength as mixed: 0 for water, 1 for fresh bath. */
  inStrength: z.number().min(0).max(1),
  /** Film whose silver came in with it, sq in. */
  loadSqIn: z.number().min(0).max(200_000),
});
export type Carry = z.output<typeof carrySchema>;

/** First or second of two fixing baths. */
export const placeSchema = z.union([z.literal(1), z.literal(2)]);
export type Place = z.output<typeof placeSchema>;

export const lineBodySchema = z.discriminatedUnion("kind", [
  z.object({
    kind: z.literal("mixed"),
    volumeMl: amountSchema,
    /** How long a scrap of film took to clear in the fresh bath; null: not tested. */
    clearingSeconds: z.int().positive().nullable(),
  }),
  z.object({
    kind: z.literal("used"),
    /** The number said aloud; null where no run of the bot's was behind it. */
    runNumber: z.int().nullable(),
    step: z.int().nullable(),
    /** Taken out for good, to 0.1 ml; 0 where the bath is poured back. */
    ml: measuredSchema,
    /** Film passed, sq in. */
    areaSqIn: amountSchema,
    isTabular: z.boolean(),
    films: amountSchema,
    /** Carried over with the film, as the class had it then; absent or null: not reckoned. */
    carry: carrySchema.nullish(),
    /** Which of two fixing baths it was; absent or null: the only one. */
    place: placeSchema.nullish(),
    /** The `allowed` line that let a worn-out bath be used; null: it was fit for use. */
    allowedBy: z.int().nullable(),
  }),
  z.object({
    kind: z.literal("tested"),
    clearingSeconds: z.int().positive().nullable(),
    phTenths: phSchema.nullable(),
    silverMgPerLitre: silverSchema.nullable(),
    note: noteSchema,
  }),
  z.object({
    kind: z.literal("topped"),
    addedMl: amountSchema,
    /** Used bath taken out to make room. */
    removedMl: amountSchema,
    to: z.enum(DESTINATIONS).nullable(),
    /** Replenisher, which takes film off the bath's load by its area; else fresh bath, which thins the load. */
    isReplenisher: z.boolean().optional(),
    note: noteSchema,
  }),
  z.object({
    kind: z.literal("discarded"),
    ml: amountSchema,
    to: z.enum(DESTINATIONS),
    /** All of it: the batch is no more. */
    isAll: z.boolean(),
    note: noteSchema,
  }),
  z.object({
    kind: z.literal("corrected"),
    /** The line that counts no more. */
    reverses: z.int().nullable(),
    /** More (or, below 0, less) in the bottle than the lines say. */
    ml: changeSchema,
    /** More (or less) film passed than the lines say. */
    areaSqIn: changeSchema,
    reason: reasonSchema,
  }),
  /** Somebody may use the bath for one tank load although it is worn out. */
  z.object({ kind: z.literal("allowed"), reason: reasonSchema }),
]);
export type LineBody = z.output<typeof lineBodySchema>;
export type LineKind = LineBody["kind"];

export interface LedgerLine {
  readonly id: number;
  readonly batchId: number;
  readonly runId: number | null;
  readonly atMs: number;
  readonly personId: string | null;
  readonly personName: string;
  /** Whom an `allowed` line speaks of. */
  readonly aboutId: string | null;
  readonly aboutName: string | null;
  readonly body: LineBody;
}

/** The lines that count: those taken back by a later one left out. */
export function countingLines(lines: readonly LedgerLine[]): LedgerLine[] {
  const reversed = new Set<number>();
  for (const { body } of lines)
    if (body.kind === "corrected" && body.reverses !== null) reversed.add(body.reverses);
  return lines.filter(({ id }) => !reversed.has(id));
}

/** The allowance this person has for one more tank load, the oldest first. */
export function openAllowance(lines: readonly LedgerLine[], personId: string): LedgerLine | undefined {
  const counting = countingLines(lines);
  const spent = new Set(counting.flatMap(({ body }) => (body.kind === "used" ? [body.allowedBy] : [])));
  return counting.find(
    ({ id, body, aboutId }) => body.kind === "allowed" && aboutId === personId && !spent.has(id),
  );
}
