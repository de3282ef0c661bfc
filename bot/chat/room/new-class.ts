import { makeChatKey } from "../../../store/shapes/chat-key.ts";
import type { FastifyInstance, FastifyRequest } from "fastify";
import { z } from "zod";
import { answer } from "../../../commands/class/setup.ts";
import type { SchoolClass } from "../../../store/shapes/school.ts";
import { DEFAULT_LANGUAGE, LANGUAGES } from "../../../store/shapes/language.ts";
import type { Stores } from "../../../store/index.ts";
import type { RoomSession, RoomStore } from "../../../store/room.ts";
import { type Door, nameDevice } from "./door.ts";
import { cleanName } from "./names.ts";
import { ensureSecrets } from "./first.ts";
import { refuse } from "./http.ts";
import { setSessionCookie } from "./cookie.ts";

/* "Make this my class": from the invented class to an empty one of one's own. */

const bodySchema = z.object({
  name: z.string().trim().min(1).max(100),
  zone: z.string().max(60).refine(isZone),
  teacher: z.string().min(1).max(200),
  /** Of the page that asks: the class is spoken to in it until somebody sets another. */
  language: z.enum(LANGUAGES).default(DEFAULT_LANGUAGE),
});

type NewClass = z.output<typeof bodySchema>;

export interface NewClassParts {
  readonly stores: Stores;
  readonly rooms: RoomStore;
  readonly door: Door;
  readonly isSecure: boolean;
  sessionOf(request: FastifyRequest): RoomSession | undefined;
  now(): number;
}

export function addNewClassRoute(app: FastifyInstance, parts: NewClassParts): void {
  const { stores, rooms, now } = parts;
  app.post(
    "/api/classes",
    { config: { rateLimit: { max: 6, timeWindow: 60_000 } } },
    async (request, reply) => {
      const session = parts.sessionOf(request);
      const from = session && stores.classes.get(session.classId);
      const role = session && stores.members.find(session.classId, session.personId)?.role;
      // Only from the demo, whose teacher sits at the class's own computer or was given its passphrase.
      if (!from?.demo || role !== "teacher") return refuse(reply, 403, "ERR_FORBIDDEN");
      const body = bodySchema.safeParse(request.body);
      if (!body.success) return refuse(reply, 400, "ERR_NOT_UNDERSTOOD");
      if (cleanName(body.data.teacher) === undefined) return refuse(reply, 400, "ERR_NAME");
      const schoolClass = stores.atomically(() => makeClass(stores, body.data, now()));
      const secrets = await ensureSecrets(rooms, schoolClass, now());
      const entry = parts.door.enter(schoolClass.id, "teacher", {
        name: body.data.teacher,
        device: nameDevice(request.headers["user-agent"] ?? ""),
        current: null,
        now: now(),
      });
      if (!entry.ok) return refuse(reply, 400, entry.fault);
      setSessionCookie(reply, entry.value.token, parts.isSecure);
      return reply.header("cache-control", "no-store").send(secrets);
    },
  );
}

function makeClass(stores: Stores, { name, zone, language }: NewClass, now: number): SchoolClass {
  const made = stores.classes.add(freeKey(stores), name, zone, false, now);
  // Who makes it has just said both.
  stores.classes.setHabits(made.id, answer({ ...made.habits, language }, ["name", "zone"]));
  return made;
}

/** `room:1`, `room:2`, … */
function freeKey(stores: Stores): string {
  for (let number = 1; ; number += 1) {
    const key = makeChatKey("room", number);
    if (!stores.classes.find(key)) return key;
  }
}

function isZone(name: string): boolean {
  try {
    return Boolean(Intl.DateTimeFormat("en", { timeZone: name }));
  } catch {
    return false;
  }
}
