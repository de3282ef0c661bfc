import { createHash } from "node:crypto";
import { Readable } from "node:stream";
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { LOG_TYPES, logName, piecesOf } from "../../../commands/print/export/pieces.ts";
import { whoMay } from "../../../commands/who.ts";
import type { Stores } from "../../../store/index.ts";
import type { RoomSession } from "../../../store/room.ts";
import { mayActAs } from "../../../store/shapes/person.ts";
import { createLane } from "../lane.ts";
import { bodySchema, type FeedBody } from "./feed.ts";
import { refuse } from "./http.ts";
import { createPictures } from "./pictures.ts";

/* Drawings and exports that came with an entry of the feed, for those who may see the entry. */

/** Whatever a drawing holds, opened by itself it can do nothing. */
const NOTHING_ALLOWED = "default-src 'none'; style-src 'unsafe-inline'; sandbox";

/** So much of a log is made ahead of who takes it. */
const AHEAD_BYTES = 256 * 1024;

export interface FileParts {
  readonly stores: Stores;
  sessionOf(request: FastifyRequest): RoomSession | undefined;
  renderPicture(svg: string): Promise<Buffer>;
}

export function addFileRoutes(app: FastifyInstance, { stores, sessionOf, renderPicture }: FileParts): void {
  const pictures = createPictures(renderPicture);
  /** The entry's body, if this request's person may see it: the feed's own question, asked for one entry. */
  function bodyFor(request: FastifyRequest, idText: string): FeedBody | undefined {
    const session = sessionOf(request);
    const id = Number(idText);
    if (!session || !Number.isSafeInteger(id) || id < 1) return undefined;
    const [message] = stores.messages.after(session.classId, session.personId, id - 1, 1);
    return message?.id === id ? bodySchema.safeParse(message.body).data : undefined;
  }

  app.get<{ Params: { id: string; file: string } }>("/pictures/:id/:file", async (request, reply) => {
    const [, index, ending] = /^(\d{1,3})\.(svg|png)$/.exec(request.params.file) ?? [];
    const picture = bodyFor(request, request.params.id)?.pictures[Number(index)];
    if (!picture) return refuse(reply, 404, "ERR_NOT_FOUND");
    const tag = `"${createHash("sha256").update(picture.svg).digest("base64url").slice(0, 22)}"`;
    void reply
      .header("content-security-policy", NOTHING_ALLOWED)
      // Asked for again each time: what was taken out of the feed is not to be seen from a cache.
      .header("cache-control", "private, no-cache")
      .header("etag", tag);
    if (request.headers["if-none-match"] === tag) return reply.code(304).send();
    if (ending === "png") {
      const drawn = pictures.draw(picture.svg, sessionOf(request)?.personId ?? "", performance.now());
      return drawn === "fast"
        ? refuse(reply, 429, "ERR_TOO_OFTEN")
        : reply.type("image/png").send(await drawn);
    }
    return reply.type("image/svg+xml").send(picture.svg);
  });

  const lane = createLane();

  /** Made while it is fetched, no faster than it is taken; a fetch that breaks off can be made again. */
  app.get<{ Params: { id: string } }>("/logs/:id", async (request, reply) => {
    const log = bodyFor(request, request.params.id)?.log;
    if (!log) return refuse(reply, 404, "ERR_NOT_FOUND");
    const session = sessionOf(request);
    const member = session && stores.members.find(session.classId, session.personId);
    if (!member || !mayActAs(member.role, whoMay(`${log.of} export`)))
      return refuse(reply, 404, "ERR_NOT_FOUND");
    return asFile(reply, logName(log), LOG_TYPES[log.format]).send(
      Readable.from(lane.through(piecesOf(stores, log)), {
        objectMode: false,
        highWaterMark: AHEAD_BYTES,
      }),
    );
  });

  app.get<{ Params: { id: string; index: string } }>("/files/:id/:index", async (request, reply) => {
    const file = bodyFor(request, request.params.id)?.attachments[Number(request.params.index)];
    if (!file) return refuse(reply, 404, "ERR_NOT_FOUND");
    return asFile(reply, file.name, file.mediaType).send(file.content);
  });
}

function asFile(reply: FastifyReply, name: string, mediaType: string): FastifyReply {
  return reply
    .header("content-security-policy", NOTHING_ALLOWED)
    .header("cache-control", "private, no-store")
    .header("content-disposition", `attachment; filename="${name.replace(/[^\w.-]/g, "-")}"`)
    .type(`${mediaType}; charset=utf-8`);
}
