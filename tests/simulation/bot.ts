import { commands } from "../../commands/index.ts";
import { createBeat } from "../../bot/cues/beat.ts";
import { createSteadyClock, type Clock } from "../../bot/process/clock.ts";
import { createDeliverer } from "../../bot/deliver/deliver.ts";
import { createDispatch, type Dispatch } from "../../bot/calls/dispatch.ts";
import { openStores, type OpenedStores } from "../../store/index.ts";
import { createMemoryLog } from "../support/room.ts";
import type { SimulatedChat } from "./chat.ts";
import { Killed, type KillPoints } from "./kill-points.ts";
import type { VirtualTime } from "./virtual-time.ts";

/* One life of the bot, put together as the real process does it, on a real store. */

export interface SimulatedBot {
  readonly stores: OpenedStores;
  readonly clock: Clock;
  readonly dispatch: Dispatch;
  readonly log: ReturnType<typeof createMemoryLog>;
  readonly isDead: boolean;
  /** Dies before the `count`-th statement from now. */
  dieAfter(count: number): void;
  /** Dies here and now. */
  kill(): void;
  /** Looks into the store without counting as a statement of the bot. */
  peek<T>(look: (stores: OpenedStores) => T): T;
}

export interface SimulatedBotOptions {
  readonly path: string;
  readonly time: VirtualTime;
  readonly chat: SimulatedChat;
  readonly points: KillPoints;
  readonly onSpoken: () => void;
  readonly onDeath: () => void;
}

/** @throws Killed where its life ends while it starts. */
export function startBot(
  { path, time, chat, points, onSpoken, onDeath }: SimulatedBotOptions,
  dieAfter?: number,
): SimulatedBot {
  const stores = openStores(path);
  const connection = chat.connect(stores);
  const log = createMemoryLog();
  let left = dieAfter ?? Infinity;
  let isDead = false;
  let isPeeking = false;

  function kill(): void {
    if (isDead) return;
    isDead = true;
    connection.cut();
    // An open transaction is rolled back, as the next process would find it.
    stores.close();
    time.dropBotTimers();
    onDeath();
  }
  points.watch(stores.db, () => {
    if (isPeeking) return;
    if (isDead) throw new Killed();
    left -= 1;
    if (left > 0) return;
    kill();
    throw new Killed();
  });

  function begin() {
    const clock = createSteadyClock({
      sources: time.sources(),
      anchor: stores.time.anchor(),
      onStep(byMs, anchor) {
        stores.time.shift(byMs, anchor);
        return true;
      },
      onAnchor(anchor) {
        stores.time.saveAnchor(anchor);
        return true;
      },
    });
    stores.outbox.recover(clock.now());
    const ports = new Map([[chat.name as string, connection]]);
    const deliverer = createDeliverer({ stores, clock, log, ports, onOutcome: () => beat.rearm() });
    const tidy = (): void => void stores.db.pragma("wal_checkpoint(PASSIVE)");
    const beat = createBeat({ stores, clock, log, deliverer, onSpoken, tidy });
    const dispatch = createDispatch({ commands, stores, clock, log, onChange: () => beat.rearm() });
    beat.start();
    return { clock, dispatch };
  }

  let parts;
  try {
    parts = begin();
  } catch (error) {
    kill();
    throw error;
  }
  if (isDead) throw new Killed();
  return {
    ...parts,
    stores,
    log,
    get isDead() {
      return isDead;
    },
    dieAfter: (count) => void (left = count),
    kill,
    peek(look) {
      isPeeking = true;
      try {
        return look(stores);
      } finally {
        isPeeking = false;
      }
    },
  };
}
