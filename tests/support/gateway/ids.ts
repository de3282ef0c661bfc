/** The platform's epoch: the first second of 2015. */
const EPOCH_MS = 1_420_070_400_000;

/** Ids as the platform makes them: time inside, 17 to 19 digits, never the same twice. Shorter ones would not do: the
 * client takes numbers of 17 to 19 digits for ids, and counts rate limits by them. */
export function createIds(now: () => number): () => string {
  let counter = 0n;
  return () => {
    counter += 1n;
    return String((BigInt(now() - EPOCH_MS) << 22n) + (counter & 0x3fffffn));
  };
}
