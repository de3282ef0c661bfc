import type { FastifyInstance } from "fastify";
import type { Stores } from "../../../store/index.ts";
import type { RoomStore } from "../../../store/room.ts";
import { makeCalendar } from "../../../commands/class/calendar-feed.ts";
import { refuse } from "./http.ts";

/* The class's times for a calendar. A calendar signs in nowhere, so whoever has the address may read it. */

export interface CalendarParts {
  readonly stores: Stores;
  readonly rooms: RoomStore;
  now(): number;
}

/** Calendars look every few hours; more than this is somebody trying addresses. */
const LIMIT = { rateLimit: { max: 20, timeWindow: 60_000 } };
const LOOK_AGAIN_SECONDS = 3600;

export const calendarUrlOf = (roomUrl: string, token: string): string => `${roomUrl}/calendar/${token}.ics`;

export function addCalendarRoute(app: FastifyInstance, { stores, rooms, now }: CalendarParts): void {
  app.get<{ Params: { file: string } }>("/calendar/:file", { config: LIMIT }, async (request, reply) => {
    const token = /^([\w-]{20,80})\.ics$/.exec(request.params.file)?.[1];
    const classId = token === undefined ? undefined : rooms.classIdByCalendarToken(token);
    const school = classId === undefined ? undefined : stores.classes.get(classId);
    if (!school) return refuse(reply, 404, "ERR_NOT_FOUND");
    return reply
      .header("cache-control", `private, max-age=${LOOK_AGAIN_SECONDS}`)
      .header("content-disposition", 'inline; filename="class.ics"')
      .type("text/calendar; charset=utf-8")
      .send(makeCalendar(school, now()));
  });
}
