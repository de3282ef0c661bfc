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

interface Session {
  readonly id: string;
  readonly shard: number;
  readonly sent: Sent[];
  socket: WebSocket | undefined;
}

interface Identify {
  readonly token: string;
  readonly intents: number;
  readonly shard?: readonly [number, number];
}

/** Which connection of several hears of a server. Source: Discord's documentation, "Sharding". */
export const shardOf = (guildId: string, count: number): number =>
  Number((BigInt(guildId) >> 22n) % BigInt(count));

/**
 * The platform's gateway: one session for each shard, kept over dropped connections so that it can be resumed. What
 * belongs to no server goes to shard 0.
 */
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
    /** Connections that share the servers among them, as the latest one said. */
    shardCount: 1,
    /** When each identified itself, ms since the epoch. */
    identifiedAt: [] as number[],
  };
  const held: Duplex[] = [];
  const sessions = new Map<number, Session>();

  server.on("upgrade", (request, raw, head) => {
    state.openings += 1;
    settings.onChange();
    if (state.isAway) return raw.destroy();
    if (state.holdsOpenings) return void held.push(raw);
    sockets.handleUpgrade(request, raw, head, (opened) => {
      opened.on("message", (data: Buffer) => receive(opened, JSON.parse(String(data)) as Frame));
      opened.on("close", () => {
        for (const session of sessions.values()) if (session.socket === opened) session.socket = undefined;
        settings.onChange();
      });
      opened.send(JSON.stringify({ op: 10, d: { heartbeat_interval: state.heartbeatMs } }));
    });
  });

  function receive(from: WebSocket, frame: Frame): void {
    if (frame.op === 1) {
      state.heartbeats += 1;
      from.send(JSON.stringify({ op: 11 }));
    } else if (frame.op === 2) identify(from, frame.d as Identify);
    else if (frame.op === 6) resume(from, frame.d as { token: string; session_id: string; seq: number });
    settings.onChange();
  }

  function identify(from: WebSocket, { token, intents, shard = [0, 1] }: Identify): void {
    state.identifies += 1;
    state.identifiedAt.push(Date.now());
    state.intents = intents;
    if (token !== settings.token()) return from.close(4004);
    if (state.closeOnIdentify !== undefined) return from.close(state.closeOnIdentify);
    const [id, count] = shard;
    state.shardCount = count;
    sessions.set(id, { id: `session-${settings.nextId()}`, shard: id, sent: [], socket: from });
    const guilds = [...world.guilds.values()].filter((guild) => shardOf(guild.id, count) === id);
    send(id, "READY", {
      v: 10,
      user: { ...writeUser(world.bot, true), verified: true, mfa_enabled: false, email: null },
      guilds: guilds.map((guild) => ({ id: guild.id, unavailable: true })),
      session_id: sessions.get(id)?.id,
      resume_gateway_url: settings.resumeUrl(),
      application: { id: world.applicationId, flags: 0 },
      shard,
    });
    if (state.withholdsGuilds) return;
    for (const guild of guilds) send(id, "GUILD_CREATE", writeGuild(guild, world));
  }

  function resume(from: WebSocket, resumed: { token: string; session_id: string; seq: number }): void {
    const { token, session_id: id, seq } = resumed;
    if (token !== settings.token()) return from.close(4004);
    const session = [...sessions.values()].find((each) => each.id === id);
    if (!session) return from.send(JSON.stringify({ op: 9, d: false }));
    state.resumes += 1;
    session.socket = from;
    const missed = session.sent.filter(({ s, t }) => s > seq - state.repeatsOnResume && t !== "READY");
    for (const event of missed) from.send(JSON.stringify({ op: 0, ...event }));
    send(session.shard, "RESUMED", {});
  }

  /** While nobody is connected an event waits for the resume. */
  function send(shard: number, t: string, d: unknown): void {
    const session = sessions.get(shard);
    if (!session) throw new Error(`${t} before the bot has identified itself`);
    const event = { s: session.sent.length + 1, t, d };
    session.sent.push(event);
    session.socket?.send(JSON.stringify({ op: 0, ...event }));
  }

  /** To the connection that hears of the event's server. */
  function dispatch(t: string, d: unknown): void {
    const { guild_id: inGuild, id } = d as { guild_id?: string; id?: string };
    const guildId = t === "GUILD_CREATE" ? id : inGuild;
    send(guildId === undefined ? 0 : shardOf(guildId, state.shardCount), t, d);
  }

  const first = (): Session | undefined => sessions.get(0);

  return {
    state,
    dispatch,
    isConnected: (): boolean => first()?.socket !== undefined,
    /** The line breaks; nobody says goodbye. */
    drop: (shard = 0): void => void sessions.get(shard)?.socket?.terminate(),
    /** It is out of reach, and does not know: whatever is sent there is not even read. */
    fallSilent: (): void => first()?.socket?.pause(),
    close: (code: number): void => void first()?.socket?.close(code),
    /** “Connect again”: the platform is about to move this connection. */
    askReconnect: (): void => void first()?.socket?.send(JSON.stringify({ op: 7, d: null })),
    invalidate(isResumable: boolean): void {
      const socket = first()?.socket;
      if (!isResumable) sessions.delete(0);
      socket?.send(JSON.stringify({ op: 9, d: isResumable }));
    },
    /** The same event once more, as after a faulty resume. */
    repeatLast(t: string): void {
      const last = first()?.sent.findLast((event) => event.t === t);
      first()?.socket?.send(JSON.stringify({ op: 0, ...last }));
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
