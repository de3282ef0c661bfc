import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { z } from "zod";
import type { Command } from "../../../commands/define.ts";
import type { Stores } from "../../../store/index.ts";
import type { RoomSession, RoomStore } from "../../../store/room.ts";
import { DEFAULT_LANGUAGE, LANGUAGES } from "../../../store/shapes/language.ts";
import { isStorageFault } from "../../../store/open.ts";
import { createCardShelf } from "./card-shelf.ts";
import { type Door, type DoorRequest, type Entry, nameDevice } from "./door.ts";
import { COOKIE, deviceOf, setDeviceCookie, setSessionCookie, tokenOf } from "./cookie.ts";
import { refuse } from "./http.ts";
import { drawToken, hashToken } from "./secrets.ts";
import { factsOf } from "./socket.ts";
import type { Tries } from "./tries.ts";
import type { DoorCode, DoorState } from "./wire.ts";
import type { Result } from "../../../commands/result.ts";

/* The room's door as the browser knocks at it: join, leave, who am I, and what may I call. */

const name = z.string().min(1).max(200);
const code = z.string().min(1).max(40);
const joinSchema = z.object({ code, name });
const staffSchema = z.object({ code, name, passphrase: z.string().min(1).max(100) });
const returnSchema = z.object({ code });
const leaveSchema = z.object({ isSure: z.boolean().default(false) });
const spoken = z.enum(LANGUAGES).catch(DEFAULT_LANGUAGE);
const demoSchema = z.object({ name, role: z.enum(["student", "teacher"]), language: spoken });

export interface RouteParts {
  readonly stores: Stores;
  readonly rooms: RoomStore;
  readonly commands: readonly Command[];
  readonly door: Door;
  readonly tries: Tries;
  readonly isSecure: boolean;
  readonly speed: number;
  openDemo(): { readonly name: string } | undefined;
  /** The session of this request, if it has one that still holds. */
  sessionOf(request: FastifyRequest): RoomSession | undefined;
  /** Whether this request comes from a device at a sink. */
  sinkOf(request: FastifyRequest): { readonly id: number } | undefined;
  signedOut(session: RoomSession): void;
  now(): number;
}

/** What a guess gets wrong; a name that is taken is none. */
const WRONG: ReadonlySet<DoorCode> = new Set(["ERR_CODE", "ERR_PASSPHRASE", "ERR_RETURN_CODE"]);

const cardsQuery = z.object({ language: spoken });

export function addDoorRoutes(app: FastifyInstance, parts: RouteParts): void {
  const { stores, rooms, door, now } = parts;
  const cards = createCardShelf(parts.commands);

  app.get("/api/me", async (request, reply): Promise<DoorState> => {
    void reply.header("cache-control", "no-store");
    meetDevice(request, reply);
    const session = parts.sessionOf(request);
    const facts = session && factsOf(parts, session.classId, session.personId);
    if (session && facts) {
      seen(session);
      return { state: "in", facts };
    }
    const sink = parts.sinkOf(request);
    if (sink) return { state: "sink", speed: parts.speed };
    const demo = parts.openDemo();
    return { state: "out", demo: demo ? { className: demo.name } : null };
  });

  app.get("/api/commands", async (request, reply) => {
    const session = parts.sessionOf(request);
    const member = session && stores.members.find(session.classId, session.personId);
    const isSink = parts.sinkOf(request) !== undefined;
    if (!member && !isSink) return refuse(reply, 401, "ERR_SIGNED_OUT");
    const { language } = cardsQuery.parse(request.query);
    return cards.send(request, reply, member?.role ?? "student", language);
  });

  app.post("/api/join", async (request, reply) =>
    withBody(joinSchema, request, reply, (body) => door.join({ ...body, ...requestOf(request) })),
  );
  app.post("/api/staff", async (request, reply) =>
    withBody(staffSchema, request, reply, (body) => door.joinAsStaff({ ...body, ...requestOf(request) })),
  );
  app.post("/api/demo", async (request, reply) =>
    withBody(demoSchema, request, reply, (body) => door.joinDemo({ ...body, ...requestOf(request) })),
  );

  app.post("/api/return", async (request, reply) =>
    withBody(returnSchema, request, reply, (body) => door.returnTo({ ...body, ...requestOf(request) })),
  );

  app.post("/api/leave", async (request, reply) => {
    const session = parts.sessionOf(request);
    const body = leaveSchema.safeParse(request.body);
    if (session) {
      // A film under way goes on calling: whoever leaves its calls behind says so.
      const isSure = body.success && body.data.isSure;
      if (!isSure && stores.runs.open(session.classId, session.personId).length > 0)
        return refuse(reply, 409, "ERR_RUN_OPEN");
      rooms.removeSession(session.tokenHash);
      parts.signedOut(session);
    }
    return reply.clearCookie(COOKIE, { path: "/" }).send({ ok: true });
  });

  function meetDevice(request: FastifyRequest, reply: FastifyReply): void {
    const known = deviceOf(request);
    const device = known ?? drawToken();
    parts.tries.meet(device, now());
    if (known === undefined) setDeviceCookie(reply, device, parts.isSecure);
  }

  function sleeping(request: FastifyRequest): RoomSession | undefined {
    const token = tokenOf(request);
    return token === undefined ? undefined : rooms.findAsleep(hashToken(token));
  }

  /** Who is in is let in on a full disk as well. */
  function seen({ tokenHash }: RoomSession): void {
    try {
      rooms.touchSession(tokenHash, now());
    } catch (error) {
      if (!isStorageFault(error)) throw error;
    }
  }

  function requestOf(request: FastifyRequest): Omit<DoorRequest, "name"> {
    const session = parts.sessionOf(request);
    return {
      device: nameDevice(request.headers["user-agent"] ?? ""),
      current: session ? { classId: session.classId, personId: session.personId } : null,
      slept: sleeping(request) ?? null,
      now: now(),
    };
  }

  async function withBody<T>(
    schema: z.ZodType<T>,
    request: FastifyRequest,
    reply: FastifyReply,
    enter: (body: T) => Result<Entry, DoorCode> | Promise<Result<Entry, DoorCode>>,
  ): Promise<FastifyReply> {
    const body = schema.safeParse(request.body);
    if (!body.success) return refuse(reply, 400, "ERR_NOT_UNDERSTOOD");
    const before = parts.sessionOf(request);
    const knock = { device: deviceOf(request), address: request.ip };
    const waitMs = parts.tries.waitMs(knock, now());
    if (waitMs > 0)
      return refuse(reply.header("retry-after", Math.ceil(waitMs / 1000)), 429, "ERR_TOO_OFTEN");
    const entry = await enter(body.data);
    if (!entry.ok && WRONG.has(entry.fault)) parts.tries.wrong(knock, now());
    if (!entry.ok) return refuse(reply, entry.fault === "ERR_TOO_OFTEN" ? 429 : 403, entry.fault);
    // One browser is one person: the seat it had before is given up.
    const slept = sleeping(request);
    if (slept) rooms.removeSession(slept.tokenHash);
    if (before) {
      rooms.removeSession(before.tokenHash);
      parts.signedOut(before);
    }
    setSessionCookie(reply, entry.value.token, parts.isSecure);
    return reply.header("cache-control", "no-store").send({ ok: true });
  }
}
