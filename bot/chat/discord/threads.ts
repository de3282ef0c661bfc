import {
  ChannelType,
  Routes,
  SnowflakeUtil,
  ThreadAutoArchiveDuration,
  type APIMessage,
  type APIThreadChannel,
} from "discord.js";
import { parseChatKey } from "../../../store/shapes/chat-key.ts";
import type { Reply, ThreadPowers } from "../../../commands/define.ts";
import { makeParts, type PartSettings } from "./message.ts";
import { hasId, type DiscordRest, type RestFault } from "./rest.ts";
import { makeNonce } from "./send.ts";
import type { Directory } from "./settings.ts";
import type { ThreadWish } from "./thread-book.ts";
import { discordWords } from "./words/discord.ts";

export interface ThreadSettings extends PartSettings {
  readonly rest: DiscordRest;
  readonly directory: Pick<Directory, "threads">;
  readonly clock: { now(): number };
  threadPowers(channelId: string): ThreadPowers;
  /** The bot's own user; undefined before the first connection. */
  ownId(): string | undefined;
}

export type Begun =
  | { readonly kind: "open"; readonly threadId: string }
  /** `missing`: what the bot may not do in the class's channel; none where it failed otherwise. */
  | { readonly kind: "failed"; readonly missing: readonly string[] };

/** Whoever starts a film looks on; a class that starts together makes its threads one after the other. */
const PATIENCE_MS = 10_000;
/** The clock here and the platform's may differ by this much. */
const CLOCK_MARGIN_MS = 15_000;

/**
 * The threads in which runs are called. Each is asked for once: that it was is kept before, and what came of it is looked
 * for among those that are there, by a process that does not know. Where one can't be had, its run is called as ever.
 */
export function createThreads({ rest, directory, clock, ownId, threadPowers, ...parts }: ThreadSettings) {
  const { log } = parts;
  const book = directory.threads;
  const underWay = new Map<number, Promise<Begun>>();

  /** null: there is none; undefined: that can't be told. */
  async function look(wish: ThreadWish, since: number): Promise<string | null | undefined> {
    const own = ownId();
    if (own === undefined) return undefined;
    const answer = await rest.request<{ readonly threads: readonly APIThreadChannel[] }>({
      method: "GET",
      route: Routes.guildActiveThreads(parseChatKey(wish.classKey).id),
      holds: hasThreads,
      repeats: 2,
      patienceMs: PATIENCE_MS,
    });
    if (!answer.ok) return undefined;
    const same = answer.value.threads.find(
      ({ id, name, owner_id: ownerId, parent_id: parentId }) =>
        ownerId === own &&
        parentId === wish.channelRef &&
        name?.split(/[\s,]/)[0] === wish.number &&
        SnowflakeUtil.timestampFrom(id) >= since - CLOCK_MARGIN_MS,
    );
    return same?.id ?? null;
  }

  async function create(wish: ThreadWish, isOpen: boolean): Promise<string | RestFault> {
    const askedAt = clock.now();
    book.saveAsked(wish.runId, askedAt);
    const answer = await rest.request<APIThreadChannel>({
      method: "POST",
      route: Routes.threads(wish.channelRef),
      body: {
        name: wish.name,
        type: isOpen ? ChannelType.PublicThread : ChannelType.PrivateThread,
        // What is said in a thread opens it again; one that was forgotten takes up no room for long.
        auto_archive_duration: ThreadAutoArchiveDuration.OneHour,
      },
      holds: hasId,
      patienceMs: PATIENCE_MS,
    });
    if (answer.ok) return answer.value.id;
    const isLost = answer.fault.kind === "lost" && (await look(wish, askedAt));
    return typeof isLost === "string" ? isLost : answer.fault;
  }

  async function make(wish: ThreadWish, reply: Reply | undefined): Promise<Begun> {
    const { missing, areOpen } = threadPowers(wish.channelRef);
    const known = wish.askedAt === null ? null : await look(wish, wish.askedAt);
    if (known === undefined) return giveUp(wish, [], { detail: "the threads could not be looked through" });
    if (known === null && missing.length > 0) return giveUp(wish, missing, { missing });
    const made = known ?? (await create(wish, areOpen));
    if (typeof made !== "string") return giveUp(wish, [], made);
    const fault = await invite(made, wish, reply);
    if (fault) {
      await archive(made);
      return giveUp(wish, [], fault);
    }
    book.saveOpened(wish.runId, made);
    return { kind: "open", threadId: made };
  }

  function giveUp({ runId, channelRef }: ThreadWish, missing: readonly string[], why: object): Begun {
    book.lose(runId);
    log.warn({ run: runId, channel: channelRef, ...why }, "a run has no thread; it is called without");
    return { kind: "failed", missing };
  }

  /** Takes its person in, and says what is next; what they may not see is of no use to them. */
  async function invite(
    threadId: string,
    wish: ThreadWish,
    reply: Reply | undefined,
  ): Promise<RestFault | undefined> {
    const { id: userId } = parseChatKey(wish.personId);
    const route = Routes.threadMembers(threadId, userId);
    const added = await rest.request({ method: "PUT", route, repeats: 1, patienceMs: PATIENCE_MS });
    if (!added.ok && added.fault.kind === "denied") return added.fault;
    const { callsHere } = discordWords(wish.language);
    const view = {
      text: reply ? `${callsHere}\n${reply.text}` : callsHere,
      actions: reply?.actions ?? [],
      pictures: [],
      attachments: [],
      mentions: [wish.personId],
      language: wish.language,
    };
    for (const [index, { body }] of (await makeParts(view, parts)).entries()) {
      const said = await rest.request<APIMessage>({
        method: "POST",
        route: Routes.channelMessages(threadId),
        body: { ...body, nonce: makeNonce(`thread.${wish.runId}`, index), enforce_nonce: true },
        holds: hasId,
        patienceMs: PATIENCE_MS,
      });
      if (!said.ok && said.fault.kind === "denied") return said.fault;
    }
    return undefined;
  }

  async function archive(threadId: string): Promise<boolean> {
    const answer = await rest.request({
      method: "PATCH",
      route: Routes.channel(threadId),
      body: { archived: true },
      repeats: 1,
    });
    // Gone, or not to be touched any more: there is nothing left to do about it.
    return answer.ok || answer.fault.kind === "denied";
  }

  function begin(wish: ThreadWish, reply?: Reply): Promise<Begun> {
    const going = underWay.get(wish.runId) ?? make(wish, reply);
    underWay.set(wish.runId, going);
    return going.finally(() => underWay.delete(wish.runId));
  }

  return {
    /** Of a run that was just started, with the answer to that; null: it wants none. */
    async beginFor(classKey: string, run: number, reply: Reply): Promise<Begun | null> {
      const wish = book.wantedOf(classKey, run);
      if (wish) return begin(wish, reply);
      // A connection that began anew just now has seen to it.
      const threadId = book.openOf(classKey, run);
      return threadId === null ? null : { kind: "open", threadId };
    },
    /** What a process that ended left undone. */
    async recover(): Promise<void> {
      for (const wish of book.wanted()) await begin(wish);
    },
    /** Closes those of runs that have been over for a while. */
    async tidy(): Promise<void> {
      for (const { runId, ref } of book.done()) if (await archive(ref)) book.saveClosed(runId);
    },
  };
}

export type Threads = ReturnType<typeof createThreads>;

const hasThreads = (value: unknown): boolean =>
  typeof value === "object" && value !== null && "threads" in value && Array.isArray(value.threads);
