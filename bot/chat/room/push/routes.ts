import type { FastifyInstance, FastifyRequest } from "fastify";
import { z } from "zod";
import { allowClosedPages } from "../../../../commands/class/closed-pages.ts";
import type { Stores } from "../../../../store/index.ts";
import type { RoomSession } from "../../../../store/room.ts";
import type { PushState } from "../door-wire.ts";
import { refuse } from "../http.ts";
import { mayCall } from "./endpoint.ts";
import type { Pusher } from "./pusher.ts";

/* Calls to a closed page: the teacher allows them for the class, and each person turns them on for a device. */

export interface PushRouteParts {
  readonly stores: Stores;
  readonly pusher: Pusher;
  readonly ownHosts: readonly string[];
  sessionOf(request: FastifyRequest): RoomSession | undefined;
  now(): number;
}

const LIMIT = { rateLimit: { max: 20, timeWindow: 60_000 } };
/** A point of the P-256 curve and sixteen random bytes (RFC 8291, 3.2 and 3.3), in base64url. */
const subscriptionSchema = z.object({
  endpoint: z.string().max(1000),
  keys: z.object({ p256dh: z.string().regex(/^[\w-]{87}=?$/), auth: z.string().regex(/^[\w-]{22}(==)?$/) }),
});

export function addPushRoutes(app: FastifyInstance, parts: PushRouteParts): void {
  const { stores, pusher, ownHosts, sessionOf, now } = parts;

  const isAllowed = (classId: number): boolean => stores.classes.get(classId)?.habits.push ?? false;

  async function stateOf(session: RoomSession): Promise<PushState> {
    const { publicKey } = await pusher.keys();
    return {
      isAllowed: isAllowed(session.classId),
      isOn: stores.pushes.isSubscribed(session.tokenHash),
      publicKey,
    };
  }

  app.get("/api/push", async (request, reply) => {
    const session = sessionOf(request);
    if (!session) return refuse(reply, 401, "ERR_SIGNED_OUT");
    return reply.header("cache-control", "no-store").send(await stateOf(session));
  });

  app.post("/api/push/on", { config: LIMIT }, async (request, reply) => {
    const session = sessionOf(request);
    if (!session) return refuse(reply, 401, "ERR_SIGNED_OUT");
    const body = subscriptionSchema.safeParse(request.body);
    if (!body.success || !mayCall(body.data.endpoint, ownHosts))
      return refuse(reply, 400, "ERR_NOT_UNDERSTOOD");
    if (!isAllowed(session.classId)) return refuse(reply, 403, "ERR_FORBIDDEN");
    const { endpoint, keys } = body.data;
    stores.atomically(() => stores.pushes.subscribe({ ...session, endpoint, ...keys }, now()));
    // A phone that has moved has calls waiting, perhaps.
    pusher.wake();
    return reply.send(await stateOf(session));
  });

  app.post("/api/push/off", { config: LIMIT }, async (request, reply) => {
    const session = sessionOf(request);
    if (!session) return refuse(reply, 401, "ERR_SIGNED_OUT");
    stores.pushes.unsubscribe(session.tokenHash);
    return reply.send(await stateOf(session));
  });

  app.post("/api/push/allow", { config: LIMIT }, async (request, reply) => {
    const session = sessionOf(request);
    const body = z.object({ isAllowed: z.boolean() }).safeParse(request.body);
    const school = session && stores.classes.get(session.classId);
    const role = session && stores.members.find(session.classId, session.personId)?.role;
    if (!school || !body.success || role !== "teacher") return refuse(reply, 403, "ERR_FORBIDDEN");
    stores.atomically(() => allowClosedPages(stores, school, body.data.isAllowed));
    return reply.send({ ok: true });
  });
}
