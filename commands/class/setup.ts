import type { ThreadPowers } from "../define.ts";
import type { Habits, SchoolClass } from "../../store/shapes/school.ts";

/* What a class needs to be told once, in the order in which it is asked. Pure. */

export const SETUP_KEYS = [
  "name",
  "zone",
  "channel",
  "roles",
  "bell",
  "sinks",
  "washplaces",
  "dryslots",
  "tanks",
  "fix",
  "wash",
  "agitation",
  "sheets",
] as const;
export type SetupKey = (typeof SETUP_KEYS)[number];
/** The parts of the overview: those among them whose default serves until somebody sets another. */
export type ShownKey = SetupKey | "language" | "closedpages" | "threads";

export interface SetupFacts {
  readonly class: SchoolClass;
  /** The word in front of the class's key: `room`, `discord`. */
  readonly chat: string;
  readonly channelRef: string | null;
  /** As people see it; null where it can't be told from where the call came from. */
  readonly channelName: string | null;
  readonly missingPermissions: readonly string[];
  /** Of the class's channel; null where it can't be told. */
  readonly threads: ThreadPowers | null;
  readonly tanks: number;
  readonly sheets: number;
  readonly joinCode: string | null;
}

/** Parts that are asked of this class; a room has no channels, and its roles go by passphrase. */
export function keysFor({ chat }: SetupFacts): SetupKey[] {
  return SETUP_KEYS.filter((key) => chat !== "room" || (key !== "channel" && key !== "roles"));
}

export function isSet(key: SetupKey, facts: SetupFacts): boolean {
  switch (key) {
    case "channel":
      // The first one a call came from stands in for it until somebody chooses.
      return (
        facts.channelRef !== null &&
        facts.missingPermissions.length === 0 &&
        facts.class.habits.answered.includes("channel")
      );
    case "bell":
      return facts.class.habits.periods.length > 0;
    case "tanks":
      return facts.tanks > 0;
    case "sheets":
      return facts.sheets > 0;
    default:
      return facts.class.habits.answered.includes(key);
  }
}

/** Marks parts as answered; each may be answered again. */
export function answer(habits: Habits, keys: readonly SetupKey[]): Habits {
  return { ...habits, answered: [...new Set([...habits.answered, ...keys])] };
}
