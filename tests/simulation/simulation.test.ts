import { expect, test } from "vitest";
import { playEvening } from "./evening.ts";
import { chooseSeed } from "./random.ts";

/*
 * Whole evenings in virtual time, on a real store: kills between any two statements, restarts, clocks that are set, sleep,
 * stalls, a chat that loses answers, people who press twice. SIM_SEED plays one evening again; SIM_RUNS makes it long, with
 * evenings that were never played.
 */

const SECONDS = 20;
/** So that a change, and not the draw, makes the difference between one run of the tests and the next. */
const USUAL_SEED = 20_260_116;

test(
  "no cue is lost, doubled, early or silently late, whatever befalls",
  { timeout: 12 * 3600_000 },
  async () => {
    const isOne = (process.env["SIM_SEED"] ?? "") !== "";
    const wanted = Number(process.env["SIM_RUNS"] ?? 0);
    const first = wanted > 0 ? chooseSeed("SIM_SEED") : chooseSeed("SIM_SEED", USUAL_SEED);
    const began = performance.now();
    const total = { evenings: 0, runs: 0, kills: 0, promises: 0, shown: 0, late: 0, merged: 0 };
    const isEnough = (): boolean =>
      isOne || (wanted > 0 ? total.runs >= wanted : performance.now() - began > SECONDS * 1000);
    do {
      const evening = await playEvening(first + total.evenings);
      total.evenings += 1;
      for (const [name, count] of Object.entries(evening)) total[name as keyof typeof evening] += count;
    } while (!isEnough());
    console.log(`simulated: ${JSON.stringify(total)} in ${Math.round((performance.now() - began) / 1000)} s`);
    if (isOne) return;
    // Otherwise it would not have tried what it is for.
    expect(total.kills).toBeGreaterThan(5);
    expect(total.late).toBeGreaterThan(5);
    expect(total.shown).toBeGreaterThan(300);
  },
);
