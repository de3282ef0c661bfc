import type { Ready } from "../../store/owed.ts";
import { isCall } from "../../store/shapes/priority.ts";
import type { Target } from "../chat/port.ts";

/* Which messages go out as one. Pure. */

/** One message of a chat: usually one that is owed; in a class's channel all that are due together. */
export interface Unit {
  /** The key it is said under. */
  readonly key: string;
  readonly classId: number;
  readonly ids: readonly number[];
  /** Of which run it speaks; of several the first. */
  readonly runId: number | null;
  /** Set where it was tried as a bundle, or is to be one. */
  readonly bundle: string | null;
  /** It went out as this very bundle before, perhaps; then it must again. */
  readonly isTried: boolean;
  readonly target: Target;
  readonly dueAt: number;
  readonly priority: number;
}

/** In one channel what is due within this long is said together: its own moment stands beside each line. */
const TOGETHER_MS = 1000;
/** Names and lines of so many fit one message. */
const MOST_IN_BUNDLE = 30;

/**
 * Groups what is ready, in its order. What was tried as a bundle stays that bundle, under its key; in a shared channel
 * cues due together become one, led by the first.
 */
export function groupReady(ready: readonly Ready[], targetOf: (each: Ready) => Target): Unit[] {
  const units = new Map<string, Ready[]>();
  const open = new Map<string, { key: string; dueAt: number }>();
  for (const each of ready) {
    // The chat knows a key that was tried, and would take whatever else came under it for said.
    const isAlone = each.tries > 0;
    const name =
      each.bundle ?? (isAlone ? undefined : openUnit(each, targetOf(each), open, units)) ?? each.key;
    const members = units.get(name);
    if (members) members.push(each);
    else units.set(name, [each]);
  }
  return [...units].flatMap(([key, members]) => {
    const [first] = members;
    if (!first) return [];
    const isBundle = first.bundle !== null || members.length > 1;
    return [
      {
        key,
        classId: first.classId,
        ids: members.map(({ id }) => id),
        runId: first.runId,
        bundle: isBundle ? key : null,
        isTried: first.bundle !== null,
        target: targetOf(first),
        dueAt: first.dueAt,
        priority: first.priority,
      },
    ];
  });
}

function openUnit(
  each: Ready,
  target: Target,
  open: Map<string, { key: string; dueAt: number }>,
  units: ReadonlyMap<string, Ready[]>,
): string | undefined {
  if (!target.isShared || !isCall(each)) return undefined;
  const current = open.get(target.channel);
  const fits =
    current &&
    each.dueAt <= current.dueAt + TOGETHER_MS &&
    (units.get(current.key)?.length ?? 0) < MOST_IN_BUNDLE;
  if (fits) return current.key;
  open.set(target.channel, { key: each.key, dueAt: each.dueAt });
  return each.key;
}
