import { tankSchema } from "../../store/shapes/tank.ts";
import { fail, ok, type Result } from "../result.ts";
import { limitsOf } from "../speech/shaped.ts";

/* Tank numbers as people write them: `3`, `1-12`, `1, 2, 5-7`, `T4`, `1 bis 3 und 5`. */

export const MOST_TANK_NUMBER = limitsOf(tankSchema.shape.number).most;
/** More than a darkroom holds; so that a slip of the finger doesn't make a thousand. */
export const MOST_TANKS_AT_ONCE = 60;

export type NumbersFault =
  | { readonly code: "ERR_NO_NUMBERS"; readonly typed: string }
  | { readonly code: "ERR_NUMBER_RANGE"; readonly typed: string }
  | { readonly code: "ERR_TOO_MANY_NUMBERS"; readonly count: number };

/** Ascending, each once. */
export function parseNumbers(text: string): Result<number[], NumbersFault> {
  const numbers = new Set<number>();
  for (const part of text.split(/[,;]|\b(?:and|und)\b/i)) {
    const match = /^\s*t?\s*(\d{1,4})\s*(?:(?:-|–|to|bis)\s*t?\s*(\d{1,4})\s*)?$/i.exec(part);
    if (!match) return fail({ code: "ERR_NO_NUMBERS", typed: text });
    const from = Number(match[1]);
    const to = Number(match[2] ?? match[1]);
    if (from < 1 || to > MOST_TANK_NUMBER || to < from)
      return fail({ code: "ERR_NUMBER_RANGE", typed: part.trim() });
    for (let number = from; number <= to; number += 1) numbers.add(number);
  }
  if (numbers.size > MOST_TANKS_AT_ONCE) return fail({ code: "ERR_TOO_MANY_NUMBERS", count: numbers.size });
  return ok([...numbers].sort((a, b) => a - b));
}

/** `1-4, 7`. */
export function formatNumbers(numbers: readonly number[]): string {
  const parts: string[] = [];
  let start = 0;
  numbers.forEach((number, at) => {
    if (numbers[at + 1] === number + 1) return;
    const first = numbers[start] ?? number;
    parts.push(first === number ? `${number}` : `${first}-${number}`);
    start = at + 1;
  });
  return parts.join(", ");
}
