/* How many places of one kind are taken over time. */

export interface Use {
  /** Whether `amount` more are free all the time from `from` to before `to`. */
  fits(from: number, to: number, amount: number): boolean;
  /** The earliest instant from `from` on at which `amount` more are free for so long; null where that never comes. */
  next(from: number, seconds: number, amount: number): number | null;
  take(from: number, to: number, amount: number): void;
  /** The first change after `at`; null where there is none. */
  changeAfter(at: number): number | null;
  /** The instants at which the number taken changes, ascending. */
  changes(): readonly number[];
}

/** `capacity` null: as many as are wanted. What is taken may exceed it: a room may be fuller than its set-up says. */
export function createUse(capacity: number | null): Use {
  // levels[i] holds from times[i] to times[i + 1]; before the first and from the last on, nothing is taken.
  const times: number[] = [];
  const levels: number[] = [];

  /** Index of the last change at or before `at`; -1 where there is none. */
  function indexAt(at: number): number {
    let low = 0;
    let high = times.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((times[middle] ?? 0) <= at) low = middle + 1;
      else high = middle;
    }
    return low - 1;
  }

  function split(at: number): void {
    const index = indexAt(at);
    if (times[index] === at) return;
    times.splice(index + 1, 0, at);
    levels.splice(index + 1, 0, levels[index] ?? 0);
  }

  return {
    fits(from, to, amount) {
      if (capacity === null || to <= from) return true;
      const most = capacity - amount;
      let index = indexAt(from);
      if ((levels[index] ?? 0) > most) return false;
      for (index += 1; index < times.length && (times[index] ?? 0) < to; index += 1) {
        if ((levels[index] ?? 0) > most) return false;
      }
      return most >= 0;
    },
    next(from, seconds, amount) {
      if (capacity === null || seconds <= 0) return from;
      const most = capacity - amount;
      if (most < 0) return null;
      let start = from;
      for (let index = Math.max(0, indexAt(from)); index < times.length; index += 1) {
        if ((times[index] ?? 0) >= start + seconds) break;
        if ((levels[index] ?? 0) > most) start = Math.max(from, times[index + 1] ?? start);
      }
      return start;
    },
    take(from, to, amount) {
      if (capacity === null || to <= from) return;
      split(from);
      split(to);
      for (let index = indexAt(from); (times[index] ?? to) < to; index += 1) {
        levels[index] = (levels[index] ?? 0) + amount;
      }
    },
    changeAfter: (at) => times[indexAt(at) + 1] ?? null,
    changes: () => times,
  };
}
