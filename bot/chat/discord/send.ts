import { createHash } from "node:crypto";
import { Routes, type APIMessage } from "discord.js";
import type { DirectChannels } from "./direct.ts";
import { makeParts, type Part, type PartSettings, type View } from "./message.ts";
import { describeDenial, isShutOut, isUnreachable, toOutcome } from "./outcome.ts";
import { hasId, type DiscordRest, type RestFault } from "./rest.ts";
import type { Directory } from "./settings.ts";
import type { Delivery, Outcome } from "../port.ts";

export interface SendSettings extends PartSettings {
  readonly rest: DiscordRest;
  readonly direct: DirectChannels;
  readonly directory: Pick<Directory, "threads">;
  /** Permissions the bot lacks in a channel, in the platform's own words; none where that can't be told. */
  missingPermissions(channelId: string): readonly string[];
}

type Tried =
  | { readonly ok: true; readonly ref: string; readonly agoMs?: number }
  | { readonly ok: false; readonly fault: RestFault };

/** First try and fallback of one delivery can be minutes apart; the memory of parts said is for that, not for ever. */
const KEPT_PARTS = 2000;
const DELETED = 10008;

/**
 * Says deliveries. Each message carries a nonce made of the delivery's key alone, and the platform is asked to enforce
 * it: a repeat within “the past few minutes” (its words; no number is published) comes back as the first message.
 */
export function createSender(settings: SendSettings) {
  const { rest, direct, log, directory } = settings;
  const { threads } = directory;
  const said = new Map<string, string>();

  async function sendPart(part: Part, nonce: string, channelId: string): Promise<Tried> {
    const known = said.get(nonce);
    if (known !== undefined) return { ok: true, ref: known };
    const answer = await rest.request<APIMessage>({
      method: "POST",
      route: Routes.channelMessages(channelId),
      body: { ...part.body, nonce, enforce_nonce: true },
      files: part.files,
      holds: hasId,
    });
    // The first try arrived, and somebody has deleted the message since: it was said.
    const isDeleted = !answer.ok && answer.fault.kind === "denied" && answer.fault.code === DELETED;
    if (!answer.ok && !isDeleted) return answer;
    const ref = answer.ok ? `${answer.value.channel_id}/${answer.value.id}` : `${channelId}/deleted`;
    said.set(nonce, ref);
    const [oldest] = said.keys();
    if (oldest !== undefined && said.size > KEPT_PARTS) said.delete(oldest);
    return { ok: true, ref, ...(answer.ok && ageOf(answer.value, answer.platformAt)) };
  }

  /** `ref` is that of the first message, as is its age; the first failure ends the delivery, and a later try goes on from there. */
  async function sendAll(parts: readonly Part[], key: string, channelId: string): Promise<Tried> {
    let first: Tried | undefined;
    for (const [index, part] of parts.entries()) {
      const tried = await sendPart(part, makeNonce(key, index), channelId);
      if (!tried.ok) return tried;
      first ??= tried;
    }
    return first ?? { ok: true, ref: channelId };
  }

  function finish(tried: Tried, channelId: string, key: string): Outcome {
    if (tried.ok) {
      const { ok: _ok, ...sent } = tried;
      return { kind: "sent", ...sent };
    }
    const { fault } = tried;
    const detail =
      fault.kind === "denied" ? describeDenial(fault, channelId, settings.missingPermissions(channelId)) : "";
    const outcome = toOutcome(fault, detail);
    log.warn({ key, channel: channelId, ...fault, outcome: outcome.kind }, "a delivery was not said");
    return outcome;
  }

  /** Undefined where the run has no thread, or one that takes nothing any more. */
  async function sendInThread(delivery: Delivery): Promise<Outcome | undefined> {
    const { key, personId, mentions, runId = null } = delivery;
    const threadId = personId === null || runId === null ? null : threads.threadOf(runId);
    if (threadId === null || personId === null || runId === null) return undefined;
    const parts = await makeParts(viewOf(delivery, [personId, ...mentions]), settings);
    const tried = await sendAll(parts, key, threadId);
    const isShut = !tried.ok && tried.fault.kind === "denied" && isShutOut(tried.fault);
    if (!isShut) return finish(tried, threadId, key);
    threads.lose(runId);
    log.info(
      { key, thread: threadId, ...tried.fault },
      "a thread can't be written in; it is not used any more",
    );
    return undefined;
  }

  return {
    async send(delivery: Delivery): Promise<Outcome> {
      const { key, personId, channelRef } = delivery;
      const inThread = await sendInThread(delivery);
      if (inThread) return inThread;
      if (personId !== null) {
        const channelId = await direct.channelOf(personId);
        if (channelId !== null) {
          const tried = await sendAll(
            await makeParts({ ...viewOf(delivery, []), keysOf: delivery.classKey }, settings),
            key,
            channelId,
          );
          const isRefused = !tried.ok && tried.fault.kind === "denied" && isUnreachable(tried.fault);
          if (!isRefused) return finish(tried, channelId, key);
          direct.refuse(personId);
          log.info({ key, person: personId }, "a direct message was refused; the class channel is used");
        }
      }
      if (channelRef === null) return { kind: "refused", detail: NO_CHANNEL };
      const mentions = personId === null ? delivery.mentions : [personId, ...delivery.mentions];
      const parts = await makeParts(viewOf(delivery, mentions), settings);
      return finish(await sendAll(parts, key, channelRef), channelRef, key);
    },
    /** The message of a key, if it was said while this process ran. */
    refOf: (key: string): string | undefined => said.get(makeNonce(key, 0)),
    keyOf: (ref: string): string | undefined => [...said].find(([, each]) => each === ref)?.[0],
  };
}

export type Sender = ReturnType<typeof createSender>;

const NO_CHANNEL =
  "No direct message can be sent, and no class channel is known yet: call a command in the class's server.";

function viewOf(delivery: Delivery, mentions: readonly string[]): View {
  const { text, actions, pictures, attachments, language } = delivery;
  return { text, actions, pictures, attachments, mentions, language };
}

/** The platform stamps its answers in whole seconds, rounded down. */
const STAMP_MS = 1000;

/**
 * How long a message had been there when the platform answered, both by the platform's own clock: never more than it was,
 * and nothing where it was made just now.
 */
export function ageOf(
  { timestamp }: Pick<APIMessage, "timestamp">,
  platformAt: number,
): { readonly agoMs?: number } {
  const agoMs = platformAt - Date.parse(timestamp);
  return agoMs >= STAMP_MS ? { agoMs } : {};
}

/** At most 25 characters, the same for every try; the first part carries the key itself. */
export function makeNonce(key: string, part: number): string {
  const plainNonce = part === 0 ? key : `${key}~${part}`;
  if (plainNonce.length <= 25) return plainNonce;
  return createHash("sha256").update(plainNonce).digest("base64url").slice(0, 25);
}
