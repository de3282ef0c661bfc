import type { TimeSources } from "../../bot/process/clock.ts";
import type { Random } from "./random.ts";

/*
 * Time that moves only when the simulation says so, for a whole bot with its real timers. The wall clock, the count since
 * boot that stands still in sleep, and the count that goes on in sleep are kept apart, as in a computer.
 */

interface Timer {
  readonly atMs: number;
  readonly order: number;
  readonly work: () => void;
  /** Of the bot: gone when it is killed. */
  readonly isOfBot: boolean;
  /** Set where it stands on another computer: in true time. */
  readonly elsewhereMs?: number;
}

export interface VirtualTime {
  /** What film goes by: elapsed ms since the beginning, sleep included. */
  trueMs(): number;
  wallMs(): number;
  /** The clocks as a process of the present boot reads them. */
  sources(): TimeSources;
  /** The harness's own appointment; it outlives kills. */
  after(ms: number, work: () => void): void;
  /** The same on a computer that does not sleep with the bot's; it is told when, in true time, it was done. */
  afterElsewhere(ms: number, work: (trueMs: number) => void): void;
  /** Somebody sets the wall clock. */
  stepWall(byMs: number): void;
  /** The computer sleeps: timers stand still, elapsed time does not. */
  sleep(ms: number): void;
  /** The event loop is blocked: time goes on and nobody runs. */
  stall(ms: number): void;
  /** Another boot: its counts begin anew. */
  reboot(): void;
  /** The bot's process is gone. */
  dropBotTimers(): void;
  /** Runs timer after timer, and lets every promise settle after each, until `ms` have gone by. */
  pass(ms: number): Promise<void>;
  uninstall(): void;
}

const realImmediate = setImmediate;

/** Takes over the global timers and `Date` until `uninstall`. */
export function createVirtualTime(startWallMs: number, random: Random): VirtualTime {
  let monoMs = 0;
  let sleptMs = 0;
  let wallOffsetMs = startWallMs;
  let bootMonoMs = 0;
  let bootSleptMs = 0;
  let boots = 0;
  let order = 0;
  const timers = new Set<Timer>();

  const wallMs = (): number => monoMs + sleptMs + wallOffsetMs;

  function arm(ms: number, work: () => void, isOfBot: boolean): Timer {
    order += 1;
    const timer = { atMs: monoMs + ms, order, work, isOfBot };
    timers.add(timer);
    return timer;
  }

  /** As the system does it: to whole milliseconds, up to one too early, now and then some too late. */
  const jitter = (): number => (random.chance(0.2) ? random.next() * 4 : -random.next() * 0.99);
  const handleOf = (timer: Timer): object => ({
    timer,
    ref() {
      return this;
    },
    unref() {
      return this;
    },
    hasRef: () => true,
  });
  const timerOf = (handle: unknown): Timer | undefined => (handle as { timer?: Timer } | undefined)?.timer;

  const globals = globalThis as unknown as Record<string, unknown>;
  const RealDate = Date;
  class VirtualDate extends RealDate {
    constructor(...given: unknown[]) {
      if (given.length === 0) super(Math.floor(wallMs()));
      else super(...(given as [number]));
    }
    static override now(): number {
      return Math.floor(wallMs());
    }
  }
  const fakes: Record<string, unknown> = {
    setTimeout: (work: (...given: unknown[]) => void, ms = 0, ...given: unknown[]) => {
      // Beyond 2^31-1 ms the real one fires at once.
      const asked = ms > 2_147_483_647 || !(ms >= 1) ? 1 : Math.trunc(ms);
      return handleOf(arm(Math.max(0.01, asked + jitter()), () => work(...given), true));
    },
    clearTimeout: (handle: unknown) => void timers.delete(timerOf(handle) as Timer),
    setInterval: (work: (...given: unknown[]) => void, ms = 0, ...given: unknown[]) => {
      const handle = handleOf(arm(Math.max(1, ms), () => repeat(), true)) as { timer: Timer };
      const repeat = (): void => {
        handle.timer = arm(Math.max(1, ms), repeat, true);
        work(...given);
      };
      return handle;
    },
    clearInterval: (handle: unknown) => void timers.delete(timerOf(handle) as Timer),
    setImmediate: (work: (...given: unknown[]) => void, ...given: unknown[]) =>
      handleOf(arm(0.02, () => work(...given), true)),
    clearImmediate: (handle: unknown) => void timers.delete(timerOf(handle) as Timer),
    Date: VirtualDate,
  };
  const real = Object.fromEntries(Object.keys(fakes).map((name) => [name, globals[name]]));
  Object.assign(globals, fakes);

  function next(): Timer | undefined {
    let first: Timer | undefined;
    for (const timer of timers)
      if (!first || timer.atMs < first.atMs || (timer.atMs === first.atMs && timer.order < first.order))
        first = timer;
    return first;
  }

  return {
    trueMs: () => monoMs + sleptMs,
    wallMs: () => Math.floor(wallMs()),
    sources: () => ({
      wallMs: () => Math.floor(wallMs()),
      monoMs: () => monoMs - bootMonoMs,
      uptimeMs: () => Math.floor((monoMs - bootMonoMs + sleptMs - bootSleptMs) / 10) * 10,
      bootId: `boot-${boots}`,
    }),
    after: (ms, work) => void arm(ms, work, false),
    afterElsewhere(ms, work) {
      const elsewhereMs = monoMs + sleptMs + ms;
      order += 1;
      timers.add({ atMs: monoMs + ms, order, work: () => work(elsewhereMs), isOfBot: false, elsewhereMs });
    },
    stepWall: (byMs) => void (wallOffsetMs += byMs),
    sleep(ms) {
      sleptMs += ms;
      const elsewhere = [...timers].filter((timer) => timer.elsewhereMs !== undefined);
      for (const timer of elsewhere) {
        timers.delete(timer);
        timers.add({ ...timer, atMs: Math.max(monoMs, timer.atMs - ms) });
      }
    },
    stall: (ms) => void (monoMs += ms),
    reboot() {
      boots += 1;
      bootMonoMs = monoMs;
      bootSleptMs = sleptMs;
    },
    dropBotTimers() {
      for (const timer of timers) if (timer.isOfBot) timers.delete(timer);
    },
    async pass(ms) {
      let isOver = false;
      arm(ms, () => (isOver = true), false);
      // A sleep in between makes it later than the last timer says.
      const untilMs = monoMs + sleptMs + ms;
      for (;;) {
        const timer = next();
        if (!timer || isOver || monoMs + sleptMs > untilMs) return;
        timers.delete(timer);
        monoMs = Math.max(monoMs, timer.atMs);
        timer.work();
        await new Promise((resolve) => realImmediate(resolve));
      }
    },
    uninstall: () => void Object.assign(globals, real),
  };
}
