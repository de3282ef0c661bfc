import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { roleOfMember } from "../commands/class/roles.ts";
import { commands } from "../commands/index.ts";
import { viewOf } from "../commands/run/view.ts";
import { openStores, type Stores } from "../store/index.ts";
import { createBeat } from "./beat.ts";
import { createBoards } from "./board.ts";
import type { ChatHandlers, ChatPort } from "./chat/port.ts";
import { createRoom, type Room } from "./chat/room.ts";
import { createSteadyClock, systemTime, type Clock } from "./clock.ts";
import type { Config } from "./config.ts";
import { createDeliverer } from "./deliver.ts";
import { createDigest } from "./digest.ts";
import { inventDemo } from "./demo.ts";
import { createDirectory } from "./directory.ts";
import { createDispatch } from "./dispatch.ts";
import { takeLock } from "./lock.ts";
import type { Log } from "./log.ts";
import { renderPicture } from "./picture.ts";

export interface Running {
  readonly room: Room;
  /** Stops calling, says what is being said (at most `DRAIN_MS`), closes the store. */
  stop(): Promise<void>;
}

/** A supervisor waits longer than this before it kills. */
const DRAIN_MS = 4000;

/** Puts the parts together and begins. `onFatal` is called where a chat can go on no longer. */
export async function startBot(
  config: Config,
  log: Log,
  onFatal: (sentence: string) => void,
): Promise<Running> {
  mkdirSync(config.SINKSIDE_DATA, { recursive: true });
  const path = join(config.SINKSIDE_DATA, "sinkside.db");
  const stores = openStores(path);
  let lock;
  try {
    const address = `http://${config.ROOM_HOST}:${config.ROOM_PORT}`;
    lock = takeLock(path, stores.db, { pid: process.pid, address, startedAt: Date.now() });
  } catch (error) {
    stores.close();
    throw error;
  }
  const clock = watchClock(stores, log);
  inventDemo(stores, config.SINKSIDE_ZONE, clock.now());
  stores.outbox.recover(clock.now());

  const views = (personId: string, classId: number) => {
    const name = stores.members.find(classId, personId)?.name ?? "";
    return stores.runs.open(classId, personId).map((run) => viewOf(run, name, clock.now()));
  };
  const room = createRoom({
    host: config.ROOM_HOST,
    port: config.ROOM_PORT,
    publicUrl: config.ROOM_URL ?? null,
    stores,
    commands,
    log,
    viewOf: views,
    renderPicture,
    now: () => clock.now(),
  });
  const ports = new Map<string, ChatPort>([["room", room]]);
  if (config.DISCORD_TOKEN !== undefined) {
    ports.set("discord", await connectDiscord(config, config.DISCORD_TOKEN, stores, clock, log));
  }
  const deliverer = createDeliverer({ stores, clock, log, ports, onSettled: () => beat.rearm() });
  const refresh = (classId: number): void => room.refresh(stores.classes.get(classId)?.key ?? "");
  const beat = createBeat({
    stores,
    clock,
    log,
    deliverer,
    onSpoken: (classIds) => classIds.forEach(refresh),
  });
  const boards = createBoards({ stores, clock, log, ports });
  const digest = createDigest({ stores, clock, log, onOwed: () => beat.rearm() });
  const dispatch = createDispatch({
    commands,
    stores,
    clock,
    log,
    onChange(classId) {
      refresh(classId);
      beat.rearm();
    },
  });
  const handlers: ChatHandlers = { onCommand: dispatch.onCommand, onComplete: dispatch.onComplete, onFatal };
  // Cues first: neither opening the room nor connecting to a chat may hold them up.
  beat.start();
  await room.start(handlers);
  digest.start();
  boards.start();
  for (const port of ports.values()) {
    if (port === room) continue;
    port
      .start(handlers)
      .catch((error: unknown) => log.error({ chat: port.chat, err: error }, "a chat could not start"));
  }

  return {
    room,
    async stop() {
      digest.stop();
      boards.stop();
      beat.stop();
      await Promise.all([deliverer.drain(DRAIN_MS), boards.drain()]);
      await Promise.allSettled([...ports.values()].map((port) => port.stop()));
      stores.close();
      lock.release();
    },
  };
}

function watchClock(stores: Stores, log: Log): Clock {
  return createSteadyClock({
    sources: systemTime(),
    anchor: stores.time.anchor(),
    onStep(byMs, anchor) {
      stores.time.shift(byMs, anchor);
      log.warn({ byMs }, "the computer's clock was set; what is under way has moved with it");
    },
    onAnchor: (anchor) => stores.time.saveAnchor(anchor),
  });
}

/** Loaded only where it is wanted: a room without it starts in a third of the time. */
async function connectDiscord(
  config: Config,
  token: string,
  stores: Stores,
  clock: Clock,
  log: Log,
): Promise<ChatPort> {
  const { createDiscord } = await import("./chat/discord.ts");
  const api = config.DISCORD_API_URL;
  return createDiscord({
    token,
    api,
    commands,
    log,
    clock,
    directory: createDirectory(stores, clock),
    renderPicture,
    roleOf: (member) => roleOfMember(stores.classes.find(`discord:${member.guildId}`)?.habits, member),
  });
}
