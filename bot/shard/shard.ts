import { join } from "node:path";

/*
 * Several processes of one bot, each with the classes of its servers and a store of its own: a class always has exactly
 * one owner. What belongs to no server, the room and direct messages, comes to the first. Pure.
 */

export interface Shard {
  /** From 0. */
  readonly id: number;
  readonly count: number;
}

/** Which of `count` processes hears of a server. Source: Discord's documentation, "Sharding". */
export function shardOf(guildId: string, count: number): number {
  return Number((BigInt(guildId) >> 22n) % BigInt(count));
}

/** The process that owns a class, by its key: `discord:81384788765712384`, `room:demo`. */
export function ownerOf(classKey: string, count: number): number {
  const guildId = /^discord:(\d+)$/.exec(classKey)?.[1];
  return guildId === undefined ? 0 : shardOf(guildId, count);
}

/** The folder of a process's store; the first one's is the folder itself. */
export function dataOf(data: string, id: number): string {
  return id === 0 ? data : join(data, `shard-${id}`);
}
