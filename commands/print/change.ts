import { ok } from "../result.ts";
import type { Parse } from "./stops.ts";

/** Something that was one way and is another. null: what it was is known elsewhere. */
export interface Change<T> {
  readonly from: T | null;
  readonly to: T;
}

const BETWEEN = /^(?:from |von )?(.+?)\s*(?:\bto\b|\bauf\b|\bbis\b|->|→|>)\s*(.+)$/i;

/** `8 to 11`, `von 8 auf 11`, `8 > 11`; `11` alone. */
export const parseChange =
  <T>(parse: Parse<T>): Parse<Change<T>> =>
  (text) => {
    const parts = BETWEEN.exec(text.trim());
    if (!parts) {
      const only = parse(text);
      return only.ok ? ok({ from: null, to: only.value }) : only;
    }
    const from = parse(parts[1] ?? "");
    const to = parse(parts[2] ?? "");
    if (!from.ok) return from;
    return to.ok ? ok({ from: from.value, to: to.value }) : to;
  };
