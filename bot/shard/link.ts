import { z } from "zod";

/* What the first process and the others tell each other. Instants are ms since the epoch. */

export const toFirst = z.discriminatedUnion("kind", [
  /** Calls its classes' cues from now on. */
  z.object({ kind: z.literal("started") }),
  /** Wants to identify itself to the platform, which takes one in five seconds of a bot. */
  z.object({ kind: z.literal("turn"), id: z.int() }),
  /** When a person was last seen in a class of this process, null: never; and whether the message is its own. */
  z.object({ kind: z.literal("seen"), id: z.int(), at: z.int().nullable(), hasSaid: z.boolean() }),
]);
/** What a process knows of a person, and of a message that something of theirs came from. */
export interface Known {
  readonly at: number | null;
  readonly hasSaid: boolean;
}
export type KnownOf = (personId: string, ref: string | null) => Known;

export type ToFirst = z.output<typeof toFirst>;

export const toOther = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("go"), id: z.int() }),
  z.object({ kind: z.literal("who"), id: z.int(), personId: z.string(), ref: z.string().nullable() }),
  /** A direct message's command or button, as the platform sent it. */
  z.object({ kind: z.literal("interaction"), interaction: z.record(z.string(), z.unknown()) }),
]);
export type ToOther = z.output<typeof toOther>;
