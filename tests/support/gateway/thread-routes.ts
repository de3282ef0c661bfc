import { PermissionFlagsBits as Bits } from "discord-api-types/v10";
import { refuse, type Answered } from "./http.ts";
import type { Route } from "./routes.ts";
import { writeThread, type Channel, type Thread, type World } from "./world.ts";

/* Threads of the loopback platform. Source: Discord's documentation, "Threads" and "Channel", read in November 2026. */

export interface ThreadRouteSettings {
  readonly world: World;
  dispatch(type: string, data: unknown): void;
}

const ACTIVE_PRIVATE = 12;
const unknownChannel = refuse(404, 10003, "Unknown Channel");
const missingPermissions = refuse(403, 50013, "Missing Permissions");

/** What the bot may not do in a thread is what the channel around it denies. */
export const deniedIn = (world: World, { denied, thread }: Channel): bigint =>
  thread ? (world.channels.get(thread.parentId)?.denied ?? 0n) : denied;

/** Why nothing can be said in a thread; undefined: it can. A message opens an archived one, unless a moderator has locked it. */
export function shutOut(world: World, channel: Channel): Answered | undefined {
  const { thread } = channel;
  if (!thread) return undefined;
  if (deniedIn(world, channel) & Bits.SendMessagesInThreads) return missingPermissions;
  if (thread.isLocked) return refuse(400, 50083, "Thread is archived");
  thread.isArchived = false;
  return undefined;
}

export function createThreadRoutes({ world, dispatch }: ThreadRouteSettings): Route[] {
  const write = (channel: Channel) => writeThread(channel, world.bot.id);
  const threadOf = (id = ""): (Channel & { readonly thread: Thread }) | undefined => {
    const found = world.channels.get(id);
    return found?.thread ? { ...found, thread: found.thread } : undefined;
  };

  return [
    {
      method: "POST",
      path: "/channels/{channel_id}/threads",
      handle({ body }, { channel_id: parentId = "" }) {
        const parent = world.channels.get(parentId);
        if (!parent) return unknownChannel;
        const { name, type } = body as { name: string; type: number };
        const isPrivate = type === ACTIVE_PRIVATE;
        const needed = isPrivate ? Bits.CreatePrivateThreads : Bits.CreatePublicThreads;
        if (parent.denied & (needed | Bits.ViewChannel)) return missingPermissions;
        const thread = {
          parentId,
          isPrivate,
          members: new Set<string>(),
          isArchived: false,
          isLocked: false,
        };
        const made = world.addChannel({ guildId: parent.guildId, name, thread });
        dispatch("THREAD_CREATE", { ...write(made), newly_created: true });
        return { status: 201, body: write(made) };
      },
    },
    {
      method: "PUT",
      path: "/channels/{channel_id}/thread-members/{user_id}",
      handle(_, { channel_id: id, user_id: userId = "" }) {
        const found = threadOf(id);
        if (!found) return unknownChannel;
        const refusal = shutOut(world, found);
        if (refusal) return refusal;
        found.thread.members.add(userId);
        return { status: 204 };
      },
    },
    {
      method: "PATCH",
      path: "/channels/{channel_id}",
      handle({ body }, { channel_id: id }) {
        const found = threadOf(id);
        if (!found) return unknownChannel;
        if (found.thread.isLocked) return missingPermissions;
        found.thread.isArchived = (body as { archived: boolean }).archived;
        dispatch("THREAD_UPDATE", write(found));
        return { status: 200, body: write(found) };
      },
    },
    {
      method: "GET",
      path: "/guilds/{guild_id}/threads/active",
      handle(_, { guild_id: guildId }) {
        const all = [...world.channels.values()];
        const active = all.filter((each) => each.guildId === guildId && each.thread?.isArchived === false);
        return { status: 200, body: { threads: active.map(write), members: [], has_more: false } };
      },
    },
  ];
}
