import { describe, expect, test } from "vitest";
import { recordRolls } from "../../../commands/roll/record.ts";
import { advance, type RunEvent } from "../../../commands/run/machine.ts";
import { rollBodySchema } from "../../../store/shapes/roll.ts";
import type { Run } from "../../../store/shapes/run.ts";
import { aPlan, aRun, aSheet, START } from "../../support/make.ts";

const at = (seconds: number): number => START + seconds * 1000;

function ended(run: Run, ...events: readonly RunEvent[]): Run {
  return events.reduce((each, event) => {
    const result = advance(each, event);
    if (!result.ok) throw new Error(result.fault.code);
    return result.value;
  }, run);
}

const full: RunEvent = { kind: "next", step: 0, sure: false, atMs: at(0) };
const stop = (seconds: number): RunEvent => ({ kind: "stop", reason: "", atMs: at(seconds) });
const NONE = { late: 0, missed: 0 };

describe("what the log keeps of a run", () => {
  test("one roll for each film in the tank", () => {
    const rolls = recordRolls(ended(aRun({ plan: aPlan({ rolls: 2 }) }), full, stop(540)), "Mina", NONE);
    expect(rolls.map(({ body }) => body.film)).toEqual([
      { index: 1, count: 2 },
      { index: 2, count: 2 },
    ]);
  });

  test("whatever the tank holds and however many share it, what is kept can be read back", () => {
    for (const [rolls, ml, concentrateMl] of [
      [3, 500, 250],
      [2, 301, 3.5],
      [7, 1000, 12.5],
    ] as const) {
      const [first] = aPlan().steps;
      if (!first) throw new Error("a plan has steps");
      const plan = aPlan({
        rolls,
        volumeMl: ml,
        steps: [{ ...first, ml, concentrateMl }, ...aPlan().steps.slice(1)],
      });
      const kept = recordRolls(ended(aRun({ plan }), full, stop(540)), "Mina", NONE);
      expect(kept).toHaveLength(rolls);
      for (const { body } of kept) expect(rollBodySchema.parse(body)).toEqual(body);
      const poured = kept.reduce((sum, { body }) => sum + (body.developerMl ?? 0), 0);
      expect(Math.abs(poured - ml)).toBeLessThan(0.05 * rolls + 1e-9);
    }
  });

  test("a run that is not over has no roll yet", () => {
    expect(recordRolls(ended(aRun(), full), "Mina", NONE)).toEqual([]);
  });

  test("the dose really given: as planned, cut short, and at another temperature", () => {
    const doseAfter = (...events: readonly RunEvent[]): number | null | undefined =>
      recordRolls(ended(aRun(), full, ...events), "Mina", NONE)[0]?.body.dosePerMille;
    expect(doseAfter(stop(540))).toBe(1000);
    expect(doseAfter(stop(270))).toBe(500);
    // Warmer all along: the dose is more than planned though the time is the same.
    const warm: RunEvent = { kind: "new-temperature", tenthsC: 220, leftSeconds: 540, atMs: at(0) };
    const sheet = aSheet({
      points: [
        { tenthsC: 200, exposureIndex: 400, seconds: 540, source: "invented" },
        { tenthsC: 220, exposureIndex: 400, seconds: 450, source: "invented" },
      ],
    });
    const rolls = recordRolls(ended(aRun({ plan: aPlan({ sheet }) }), full, warm, stop(540)), "Mina", NONE);
    // By the sheet 450 s at 22 °C are the whole dose, so 540 s are 1.2 of it.
    expect(rolls[0]?.body.dosePerMille).toBe(1200);
  });

  test("a film that never saw developer has no dose", () => {
    expect(recordRolls(ended(aRun(), stop(5)), "Mina", NONE)[0]?.body).toMatchObject({
      developedSeconds: null,
      dosePerMille: null,
    });
  });
});
