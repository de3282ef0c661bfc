import { EventEmitter, once } from "node:events";
import { WebSocket } from "ws";
import type { FeedEvent, ToPage } from "../../bot/chat/room/wire.ts";

/*
 * A person's page outside the process: it knocks until it is let in, sends a line again until it is answered, and keeps its own
 * record of what it was told.
 */

export interface Call extends FeedEvent {
  /** By the clock of the page, when it was read there first. */
  readonly readAt: number;
}

export interface Seat {
  /** The reply's text; a line is sent again, under its own name, wherever the link was lost meanwhile. */
  says(line: string): Promise<string>;
  /** What was said to this person unasked, in order. */
  readonly calls: readonly Call[];
  /** Resolves with the calls once they are as wanted. */
  until(wanted: (calls: readonly Call[]) => boolean, what: string): Promise<readonly Call[]>;
  leave(): void;
}

const KNOCK_AGAIN_MS = 100;

export function takeSeat(port: number, token: string, now: () => number, waitMs: number): Seat {
  const calls: Call[] = [];
  const replies: FeedEvent[] = [];
  const changes = new EventEmitter().setMaxListeners(0);
  let socket: WebSocket | undefined;
  let pending: { readonly id: string; readonly text: string } | undefined;
  let last = 0;
  let lines = 0;
  let isOver = false;

  const send = (message: unknown): void => {
    if (socket?.readyState === WebSocket.OPEN) socket.send(JSON.stringify(message));
  };
  const sendPending = (): void => {
    if (pending) send({ type: "line", ...pending });
  };

  function knock(): void {
    if (isOver) return;
    const mine = new WebSocket(`ws://127.0.0.1:${port}/live`, {
      headers: { cookie: `sinkside=${token}`, origin: `http://127.0.0.1:${port}` },
    });
    socket = mine;
    mine.on("open", () => send({ type: "hello", after: last }));
    mine.on("message", (data) => hear(JSON.parse(String(data)) as ToPage));
    mine.on("error", () => {});
    mine.on("close", () => setTimeout(knock, KNOCK_AGAIN_MS));
  }

  function hear(message: ToPage): void {
    if (message.type === "welcome") sendPending();
    if (message.type === "refused") throw new Error(`refused: ${JSON.stringify(message.refusal)}`);
    if (message.type !== "events") return;
    for (const event of message.events) {
      if (event.id <= last) throw new Error(`entry ${event.id} after ${last}`);
      last = event.id;
      if (event.kind === "cue") calls.push({ ...event, readAt: now() });
      if (event.kind === "reply") replies.push(event);
    }
    changes.emit("change");
  }

  async function wait<T>(look: () => T | undefined, what: string): Promise<T> {
    const signal = AbortSignal.timeout(waitMs);
    for (;;) {
      const found = look();
      if (found !== undefined) return found;
      await once(changes, "change", { signal }).catch(() => {
        throw new Error(`never came: ${what}; heard ${JSON.stringify(calls.map(({ text }) => text))}`);
      });
    }
  }

  knock();
  return {
    calls,
    async says(text) {
      const before = replies.length;
      lines += 1;
      pending = { id: `line-${process.pid}-${lines}`, text };
      sendPending();
      const reply = await wait(() => replies[before], `an answer to ${text}`);
      pending = undefined;
      return reply.text;
    },
    until: (wanted, what) => wait(() => (wanted(calls) ? calls : undefined), what),
    leave() {
      isOver = true;
      socket?.terminate();
    },
  };
}
