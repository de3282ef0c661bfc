import {
  InteractionResponseType,
  MessageFlags,
  Routes,
  type APIMessageTopLevelComponent,
  type APIModalInteractionResponseCallbackData,
} from "discord.js";
import type { Reply } from "../../../commands/define.ts";
import { languageOfInteraction } from "./calls.ts";
import { makeParts, type Part, type PartSettings, type ShownPhoto } from "./message.ts";
import type { Pressed } from "./used.ts";
import type { DiscordRest, RestAnswer, RestCall, RestFault } from "./rest.ts";

export type Visibility = "private" | "class";

/** The message of a key that has done its work, and the keys that are left in it. */
export interface Left {
  readonly message: Pressed["message"];
  readonly keys: readonly APIMessageTopLevelComponent[];
}

export interface Beside {
  readonly photo?: ShownPhoto | undefined;
  readonly left?: Left | undefined;
  /** The class its keys carry, where a press will not tell it. */
  readonly keysOf?: string | undefined;
}

export interface Answerer {
  answer(reply: Reply, visibility: Visibility, beside?: Beside): Promise<void>;
  /** Instead of an answer: a form. */
  ask(form: APIModalInteractionResponseCallbackData): Promise<void>;
  /** No answer will come: stops the clock of the deferral. */
  close(): void;
}

export interface AnswerSettings extends PartSettings {
  readonly rest: DiscordRest;
  readonly deferAfterMs: number;
  /** The platform took the answer no more: its person has seen nothing of it. */
  readonly onTooLate?: () => void;
}

interface Interaction {
  readonly id: string;
  readonly token: string;
  readonly application_id: string;
}

const UNKNOWN_INTERACTION = 10062;
const ALREADY_ACKNOWLEDGED = 40060;

/** The token of an interaction lives 15 minutes; a rate limit is waited out no longer than somebody would look on. */
const PATIENCE_MS = 30_000;

/**
 * Answers one interaction: in the first callback where the answer comes in time, else by a deferral and an edit. Who
 * may read a deferred answer is settled by the deferral, before the answer is known; so the command's own visibility
 * is asked for at the start. An answer that turns out private after a deferral for all replaces it.
 */
export function createAnswerer(
  interaction: Interaction,
  expected: Visibility,
  settings: AnswerSettings,
): Answerer {
  const { rest, log } = settings;
  const ids = { interaction: interaction.id };
  let deferral: Promise<boolean> | undefined;
  let answers = 0;
  const timer = setTimeout(() => {
    deferral = callBack({
      type: InteractionResponseType.DeferredChannelMessageWithSource,
      ...(expected === "private" ? { data: { flags: MessageFlags.Ephemeral } } : {}),
    });
  }, settings.deferAfterMs);

  /** True where the interaction is answered now, by this call or an earlier one of which we lost the answer. */
  async function callBack(body: object, files: Part["files"] = []): Promise<boolean> {
    const answer = await rest.request({
      method: "POST",
      route: Routes.interactionCallback(interaction.id, interaction.token),
      body,
      ...(files.length > 0 ? { files } : {}),
      isInteraction: true,
      repeats: 2,
      patienceMs: 2000,
    });
    if (answer.ok) return true;
    if (answer.fault.kind === "denied" && answer.fault.code === ALREADY_ACKNOWLEDGED) return true;
    report(answer.fault, "an interaction could not be answered");
    return false;
  }

  function report(fault: RestFault, message: string): void {
    const isTooLate = fault.kind === "denied" && fault.code === UNKNOWN_INTERACTION;
    if (isTooLate) settings.onTooLate?.();
    log.warn({ ...ids, ...fault }, isTooLate ? "an interaction was answered too late" : message);
  }

  const original = Routes.webhookMessage(interaction.application_id, interaction.token);

  async function request(call: RestCall, message: string): Promise<RestAnswer<unknown>> {
    const answer = await rest.request({ ...call, isInteraction: true, patienceMs: PATIENCE_MS });
    if (!answer.ok) report(answer.fault, message);
    return answer;
  }

  async function followUp({ body, files }: Part, flags: object): Promise<boolean> {
    const route = Routes.webhook(interaction.application_id, interaction.token);
    const query = new URLSearchParams({ wait: "true" });
    const call: RestCall = { method: "POST", route, query, body: { ...body, ...flags }, files };
    return (await request(call, "a part of an answer was lost")).ok;
  }

  const withoutKeys = ({ message, keys }: Left) => ({
    components: keys,
    // An edit settles anew who a message calls by name.
    allowed_mentions: { parse: [], users: message.mentions.map(({ id }) => id) },
  });

  /** The one way that works for a message only its reader sees, and for one of any age. */
  const takeKeysAway = (left: Left): Promise<boolean> =>
    callBack({ type: InteractionResponseType.UpdateMessage, data: withoutKeys(left) });

  /** Where the answer was deferred, keys go afterwards, as far as the platform lets them; a second press does no harm. */
  async function takeKeysAwayLater(left: Left): Promise<void> {
    const { id, channel_id: channelId, flags = 0 } = left.message;
    if ((flags & MessageFlags.Ephemeral) !== 0) return;
    const route = Routes.channelMessage(channelId, id);
    const answer = await rest.request({ method: "PATCH", route, body: withoutKeys(left) });
    if (!answer.ok) log.debug({ ...ids, ...answer.fault }, "used keys could not be taken away");
  }

  async function sayFirst(
    first: Part,
    flags: object,
    visibility: Visibility,
    left: Left | undefined,
  ): Promise<boolean> {
    const isDeferred = await deferral;
    if (isDeferred === undefined) {
      if (left && (await takeKeysAway(left))) return followUp(first, flags);
      const type = InteractionResponseType.ChannelMessageWithSource;
      return callBack({ type, data: { ...first.body, ...flags } }, first.files);
    }
    if (!isDeferred) return false;
    if (visibility === "private" && expected === "class") {
      await request({ method: "DELETE", route: original, repeats: 1 }, "a deferral could not be withdrawn");
      return followUp(first, flags);
    }
    const call: RestCall = {
      method: "PATCH",
      route: original,
      body: first.body,
      files: first.files,
      repeats: 1,
    };
    return (await request(call, "a deferred answer was lost")).ok;
  }

  return {
    async ask(form) {
      clearTimeout(timer);
      await callBack({ type: InteractionResponseType.Modal, data: form });
    },
    async answer(reply, visibility, { photo, left, keysOf } = {}) {
      const parts = await makeParts(
        {
          text: reply.text,
          actions: reply.actions ?? [],
          pictures: reply.pictures ?? [],
          attachments: reply.attachments ?? [],
          mentions: [],
          ...(photo ? { photo } : {}),
          language: languageOfInteraction(interaction),
          keysOf,
        },
        settings,
      );
      clearTimeout(timer);
      const flags = visibility === "private" ? { flags: MessageFlags.Ephemeral } : {};
      answers += 1;
      let isOpen = true;
      for (const [index, part] of parts.entries()) {
        if (!isOpen) return;
        isOpen =
          index === 0 && answers === 1
            ? await sayFirst(part, flags, visibility, left)
            : await followUp(part, flags);
      }
      if (left && deferral) await takeKeysAwayLater(left);
    },
    close: () => clearTimeout(timer),
  };
}
