import { MessageType, Routes, type GatewayMessageCreateDispatchData } from "discord.js";
import { aidFor } from "../../../commands/ask/aid.ts";
import { readTyped } from "../../../commands/ask/typed.ts";
import type { Command, Reply } from "../../../commands/define.ts";
import { lineFormsOf } from "../../../commands/forms.ts";
import type { Line } from "../../../commands/speech/line.ts";
import { LANGUAGES } from "../../../store/shapes/language.ts";
import { makeChatKey } from "../../../store/shapes/chat-key.ts";
import type { CallReader, OpenCall } from "./calls.ts";
import { chooseClass } from "./choose-class.ts";
import type { DirectChannels } from "./direct.ts";
import type { DiscordGateway } from "./gateway.ts";
import { withLogFile } from "./log-file.ts";
import { makeParts, type Part, type PartSettings, type ShownPhoto } from "./message.ts";
import { hasId, type DiscordRest } from "./rest.ts";
import { makeNonce } from "./send.ts";
import { makePersonId, type Directory, type KnownPlace } from "./settings.ts";
import { sentenceWords } from "./words/sentences.ts";
import type { ChatHandlers, Place } from "../port.ts";

/*
 * What people write to the bot alone, or in a channel with its name in it, answered where it was written. To the bot alone a
 * command may be typed as well; in a channel, where others read along, everything is a question.
 */

export interface SentenceSettings
  extends
    PartSettings,
    Pick<DiscordGateway, "ownId" | "guildName" | "missingPermissions" | "permissionsOf" | "parentOf"> {
  readonly rest: DiscordRest;
  /** What is known of any channel. */
  readonly look?: Place["look"];
  readonly clock: { now(): number };
  readonly commands: readonly Command[];
  readonly directory: Pick<Directory, "placesOf" | "photoOf" | "readLog" | "saveDirectChannel">;
  readonly direct: DirectChannels;
  readonly reader: Pick<CallReader, "roleIn">;
  readonly handlers: Pick<ChatHandlers, "onCommand">;
}

type Message = GatewayMessageCreateDispatchData;
type Where = Pick<OpenCall, "place" | "role"> & { readonly isNamed: boolean };

/** What an answer shows beside its words, and the class its keys are of. */
interface About {
  readonly photo?: ShownPhoto | undefined;
  readonly classKey?: string;
}

/** Who was in a class within this time is still there: a message alone is about that one. */
const SITTING_MS = 2 * 3600_000;
/** A rate limit is waited out no longer than somebody would look on. */
const PATIENCE_MS = 30_000;

export function createSentenceHandler(settings: SentenceSettings) {
  const { rest, log, clock, directory, direct, handlers, reader } = settings;
  const forms = lineFormsOf(settings.commands);

  function isForBot(message: Message): boolean {
    const { author, type, webhook_id: webhookId, mentions, guild_id: guildId } = message;
    if (author.bot === true || webhookId !== undefined) return false;
    if (type !== MessageType.Default && type !== MessageType.Reply) return false;
    return guildId === undefined || mentions.some(({ id }) => id === settings.ownId());
  }

  async function handle(message: Message): Promise<void> {
    try {
      await answerTo(message);
    } catch (error) {
      log.error({ err: error, message: message.id }, "a sentence failed");
      const { language } = directory.placesOf(makePersonId(message.author.id))[0] ?? {};
      await say(message, { text: sentenceWords(language).broken });
    }
  }

  async function answerTo(message: Message): Promise<void> {
    const { author, guild_id: guildId } = message;
    const personId = makePersonId(author.id);
    const text = withoutOwnName(message.content, settings.ownId());
    if (guildId === undefined) directory.saveDirectChannel(personId, message.channel_id);
    const places = directory.placesOf(personId);
    const language = places[0]?.language;
    // Nothing is asked first, and nothing can be in its way: no class, no store, no share that is spent.
    const aid = (language === undefined ? LANGUAGES : [language]).flatMap((each) => aidFor(text, each) ?? []);
    const [first] = aid;
    if (first) return say(message, { ...first, text: aid.map((each) => each.text).join("\n\n") });
    const where = guildId === undefined ? placeAlone(places) : placeOn(guildId, message);
    if (where === "unknown")
      return say(message, { text: LANGUAGES.map((each) => sentenceWords(each).noClass).join("\n") });
    if (where === "several") return say(message, chooseClass(text, places));
    await call(message, lineOf(text, guildId === undefined), where);
  }

  /** Of somebody in several classes the one they are in just now; else they are asked. */
  function placeAlone(places: readonly KnownPlace[]): Where | "unknown" | "several" {
    const [latest, second] = places;
    if (!latest) return "unknown";
    if (second && clock.now() - latest.seenAt > SITTING_MS) return "several";
    return {
      place: { ...latest.place, look: settings.look },
      role: latest.role,
      isNamed: second !== undefined,
    };
  }

  function placeOn(guildId: string, { author, member, channel_id: channelRef }: Message): Where {
    const roleIds = member?.roles ?? [];
    const permissions = settings.permissionsOf(guildId, author.id, roleIds);
    const place = {
      classKey: makeChatKey("discord", guildId),
      className: settings.guildName(guildId) ?? "Class",
      channelRef: settings.parentOf(channelRef) ?? channelRef,
      missingPermissions: settings.missingPermissions(channelRef),
      look: settings.look,
    };
    return {
      place,
      role: reader.roleIn(guildId, makePersonId(author.id), roleIds, permissions),
      isNamed: false,
    };
  }

  function lineOf(text: string, isAlone: boolean): Line {
    if (text === "") return { name: "help", options: {} };
    const typed = isAlone ? readTyped(text, forms) : undefined;
    return typed?.ok ? typed.value : { name: "ask", options: { text } };
  }

  async function call(message: Message, line: Line, { place, role, isNamed }: Where): Promise<void> {
    const { author, member } = message;
    const person = {
      id: makePersonId(author.id),
      name: member?.nick ?? author.global_name ?? author.username,
    };
    await handlers.onCommand({
      ...line,
      // What a message tells of its author's role is less than a command does: it is not kept.
      isVisit: true,
      callId: message.id,
      person,
      role,
      place,
      answer: async (given) => {
        const reply = await withLogFile(given, directory, undefined);
        const slot = reply.photo;
        const kept = slot?.isKept ? directory.photoOf(place.classKey, slot) : undefined;
        const photo = slot && kept && { ...kept, kind: slot.kind, number: slot.number };
        const text = isNamed ? `${sentenceWords().ofClass(place.className)}\n${reply.text}` : reply.text;
        return say(message, { ...reply, text }, { photo, classKey: place.classKey });
      },
    });
  }

  /** As a reply to the message; where the bot may not speak in that channel, to its person alone. */
  async function say(message: Message, reply: Reply, { photo, classKey }: About = {}): Promise<void> {
    const { text, actions = [], pictures = [], attachments = [] } = reply;
    const view = { text, actions, pictures, attachments, mentions: [], ...(photo ? { photo } : {}) };
    const forAlone = (): Promise<Part[]> => makeParts({ ...view, keysOf: classKey }, settings);
    const isAlone = message.guild_id === undefined;
    const parts = await (isAlone ? forAlone() : makeParts(view, settings));
    const inChannel = await sayAll(parts, message, message.channel_id);
    if (inChannel !== "denied" || isAlone) return;
    const alone = await direct.channelOf(makePersonId(message.author.id));
    if (alone !== null) await sayAll(await forAlone(), message, alone);
  }

  async function sayAll(
    parts: readonly Part[],
    message: Message,
    channelId: string,
  ): Promise<"said" | "denied" | "lost"> {
    for (const [index, { body, files }] of parts.entries()) {
      const isReply = index === 0 && channelId === message.channel_id;
      const answer = await rest.request({
        method: "POST",
        route: Routes.channelMessages(channelId),
        body: {
          ...body,
          allowed_mentions: { ...body.allowed_mentions, replied_user: false },
          ...(isReply ? { message_reference: { message_id: message.id, fail_if_not_exists: false } } : {}),
          // Of a message that comes again the platform shows the first answer.
          nonce: makeNonce(`to~${message.id}`, index),
          enforce_nonce: true,
        },
        files,
        holds: hasId,
        repeats: 2,
        patienceMs: PATIENCE_MS,
      });
      if (answer.ok) continue;
      log.warn({ message: message.id, channel: channelId, ...answer.fault }, "a sentence was not answered");
      return answer.fault.kind === "denied" ? "denied" : "lost";
    }
    return "said";
  }

  return { isForBot, handle };
}

function withoutOwnName(content: string, ownId: string | undefined): string {
  return content
    .replace(new RegExp(`<@!?${ownId}>`, "g"), " ")
    .replace(/\s+/g, " ")
    .trim();
}
