import type { Stores } from "./index.ts";
import { isStorageFault } from "./open.ts";

/**
 * Does `work` for each of many, inside the caller's transaction, so that one that fails holds up no other: `onFailure` hears of
 * it once what it wrote is taken back. All share one savepoint, since each copies every page it meets; only where one of them
 * fails is all taken back and done again, each in a savepoint of its own.
 * @throws a fault of the disk, whosever turn it was.
 */
export function eachApart<T, R>(
  { atomically }: Pick<Stores, "atomically">,
  items: readonly T[],
  work: (item: T) => R,
  onFailure: (item: T, error: unknown) => R,
): R[] {
  const tryAll = (some: readonly T[], orElse: (error: unknown) => R[]): R[] => {
    try {
      return atomically(() => some.map(work));
    } catch (error) {
      if (isStorageFault(error)) throw error;
      return orElse(error);
    }
  };
  return tryAll(items, () => items.flatMap((item) => tryAll([item], (error) => [onFailure(item, error)])));
}
