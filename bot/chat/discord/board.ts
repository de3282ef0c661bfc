import { Routes, SnowflakeUtil, type APIMessage } from "discord.js";
import type { Reply } from "../../../commands/define.ts";
import { makeParts, type PartSettings } from "./message.ts";
import { describeDenial, toOutcome } from "./outcome.ts";
import { hasId, type DiscordRest, type RestCall } from "./rest.ts";
import type { DiscordSettings } from "./settings.ts";
import type { Outcome } from "../port.ts";

export interface BoardSettings extends PartSettings, Pick<DiscordSettings, "clock"> {
  readonly rest: DiscordRest;
  missingPermissions(channelId: string): readonly string[];
}

const UNKNOWN_MESSAGE = 10008;
/** The platform takes few edits of a message older than an hour (its error 30046, told as a limit). */
const OLD_MS = 60 * 60_000;
/** A board that is to stand still for longer than this moves on instead. */
const LONGEST_STILL_MS = 30_000;

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

    const { text, actions = [], pictures = [], attachments = [] } = reply;
    const [part] = await makeParts({ text, actions, pictures, attachments, mentions: [] }, parts);
    // What is left out of an edit stays as it was: the former buttons and pictures are named away.
    const body = { components: [], embeds: [], attachments: [], ...part?.body };
    const call: RestCall =
      ref === null
        ? { method: "POST", route: Routes.channelMessages(channelRef), body }
        : { method: "PATCH", route: Routes.channelMessage(channelRef, messageId), body, repeats: 1 };
    const answer = await rest.request<APIMessage>({
      ...call,
      ...(part ? { files: part.files } : {}),
      holds: hasId,
    });
    if (answer.ok) return { kind: "sent", ref: `${channelRef}/${answer.value.id}` };
    const { fault } = answer;
    const isOld = ref !== null && clock.now() - SnowflakeUtil.timestampFrom(messageId) > OLD_MS;
    if (isOld && fault.kind === "busy" && fault.afterMs > LONGEST_STILL_MS) {
      // Two boards, one of them standing still, would be worse than none: the bot may always take its own message away.
      const path = Routes.channelMessage(channelRef, messageId);
      await rest.request({ method: "DELETE", route: path, repeats: 1 });
      return { kind: "refused", detail: TOO_OLD };
    }
    if (fault.kind !== "denied") return toOutcome(fault, "");
    const isGone = fault.code === UNKNOWN_MESSAGE;
    return toOutcome(
      fault,
      isGone ? GONE : describeDenial(fault, channelRef, missingPermissions(channelRef)),
    );
  };
}
