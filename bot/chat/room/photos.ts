import { createHash } from "node:crypto";
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { DEFAULT_LANGUAGE } from "../../../store/shapes/language.ts";
import { speaking } from "../../../commands/speech/language.ts";
import { photoFaultWords } from "../../../commands/roll/photo/photo-words.ts";
import { findPhoto } from "../../../store/photos.ts";
import type { PhotoOf } from "../../../store/shapes/photo.ts";
import { parseNumber } from "../../../commands/speech/wording.ts";
import { MOST_PHOTO_BYTES, photoFileName } from "../../../commands/roll/photo/photo.ts";
import type { Stores } from "../../../store/index.ts";
import type { RoomSession, RoomStore } from "../../../store/room.ts";
import type { ChatHandlers, CommandCall } from "../port.ts";
import { callerOf, replyBody } from "./calls.ts";
import { refuse } from "./http.ts";
import type { Entry } from "./feed-writer.ts";
import type { PhotoRefusal } from "./wire.ts";

/* Photos of contact sheets and prints: sent by a page as bare bytes, and shown to their own class. */

/** Whatever is in the bytes, opened by itself it can do nothing. */
const NOTHING_ALLOWED = "default-src 'none'; sandbox";
/** A film's worth of tries; counted by session, since one address may be a whole class. */
const PHOTO_LIMIT = 30;
const PHOTO_LIMIT_MS = 5 * 60_000;

export interface PhotoParts {
  readonly stores: Stores;
  readonly rooms: RoomStore;
  handlers(): ChatHandlers;
  sessionOf(request: FastifyRequest): RoomSession | undefined;
  /** Writes the answer into the sender's feed, where the page shows it with the photo. */
  write(entry: Entry): Promise<unknown>;
  now(): number;
}

export function addPhotoRoutes(app: FastifyInstance, parts: PhotoParts): void {
  const { stores, sessionOf } = parts;

  app.get<{ Params: { name: string } }>("/photos/:name", async (request, reply) => {
    const session = sessionOf(request);
    const of = photoNamed(request.params.name);
    const photo = session && of && findPhoto(stores, session.classId, of);
    if (!of || !photo) return refuse(reply, 404, "ERR_NOT_FOUND");
    const tag = `"${createHash("sha256").update(photo.bytes).digest("base64url").slice(0, 22)}"`;
    void reply
      .header("content-security-policy", NOTHING_ALLOWED)
      // Asked for again each time: a photo that was taken off is not to be seen from a cache.
      .header("cache-control", "private, no-cache")
      .header("etag", tag);
    if (request.headers["if-none-match"] === tag) return reply.code(304).send();
    return reply
      .header("content-disposition", `inline; filename="${photoFileName(of, photo.mediaType)}"`)
      .type(photo.mediaType)
      .send(Buffer.from(photo.bytes));
  });

  // In a scope of its own: nowhere else is a body of this size, or of any type, taken.
  void app.register(async (scope) => {
    scope.removeAllContentTypeParsers();
    scope.addContentTypeParser("*", { parseAs: "buffer" }, (_request, body, done) => done(null, body));
    scope.post<{ Params: { name: string } }>(
      "/api/photos/:name",
      {
        bodyLimit: MOST_PHOTO_BYTES,
        config: {
          rateLimit: {
            max: PHOTO_LIMIT,
            timeWindow: PHOTO_LIMIT_MS,
            keyGenerator: (request) => sessionOf(request)?.tokenHash ?? request.ip,
          },
        },
        // Before the body is read: a stranger's eight megabytes are not even taken in.
        onRequest: async (request, reply) => {
          if (!sessionOf(request)) return refuse(reply, 401, "ERR_SIGNED_OUT");
          return undefined;
        },
        errorHandler: (error, request, reply) => {
          if (error.statusCode !== 413) throw error;
          const bytes = Number(request.headers["content-length"]) || MOST_PHOTO_BYTES + 1;
          const sender = sessionOf(request);
          const language = sender && stores.members.languageOf(sender.classId, sender.personId);
          const text = speaking(language ?? DEFAULT_LANGUAGE, () =>
            photoFaultWords({ code: "ERR_PHOTO_LARGE", bytes }),
          );
          return refuseInWords(reply, 413, "ERR_PHOTO_LARGE", text);
        },
      },
      (request, reply) => takePhoto(parts, request, reply),
    );
  });
}

/** `V9` a print; `L12`, or a bare number, a roll. */
function photoNamed(name: string): PhotoOf | undefined {
  const kind = /^v/i.test(name) ? "print" : "roll";
  const number = parseNumber(kind, name);
  return number === undefined ? undefined : { kind, number };
}

function callFor(name: string): Pick<CommandCall, "name" | "options"> {
  const { kind } = photoNamed(name) ?? { kind: "roll" };
  return { name: `${kind} photo`, options: { [kind]: name } };
}

async function takePhoto(
  parts: PhotoParts,
  request: FastifyRequest<{ Params: { name: string } }>,
  reply: FastifyReply,
): Promise<FastifyReply> {
  // Asked again: the person may have been erased while the bytes came in.
  const session = parts.sessionOf(request);
  const caller = session && callerOf(parts, session);
  if (!caller) return refuse(reply, 401, "ERR_SIGNED_OUT");
  const { classId, person, role, place } = caller;
  let refusal: PhotoRefusal["error"] | undefined;
  await parts.handlers().onCommand({
    callId: null,
    ...callFor(request.params.name.slice(0, 12)),
    person,
    role,
    place,
    file: Buffer.isBuffer(request.body) ? request.body : Buffer.alloc(0),
    async answer(given, _visibility, code = null) {
      if (code !== null) refusal = { code, text: given.text };
      else
        await parts.write({
          classId,
          personId: person.id,
          authorId: null,
          key: `p:${person.id}:${parts.now()}`,
          body: replyBody(given, null),
        });
    },
  });
  if (refusal) return refuseInWords(reply, 422, refusal.code, refusal.text ?? "");
  return reply.header("cache-control", "no-store").send({ ok: true });
}

function refuseInWords(reply: FastifyReply, status: number, code: string, text: string): FastifyReply {
  const refusal: PhotoRefusal = { error: { code, text } };
  return reply.code(status).header("cache-control", "no-store").send(refusal);
}
