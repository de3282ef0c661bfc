import type { FromPage, ToPage } from "../room/wire.ts";

/* The socket to the room: opened again whenever it is lost, and never believed to be alive without an answer. */

const ASK_EVERY_MS = 5000;
const ANSWER_WITHIN_MS = 3000;
const SLEPT_MS = 10_000;
const WAITS_MS = [200, 500, 1000, 2000, 4000] as const;

export interface Link {
  open(): void;
  close(): void;
  /** False where there is no link. */
  send(message: FromPage): boolean;
}

export interface LinkParts {
  onOpen(): void;
  onMessage(message: ToPage): void;
  onLost(): void;
}

/** To this path of the room. */
export function createLink(path: string, { onOpen, onMessage, onLost }: LinkParts): Link {
  let socket: WebSocket | undefined;
  let isWanted = false;
  let tries = 0;
  let hiddenAt = Infinity;
  let again: ReturnType<typeof setTimeout> | undefined;
  let asking: ReturnType<typeof setInterval> | undefined;
  let unanswered: ReturnType<typeof setTimeout> | undefined;

  function connect(): void {
    clearTimeout(again);
    if (!isWanted || (socket && socket.readyState <= WebSocket.OPEN)) return;
    const fresh = new WebSocket(`${location.origin.replace(/^http/, "ws")}${path}`);
    socket = fresh;
    const giveUp = setTimeout(() => drop(fresh), 5000);
    fresh.addEventListener("open", () => {
      clearTimeout(giveUp);
      if (socket !== fresh) return;
      tries = 0;
      asking = setInterval(ask, ASK_EVERY_MS);
      onOpen();
      ask();
    });
    fresh.addEventListener("message", ({ data }) => {
      if (socket !== fresh) return;
      clearTimeout(unanswered);
      unanswered = undefined;
      onMessage(JSON.parse(String(data)) as ToPage);
    });
    fresh.addEventListener("close", () => {
      clearTimeout(giveUp);
      drop(fresh);
    });
  }

  /** A phone that left the network is told nothing: the close of a dead socket can take minutes, so it is not awaited. */
  function drop(lost: WebSocket): void {
    if (socket !== lost) return;
    socket = undefined;
    lost.close();
    clearInterval(asking);
    clearTimeout(unanswered);
    unanswered = undefined;
    onLost();
    const wait = WAITS_MS[Math.min(tries, WAITS_MS.length - 1)] ?? 4000;
    tries += 1;
    // Spread, so that thirty phones do not come back in the same instant.
    again = setTimeout(connect, wait * (0.7 + Math.random() * 0.6));
  }

  function ask(): void {
    const asked = socket;
    if (!asked || !send({ type: "ping", sentAt: Date.now() })) return;
    unanswered ??= setTimeout(() => drop(asked), ANSWER_WITHIN_MS);
  }

  function send(message: FromPage): boolean {
    if (socket?.readyState !== WebSocket.OPEN) return false;
    socket.send(JSON.stringify(message));
    return true;
  }

  /** On waking: a socket that slept that long is most likely dead, and a new one is here sooner than its silence tells. */
  function lookNow(): void {
    if (document.visibilityState !== "visible") {
      hiddenAt = Date.now();
      return;
    }
    tries = 0;
    if (socket && Date.now() - hiddenAt > SLEPT_MS) drop(socket);
    hiddenAt = Infinity;
    if (socket) ask();
    else connect();
  }
  addEventListener("online", lookNow);
  addEventListener("pageshow", lookNow);
  document.addEventListener("visibilitychange", lookNow);
  addEventListener("offline", () => socket && drop(socket));

  return {
    send,
    open() {
      isWanted = true;
      connect();
    },
    close() {
      isWanted = false;
      clearTimeout(again);
      if (socket) drop(socket);
      clearTimeout(again);
    },
  };
}
