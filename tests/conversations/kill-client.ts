import { createServer } from "node:net";
import { once } from "node:events";
import type { AddressInfo } from "node:net";
import { WebSocket } from "ws";
import type { ToPage } from "../../bot/chat/room/wire.ts";

/* Pages outside the process: each knocks until it is let in, reads what it missed and what comes, and keeps its own record. */

/** Where the page of a person comes in. */
export interface Seat {
  readonly personId: string;
  readonly token: string;
  /** The moment of the last call of their film, as things are. */
  endsAt(): number;
}

/** One call as a person got it. */
export interface Heard {
  /** Of the entry in the feed. */
  readonly id: number;
  /** As the page is told it: for which moment it is, and when it was said. */
  readonly dueAt: number;
  readonly at: number;
  /** By the clock of the page, when it was read there first. */
  readonly readAt: number;
  readonly text: string;
}

export interface Listeners {
  readonly heard: ReadonlyMap<string, readonly Heard[]>;
  /** Whether each has the last call of their film. */
  haveAll(): boolean;
  stop(): void;
}

const KNOCK_AGAIN_MS = 60;

/** Opens a page for each seat at this port of loopback, and opens it again whenever it is shut. */
export function listen(port: number, seats: readonly Seat[]): Listeners {
  const heard = new Map<string, Heard[]>(seats.map(({ personId }) => [personId, []]));
  const open = new Set<WebSocket>();
  let isOver = false;

  function knock(seat: Seat): void {
    const { personId, token } = seat;
    if (isOver) return;
    const own = heard.get(personId) ?? [];
    const origin = `http://127.0.0.1:${port}`;
    const socket = new WebSocket(`ws://127.0.0.1:${port}/live`, {
      headers: { cookie: `sinkside=${token}`, origin },
    });
    open.add(socket);
    let read = -1;
    socket.on("open", () => socket.send(JSON.stringify({ type: "hello", after: own.at(-1)?.id ?? 0 })));
    socket.on("message", (data) => {
      const message = JSON.parse(String(data)) as ToPage;
      if (message.type !== "events") return;
      for (const { id, kind, dueAt, at, text } of message.events) {
        if (id <= read) throw new Error(`${personId} got entry ${id} after ${read}`);
        read = id;
        if (kind === "cue" && dueAt !== null) own.push({ id, dueAt, at, readAt: Date.now(), text });
      }
    });
    socket.on("error", () => {});
    socket.on("close", () => {
      open.delete(socket);
      setTimeout(() => knock(seat), KNOCK_AGAIN_MS);
    });
  }

  for (const seat of seats) knock(seat);
  return {
    heard,
    haveAll: () =>
      seats.every(({ personId, endsAt }) => heard.get(personId)?.some(({ dueAt }) => dueAt === endsAt())),
    stop() {
      isOver = true;
      for (const socket of open) socket.terminate();
    },
  };
}

/** A port nobody has now. */
export async function freePort(): Promise<number> {
  const server = createServer().listen(0, "127.0.0.1");
  await once(server, "listening");
  const { port } = server.address() as AddressInfo;
  server.close();
  await once(server, "close");
  return port;
}
