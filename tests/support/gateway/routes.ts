import {
  PermissionFlagsBits as Bits,
  type RESTPostAPIChatInputApplicationCommandsJSONBody as CommandBody,
} from "discord-api-types/v10";
import { listCallbackFaults, listCommandFaults, listMessageFaults } from "../openapi-rules.ts";
import { refuse, type Answered, type Asked } from "./http.ts";
import type { Live } from "./interactions.ts";
import type { Ledger, MessageBody } from "./ledger.ts";
import type { Limited } from "./limits.ts";
import { createThreadRoutes, deniedIn, shutOut, type ThreadRouteSettings } from "./thread-routes.ts";
import { writeDirectChannel, writeUser } from "./world.ts";

export interface RouteSettings extends ThreadRouteSettings {
  readonly ledger: Ledger;
  readonly live: Map<string, Live>;
  readonly commands: Map<string, readonly CommandBody[]>;
  readonly socketUrl: () => string;
  readonly countMessage: (channelId: string) => Limited;
  readonly nextId: () => string;
  readonly now: () => number;
  /** An interaction can first be answered this long, and edited or followed up that long. */
  readonly answerWithinMs: number;
  readonly tokenLifeMs: number;
  /** Opening direct channels is refused as too fast after so many; no number is published. */
  readonly directOpenings: number;
}

export interface Route {
  readonly method: string;
  /** As the OpenAPI document names it. */
  readonly path: string;
  /** With the interaction's own token, so outside the bot's global limit. */
  readonly isInteraction?: boolean;
  /** What the OpenAPI document lets through and the platform does not. */
  readonly faults?: (asked: Asked) => string[];
  handle(asked: Asked, params: Readonly<Record<string, string>>): Answered;
}

const done: Answered = { status: 204 };

export function createRoutes(settings: RouteSettings): Route[] {
  const { world, ledger, live, commands, nextId, now } = settings;
  let openings = 0;

  const findLive = (token: string | undefined): Live | undefined =>
    [...live.values()].find((each) => each.token === token && now() - each.at <= settings.tokenLifeMs);
  const unknownWebhook = refuse(404, 10015, "Unknown Webhook");

  function callBack({ body, files, query }: Asked, params: Readonly<Record<string, string>>): Answered {
    const one = live.get(params["interaction_id"] ?? "");
    if (!one || one.token !== params["interaction_token"]) return refuse(404, 10062, "Unknown interaction");
    if (one.isAcknowledged) return refuse(400, 40060, "Interaction has already been acknowledged.");
    if (now() - one.at > settings.answerWithinMs) return refuse(404, 10062, "Unknown interaction");
    const { type, data } = body as { type: number; data?: MessageBody & { choices?: [] } };
    if (type === 7 && (!one.pressed || one.pressed.isDeleted)) return refuse(404, 10008, "Unknown Message");
    one.isAcknowledged = true;
    one.answer.isPrivate = ((data?.flags ?? 0) & 64) !== 0;
    if (type === 4) {
      const message = ledger.add(one.channelId, data ?? {}, files, one.id);
      one.original = message;
      one.answer.messages.push(message);
    } else if (type === 5) one.original = "deferred";
    if (type === 7) {
      ledger.edit(one.pressed as NonNullable<typeof one.pressed>, data ?? {}, files);
      one.original = one.pressed;
    }
    if (type === 9) one.answer.form = data as unknown as NonNullable<typeof one.answer.form>;
    one.answer.choices = data?.choices ?? [];
    one.answer.callback = type;
    return query.get("with_response") === "true"
      ? { status: 200, body: { interaction: { id: one.id, type: 2, response_message_loading: type === 5 } } }
      : done;
  }

  function followUp({ body, files }: Asked, params: Readonly<Record<string, string>>): Answered {
    const one = findLive(params["webhook_token"]);
    if (!one?.isAcknowledged) return unknownWebhook;
    // The first follow-up of a deferral takes its place, and its visibility with it.
    const isReplacing = one.original === "deferred";
    const flags = isReplacing ? (one.answer.isPrivate ? 64 : 0) : (body as MessageBody).flags;
    const message = ledger.add(one.channelId, { ...(body as MessageBody), flags: flags ?? 0 }, files, one.id);
    if (isReplacing) one.original = message;
    one.answer.messages.push(message);
    if (one.answer.messages.length === 1) one.answer.isPrivate = message.isPrivate;
    return { status: 200, body: ledger.write(message, true) };
  }

  function editOriginal({ body, files }: Asked, params: Readonly<Record<string, string>>): Answered {
    const one = findLive(params["webhook_token"]);
    if (!one?.original) return one ? refuse(404, 10008, "Unknown Message") : unknownWebhook;
    if (one.original === "deferred") {
      const flags = one.answer.isPrivate ? 64 : 0;
      one.original = ledger.add(one.channelId, { ...(body as MessageBody), flags }, files, one.id);
      one.answer.messages.push(one.original);
    } else ledger.edit(one.original, body as MessageBody, files);
    return { status: 200, body: ledger.write(one.original, true) };
  }

  function deleteOriginal(_: Asked, params: Readonly<Record<string, string>>): Answered {
    const one = findLive(params["webhook_token"]);
    if (!one?.original) return one ? refuse(404, 10008, "Unknown Message") : unknownWebhook;
    if (one.original !== "deferred") one.original.isDeleted = true;
    one.original = undefined;
    return done;
  }

  function createMessage(
    { body, files }: Asked,
    { channel_id: channelId = "" }: Readonly<Record<string, string>>,
  ): Answered {
    const channel = world.channels.get(channelId);
    if (!channel) return refuse(404, 10003, "Unknown Channel");
    const { headers, refusedSeconds } = settings.countMessage(channelId);
    if (refusedSeconds !== undefined) return limit(refusedSeconds, "user", headers);
    if (world.users.get(channel.userId ?? "")?.isClosed)
      return { ...refuse(403, 50007, "Cannot send messages to this user"), headers };
    const denied = deniedIn(world, channel);
    if (denied & Bits.ViewChannel) return { ...refuse(403, 50001, "Missing Access"), headers };
    const shut = shutOut(world, channel);
    if (shut) return { ...shut, headers };
    // In a thread another permission counts.
    const toSend = channel.thread ? 0n : Bits.SendMessages;
    const needed = files.length > 0 ? toSend | Bits.AttachFiles : toSend;
    if (denied & needed) return { ...refuse(403, 50013, "Missing Permissions"), headers };
    const message = body as MessageBody;
    const known = message.enforce_nonce ? ledger.findByNonce(String(message.nonce), channelId) : undefined;
    if (known?.isDeleted) return { ...refuse(404, 10008, "Unknown Message"), headers };
    const made = known ?? ledger.add(channelId, message, files);
    return { status: 200, headers, body: ledger.write(made, true) };
  }

  function findMessage({ channel_id: channelId, message_id: id }: Readonly<Record<string, string>>) {
    return ledger.messages.find((each) => each.id === id && each.channelId === channelId && !each.isDeleted);
  }
  const unknownMessage = refuse(404, 10008, "Unknown Message");

  const putCommands: Route["handle"] = ({ body }, { guild_id: guildId }) => {
    commands.set(guildId ?? "", body as CommandBody[]);
    const version = nextId();
    // A command on a menu comes without a description.
    const given = body as (Partial<CommandBody> & object)[];
    const written = given.map((command) => ({
      type: 1,
      ...command,
      description: command.description ?? "",
      id: nextId(),
      application_id: world.applicationId,
      version,
      default_member_permissions: command.default_member_permissions ?? null,
      nsfw: false,
      ...(guildId === undefined ? {} : { guild_id: guildId }),
    }));
    return { status: 200, body: written };
  };
  const ofCommands = ({ body }: Asked): string[] => listCommandFaults(body);
  const ofMessage = ({ body, files }: Asked): string[] => listMessageFaults(body, { files: files.length });
  const ofEdit = ({ body, files }: Asked): string[] =>
    listMessageFaults(body, { files: files.length, isEdit: true });

  return [
    ...createThreadRoutes(settings),
    {
      method: "GET",
      path: "/gateway/bot",
      handle: () => ({
        status: 200,
        body: {
          url: settings.socketUrl(),
          shards: 1,
          session_start_limit: { total: 1000, remaining: 999, reset_after: 14_400_000, max_concurrency: 1 },
        },
      }),
    },
    {
      method: "GET",
      path: "/users/@me",
      handle: () => ({
        status: 200,
        body: { ...writeUser(world.bot, true), mfa_enabled: false, locale: "en-GB" },
      }),
    },
    {
      method: "PUT",
      path: "/applications/{application_id}/commands",
      faults: ofCommands,
      handle: putCommands,
    },
    {
      method: "PUT",
      path: "/applications/{application_id}/guilds/{guild_id}/commands",
      faults: ofCommands,
      handle: putCommands,
    },
    {
      method: "POST",
      path: "/interactions/{interaction_id}/{interaction_token}/callback",
      isInteraction: true,
      faults: ({ body, files }) => listCallbackFaults(body, files.length),
      handle: callBack,
    },
    {
      method: "POST",
      path: "/webhooks/{webhook_id}/{webhook_token}",
      isInteraction: true,
      faults: ofMessage,
      handle: followUp,
    },
    {
      method: "PATCH",
      path: "/webhooks/{webhook_id}/{webhook_token}/messages/@original",
      isInteraction: true,
      faults: ofEdit,
      handle: editOriginal,
    },
    {
      method: "DELETE",
      path: "/webhooks/{webhook_id}/{webhook_token}/messages/@original",
      isInteraction: true,
      handle: deleteOriginal,
    },
    { method: "POST", path: "/channels/{channel_id}/messages", faults: ofMessage, handle: createMessage },
    {
      method: "GET",
      path: "/channels/{channel_id}/messages",
      handle: ({ query }, { channel_id: channelId = "" }) => {
        const channel = world.channels.get(channelId);
        if (!channel) return refuse(404, 10003, "Unknown Channel");
        const isHidden = (channel.denied & Bits.ReadMessageHistory) !== 0n;
        const there = ledger.messages.filter(
          (each) => each.channelId === channelId && !each.isDeleted && !each.isPrivate && !isHidden,
        );
        const newest = there.slice(-Number(query.get("limit") ?? 50)).toReversed();
        return { status: 200, body: newest.map((each) => ledger.write(each, false)) };
      },
    },
    {
      method: "PATCH",
      path: "/channels/{channel_id}/messages/{message_id}",
      faults: ofEdit,
      handle: ({ body, files }, params) => {
        const message = findMessage(params);
        if (!message) return unknownMessage;
        ledger.edit(message, body as MessageBody, files);
        return { status: 200, body: ledger.write(message, false) };
      },
    },
    {
      method: "DELETE",
      path: "/channels/{channel_id}/messages/{message_id}",
      handle: (_, params) => {
        const message = findMessage(params);
        if (!message) return unknownMessage;
        message.isDeleted = true;
        return done;
      },
    },
    {
      method: "POST",
      path: "/users/@me/channels",
      handle: ({ body }) => {
        openings += 1;
        if (openings > settings.directOpenings)
          return refuse(403, 40003, "You are opening direct messages too fast");
        const userId = (body as { recipient_id: string }).recipient_id;
        if (!world.users.has(userId)) return refuse(404, 10013, "Unknown User");
        return { status: 200, body: writeDirectChannel(world.openDirect(userId), world) };
      },
    },
  ];
}

export function limit(
  seconds: number,
  scope: string,
  headers: Record<string, string> = {},
  isPage = false,
): Answered {
  const isGlobal = scope === "global";
  return {
    status: 429,
    headers: {
      ...headers,
      "retry-after": String(seconds),
      "x-ratelimit-scope": scope,
      ...(isGlobal ? { "x-ratelimit-global": "true" } : {}),
    },
    body: isPage
      ? "<html>rate limited</html>"
      : { message: "You are being rate limited.", retry_after: seconds, global: isGlobal, code: 0 },
  };
}
