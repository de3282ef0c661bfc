import { join } from "node:path";
import { performance } from "node:perf_hooks";
import { setTimeout as wait } from "node:timers/promises";
import Database from "better-sqlite3";
import { LATE_FROM_MS } from "../../commands/run/settle.ts";
import { createRandom } from "../simulation/random.ts";
import { countWaiting } from "../support/waiting.ts";
import { pourAllIn, type Film, type Filling } from "./kill-films.ts";
import { wetPrintComes } from "./kill-prints.ts";
import { freePort, listen } from "./kill-client.ts";
import { drawDeath, drawFirstDeath, live, liveOn, lookAt, type Death } from "./kill-life.ts";
import { judge, type Figures } from "./kill-verdict.ts";

/* One round: a store of its own, made under kills, filled with films, and killed until they are done. */

export interface Round extends Figures {
  /** Prints whose wash a wet print began again, that one with them. */
  readonly washedAnew: number;
  /** By where they ended: a place, or "outside". */
  readonly kills: ReadonlyMap<string, number>;
  /** Wall time of one kill with all that belongs to it, without the absence and the last life. */
  readonly msPerKill: number;
}

export interface RoundPlan {
  readonly data: string;
  readonly seed: number;
  readonly kills: number;
  readonly films: number;
  readonly cycleSeconds: number;
  /** By how much lives are longer than on an idle machine. */
  readonly slowness: number;
  /** How long a kill is likely to take: the films are as long as all of them together. */
  readonly msPerKill: number;
}

/** Away for longer than a call may be late unnoticed, but not until the next one is due, in one round of three. */
const AWAY_MS = LATE_FROM_MS + 600;
const isAwayIn = (seed: number): boolean => seed % 3 === 0;
const FEWEST_CYCLES = 4;
/** So many films have a page outside that listens. */
const MOST_PAGES = 12;
/** The end of the last film is waited for so long beyond its moment. */
const PATIENCE_MS = 20_000;

/**
 * Kills until `kills` are made or the films are over, which may be sooner on a slow machine.
 * @throws where anything is wrong, at once or at the end.
 */
export async function playRound({ data, seed, kills, msPerKill, ...rest }: RoundPlan): Promise<Round> {
  const random = createRandom(seed);
  const count = new Map<string, number>();
  const home = { data, port: await freePort() };
  let before = { said: 0, settled: 0 };
  const kill = async (death: Death): Promise<void> => {
    try {
      const { endedAt } = await live(home, death);
      countOne(count, endedAt);
      const after = lookAt(data);
      if (after.said < before.said || after.settled < before.settled)
        throw new Error(`what was kept is gone: ${JSON.stringify({ before, after })}`);
      before = after;
    } catch (error) {
      throw new Error(`after kill ${total(count)}, ${JSON.stringify(death)}`, { cause: error });
    }
  };

  await kill(drawFirstDeath(random, rest.slowness));
  const awayMs = isAwayIn(seed) ? AWAY_MS : 0;
  const { cycleSeconds } = rest;
  // One less, as the last is poured in later.
  const likelyCycles = Math.round((kills * msPerKill + awayMs) / 1000 / cycleSeconds) - 1;
  const groups = random.chance(0.5) ? 0 : random.whole(2, 4);
  const filling: Filling = { ...rest, groups, cycles: Math.max(FEWEST_CYCLES, likelyCycles) };
  const films = pourAllIn(data, filling, random);
  const endOf = ({ calls }: Film): number => calls.at(-1)?.dueAt ?? 0;
  const seats = films.map((film) => ({ ...film, endsAt: () => endOf(film) }));
  const endsAt = Math.max(...films.map(endOf));
  const pages = listen(home.port, seats.slice(0, MOST_PAGES));
  const awayAt = Math.floor(kills / 2);
  let isWashedAnew = false;
  const begun = performance.now();
  while (total(count) < kills && Date.now() < endsAt) {
    if (!isWashedAnew && total(count) >= awayAt) isWashedAnew = wetPrintComes(data, films);
    if (awayMs > 0 && total(count) === awayAt) await wait(awayMs);
    await kill(drawDeath(random, rest.films, rest.slowness));
  }
  const tookMs = performance.now() - begun - awayMs;
  const isDone = doneIn(data);
  const lastAt = Math.max(...films.map(endOf));
  await liveOn(home, () => pages.haveAll() && isDone(), lastAt - Date.now() + PATIENCE_MS);
  pages.stop();
  return {
    ...judge(data, films, pages.heard),
    washedAnew: isWashedAnew ? films.filter(({ kind }) => kind === "wash").length : 0,
    kills: count,
    msPerKill: tookMs / Math.max(1, total(count) - 1),
  };
}

/** Whether nothing waits any more; in a connection for each look, so that none keeps the store open. */
function doneIn(data: string): () => boolean {
  return () => {
    const db = new Database(join(data, "sinkside.db"), { readonly: true });
    try {
      const { cues, messages } = countWaiting(db);
      return cues + messages === 0;
    } finally {
      db.close();
    }
  };
}

export const total = (count: ReadonlyMap<string, number>): number =>
  [...count.values()].reduce((sum, n) => sum + n, 0);

export function countOne(count: Map<string, number>, name: string, by = 1): void {
  count.set(name, (count.get(name) ?? 0) + by);
}
