import type { Stores } from "../../store/index.ts";
import type { DiscordShard } from "../chat/discord/settings.ts";
import type { Config } from "../process/config.ts";
import type { Log } from "../process/log.ts";
import type { Known } from "./link.ts";
import { checkShard, splitStores } from "./split.ts";

/* Which of several processes this is, and what it does for it. */

export interface ShardRole {
  readonly shard: DiscordShard;
  /** This process calls its cues. */
  started(): void;
  /** Ends what depends on it. */
  stop(): Promise<void>;
}

export interface ShardDeps {
  readonly config: Config;
  readonly stores: Stores;
  readonly log: Log;
  /** The first process is gone. */
  readonly onGone: () => void;
}

/**
 * Sees to it that this store holds the classes of this process, before any cue is called.
 * @throws StoreError ERR_SHARDS where it is not so, and can't be made so.
 */
export function settleShard({ config, stores }: Pick<ShardDeps, "config" | "stores">): void {
  const { SINKSIDE_SHARD: id, DISCORD_SHARDS: count } = config;
  if (id === undefined) splitStores(config.SINKSIDE_DATA, stores.shards, count);
  else checkShard(stores.shards, { id, count });
}

/** undefined where this process has all classes. The others are started by the first. */
export async function takeShard(deps: ShardDeps): Promise<ShardRole | undefined> {
  const { config, stores, log, onGone } = deps;
  const { SINKSIDE_SHARD: id, DISCORD_SHARDS: count } = config;
  if (count === 1 || config.DISCORD_TOKEN === undefined) return undefined;
  const knownOf = (personId: string, ref: string | null): Known => {
    const classId = stores.members.lastClass(personId);
    const at = classId === undefined ? null : (stores.members.find(classId, personId)?.seenAt ?? null);
    return { at, hasSaid: ref !== null && stores.outbox.classesSaidIn(ref).length > 0 };
  };
  if (id !== undefined) {
    const { linkToFirst } = await import("./first.ts");
    const { waitForTurn, onHanded, started } = linkToFirst({ knownOf, onGone });
    return { shard: { id, count, waitForTurn, onHanded }, started, stop: async () => {} };
  }
  const { startOthers } = await import("./others.ts");
  const { waitForTurn, handOver, stop } = startOthers({ config, log, knownOf });
  return { shard: { id: 0, count, waitForTurn, handOver }, started: () => {}, stop };
}
