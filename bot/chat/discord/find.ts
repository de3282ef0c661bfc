import { Routes, SnowflakeUtil, type APIMessage } from "discord.js";
import type { DirectChannels } from "./direct.ts";
import { listLines } from "./keys.ts";
import { makeParts, type PartSettings } from "./message.ts";
import type { DiscordRest } from "./rest.ts";
import { ageOf, makeNonce, type Sender } from "./send.ts";
import type { Directory } from "./settings.ts";
import type { Delivery, Found } from "../port.ts";

export interface FindSettings extends PartSettings {
  readonly rest: DiscordRest;
  readonly direct: DirectChannels;
  readonly sender: Sender;
  readonly directory: Pick<Directory, "threads">;
  /** The bot's own user; undefined before the first connection. */
  ownId(): string | undefined;
}

/** The clock here and the platform's may differ by this much. */
const CLOCK_MARGIN_MS = 15_000;
const NEWEST = new URLSearchParams({ limit: "50" });

/**
 * Looks whether a delivery whose answer was lost has been said, for a process that comes back after the platform's
 * memory of nonces has run out. The nonce decides where the platform gives it back. That it does so when messages are
 * read later is documented nowhere; so an own message with the same words and the same buttons, no older than the
 * delivery, counts as well, unless it is known to be another delivery's.
 *
 * A bot without “Read Message History” gets an empty list from the platform, not a refusal: then this says `absent`.
 */
export function createFinder(settings: FindSettings) {
  const { rest, direct, directory, sender } = settings;

  async function findIn(channelId: string, delivery: Delivery, isMentioned: boolean): Promise<Found> {
    const ownId = settings.ownId();
    if (ownId === undefined) return { kind: "unknown", detail: "not connected yet" };
    const answer = await rest.request<APIMessage[]>({
      method: "GET",
      route: Routes.channelMessages(channelId),
      query: NEWEST,
      holds: Array.isArray,
      repeats: 1,
    });
    if (!answer.ok) {
      const { fault } = answer;
      return { kind: "unknown", detail: fault.kind === "busy" ? "rate limit" : fault.detail };
    }
    const { personId, mentions, key, dueAt } = delivery;
    const called = personId === null ? mentions : isMentioned ? [personId, ...mentions] : [];
    const parts = await makeParts({ ...delivery, mentions: called }, settings);
    const first = parts[0]?.body;
    const own = answer.value.filter(({ author }) => author.id === ownId);
    const isSame = (message: APIMessage): boolean => {
      const owner = sender.keyOf(`${message.channel_id}/${message.id}`);
      return (
        (owner === undefined || owner === key) &&
        SnowflakeUtil.timestampFrom(message.id) >= dueAt - CLOCK_MARGIN_MS &&
        message.content === (first?.content ?? "") &&
        listLines(message.components ?? []).join("\n") === listLines(first?.components ?? []).join("\n")
      );
    };
    const match = own.find(({ nonce }) => nonce === makeNonce(key, 0)) ?? own.find(isSame);
    if (!match) return { kind: "absent" };
    const ref = `${match.channel_id}/${match.id}`;
    return { kind: "found", ref, ...ageOf(match, answer.platformAt) };
  }

  return async function find(delivery: Delivery): Promise<Found> {
    const known = sender.refOf(delivery.key);
    if (known !== undefined) return { kind: "found", ref: known };
    const { personId, channelRef, runId = null } = delivery;
    const threadId = personId === null || runId === null ? null : directory.threads.threadOf(runId);
    if (threadId !== null) return findIn(threadId, delivery, true);
    const directId = personId === null ? null : await direct.channelOf(personId);
    const inDirect = directId === null ? undefined : await findIn(directId, delivery, false);
    if (inDirect?.kind === "found" || channelRef === null) return inDirect ?? { kind: "absent" };
    const inClass = await findIn(channelRef, delivery, true);
    return inClass.kind === "absent" ? (inDirect ?? inClass) : inClass;
  };
}
