import { setTimeout as wait } from "node:timers/promises";
import { createRandom } from "../../simulation/random.ts";

/** How long a request and its answer are on their way together, log-normally distributed. */
export interface Trip {
  readonly medianMs: number;
  readonly p99Ms: number;
  readonly seed: number;
}

/** The 99th percentile of the standard normal distribution. */
const Z99 = 2.3263;

/** Draws for each request how long one way takes, half its round trip, so that requests overtake each other as outside. */
export function createTrips({ medianMs, p99Ms, seed }: Trip): () => () => Promise<void> {
  const { next } = createRandom(seed);
  const sigma = Math.log(p99Ms / medianMs) / Z99;
  /** Box and Muller's method. */
  const drawNormal = (): number => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
  return () => {
    const wayMs = (medianMs / 2) * Math.exp(sigma * drawNormal());
    return () => wait(wayMs);
  };
}
