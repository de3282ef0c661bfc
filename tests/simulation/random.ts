/** A seeded generator (mulberry32, public domain): one number makes a whole simulated evening again. */
export interface Random {
  /** From 0 to below 1. */
  next(): number;
  /** A whole number from `least` to `most`, both included. */
  whole(least: number, most: number): number;
  chance(probability: number): boolean;
  pick<T>(list: readonly T[]): T;
  /** Waiting times as they are in life: often short, seldom long. */
  wait(meanMs: number): number;
}

export function createRandom(seed: number): Random {
  let state = seed | 0;
  function next(): number {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  }
  const whole = (least: number, most: number): number => least + Math.floor(next() * (most - least + 1));
  return {
    next,
    whole,
    chance: (probability) => next() < probability,
    pick: (list) => list[whole(0, list.length - 1)] as (typeof list)[number],
    wait: (meanMs) => Math.ceil(-Math.log(1 - next()) * meanMs),
  };
}

/** A seed of one's own by environment, else the usual one, or a fresh one where there is none; always printed. */
export function chooseSeed(name: string, usual = Date.now() % 1_000_000_000): number {
  const given = process.env[name];
  const seed = given === undefined || given === "" ? usual : Number(given);
  console.log(`${name}=${seed}`);
  return seed;
}
