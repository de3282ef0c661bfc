import { SimpleShardingStrategy } from "discord.js";

/** What is needed of a connection of the library, which keeps these to itself. */
interface Shard {
  internalConnect?: () => Promise<void>;
  connection?: Socket | null;
}
interface Socket {
  addEventListener(type: "error", listener: () => void): void;
  terminate?(): void;
}

type Options = Parameters<SimpleShardingStrategy["destroy"]>[0];

/**
 * Ends connections for good. The library's own end leaves two gaps, both seen in tests: between two connection attempts
 * (it waits half a second) the next attempt is made all the same, and in the middle of one the socket is left without
 * anybody who listens to its errors, which ends the process.
 */
export class EndingStrategy extends SimpleShardingStrategy {
  override async destroy(options?: Options): Promise<void> {
    const known = (this as unknown as { shards?: Map<number, Shard> }).shards;
    const shards = [...(known?.values() ?? [])];
    for (const shard of shards) shard.internalConnect = () => Promise.resolve();
    await super.destroy(options);
    // No event can come between the library's own end and here.
    for (const { connection } of shards) {
      if (!connection) continue;
      connection.addEventListener("error", () => {});
      connection.terminate?.();
    }
  }
}

/** Under the name of the manager the library has two types that differ; the strategy takes one, the client gives the other. */
export function buildStrategy(manager: unknown): EndingStrategy {
  return new EndingStrategy(manager as ConstructorParameters<typeof SimpleShardingStrategy>[0]);
}
