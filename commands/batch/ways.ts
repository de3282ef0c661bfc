import type { BatchKind } from "../../store/shapes/batch.ts";
import type { Destination } from "../../store/shapes/ledger.ts";

/*
 * Where a used bath may go. The silver collection takes fixer and nothing else: acid into it sets sulfur dioxide free and
 * throws out sulfur (Anchell, The Darkroom Cookbook, 3rd ed., p. 171), an alkaline developer sets ammonia free from a rapid
 * fixer (from memory), and whatever thins it makes the silver harder to win back. Fixer never goes to the drain without
 * recovery (Rutgers, Weill Cornell EHS). Among the ways that are open, local rules decide.
 */
export const WAYS = {
  developer: ["drain", "waste", "supplier"],
  stop: ["drain", "waste", "supplier"],
  fixer: ["silver", "supplier"],
  "wash-aid": ["drain", "waste", "supplier"],
  "wetting-agent": ["drain", "waste", "supplier"],
  "paper-developer": ["drain", "waste", "supplier"],
  "paper-stop": ["drain", "waste", "supplier"],
  "paper-fixer": ["silver", "supplier"],
  "paper-wash-aid": ["drain", "waste", "supplier"],
} as const satisfies Record<BatchKind, readonly Destination[]>;

export function mayGo(kind: BatchKind, to: Destination): boolean {
  return (WAYS[kind] as readonly Destination[]).includes(to);
}
