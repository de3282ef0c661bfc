import { join } from "node:path";
import type { Stores } from "../store/index.ts";
import { backupFolderOf } from "./disk/backup.ts";
import { createBeat } from "./cues/beat.ts";
import type { ChatPort } from "./chat/port.ts";
import { createEarlyRoom } from "./chat/room/say.ts";
import type { Room } from "./chat/room/options.ts";
import type { Chats } from "./chats.ts";
import { betweenCalls } from "./process/between.ts";
import { type Clock, createSteadyClock, systemTime } from "./process/clock.ts";
import { daysLeft } from "./process/certificate.ts";
import { type Config, zoneOf } from "./process/config.ts";
import { createDeliverer } from "./deliver/deliver.ts";
import { isStorageFault } from "../store/open.ts";
import { openGuarded, withReserve } from "./disk/guard.ts";
import { makeDataFolder } from "./disk/folder.ts";
import { type Guard, tapLog, watchStore } from "./disk/watch.ts";
import { takeLock } from "./disk/lock.ts";
import { endAll } from "./process/ending.ts";
import type { Log } from "./process/log.ts";
import type { Operations } from "./watch/metrics-open.ts";
import { settleShard, takeShard } from "./shard/role.ts";
import { createTidier } from "./disk/tidier.ts";

export interface Running {
  /** null where another process of this bot has it. */
  readonly room: Room | null;
  /** Takes nothing new, says what is being said (at most `DRAIN_MS`), and calls until it closes the store. */
  stop(): Promise<void>;
}

const UNTIDY = "what was written lately could not be moved into the store; free some space";

/** A supervisor waits longer than all of these before it kills. */
const DRAIN_MS = 4000;
const SETTLE_MS = 500;
const GOODBYE_MS = 1000;

/**
 * Puts the parts together and begins. `onFatal` is called where a chat or the store can go on no longer. Whatever cues need is loaded
 * first and by itself: after a crash they are called again while the rest of the program is still being read.
 */
export async function startBot(
  config: Config,
  given: Log,
  onFatal: (sentence: string, cause: "chat" | "store" | "first") => void,
): Promise<Running> {
  makeDataFolder(config.SINKSIDE_DATA);
  const path = join(config.SINKSIDE_DATA, "sinkside.db");
  let operations: Operations | undefined;
  let guard: Guard | undefined;
  const log = tapLog(given, (level, fault) => {
    operations?.metrics?.onLine(level);
    guard?.notice(fault);
  });
  const { stores, isExamined } = openGuarded(path, backupFolderOf(config), log, Date.now());
  // A log left long is moved by the tidier: here it would be the first write that waits for it, and a call behind that.
  stores.upkeep.moveLog(false);
  let lock;
  try {
    const scheme = config.ROOM_TLS_CERT === undefined ? "http" : "https";
    const address = `${scheme}://${config.ROOM_HOST}:${config.ROOM_PORT}`;
    const owner = { pid: process.pid, address, startedAt: Date.now() };
    lock = withReserve(path, log, () => takeLock(path, stores.upkeep, owner));
    settleShard({ config, stores });
  } catch (error) {
    stores.close();
    throw error;
  }
  const clock = watchClock(stores, log, (byMs) => operations?.metrics?.onClockStep(byMs));
  stores.outbox.recover(clock.now());
  const ports = new Map<string, ChatPort>([["room", createEarlyRoom(stores, () => clock.now())]]);
  let chats: Chats | undefined;
  let isStopping = false;
  const deliverer = createDeliverer({
    stores,
    clock,
    log,
    ports,
    // Before it is there, and once it is gone: what it is to say then is for the next process.
    isAwaited: (chat) =>
      (chats === undefined || isStopping || chat in chats.lost()) &&
      chat === "discord" &&
      config.DISCORD_TOKEN !== undefined,
    onOutcome: () => beat.rearm(),
    onSaid: (owed, now) => operations?.metrics?.onSaid(owed, now),
  });
  const tidier = createTidier(
    path,
    (detail) => log.error({ detail }, UNTIDY),
    () => stores.upkeep.moveLog(true),
  );
  const beat = createBeat({
    stores,
    clock,
    log,
    deliverer,
    tidy: tidier.tidy,
    onSpoken: (classIds) => classIds.forEach((classId) => chats?.refresh(classId)),
    onTrouble: (sinceMs) => chats?.room?.tellTrouble(sinceMs),
  });
  beat.start();
  const now = (): number => clock.now();
  const onBroken = (sentence: string): void => onFatal(sentence, "store");
  guard = await betweenCalls(() => watchStore({ path, stores, log, now, isExamined, onFatal: onBroken }));
  const onChatFatal = (sentence: string): void => onFatal(sentence, "chat");

  // The room, and the demo with it, is with the first of several processes.
  if (config.SINKSIDE_SHARD === undefined && stores.classes.list().length === 0) {
    const { openDemo } = await betweenCalls(() => import("./demo/evening.ts"));
    openDemo(stores, zoneOf(config), clock, log);
  }
  const onGone = (): void => onFatal("The first process of this bot is gone.", "first");
  const role = await takeShard({ config, stores, log, onGone });
  role?.started();
  await betweenCalls(() => import("../commands/index.ts"));
  const { openChats } = await betweenCalls(() => import("./chats.ts"));
  const { shard } = role ?? {};
  const parts = { config, stores, clock, log, ports, shard };
  chats = await openChats({ ...parts, rearm: beat.rearm, tidy: tidier.tidy, onFatal: onChatFatal });
  const { room, certificate, quiet, stop } = chats;
  const certificateDaysLeft = certificate ? () => daysLeft(certificate.current(), now()) : undefined;
  const { openOperations } = await betweenCalls(() => import("./watch/metrics-open.ts"));
  operations = await openOperations({
    config,
    stores,
    storePath: path,
    clock,
    log,
    ports,
    certificateDaysLeft,
    lostChats: chats.lost,
    slowChats: chats.slow,
  });

  makeReady(stores, log, () => isStopping);

  return {
    room,
    async stop() {
      isStopping = true;
      // What is said by others than the room is not begun any more; the room keeps its calls in the store to the last.
      const others = [...ports.keys()].filter((chat) => chat !== "room");
      for (const chat of others) ports.delete(chat);
      const said = deliverer.drain(DRAIN_MS);
      await endAll({ role: role?.stop(), said, boards: quiet() }, DRAIN_MS + SETTLE_MS, log);
      // A connection that is dead, though nobody knows yet, answers no goodbye for half a minute.
      await endAll({ chats: stop(), operations: operations?.stop() }, GOODBYE_MS, log);
      // So that whoever closes the store last moves all of it.
      await tidier.stop();
      beat.stop();
      guard?.stop(clock.now());
      stores.close();
      lock.release();
    },
  };
}

/** Now that calls are made: in the turns between them, what later ones need of the store. */
function makeReady(stores: Stores, log: Log, isOver: () => boolean): void {
  const steps = stores.makeReady();
  const goOn = (): void => {
    try {
      if (!isOver() && !steps.next().done) setImmediate(goOn);
    } catch (error) {
      log.warn(
        { err: error },
        "what the store is asked could not be made ready; it is made when it is needed",
      );
    }
  };
  goOn();
}

/** False where the disk would not take it; the beat tells of that. */
function isWritten(write: () => void): boolean {
  try {
    write();
    return true;
  } catch (error) {
    if (!isStorageFault(error)) throw error;
    return false;
  }
}

function watchClock(stores: Stores, log: Log, onStep: (byMs: number) => void): Clock {
  return createSteadyClock({
    sources: systemTime(),
    anchor: stores.time.anchor(),
    onStep(byMs, anchor) {
      if (!isWritten(() => stores.time.shift(byMs, anchor))) return false;
      onStep(byMs);
      log.warn({ byMs }, "the computer's clock was set; what is under way has moved with it");
      return true;
    },
    onAnchor: (anchor) => isWritten(() => stores.time.saveAnchor(anchor)),
  });
}
