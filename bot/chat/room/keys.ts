import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import QRCode from "qrcode";
import { z } from "zod";
import { mayActAs, type Role } from "../../../store/shapes/person.ts";
import type { Stores } from "../../../store/index.ts";
import type { RoomSession, RoomStore } from "../../../store/room.ts";
import { daysLeft } from "../../process/certificate.ts";
import type { LiveCertificate } from "./https.ts";
import type { Hub } from "./hub.ts";
import { freeJoinCode, resetPassphrases } from "./first.ts";
import { refuse } from "./http.ts";
import { calendarUrlOf } from "./calendar.ts";
import { drawToken, showJoinCode } from "./secrets.ts";
import type { DoorSheet } from "./wire.ts";

/* The keys of a class, for its staff: the code to come in by, who is in, and whom to sign out. */

export interface KeyParts {
  readonly stores: Stores;
  readonly rooms: RoomStore;
  readonly hub: Hub;
  readonly certificate: LiveCertificate | null;
  inviteUrl(): string | null;
  urls(): readonly string[];
  sessionOf(request: FastifyRequest): RoomSession | undefined;
  signedOut(session: RoomSession): void;
  now(): number;
}

/** Enough of a token's hash to name a device of one class, and of no use as a token. */
const HANDLE_CHARACTERS = 16;
/** Each try works out two hashes; a person needs one of these a year. */
const RARE = { rateLimit: { max: 6, timeWindow: 60_000 } };

/** Whether whoever came by the old ones is signed out. */
const renewSchema = z.object({ signOut: z.boolean().default(false) });

export function addKeyRoutes(app: FastifyInstance, parts: KeyParts): void {
  const { stores, rooms, hub, now } = parts;

  /** The session, if its person has at least this role in its own class. */
  function staffOf(request: FastifyRequest, needed: Role): RoomSession | undefined {
    const session = parts.sessionOf(request);
    const role = session && stores.members.find(session.classId, session.personId)?.role;
    return role && mayActAs(role, needed) ? session : undefined;
  }

  function sheetOf(classId: number): DoorSheet {
    const joinCode = showJoinCode(rooms.secret(classId, "join") ?? "");
    const sessions = rooms.sessionsOf(classId);
    const here = new Set(hub.ofClass(classId).map(({ personId }) => personId));
    const people = stores.members.list(classId).map(({ personId, name, role }) => ({
      id: personId,
      name,
      role,
      isHere: here.has(personId),
      devices: sessions
        .filter((each) => each.personId === personId)
        .map(({ tokenHash, device, seenAt }) => ({
          handle: tokenHash.slice(0, HANDLE_CHARACTERS),
          device,
          seenAt,
        })),
    }));
    const token = rooms.calendarToken(classId);
    const calendarUrl = token === undefined ? null : calendarUrlOf(parts.urls()[0] ?? "", token);
    const sinks = stores.sinks.list(classId).map(({ id, device, seenAt, isLocked }) => ({
      id,
      device,
      seenAt,
      isLocked,
      people: stores.sinks
        .chosen(id, now())
        .flatMap((personId) => stores.members.find(classId, personId)?.name ?? []),
    }));
    const isPushAllowed = stores.classes.get(classId)?.habits.push ?? false;
    const inUse = parts.certificate?.current();
    const certificate = inUse ? { until: inUse.until, daysLeft: daysLeft(inUse, now()) } : null;
    const isSecure = parts.urls().every((url) => url.startsWith("https:"));
    return {
      joinCode,
      joinUrls: parts.urls(),
      certificate,
      isSecure,
      isPushAllowed,
      sinks,
      calendarUrl,
      inviteUrl: parts.inviteUrl(),
      people,
    };
  }

  const sendSheet = (reply: FastifyReply, classId: number): FastifyReply =>
    reply.header("cache-control", "no-store").send(sheetOf(classId));

  function signOut(sessions: readonly RoomSession[]): void {
    for (const session of sessions) {
      rooms.removeSession(session.tokenHash);
      parts.signedOut(session);
    }
  }

  const isStudent = ({ classId, personId }: RoomSession): boolean =>
    stores.members.find(classId, personId)?.role === "student";
  const cameByCode = (classId: number): RoomSession[] => rooms.sessionsOf(classId).filter(isStudent);
  const cameByPassphrase = (classId: number): RoomSession[] =>
    rooms.sessionsOf(classId).filter((each) => !isStudent(each));

  app.get("/api/door", async (request, reply) => {
    const session = staffOf(request, "aide");
    return session ? sendSheet(reply, session.classId) : refuse(reply, 403, "ERR_FORBIDDEN");
  });

  app.get("/api/door/qr.svg", async (request, reply) => {
    const session = staffOf(request, "aide");
    if (!session) return refuse(reply, 403, "ERR_FORBIDDEN");
    const code = showJoinCode(rooms.secret(session.classId, "join") ?? "");
    // Behind the # the code is sent to nobody and stands in no log.
    const address = `${parts.urls()[0]}/#code=${code}`;
    const svg = await QRCode.toString(address, { type: "svg", errorCorrectionLevel: "M", margin: 4 });
    return reply.header("cache-control", "no-store").type("image/svg+xml").send(svg);
  });

  app.post("/api/door/rotate", { config: RARE }, async (request, reply) => {
    const session = staffOf(request, "teacher");
    const body = renewSchema.safeParse(request.body ?? {});
    if (!session || !body.success) return refuse(reply, 403, "ERR_FORBIDDEN");
    rooms.setSecret(session.classId, "join", freeJoinCode(rooms), now());
    // Who came by the old code comes back by the new one, on the same device; who only had the code does not.
    if (body.data.signOut)
      for (const each of cameByCode(session.classId)) {
        rooms.putToSleep(each.tokenHash);
        parts.signedOut(each);
      }
    return sendSheet(reply, session.classId);
  });

  app.post("/api/door/calendar", { config: RARE }, async (request, reply) => {
    const session = staffOf(request, "teacher");
    const body = z.object({ isOn: z.boolean() }).safeParse(request.body);
    if (!session || !body.success) return refuse(reply, 403, "ERR_FORBIDDEN");
    rooms.setCalendarToken(session.classId, body.data.isOn ? drawToken() : null);
    return sendSheet(reply, session.classId);
  });

  app.post("/api/door/free", async (request, reply) => {
    const session = staffOf(request, "aide");
    const body = z.object({ personId: z.string().max(100) }).safeParse(request.body);
    if (!session || !body.success) return refuse(reply, 403, "ERR_FORBIDDEN");
    const { personId } = body.data;
    const target = stores.members.find(session.classId, personId);
    const own = stores.members.find(session.classId, session.personId);
    // An aide does not put a teacher out.
    if (!target || !own || !mayActAs(own.role, target.role)) return refuse(reply, 403, "ERR_FORBIDDEN");
    signOut(rooms.sessionsOf(session.classId).filter((each) => each.personId === personId));
    return sendSheet(reply, session.classId);
  });

  app.post("/api/door/device", async (request, reply) => {
    const session = staffOf(request, "teacher");
    const body = z.object({ handle: z.string().length(HANDLE_CHARACTERS) }).safeParse(request.body);
    if (!session || !body.success) return refuse(reply, 403, "ERR_FORBIDDEN");
    const { handle } = body.data;
    signOut(rooms.sessionsOf(session.classId).filter(({ tokenHash }) => tokenHash.startsWith(handle)));
    return sendSheet(reply, session.classId);
  });

  app.post("/api/door/passphrases", { config: RARE }, async (request, reply) => {
    const session = staffOf(request, "teacher");
    const schoolClass = session && stores.classes.get(session.classId);
    const body = renewSchema.safeParse(request.body ?? {});
    if (!schoolClass || !body.success) return refuse(reply, 403, "ERR_FORBIDDEN");
    const others = cameByPassphrase(session.classId).filter(
      ({ tokenHash }) => tokenHash !== session.tokenHash,
    );
    if (body.data.signOut) signOut(others);
    return reply.header("cache-control", "no-store").send(await resetPassphrases(rooms, schoolClass, now()));
  });
}
