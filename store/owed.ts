import type { z } from "zod";
import type { owedBodySchema } from "./outbox-body.ts";

/* A message that is owed, as those who say it get it. */

/** Whose a message is, and the moment it is for. */
interface Whose {
  /** At most 25 characters, and never used for anything else: chats recognise a repeat by it. */
  readonly key: string;
  readonly classId: number;
  /** null: to the class. */
  readonly personId: string | null;
  readonly runId: number | null;
  readonly dueAt: number;
}

/** What the order of saying is decided by. */
export interface Ready extends Whose {
  readonly id: number;
  readonly priority: number;
  readonly usefulUntil: number | null;
  readonly bundle: string | null;
  readonly tries: number;
}

type State = "owed" | "sending" | "sent" | "failed" | "stale";

export interface Owed extends Whose {
  readonly id: number;
  readonly usefulUntil: number | null;
  readonly decidedAt: number;
  readonly body: z.output<typeof owedBodySchema>;
  readonly state: State;
  readonly tries: number;
  readonly firstTryAt: number | null;
  /** How many calls of its run before it went unsaid, for it to tell. */
  readonly missed: number;
  readonly sentAt: number | null;
  readonly ref: string | null;
}

export interface NewOwed extends Whose {
  /** One of `PRIORITIES`. */
  readonly priority: number;
  readonly decidedAt: number;
  /** Later than this it helps nobody and is kept only as a record; null: always useful. */
  readonly usefulUntil: number | null;
  /** Not to be said before this instant (silence hours). */
  readonly notBefore?: number;
  /** How many calls of its run it stands for, beside itself. */
  readonly missed?: number;
  readonly body: z.input<typeof owedBodySchema>;
}
