import type { CommandCard } from "../room/card.ts";
import type { Store } from "./state.ts";

/** Where they don't come, the room is asked without, and says in words what is missing. */
const MOST_WAIT_MS = 3000;

/** What the commands' forms are made of. It comes after all that a call needs; a key that may open a form waits for it. */
export function cardsOf(store: Store): Promise<readonly CommandCard[]> {
  const { cards } = store.get();
  if (cards.length > 0) return Promise.resolve(cards);
  return new Promise((resolve) => {
    const end = (): void => {
      clearTimeout(late);
      leave();
      resolve(store.get().cards);
    };
    const late = setTimeout(end, MOST_WAIT_MS);
    const leave = store.subscribe(() => {
      if (store.get().cards.length > 0) end();
    });
  });
}
