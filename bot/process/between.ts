import { setTimeout as wait } from "node:timers/promises";

/** As long as a portion of what is overdue takes: a class is called before the next part is read. */
const PAUSE_MS = 5;

/** Reads a part of the program once those who wait have been called: nothing else is done while one is read. */
export async function betweenCalls<T>(read: () => Promise<T>): Promise<T> {
  await wait(PAUSE_MS);
  return read();
}
