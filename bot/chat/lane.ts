/*
 * Long work in small portions, beside calls: whoever goes on does so in a turn of the event loop of their own, one after the
 * other, so that however many there are, what is due waits for one portion at most.
 */

export interface Lane {
  /** What `portions` gives, one each time its turn comes. Whoever stops listening ends it. */
  through<T>(portions: Iterable<T>): AsyncGenerator<T, void, undefined>;
}

export function createLane(): Lane {
  let last: Promise<void> = Promise.resolve();
  const turn = (): Promise<void> => {
    last = last.then(() => new Promise((resolve) => void setImmediate(resolve)));
    return last;
  };
  return {
    async *through(portions) {
      await turn();
      for (const portion of portions) {
        yield portion;
        await turn();
      }
    },
  };
}
