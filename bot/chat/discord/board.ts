import { Routes, SnowflakeUtil, type APIMessage } from "discord.js";
import type { Reply } from "../../../commands/define.ts";
import { makeParts, type PartSettings } from "./message.ts";
import { describeDenial, toOutcome } from "./outcome.ts";
import type { DiscordRest, RestCall } from "./rest.ts";
import type { DiscordSettings } from "./settings.ts";
import type { Outcome } from "../port.ts";

export interface BoardSettings extends PartSettings, Pick<DiscordSettings, "clock"> {
  readonly rest: DiscordRest;
  missingPermissions(channelId: string): readonly string[];
}

/** The platform refuses edits of messages older than an hour (its error 30046); the board moves on before. */
const EDITABLE_MS = 50 * 60_000;
const UNKNOWN_MESSAGE = 10008;

const GONE = "The board's message is gone.";
const TOO_OLD = "The board's message is too old to be edited.";
const ELSEWHERE = "The board's message is in another channel.";

/** The board of a class as one message that is edited. An edit calls nobody, so it is never a way to call. */
export function createBoard({ rest, clock, missingPermissions, ...parts }: BoardSettings) {
  return async function editBoard(
    _classKey: string,
    channelRef: string,
    ref: string | null,
    reply: Reply,
  ): Promise<Outcome> {
    const [channelId = "", messageId = ""] = ref?.split("/") ?? [];
    if (ref !== null && channelId !== channelRef) return { kind: "refused", detail: ELSEWHERE };
    if (ref !== null && !/^\d{17,20}$/.test(messageId)) return { kind: "refused", detail: GONE };
    if (ref !== null && clock.now() - SnowflakeUtil.timestampFrom(messageId) > EDITABLE_MS)
      return { kind: "refused", detail: TOO_OLD };

    const { text, actions = [], pictures = [], attachments = [] } = reply;
    const [part] = await makeParts({ text, actions, pictures, attachments, mentions: [] }, parts);
    // What is left out of an edit stays as it was: the former buttons and pictures are named away.
    const body = { components: [], attachments: [], ...part?.body };
    const call: RestCall =
      ref === null
        ? { method: "POST", route: Routes.channelMessages(channelRef), body }
        : { method: "PATCH", route: Routes.channelMessage(channelRef, messageId), body, repeats: 1 };
    const answer = await rest.request<APIMessage>({ ...call, ...(part ? { files: part.files } : {}) });
    if (answer.ok) return { kind: "sent", ref: `${answer.value.channel_id}/${answer.value.id}` };
    const { fault } = answer;
    if (fault.kind !== "denied") return toOutcome(fault, "");
    const isGone = fault.code === UNKNOWN_MESSAGE;
    return toOutcome(
      fault,
      isGone ? GONE : describeDenial(fault, channelRef, missingPermissions(channelRef)),
    );
  };
}
