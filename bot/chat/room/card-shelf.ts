import { createHash } from "node:crypto";
import { setImmediate as turn } from "node:timers/promises";
import { promisify } from "node:util";
import { gzip } from "node:zlib";
import type { FastifyReply, FastifyRequest } from "fastify";
import type { Command } from "../../../commands/define.ts";
import { speaking } from "../../../commands/speech/language.ts";
import type { Language } from "../../../store/shapes/language.ts";
import type { Role } from "../../../store/shapes/person.ts";
import { makeCards } from "./cards.ts";
import type { CommandCard } from "./card.ts";

/*
 * The command cards as they go over the wire. They are the same for everybody of a role who reads a language, and a hundred
 * kilobytes of text that takes long to make: so they are made and compressed once, and a page that has them is told so.
 */

interface KeptCards {
  readonly tag: string;
  readonly plain: Buffer;
  readonly gzipped: Buffer;
}

export interface CardShelf {
  send(request: FastifyRequest, reply: FastifyReply, role: Role, language: Language): Promise<FastifyReply>;
}

export function createCardShelf(commands: readonly Command[]): CardShelf {
  const kept = new Map<string, Promise<KeptCards>>();

  /** A command at a time: whoever is called meanwhile does not wait for all of them. */
  async function make(role: Role, language: Language): Promise<KeptCards> {
    const cards: CommandCard[] = [];
    for (const command of commands) {
      cards.push(...speaking(language, () => makeCards([command], role)));
      await turn();
    }
    const plain = Buffer.from(JSON.stringify(cards));
    const tag = `W/"${createHash("sha256").update(plain).digest("base64url").slice(0, 22)}"`;
    return { tag, plain, gzipped: await promisify(gzip)(plain) };
  }

  return {
    async send({ headers }, reply, role, language) {
      const key = `${role} ${language}`;
      const making = kept.get(key) ?? make(role, language);
      kept.set(key, making);
      const { tag, plain, gzipped } = await making;
      void reply.headers({
        "cache-control": "private, no-cache",
        etag: tag,
        vary: "accept-encoding, cookie",
      });
      if (headers["if-none-match"] === tag) return reply.code(304).send();
      void reply.type("application/json; charset=utf-8");
      // Compressed once for all: what a browser names first among others does not matter for text as short as this.
      const takesGzip = /\bgzip\b/.test(String(headers["accept-encoding"] ?? ""));
      return takesGzip ? reply.header("content-encoding", "gzip").send(gzipped) : reply.send(plain);
    },
  };
}
