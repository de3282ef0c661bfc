import type { Stores } from "../../../store/index.ts";
import type { Message } from "../../../store/messages.ts";
import type { FeedBody } from "./feed.ts";

/* Writes the feed. What is asked for in one turn of the loop is kept in one transaction, since each costs a disk sync. */

export interface Entry {
  readonly classId: number;
  readonly personId: string | null;
  readonly authorId: string | null;
  readonly key: string;
  readonly body: FeedBody;
}

export interface FeedWriter {
  /** Resolves with the entry's id once it is on disk and pushed. An entry of a known key is neither kept nor pushed again. */
  write(entry: Entry): Promise<number>;
}

interface Asked {
  readonly entry: Entry;
  resolve(id: number): void;
  reject(error: unknown): void;
}

export function createFeedWriter(
  stores: Pick<Stores, "messages" | "atomically">,
  now: () => number,
  push: (message: Message) => void,
): FeedWriter {
  let waiting: Asked[] = [];

  function flush(): void {
    const batch = waiting;
    waiting = [];
    try {
      const kept = stores.atomically(() =>
        batch.map(({ entry }) => {
          const message = { ...entry, at: now() };
          return { message, ...stores.messages.add(message) };
        }),
      );
      for (const { message, id, fresh } of kept) if (fresh) push({ ...message, id });
      batch.forEach(({ resolve }, index) => resolve(kept[index]?.id ?? 0));
    } catch (error) {
      for (const { reject } of batch) reject(error);
    }
  }

  return {
    write: (entry) =>
      new Promise((resolve, reject) => {
        if (waiting.length === 0) setImmediate(flush);
        waiting.push({ entry, resolve, reject });
      }),
  };
}
