import type { Server } from "node:http";
import type { Duplex } from "node:stream";
import { WebSocketServer, type WebSocket } from "ws";
import { writeGuild, writeUser, type World } from "./world.ts";

interface Frame {
  readonly op: number;
  readonly d?: unknown;
}

interface Sent {
  readonly s: number;
  readonly t: string;
  readonly d: unknown;
}

export interface SocketSettings {
  readonly token: () => string;
  readonly resumeUrl: () => string;
  readonly nextId: () => string;
  readonly onChange: () => void;
}

/** The platform's gateway: one session at a time, kept over dropped connections so that it can be resumed. */
export function createSocketSide(server: Server, world: World, settings: SocketSettings) {
  const sockets = new WebSocketServer({ noServer: true });
  const state = {
    identifies: 0,
    resumes: 0,
    heartbeats: 0,
    intents: 0,
    /** How many events the bot has had already come once more after a resume. */
    repeatsOnResume: 0,
    /** Instead of READY: the connection is closed with this code. */
    closeOnIdentify: undefined as number | undefined,
    /** Connections are refused. */
    isAway: false,
    /** Connections are taken and never answered. */
    holdsOpenings: false,
    /** How many connections were begun. */
    openings: 0,
    heartbeatMs: 41_250,
    /** Servers are named in READY, but their data never come. */
    withholdsGuilds: false,
  };
  const held: Duplex[] = [];
  let socket: WebSocket | undefined;
  let session: { id: string; sent: Sent[] } | undefined;

  server.on("upgrade", (request, raw, head) => {
    state.openings += 1;
    settings.onChange();
    if (state.isAway) return raw.destroy();
    if (state.holdsOpenings) return void held.push(raw);
    sockets.handleUpgrade(request, raw, head, (opened) => {
      opened.on("message", (data: Buffer) => receive(opened, JSON.parse(String(data)) as Frame));
      opened.on("close", () => {
        if (socket === opened) socket = undefined;
        settings.onChange();
      });
      opened.send(JSON.stringify({ op: 10, d: { heartbeat_interval: state.heartbeatMs } }));
    });
  });

  function receive(from: WebSocket, frame: Frame): void {
    if (frame.op === 1) {
      state.heartbeats += 1;
      from.send(JSON.stringify({ op: 11 }));
    } else if (frame.op === 2) identify(from, frame.d as { token: string; intents: number });
    else if (frame.op === 6) resume(from, frame.d as { token: string; session_id: string; seq: number });
    settings.onChange();
  }

  function identify(from: WebSocket, { token, intents }: { token: string; intents: number }): void {
    state.identifies += 1;
    state.intents = intents;
    if (token !== settings.token()) return from.close(4004);
    if (state.closeOnIdentify !== undefined) return from.close(state.closeOnIdentify);
    socket = from;
    session = { id: `session-${settings.nextId()}`, sent: [] };
    dispatch("READY", {
      v: 10,
      user: { ...writeUser(world.bot, true), verified: true, mfa_enabled: false, email: null },
      guilds: [...world.guilds.keys()].map((id) => ({ id, unavailable: true })),
      session_id: session.id,
      resume_gateway_url: settings.resumeUrl(),
      application: { id: world.applicationId, flags: 0 },
      shard: [0, 1],
    });
    if (state.withholdsGuilds) return;
    for (const guild of world.guilds.values()) dispatch("GUILD_CREATE", writeGuild(guild, world));
  }

  function resume(from: WebSocket, { session_id: id, seq }: { session_id: string; seq: number }): void {
    if (id !== session?.id) return from.send(JSON.stringify({ op: 9, d: false }));
    state.resumes += 1;
    socket = from;
    const missed = session.sent.filter(({ s, t }) => s > seq - state.repeatsOnResume && t !== "READY");
    for (const event of missed) from.send(JSON.stringify({ op: 0, ...event }));
    dispatch("RESUMED", {});
  }

  /** While nobody is connected an event waits for the resume. */
  function dispatch(t: string, d: unknown): void {
    if (!session) throw new Error(`${t} before the bot has identified itself`);
    const event = { s: session.sent.length + 1, t, d };
    session.sent.push(event);
    socket?.send(JSON.stringify({ op: 0, ...event }));
  }

  return {
    state,
    dispatch,
    isConnected: (): boolean => socket !== undefined,
    /** The line breaks; nobody says goodbye. */
    drop: (): void => void socket?.terminate(),
    close: (code: number): void => void socket?.close(code),
    /** “Connect again”: the platform is about to move this connection. */
    askReconnect: (): void => void socket?.send(JSON.stringify({ op: 7, d: null })),
    invalidate(isResumable: boolean): void {
      if (!isResumable) session = undefined;
      socket?.send(JSON.stringify({ op: 9, d: isResumable }));
    },
    /** The same event once more, as after a faulty resume. */
    repeatLast(t: string): void {
      const last = session?.sent.findLast((event) => event.t === t);
      socket?.send(JSON.stringify({ op: 0, ...last }));
    },
    /** Connections that were held break. */
    cutHeld: (): void => held.splice(0).forEach((raw) => raw.destroy()),
    stop(): void {
      for (const raw of held) raw.destroy();
      for (const each of sockets.clients) each.terminate();
      sockets.close();
    },
  };
}

export type SocketSide = ReturnType<typeof createSocketSide>;
