import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { performance } from "node:perf_hooks";
import { expect, test } from "vitest";
import { chooseSeed } from "../simulation/random.ts";
import { freePort } from "./kill-client.ts";
import { measureSlowness } from "./kill-life.ts";
import { countOne, playRound, total, type Round } from "./kill-round.ts";
import { add as addFigures, NONE, type Figures } from "./kill-verdict.ts";

/*
 * The built process on a real file, killed at any moment of its life and at places inside its work, in rounds with a fresh
 * store each. ROOM_KILL_SEED draws the same deaths again; the moments are real time, so what falls between them is not
 * the same. KILLS makes it long and FILMS full, with KILLS_A_ROUND in each round; LOOPS plays so many
 * rounds at a time; KILL_MAIN tries another build.
 */

const KILLS = Number(process.env["KILLS"] ?? 30);
const LOOPS = Number(process.env["LOOPS"] ?? 1);
const isLong = KILLS >= 100;
const FILMS = Number(process.env["FILMS"] ?? (isLong ? 1200 : 12));
const KILLS_A_ROUND = Number(process.env["KILLS_A_ROUND"] ?? (isLong ? 50 : 10));
/** Calls so many seconds apart, in turn. */
const CYCLE_SECONDS = [1, 2, 3];
const FIRST_GUESS_MS = 300;
const TOLD_EACH = 10;

interface Sum extends Figures {
  readonly kills: ReadonlyMap<string, number>;
  readonly rounds: number;
  readonly washedAnew: number;
}

function add(sum: Sum, round: Round): Sum {
  const kills = new Map(sum.kills);
  for (const [place, n] of round.kills) countOne(kills, place, n);
  const washedAnew = sum.washedAnew + round.washedAnew;
  return { ...addFigures(sum, round), kills, rounds: sum.rounds + 1, washedAnew };
}

function tell({ kills, ...figures }: Sum, begun: number): void {
  const seconds = (performance.now() - begun) / 1000;
  const places = [...kills].sort().map(([place, n]) => `${place} ${n}`);
  console.log(
    `${total(kills)} kills in ${seconds.toFixed(0)} s, ${(total(kills) / seconds).toFixed(2)} a second; ${JSON.stringify(figures)}; killed at ${places.join(", ")}`,
  );
}

async function playSafely(round: number, seed: number, kills: number, msPerKill: number): Promise<Round> {
  const data = mkdtempSync(join(tmpdir(), "sinkside-kill-loop-"));
  try {
    const slowness = await slownessNow();
    const played = await playRound({
      data,
      seed,
      kills,
      slowness,
      msPerKill,
      films: FILMS,
      cycleSeconds: CYCLE_SECONDS[round % CYCLE_SECONDS.length] ?? 1,
    });
    rmSync(data, { recursive: true });
    return played;
  } catch (error) {
    const { message, cause } = error as Error;
    const why = cause instanceof Error ? `${message}: ${cause.message}` : message;
    throw new Error(`round ${round}, ROOM_KILL_SEED=${seed}, store kept in ${data}: ${why}`, {
      cause: error,
    });
  }
}

async function slownessNow(): Promise<number> {
  const data = mkdtempSync(join(tmpdir(), "sinkside-kill-start-"));
  const slowness = await measureSlowness({ data, port: await freePort() });
  rmSync(data, { recursive: true });
  return slowness;
}

test(
  `${KILLS} kills at any moment and at places inside the work: nothing lost, doubled or early, every late call says so`,
  { timeout: 24 * 3600_000 },
  async () => {
    const seed = chooseSeed("ROOM_KILL_SEED");
    const begun = performance.now();
    let sum: Sum = { ...NONE, kills: new Map(), rounds: 0, washedAnew: 0 };
    let handedOut = 0;
    let next = 0;
    let msPerKill = FIRST_GUESS_MS;
    const state = { isOver: false };
    const loop = async (): Promise<void> => {
      while (handedOut < KILLS && !state.isOver) {
        const kills = Math.min(KILLS_A_ROUND, KILLS - handedOut);
        handedOut += kills;
        const round = next;
        next += 1;
        const played = await playSafely(round, seed + round, kills, msPerKill);
        // Films that were over sooner leave kills to be made.
        handedOut -= kills - total(played.kills);
        msPerKill = played.msPerKill;
        sum = add(sum, played);
        if (isLong && sum.rounds % TOLD_EACH === 0) tell(sum, begun);
      }
    };
    const loops = Array.from({ length: LOOPS }, () =>
      loop().catch((error: unknown) => {
        state.isOver = true;
        throw error;
      }),
    );
    const ended = await Promise.allSettled(loops);
    tell(sum, begun);
    for (const each of ended) if (each.status === "rejected") throw each.reason;

    expect(total(sum.kills)).toBe(KILLS);
    expect(sum.calls).toBe(sum.heard + sum.missed);
    expect(sum.outside).toBeGreaterThan(0);
    // Otherwise it would not have tried what it is for.
    if (isLong) expect(sum.late).toBeGreaterThan(0);
    if (isLong) expect(sum.washedAnew).toBeGreaterThan(0);
    const hooked = KILLS - (sum.kills.get("outside") ?? 0);
    expect(hooked).toBeGreaterThan(KILLS / 5);
  },
);
