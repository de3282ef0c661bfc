import { type KnownOf, toOther, type ToFirst } from "./link.ts";

/* Another process's side of the link to the first one. */

export interface First {
  waitForTurn(): Promise<void>;
  /** Direct messages that are for a class of this process. */
  onHanded(handle: (interaction: object) => void): void;
  /** Cues are called from now on. */
  started(): void;
}

export interface FirstDeps {
  readonly knownOf: KnownOf;
  /** The first process is gone: whoever took its place starts its own others. */
  onGone(): void;
}

export function linkToFirst({ knownOf, onGone }: FirstDeps): First {
  const waiting = new Map<number, () => void>();
  let turns = 0;
  let handle: (interaction: object) => void = () => {};
  const tell = (message: ToFirst): void => {
    if (process.connected) process.send?.(message);
  };
  process.on("message", (given) => {
    const message = toOther.parse(given);
    if (message.kind === "who")
      tell({ kind: "seen", id: message.id, ...knownOf(message.personId, message.ref) });
    else if (message.kind === "interaction") handle(message.interaction);
    else {
      waiting.get(message.id)?.();
      waiting.delete(message.id);
    }
  });
  process.once("disconnect", onGone);
  // It may have gone while this process was still starting: that is told to nobody.
  if (!process.connected) setImmediate(onGone);
  return {
    waitForTurn() {
      turns += 1;
      const id = turns;
      return new Promise((resolve) => {
        waiting.set(id, resolve);
        tell({ kind: "turn", id });
      });
    },
    onHanded: (given) => void (handle = given),
    started: () => tell({ kind: "started" }),
  };
}
