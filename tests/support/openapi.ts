import { z } from "zod";

/*
 * The chat platform's own description of its interface (OpenAPI 3.1), as a judge of what the bot sends and of what the
 * loopback server answers: the zod shapes that discord-api-spec generates from it, for each place the bot calls.
 */

export interface OpenapiChecker {
  /** Faults of a request body; `path` as the document writes it: `/channels/{channel_id}/messages`. */
  request(method: string, path: string, body: unknown): string[];
  answer(method: string, path: string, status: number, body: unknown): string[];
}

type Shape = z.core.$ZodType;

/** By a name the compiler does not follow: the package's own types are written for other settings than ours. */
const load = (name: string): Promise<unknown> => import(name);
const shapes = (await load("discord-api-spec/zod")) as Readonly<Record<string, Shape>>;
const { pathsList } = (await load("discord-api-spec")) as {
  /** Its places by method. */
  readonly pathsList: Readonly<Record<string, readonly string[]>>;
};

const isInDocument = (method: string, path: string): boolean =>
  (pathsList[method.toLowerCase()] ?? []).includes(path);

const shape = (name: string): Shape => {
  const found = shapes[`${name}Schema`];
  if (!found) throw new Error(`the platform's document has no ${name}`);
  return found;
};
const oneOf = (...names: readonly string[]): Shape => z.union(names.map(shape));
const listOf = (name: string): Shape => z.array(shape(name)).nullable();

interface Place {
  readonly request?: Shape;
  /** Of a 200; left out: it answers with 204. */
  readonly answer?: Shape;
}

const message = shape("MessageResponse");
const putCommands: Place = {
  request: listOf("ApplicationCommandUpdateRequest"),
  answer: listOf("ApplicationCommandResponse"),
};

/** What stands in the document at each place. */
const PLACES: Readonly<Record<string, Place>> = {
  "GET /gateway/bot": { answer: shape("GatewayBotResponse") },
  "GET /users/@me": { answer: shape("UserPIIResponse") },
  "GET /applications/@me": { answer: shape("PrivateApplicationResponse") },
  "PUT /applications/{application_id}/commands": putCommands,
  "PUT /applications/{application_id}/guilds/{guild_id}/commands": putCommands,
  "POST /interactions/{interaction_id}/{interaction_token}/callback": {
    request: oneOf(
      "ApplicationCommandAutocompleteCallbackRequest",
      "CreateMessageInteractionCallbackRequest",
      "LaunchActivityInteractionCallbackRequest",
      "ModalInteractionCallbackRequest",
      "PongInteractionCallbackRequest",
      "SocialLayerSKUPurchaseEligibilityInteractionCallbackRequest",
      "UpdateMessageInteractionCallbackRequest",
    ),
    answer: shape("InteractionCallbackResponse"),
  },
  "POST /webhooks/{webhook_id}/{webhook_token}": {
    request: oneOf("IncomingWebhookRequestPartial", "IncomingWebhookUpdateRequestPartial"),
    answer: message,
  },
  "PATCH /webhooks/{webhook_id}/{webhook_token}/messages/@original": {
    request: shape("IncomingWebhookUpdateRequestPartial"),
    answer: message,
  },
  "DELETE /webhooks/{webhook_id}/{webhook_token}/messages/@original": {},
  "POST /channels/{channel_id}/messages": { request: shape("MessageCreateRequest"), answer: message },
  "GET /channels/{channel_id}/messages": { answer: listOf("MessageResponse") },
  "PATCH /channels/{channel_id}/messages/{message_id}": {
    request: shape("MessageEditRequestPartial"),
    answer: message,
  },
  "DELETE /channels/{channel_id}/messages/{message_id}": {},
  "PUT /channels/{channel_id}/messages/pins/{message_id}": {},
  "POST /channels/{channel_id}/threads": {
    request: shape("CreateTextThreadWithoutMessageRequest"),
    answer: shape("CreatedThreadResponse"),
  },
  "PUT /channels/{channel_id}/thread-members/{user_id}": {},
  "PATCH /channels/{channel_id}": {
    request: shape("UpdateThreadRequestPartial"),
    answer: shape("ThreadResponse"),
  },
  "GET /guilds/{guild_id}/threads/active": { answer: shape("ThreadsResponse") },
  "POST /users/@me/channels": {
    request: shape("CreatePrivateChannelRequest"),
    answer: oneOf("PrivateChannelResponse", "PrivateGroupChannelResponse"),
  },
};

const tooFast = shape("RatelimitedResponse");
const refused = shape("ErrorResponse");

for (const place of Object.keys(PLACES)) {
  const [method = "", path = ""] = place.split(" ");
  if (!isInDocument(method, path)) throw new Error(`${place} is no longer in the platform's document`);
}

function find(method: string, path: string): Place | string {
  const place = PLACES[`${method} ${path}`];
  if (place) return place;
  return isInDocument(method, path)
    ? `${method} ${path} is in the document: add its shapes to tests/support/openapi.ts`
    : `${method} ${path} is not in the document`;
}

function check(given: Shape, body: unknown): string[] {
  const { error } = z.safeParse(given, body);
  return (error?.issues ?? []).slice(0, 6).map(({ path, message: fault }) => `/${path.join("/")} ${fault}`);
}

export const openapi: OpenapiChecker = {
  request(method, path, body) {
    const place = find(method, path);
    if (typeof place === "string") return [place];
    if (!place.request) return body === undefined ? [] : ["takes no body"];
    return check(place.request, acceptPermissionText(body));
  },
  answer(method, path, status, body) {
    const place = find(method, path);
    if (typeof place === "string") return [place];
    if (status >= 500) return [];
    if (status === 204) return body === undefined ? [] : ["204 with a body"];
    if (status === 429) return check(tooFast, body);
    if (status >= 400) return check(refused, body);
    return place.answer ? check(place.answer, body) : [`${method} ${path} has no answer ${status}`];
  },
};

/**
 * A false alarm of the document: permissions are bit sets written as text (its own read-me says that numbers may come as
 * text), while the schema names a number only.
 */
function acceptPermissionText(body: unknown): unknown {
  if (Array.isArray(body)) return body.map(acceptPermissionText);
  if (typeof body !== "object" || body === null || !("default_member_permissions" in body)) return body;
  const bits = body.default_member_permissions;
  return typeof bits === "string" ? { ...body, default_member_permissions: Number(bits) } : body;
}
