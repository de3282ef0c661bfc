import type { Share, ShareStore } from "../../store/shares.ts";

/*
 * How much of the disk one person may fill in a day, and one class: far above use, so that only a machine or a bad joke meets it.
 * Kept with the next call, so that a start goes on counting: what one costs the disk is a flush it needs anyway.
 */

const DAY_MS = 24 * 3600_000;
const MB = 1_000_000;

/** An evening of two hundred calls with their answers is 1 MB; a film's contact sheet 2 MB. */
export const SHARES = {
  person: { words: 8 * MB, photos: 60 * MB },
  class: { words: 120 * MB, photos: 600 * MB },
} as const;
/** Calls for a film under way are so much longer answered: it must not be spoilt for what its owner wrote before. */
const FOR_FILM = 4;

export type Kind = Share["kind"];
export type Spent = "person" | "class";

export interface Asked {
  readonly classKey: string;
  readonly personId: string;
  readonly isStaff: boolean;
  /** Whether it is for a film under way. */
  readonly isForFilm: boolean;
  readonly kind: Kind;
}

export interface Shares {
  /** Whose share of today is used up; undefined: there is some left. */
  spent(asked: Asked, now: number): Spent | undefined;
  add(asked: Pick<Asked, "classKey" | "personId" | "kind">, bytes: number, now: number): void;
  /** Writes down what was added; a part of the caller's transaction. */
  keep(now: number): void;
}

export function createShares(store: ShareStore): Shares {
  let day = -Infinity;
  let used = new Map<string, Share>();
  let unkept = new Set<string>();
  const nameOf = ({ classKey, personId, kind }: Omit<Share, "bytes">): string =>
    JSON.stringify([classKey, personId, kind]);
  const usedBy = (whose: Omit<Share, "bytes">): number => used.get(nameOf(whose))?.bytes ?? 0;

  function turn(now: number): void {
    const today = Math.floor(now / DAY_MS);
    if (today === day) return;
    day = today;
    used = new Map(store.of(today).map((share) => [nameOf(share), share]));
    unkept = new Set();
  }

  return {
    spent({ classKey, personId, isStaff, isForFilm, kind }, now) {
      turn(now);
      const times = isForFilm ? FOR_FILM : 1;
      if (!isStaff && usedBy({ classKey, personId, kind }) >= SHARES.person[kind] * times) return "person";
      return usedBy({ classKey, personId: null, kind }) >= SHARES.class[kind] * times ? "class" : undefined;
    },
    add({ classKey, personId, kind }, bytes, now) {
      turn(now);
      for (const whose of [
        { classKey, personId: null, kind },
        { classKey, personId, kind },
      ]) {
        used.set(nameOf(whose), { ...whose, bytes: usedBy(whose) + bytes });
        unkept.add(nameOf(whose));
      }
    },
    keep(now) {
      turn(now);
      if (unkept.size === 0) return;
      store.forgetBefore(day);
      for (const name of unkept) {
        const share = used.get(name);
        if (share) store.put(day, share);
      }
      unkept.clear();
    },
  };
}
