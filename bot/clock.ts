/** The only source of time. Handlers and pure code get the instant of their call as a number. */
export interface Clock {
  /** Milliseconds since the epoch. */
  now(): number;
}

export function createClock(): Clock {
  return { now: () => Date.now() };
}
