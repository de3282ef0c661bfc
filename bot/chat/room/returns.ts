import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import QRCode from "qrcode";
import { z } from "zod";
import { mayGiveCode, returnsByCode, showCode } from "../../../commands/mine/return.ts";
import type { Stores } from "../../../store/index.ts";
import type { Member } from "../../../store/members.ts";
import type { RoomSession } from "../../../store/room.ts";
import { isLoopback } from "./address.ts";
import { refuse } from "./http.ts";
import type { ReturnCode } from "./door-wire.ts";

/* A person's place on another device: a short code, shown on the old one or given by staff. The door takes it. */

export interface ReturnParts {
  readonly stores: Stores;
  urls(): readonly string[];
  sessionOf(request: FastifyRequest): RoomSession | undefined;
  now(): number;
}

/** A new code puts an end to the one before, so a person needs few. */
const LIMIT = { rateLimit: { max: 12, timeWindow: 60_000 } };

const whomSchema = z.object({ personId: z.string().max(100) });

export function addReturnRoutes(app: FastifyInstance, { stores, urls, sessionOf, now }: ReturnParts): void {
  const memberOf = (request: FastifyRequest): Member | undefined => {
    const session = sessionOf(request);
    return session && stores.members.find(session.classId, session.personId);
  };

  /** Where the other device finds the room: as this page did, unless that is only this computer's own name. */
  function addressFor({ headers: { origin } }: FastifyRequest): string {
    return origin === undefined || isLoopback(new URL(origin).hostname) ? (urls()[0] ?? "") : origin;
  }

  function give(request: FastifyRequest, reply: FastifyReply, member: Member): FastifyReply {
    if (returnsByCode(member) !== "yes") return refuse(reply, 403, "ERR_BY_PASSPHRASE");
    const address = addressFor(request);
    const { code, until } = stores.returnCodes.give(member.classId, member.personId, now());
    // Behind the # the code is sent to nobody and stands in no log.
    const { modules } = QRCode.create(`${address}/#return=${showCode(code)}`, { errorCorrectionLevel: "M" });
    const picture = {
      size: modules.size,
      bits: Array.from(modules.data, (bit) => (bit ? "1" : "0")).join(""),
    };
    const given: ReturnCode = { code: showCode(code), until, name: member.name, picture };
    return reply.header("cache-control", "no-store").send(given);
  }

  app.post("/api/return/own", { config: LIMIT }, async (request, reply) => {
    const member = memberOf(request);
    return member ? give(request, reply, member) : refuse(reply, 401, "ERR_SIGNED_OUT");
  });

  app.post("/api/return/for", { config: LIMIT }, async (request, reply) => {
    const giver = memberOf(request);
    const body = whomSchema.safeParse(request.body);
    const whose = giver && body.success && stores.members.find(giver.classId, body.data.personId);
    if (!whose || !mayGiveCode(giver.role, whose)) return refuse(reply, 403, "ERR_FORBIDDEN");
    return give(request, reply, whose);
  });
}
