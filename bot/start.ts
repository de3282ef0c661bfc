import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { openStores, type Stores } from "../store/index.ts";
import { createBeat } from "./beat.ts";
import type { ChatPort } from "./chat/port.ts";
import { createEarlyRoom } from "./chat/room-say.ts";
import type { Room } from "./chat/room.ts";
import type { Chats } from "./chats.ts";
import { createSteadyClock, systemTime, type Clock } from "./clock.ts";
import type { Config } from "./config.ts";
import { createDeliverer } from "./deliver.ts";
import { takeLock } from "./lock.ts";
import type { Log } from "./log.ts";

export interface Running {
  readonly room: Room;
  /** Stops calling, says what is being said (at most `DRAIN_MS`), closes the store. */
  stop(): Promise<void>;
}

/** A supervisor waits longer than this before it kills. */
const DRAIN_MS = 4000;

/**
 * Puts the parts together and begins. `onFatal` is called where a chat can go on no longer. Whatever cues need is loaded
 * first and by itself: after a crash they are called again while the rest of the program is still being read.
 */
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
  stores.outbox.recover(clock.now());
  const ports = new Map<string, ChatPort>([["room", createEarlyRoom(stores, () => clock.now())]]);
  let chats: Chats | undefined;
  const deliverer = createDeliverer({
    stores,
    clock,
    log,
    ports,
    isAwaited: (chat) => chats === undefined && chat === "discord" && config.DISCORD_TOKEN !== undefined,
    onSettled: () => beat.rearm(),
  });
  const beat = createBeat({
    stores,
    clock,
    log,
    deliverer,
    onSpoken: (classIds) => classIds.forEach((classId) => chats?.refresh(classId)),
  });
  beat.start();

  if (stores.classes.list().length === 0) {
    const { inventDemo } = await import("./demo.ts");
    inventDemo(stores, config.SINKSIDE_ZONE, clock.now());
  }
  const { openChats } = await import("./chats.ts");
  chats = await openChats({ config, stores, clock, log, ports, rearm: beat.rearm, onFatal });
  const { room, quiet, stop } = chats;

  return {
    room,
    async stop() {
      beat.stop();
      await Promise.all([deliverer.drain(DRAIN_MS), quiet()]);
      await stop();
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
