/** A list in lists of at most `size`. Pure. */
export function chunk<T>(list: readonly T[], size: number): T[][] {
  const chunks: T[][] = [];
  for (let at = 0; at < list.length; at += size) chunks.push(list.slice(at, at + size));
  return chunks;
}
