/** The platform takes one identify of a bot in five seconds. Source: Discord's documentation, "Gateway", max_concurrency. */
const APART_MS = 5000;
const MARGIN_MS = 250;

/** Hands out turns to identify, one after the other; the first at once. */
export function createTurns(apartMs = APART_MS + MARGIN_MS): () => Promise<void> {
  let last: Promise<void> = Promise.resolve();
  return () => {
    const turn = last;
    last = turn.then(() => new Promise((resolve) => setTimeout(resolve, apartMs).unref()));
    return turn;
  };
}
