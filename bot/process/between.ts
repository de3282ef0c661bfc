import { setTimeout as wait } from "node:timers/promises";

/** As long as a portion of what is overdue takes: a class is called before the next part is read. */
const PAUSE_MS = 5;

/** Reads a part of the program, or does what needs one, once those who wait have been called: nobody is while it is read. */
export async function betweenCalls<T>(work: () => T | Promise<T>): Promise<T> {
  await wait(PAUSE_MS);
  return work();
}
