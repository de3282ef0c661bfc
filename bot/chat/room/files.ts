import { createHash } from "node:crypto";
import type { FastifyInstance, FastifyRequest } from "fastify";
import type { Stores } from "../../../store/index.ts";
import type { RoomSession } from "../../../store/room.ts";
import { bodySchema, type FeedBody } from "./feed.ts";
import { refuse } from "./http.ts";
import { createPictures } from "./pictures.ts";

/* Drawings and exports that came with an entry of the feed, for those who may see the entry. */

/** Whatever a drawing holds, opened by itself it can do nothing. */
const NOTHING_ALLOWED = "default-src 'none'; style-src 'unsafe-inline'; sandbox";

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

  app.get<{ Params: { id: string; index: string } }>("/files/:id/:index", async (request, reply) => {
    const file = bodyFor(request, request.params.id)?.attachments[Number(request.params.index)];
    if (!file) return refuse(reply, 404, "ERR_NOT_FOUND");
    return reply
      .header("content-security-policy", NOTHING_ALLOWED)
      .header("cache-control", "private, no-store")
      .header("content-disposition", `attachment; filename="${file.name.replace(/[^\w.-]/g, "-")}"`)
      .type(`${file.mediaType}; charset=utf-8`)
      .send(file.content);
  });
}
