/*
 * How much of the disk one person may fill in a day, and one class: far above use, so that only a machine or a bad joke meets it.
 * Counted by this process: a start counts anew.
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

export type Kind = "words" | "photos";
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
}

export function createShares(): Shares {
  let day = 0;
  let used = new Map<string, number>();
  const usedBy = (name: string): number => used.get(name) ?? 0;
  const nameOf = (who: string, kind: Kind): string => `${kind} ${who}`;

  function turn(now: number): void {
    const today = Math.floor(now / DAY_MS);
    if (today === day) return;
    day = today;
    used = new Map();
  }

  return {
    spent({ classKey, personId, isStaff, isForFilm, kind }, now) {
      turn(now);
      const times = isForFilm ? FOR_FILM : 1;
      if (!isStaff && usedBy(nameOf(`${classKey} ${personId}`, kind)) >= SHARES.person[kind] * times)
        return "person";
      return usedBy(nameOf(classKey, kind)) >= SHARES.class[kind] * times ? "class" : undefined;
    },
    add({ classKey, personId, kind }, bytes, now) {
      turn(now);
      for (const name of [nameOf(classKey, kind), nameOf(`${classKey} ${personId}`, kind)])
        used.set(name, usedBy(name) + bytes);
    },
  };
}
