import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { z } from "zod";
import type { Stores } from "../../../store/index.ts";
import type { Member } from "../../../store/members.ts";
import type { RoomSession, RoomStore } from "../../../store/room.ts";
import type { Sink } from "../../../store/sinks.ts";
import { findSink } from "./sink-calls.ts";
import { nameDevice, nameFault } from "./door.ts";
import { cleanName } from "./names.ts";
import { refuse } from "./http.ts";
import type { Hub } from "./hub.ts";
import { dismiss } from "./hub.ts";
import { setSessionCookie } from "./cookie.ts";
import { drawPersonId, drawToken, hashToken } from "./secrets.ts";
import type { SinkSheet } from "./door-wire.ts";

/*
 * A device at a sink that works for everybody who stands at it. It is nobody's: a teacher opened it and is signed out of it
 * by that. It acts for whoever is chosen at it, as a student, and only in what one does at a sink.
 */

export interface SinkParts {
  readonly stores: Stores;
  readonly rooms: RoomStore;
  readonly hub: Hub;
  readonly isSecure: boolean;
  sessionOf(request: FastifyRequest): RoomSession | undefined;
  signedOut(session: RoomSession): void;
  now(): number;
}

const LIMIT = { rateLimit: { max: 60, timeWindow: 60_000 } };
const whoSchema = z.object({ personId: z.string().max(100) });
const nameSchema = z.object({ name: z.string().min(1).max(200) });
const lockSchema = z.object({ id: z.int(), isLocked: z.boolean() });
const idSchema = z.object({ id: z.int() });

export function addSinkRoutes(app: FastifyInstance, parts: SinkParts): void {
  const { stores, rooms, hub, now } = parts;

  /** A name is whose it was given to: one that is signed in on a device of its own is not lent out here. */
  const isFree = ({ classId, personId, role }: Member): boolean =>
    role === "student" &&
    personId.startsWith("room:") &&
    !rooms.sessionsOf(classId).some((session) => session.personId === personId);

  function sheetOf(sink: Sink): SinkSheet {
    const members = stores.members.list(sink.classId);
    const named = ({ personId: id, name }: Member): { id: string; name: string } => ({ id, name });
    const chosen = stores.sinks.chosen(sink.id, now());
    return {
      className: stores.classes.get(sink.classId)?.name ?? "",
      isLocked: sink.isLocked,
      people: chosen.flatMap((id) => members.filter(({ personId }) => personId === id).map(named)),
      names: sink.isLocked
        ? []
        : members
            .filter((each) => isFree(each) && !chosen.includes(each.personId))
            .map(named)
            .sort((a, b) => a.name.localeCompare(b.name)),
    };
  }

  const send = (reply: FastifyReply, sink: Sink): FastifyReply =>
    reply.header("cache-control", "no-store").send(sheetOf(sink));

  app.get("/api/sink", async (request, reply) => {
    const sink = findSink(request, stores);
    if (!sink) return refuse(reply, 401, "ERR_SIGNED_OUT");
    stores.sinks.touch(sink.id, now());
    return send(reply, sink);
  });

  app.post("/api/sink/choose", { config: LIMIT }, async (request, reply) => {
    const sink = findSink(request, stores);
    const body = whoSchema.safeParse(request.body);
    if (!sink) return refuse(reply, 401, "ERR_SIGNED_OUT");
    if (sink.isLocked) return refuse(reply, 403, "ERR_LOCKED");
    const member = body.success && stores.members.find(sink.classId, body.data.personId);
    if (!member || !isFree(member)) return refuse(reply, 403, "ERR_NAME_TAKEN");
    stores.sinks.choose(sink, member.personId, now());
    return send(reply, sink);
  });

  app.post("/api/sink/add", { config: LIMIT }, async (request, reply) => {
    const sink = findSink(request, stores);
    const body = nameSchema.safeParse(request.body);
    if (!sink) return refuse(reply, 401, "ERR_SIGNED_OUT");
    if (sink.isLocked) return refuse(reply, 403, "ERR_LOCKED");
    const name = body.success ? cleanName(body.data.name) : undefined;
    if (name === undefined) return refuse(reply, 400, "ERR_NAME");
    const fault = stores.atomically(() => {
      const found = nameFault(stores, sink.classId, name, "student");
      if (found) return found;
      const id = drawPersonId();
      stores.members.see(sink.classId, { id, name }, "student", now());
      stores.sinks.choose(sink, id, now());
      return undefined;
    });
    return fault ? refuse(reply, 403, fault) : send(reply, sink);
  });

  app.post("/api/sink/done", { config: LIMIT }, async (request, reply) => {
    const sink = findSink(request, stores);
    const body = whoSchema.safeParse(request.body);
    if (!sink || !body.success) return refuse(reply, 401, "ERR_SIGNED_OUT");
    const { personId } = body.data;
    // Its calls have nowhere else to go.
    if (stores.runs.open(sink.classId, personId).length > 0) return refuse(reply, 409, "ERR_RUN_OPEN");
    stores.sinks.unchoose(sink.id, personId);
    pagesOf(sink, personId).forEach((page) => dismiss(page));
    return send(reply, sink);
  });

  const pagesOf = ({ id, classId }: Sink, personId?: string) =>
    hub
      .ofClass(classId)
      .filter((page) => page.sinkId === id && (personId === undefined || page.personId === personId));

  function teacherOf(request: FastifyRequest): RoomSession | undefined {
    const session = parts.sessionOf(request);
    const role = session && stores.members.find(session.classId, session.personId)?.role;
    return role === "teacher" ? session : undefined;
  }

  app.post("/api/sink/open", { config: LIMIT }, async (request, reply) => {
    const session = teacherOf(request);
    if (!session) return refuse(reply, 403, "ERR_FORBIDDEN");
    const token = drawToken();
    const device = nameDevice(request.headers["user-agent"] ?? "");
    stores.atomically(() => {
      stores.sinks.open(session.classId, hashToken(token), device, now());
      rooms.removeSession(session.tokenHash);
    });
    parts.signedOut(session);
    setSessionCookie(reply, token, parts.isSecure);
    return reply.header("cache-control", "no-store").send({ ok: true });
  });

  app.post("/api/sink/lock", { config: LIMIT }, async (request, reply) => {
    const session = teacherOf(request);
    const body = lockSchema.safeParse(request.body);
    if (!session || !body.success) return refuse(reply, 403, "ERR_FORBIDDEN");
    const { id, isLocked } = body.data;
    const isKnown = stores.sinks.lock(session.classId, id, isLocked);
    return isKnown ? reply.send({ ok: true }) : refuse(reply, 404, "ERR_NOT_FOUND");
  });

  app.post("/api/sink/close", { config: LIMIT }, async (request, reply) => {
    const session = teacherOf(request);
    const body = idSchema.safeParse(request.body);
    if (!session || !body.success) return refuse(reply, 403, "ERR_FORBIDDEN");
    const sink = stores.sinks.list(session.classId).find(({ id }) => id === body.data.id);
    if (!sink || !stores.sinks.close(session.classId, sink.id)) return refuse(reply, 404, "ERR_NOT_FOUND");
    pagesOf(sink).forEach((page) => dismiss(page));
    return reply.send({ ok: true });
  });
}
