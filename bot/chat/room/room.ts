import { chatOf } from "../../../store/shapes/chat-key.ts";
import { join } from "node:path";
import type { AddressInfo } from "node:net";
import type { FastifyInstance, FastifyRequest } from "fastify";
import type { Reach } from "../../../store/shapes/reach.ts";
import type { SchoolClass } from "../../../store/shapes/school.ts";
import type { RoomSession } from "../../../store/room.ts";
import type { ChatHandlers, Delivery, Posted, Outcome } from "../port.ts";
import { addressesOf, isLoopback } from "./address.ts";
import { addCalendarRoute } from "./calendar.ts";
import { createDoor } from "./door.ts";
import { addFileRoutes } from "./files.ts";
import { createHttp } from "./http.ts";
import { type Admitted, createHub, dismiss, sendTo } from "./hub.ts";
import { createFeedWriter } from "./feed-writer.ts";
import { createLive } from "./live.ts";
import { builtPath } from "../../process/built.ts";
import { addKeyRoutes } from "./keys.ts";
import { addNewClassRoute } from "./new-class.ts";
import { addPhotoRoutes } from "./photos.ts";
import { addReturnRoutes } from "./returns.ts";
import { findSession } from "./cookie.ts";
import { addDoorRoutes } from "./routes.ts";
import { ensureSecrets, resetPassphrases, type FirstSecrets } from "./first.ts";
import { factsOf, openPage } from "./socket.ts";
import { addSinkRoutes } from "./sinks.ts";
import { admitAtSink, findSink } from "./sink-calls.ts";
import { createAgents } from "./push/endpoint.ts";
import { createPusher } from "./push/pusher.ts";
import { addPushRoutes } from "./push/routes.ts";
import type { Room, RoomOptions } from "./options.ts";
import { sayInRoom } from "./say.ts";
import { tellStorm } from "./storm.ts";
import { createTries } from "./tries.ts";

const PING_MS = 25_000;
/** Two small files: a new certificate is in use within this. */
const LOOK_AT_FILES_MS = 10_000;

/** The school's own chat: a page served by this process on the school's own network. */
export function createRoom(options: RoomOptions): Room {
  const { host, publicUrl, stores, commands, log, viewOf, now } = options;
  const speed = options.speed ?? 1;
  const certificate = options.certificate ?? null;
  const rooms = stores.rooms;
  const hub = createHub();
  const live = createLive({
    hub,
    stores,
    viewOf,
    factsOf: (classId, personId) => factsOf({ stores, speed }, classId, personId),
    now,
  });
  const writer = createFeedWriter(stores, now, live.push);
  const ownHosts = options.pushHosts ?? [];
  const pusher = createPusher({
    stores,
    log,
    subject: () => urls.find((url) => url.startsWith("https:")) ?? "mailto:room@sinkside.invalid",
    agentOf: options.pushAgentOf ?? createAgents(ownHosts),
    now,
  });
  const firstSecrets: FirstSecrets[] = [];
  const urls: string[] = [];
  let app: FastifyInstance | undefined;
  let troubleSince: number | null = null;
  const heartbeats: NodeJS.Timeout[] = [];

  const roomClasses = (): SchoolClass[] => stores.classes.list().filter(({ key }) => chatOf(key) === "room");
  // The demo's door needs no code as long as nobody but this computer can reach it.
  const openDemo = (): SchoolClass | undefined =>
    isLoopback(host) && publicUrl === null ? roomClasses().find(({ demo }) => demo) : undefined;
  const sessionOf = (request: FastifyRequest): RoomSession | undefined => findSession(request, rooms, stores);
  const signedOut = (session: RoomSession): void =>
    hub
      .ofPerson(session.classId, session.personId)
      .filter(({ tokenHash }) => tokenHash === session.tokenHash)
      .forEach((page) => dismiss(page));

  async function start(given: ChatHandlers): Promise<void> {
    for (const each of roomClasses()) {
      const fresh = await ensureSecrets(rooms, each, now());
      if (fresh) firstSecrets.push(fresh);
    }
    app = await createHttp({
      host,
      publicUrl,
      pageDir: options.pageDir ?? builtPath(join("chat", "room-page")),
      log,
      certificate,
      limitKeyOf: (request) => {
        const sink = findSink(request, stores);
        return sessionOf(request)?.tokenHash ?? (sink ? `sink ${sink.id}` : request.ip);
      },
    });
    const door = createDoor({ stores, rooms, openDemo });
    const isSecure = certificate !== null || (publicUrl?.startsWith("https:") ?? false);
    addDoorRoutes(app, {
      stores,
      rooms,
      commands,
      door,
      tries: createTries((address) => {
        log.warn({ address }, "many wrong codes or passphrases are tried at the door");
        tellStorm(stores, address, now());
      }),
      isSecure,
      speed,
      openDemo,
      sessionOf,
      sinkOf: (request) => findSink(request, stores),
      signedOut,
      now,
    });
    addFileRoutes(app, { stores, sessionOf, renderPicture: options.renderPicture });
    addPhotoRoutes(app, { stores, rooms, handlers: () => given, sessionOf, write: writer.write, now });
    const inviteUrl = options.inviteUrl ?? (() => null);
    addKeyRoutes(app, {
      stores,
      rooms,
      hub,
      certificate,
      inviteUrl,
      urls: () => urls,
      sessionOf,
      signedOut,
      now,
    });
    addSinkRoutes(app, { stores, rooms, hub, isSecure, sessionOf, signedOut, now });
    addPushRoutes(app, { stores, pusher, ownHosts, sessionOf, now });
    addReturnRoutes(app, { stores, urls: () => urls, sessionOf, now });
    addCalendarRoute(app, { stores, rooms, now });
    addNewClassRoute(app, { stores, rooms, door, isSecure, sessionOf, now });
    const socketParts = {
      hub,
      live,
      stores,
      rooms,
      commands,
      log,
      viewOf,
      speed,
      now,
      handlers: () => given,
      troubleSince: () => troubleSince,
      write: writer.write,
    };
    const admit = (request: FastifyRequest): Admitted | undefined => {
      const session = sessionOf(request);
      return session ? { ...session, sinkId: null } : admitAtSink(request, stores);
    };
    app.get(
      "/live",
      {
        websocket: true,
        preValidation: async (request, reply) => {
          if (!admit(request)) await reply.code(401).send({ error: { code: "ERR_SIGNED_OUT" } });
        },
      },
      (socket, request) => {
        const admitted = admit(request);
        if (admitted) openPage(socketParts, socket, admitted);
        else socket.close(4001);
      },
    );
    await app.listen({ host, port: options.port });
    const { port } = app.server.address() as AddressInfo;
    urls.push(...addressesOf(host, port, publicUrl, certificate?.current().names ?? null));
    heartbeats.push(setInterval(ping, PING_MS).unref(), setInterval(live.beat, 1000).unref());
    if (certificate) heartbeats.push(setInterval(() => certificate.look(now()), LOOK_AT_FILES_MS).unref());
    pusher.wake();
    log.debug({ urls, host, port }, "the room is open");
  }

  /** A phone that went out of reach says no goodbye: it is missed at the second unanswered ping. */
  const unanswered = new WeakSet<object>();
  function ping(): void {
    for (const socket of app?.websocketServer.clients ?? []) {
      if (unanswered.has(socket)) {
        socket.terminate();
        continue;
      }
      unanswered.add(socket);
      socket.once("pong", () => unanswered.delete(socket));
      socket.ping();
    }
  }

  function post(delivery: Delivery, reach?: Reach): Posted {
    const { outcome, classId, fresh } = sayInRoom(stores, delivery, now(), reach);
    return {
      outcome,
      announce() {
        if (fresh) live.push(fresh);
        if (classId !== null) live.refresh(classId);
        pusher.wake();
      },
    };
  }

  async function send(delivery: Delivery): Promise<Outcome> {
    const posted = stores.atomically(() => post(delivery));
    posted.announce();
    return posted.outcome;
  }

  return {
    chat: "room",
    firstSecrets,
    urls,
    start,
    send,
    post,
    refresh(classKey) {
      const classId = stores.classes.idOf(classKey);
      if (classId !== undefined) live.refresh(classId);
    },
    tellTrouble(sinceMs) {
      troubleSince = sinceMs;
      for (const classId of hub.classIds())
        for (const page of hub.ofClass(classId)) sendTo(page, { type: "trouble", since: sinceMs });
    },
    async resetPassphrases(classKey) {
      const schoolClass = stores.classes.find(classKey);
      return schoolClass && resetPassphrases(rooms, schoolClass, now());
    },
    async stop() {
      for (const each of heartbeats) clearInterval(each);
      await pusher.stop();
      live.stop();
      hub.closeAll();
      // Also those that are no page's: not let in, or put out and not gone.
      for (const socket of app?.websocketServer.clients ?? []) socket.terminate();
      await app?.close();
    },
  };
}
