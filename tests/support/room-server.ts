import { WebSocket } from "ws";
import { createDeliverer } from "../../bot/deliver/deliver.ts";
import { DEMO_KEY, inventDemo } from "../../bot/demo/demo.ts";
import { createDispatch } from "../../bot/calls/dispatch.ts";
import { settleDue } from "./settle.ts";
import type { Room, RoomOptions } from "../../bot/chat/room/options.ts";
import { createRoom } from "../../bot/chat/room/room.ts";
import type { ToPage } from "../../bot/chat/room/wire.ts";
import { commands } from "../../commands/index.ts";
import { speaking } from "../../commands/speech/language.ts";
import { viewOf } from "../../commands/run/view.ts";
import { openStores, type OpenedStores } from "../../store/index.ts";
import { createFakeClock, type FakeClock } from "./clock.ts";
import { createMemoryLog } from "./room.ts";

/* The room over real HTTP, with the real bot behind it and a clock that moves when told to. */

export interface RoomServer {
  readonly room: Room;
  readonly stores: OpenedStores;
  readonly clock: FakeClock;
  readonly log: ReturnType<typeof createMemoryLog>;
  readonly url: string;
  readonly visitor: () => Visitor;
  /** Time goes by, a second at a time, with the bot awake; 0: it only looks what is due. */
  pass(seconds: number): Promise<void>;
  stop(): Promise<void>;
}

export async function startRoom(
  over: Partial<RoomOptions> = {},
  prepare: (stores: OpenedStores, now: number) => void = (stores, now) => void inventDemo(stores, "UTC", now),
  clock: FakeClock = createFakeClock(),
): Promise<RoomServer> {
  const stores = openStores(":memory:");
  const log = createMemoryLog();
  prepare(stores, clock.now());
  const room = createRoom({
    host: "127.0.0.1",
    port: 0,
    publicUrl: null,
    stores,
    commands,
    log,
    renderPicture: async (svg) => Buffer.from(svg),
    viewOf: (personId, classId, language = stores.members.languageOf(classId, personId)) =>
      speaking(language, () => stores.runs.open(classId, personId).map((run) => viewOf(run, ""))),
    now: clock.now,
    ...over,
  });
  const dispatch = createDispatch({ commands, stores, clock, log });
  await room.start({
    onCommand: dispatch.onCommand,
    onComplete: dispatch.onComplete,
    onFatal: (sentence) => {
      throw new Error(sentence);
    },
  });
  const ports = new Map([["room", room]]);
  const deliverer = createDeliverer({ stores, clock, log, ports, onOutcome: () => {} });
  const url = room.urls[0] ?? "";
  return {
    room,
    stores,
    clock,
    log,
    url,
    visitor: () => createVisitor(url),
    async pass(seconds) {
      for (let second = 0; second < Math.max(1, seconds); second += 1) {
        if (seconds > 0) clock.advance(1);
        settleDue({ stores, log }, clock.now());
        deliverer.pump();
        await deliverer.drain(1000);
      }
    },
    async stop() {
      await room.stop();
      stores.close();
    },
  };
}

/** A browser without a window: it keeps its cookie and names its origin. */
export interface Visitor {
  cookie: string;
  post(path: string, body: unknown, headers?: Record<string, string>): Promise<Response>;
  get(path: string): Promise<Response>;
  joinDemo(name: string, role?: "student" | "teacher"): Promise<Response>;
  open(after?: number | null): Promise<OpenPage>;
}

export interface OpenPage {
  readonly socket: WebSocket;
  readonly got: ToPage[];
  send(message: unknown): void;
  /** Resolves with the first message, past or coming, that `fits`; rejects when none has come in a minute. */
  hears<T extends ToPage["type"]>(
    type: T,
    fits?: (message: Extract<ToPage, { type: T }>) => boolean,
  ): Promise<Extract<ToPage, { type: T }>>;
  /** Texts of everything in the feed so far. */
  feed(): string[];
  says(line: string): Promise<void>;
}

let calls = 0;

export function createVisitor(url: string): Visitor {
  const visitor: Visitor = {
    cookie: "",
    async post(path, body, headers = {}) {
      const response = await fetch(url + path, {
        method: "POST",
        headers: {
          "content-type": "application/json",
          origin: url,
          cookie: visitor.cookie,
          ...headers,
        },
        body: typeof body === "string" ? body : JSON.stringify(body),
      });
      const set = response.headers.get("set-cookie");
      if (set) visitor.cookie = set.split(";")[0] ?? "";
      return response;
    },
    get: (path) => fetch(url + path, { headers: { cookie: visitor.cookie }, redirect: "manual" }),
    joinDemo: (name, role = "student") => visitor.post("/api/demo", { name, role }),
    async open(after = null) {
      const page = await openSocket(url, visitor.cookie);
      page.send({ type: "hello", after });
      await page.hears("events");
      return page;
    },
  };
  return visitor;
}

export function openSocket(url: string, cookie: string, origin = url, query = ""): Promise<OpenPage> {
  const socket = new WebSocket(`${url.replace("http", "ws")}/live${query}`, { headers: { cookie, origin } });
  const got: ToPage[] = [];
  const listeners = new Set<() => void>();
  socket.on("message", (data) => {
    got.push(JSON.parse(String(data)) as ToPage);
    for (const listener of listeners) listener();
  });
  const page: OpenPage = {
    socket,
    got,
    send: (message) => socket.send(typeof message === "string" ? message : JSON.stringify(message)),
    feed: () => got.flatMap((each) => (each.type === "events" ? each.events.map(({ text }) => text) : [])),
    hears(type, fits = () => true) {
      const find = () =>
        got.find((each) => each.type === type && fits(each as Extract<ToPage, { type: typeof type }>));
      return new Promise((resolve, reject) => {
        const look = (): boolean => {
          const found = find();
          if (!found) return false;
          listeners.delete(look);
          clearTimeout(timer);
          resolve(found as Extract<ToPage, { type: typeof type }>);
          return true;
        };
        const timer = setTimeout(() => {
          listeners.delete(look);
          reject(new Error(`no ${type} came; got ${JSON.stringify(got).slice(0, 2000)}`));
        }, 60_000);
        if (!look()) listeners.add(look);
      });
    },
    async says(line) {
      calls += 1;
      const id = `call-${String(calls).padStart(6, "0")}`;
      page.send({ type: "line", id, text: line });
      await Promise.race([
        page.hears("taken", (each) => each.id === id),
        page.hears("refused", (each) => each.id === id),
      ]);
    },
  };
  return new Promise((resolve, reject) => {
    socket.on("open", () => resolve(page));
    socket.on("error", reject);
    socket.on("unexpected-response", (_request, response) =>
      reject(new Error(`refused with ${response.statusCode}`)),
    );
  });
}

export { DEMO_KEY };
