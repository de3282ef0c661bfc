import type { FastifyReply, FastifyRequest } from "fastify";
import type { Stores } from "../../../store/index.ts";
import type { RoomSession, RoomStore } from "../../../store/room.ts";
import { hashToken } from "./secrets.ts";

/* Whose device this is, and, before anybody has come in with it, which. */

export const COOKIE = "sinkside";
const SESSION_SECONDS = 60 * 24 * 3600;

/** What the cookie holds, if it can be a token. */
export function tokenOf({ cookies }: FastifyRequest): string | undefined {
  const token = cookies[COOKIE];
  return token === undefined || token.length > 100 ? undefined : token;
}

/** The session a cookie names, as long as its person is a member. */
export function findSession(
  request: FastifyRequest,
  rooms: RoomStore,
  stores: Stores,
): RoomSession | undefined {
  const token = tokenOf(request);
  if (token === undefined) return undefined;
  const session = rooms.findSession(hashToken(token));
  return session && stores.members.find(session.classId, session.personId) ? session : undefined;
}

const DEVICE_COOKIE = "sinkside-device";

/** Which device this is, where it has been here before: tells nothing of its person, and opens nothing. */
export function deviceOf({ cookies }: FastifyRequest): string | undefined {
  const device = cookies[DEVICE_COOKIE];
  return device === undefined || !/^[\w-]{20,60}$/.test(device) ? undefined : device;
}

export function setDeviceCookie(reply: FastifyReply, device: string, isSecure: boolean): void {
  void reply.setCookie(DEVICE_COOKIE, device, {
    path: "/api",
    httpOnly: true,
    sameSite: "strict",
    secure: isSecure,
    maxAge: SESSION_SECONDS,
  });
}

/** No script can read it and no other site can send it. */
export function setSessionCookie(reply: FastifyReply, token: string, isSecure: boolean): void {
  void reply.setCookie(COOKIE, token, {
    path: "/",
    httpOnly: true,
    sameSite: "strict",
    secure: isSecure,
    maxAge: SESSION_SECONDS,
  });
}
