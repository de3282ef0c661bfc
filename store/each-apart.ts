import type { Stores } from "./index.ts";
import { isStorageFault } from "./open.ts";

/**
 * Does `work` for each of many, inside the caller's transaction and each in a savepoint of its own, so that one that fails
 * holds up no other: `onFailure` hears of it once what it wrote is taken back.
 * @throws a fault of the disk, whosever turn it was.
 */
export function eachApart<T, R>(
  { atomically }: Pick<Stores, "atomically">,
  items: readonly T[],
  work: (item: T) => R,
  onFailure: (item: T, error: unknown) => R,
): R[] {
  return items.map((item) => {
    try {
      return atomically(() => work(item));
    } catch (error) {
      if (isStorageFault(error)) throw error;
      return onFailure(item, error);
    }
  });
}
