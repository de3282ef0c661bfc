/* Rows that can't be read, an older version's or a bug's: each takes only itself out, and somebody is told. */

export const UNREADABLE_KINDS = [
  "tank",
  "sheet",
  "plan",
  "run",
  "batch",
  "roll",
  "shelf",
  "handover",
  "enlarger",
  "paper",
  "print",
  "habit",
] as const;
export type UnreadableKind = (typeof UNREADABLE_KINDS)[number];

/** Kinds that a class works with; the others are the past. */
export const IN_USE: readonly UnreadableKind[] = [
  "tank",
  "sheet",
  "run",
  "batch",
  "shelf",
  "habit",
  "enlarger",
  "paper",
];

/** What is wrong with a row. */
export interface RowFault {
  /** The field as the shape names it, its unit at its end: `volumeMl`. */
  readonly field: string;
  /** What stands there, where that is one value. */
  readonly value: string | number | boolean | null;
  /** The limit it breaks, where it is that. */
  readonly least: number | null;
  readonly most: number | null;
}

export interface Unreadable {
  readonly kind: UnreadableKind;
  /** The row's own id; the class's for a habit. */
  readonly id: number;
  /** As it is said aloud (7 of R7), where the kind has numbers. */
  readonly number: number | null;
  /** What else it is known by: a film and a developer, a product, a habit's field. */
  readonly name: string | null;
  readonly personId: string | null;
  /** Of a run: not over. */
  readonly isOpen: boolean;
  readonly faults: readonly RowFault[];
}

/** One that was put out of the way; what stood in its row is kept. */
export interface SetAside extends Omit<Unreadable, "id" | "isOpen" | "faults"> {
  readonly atMs: number;
  /** As it stood. */
  readonly body: string;
}
