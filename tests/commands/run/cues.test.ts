import { describe, expect, test } from "vitest";
import fc from "fast-check";
import { advance } from "../../../commands/run/machine.ts";
import { cuesAfter, cuesOf } from "../../../commands/run/cues.ts";
import { isMissed, LATE_FROM_MS, lateness, settle } from "../../../commands/run/settle.ts";
import type { DueCue } from "../../../store/shapes/cue.ts";
import type { Run } from "../../../store/shapes/run.ts";
import { aPlan, aRun, aStep, EACH_MINUTE, START } from "../../support/make.ts";

function developing(over: Partial<Run> = {}): Run {
  const result = advance(aRun(over), { kind: "next", step: 0, sure: false, atMs: START });
  if (!result.ok) throw new Error(result.fault.code);
  return result.value;
}

const seconds = (run: Run, kind: string): number[] =>
  cuesOf(run)
    .filter((cue) => cue.kind === kind)
    .map(({ dueAtMs }) => (dueAtMs - START) / 1000);

const due = (run: Run, untilSeconds: number, madeAtMs = START): DueCue[] =>
  cuesOf(run)
    .filter(({ dueAtMs }) => dueAtMs <= START + untilSeconds * 1000)
    .map((cue, id) => ({ ...cue, id, madeAtMs }));

describe("the cues of nine minutes, agitated 5 s each minute", () => {
  test("the first agitation comes when the tank is full", () =>
    expect(seconds(developing(), "agitate-first")).toEqual([0]));
  test("one agitation each minute until the pour-out", () => {
    expect(seconds(developing(), "agitate")).toEqual([60, 120, 180, 240, 300, 360, 420, 480]);
  });
  // US Navy NAVEDTRA 14209: pour-out begins when 10 s of the time are left.
  test("pour-out begins 10 s before the end", () => expect(seconds(developing(), "pour-out")).toEqual([530]));
  test("a call to get ready comes 15 s before pour-out", () =>
    expect(seconds(developing(), "get-ready")).toEqual([515]));
  test("the next bath is called when the time is up", () =>
    expect(seconds(developing(), "next-bath")).toEqual([540]));
});

test("no agitation is called that pour-out would cut", () => {
  const steps = [
    aStep({
      kind: "develop",
      seconds: 550,
      agitation: { ...EACH_MINUTE, burstSeconds: 10 },
      pourOutSeconds: 10,
    }),
  ];
  expect(seconds(developing({ plan: aPlan({ steps }) }), "agitate").at(-1)).toBe(480);
});

test("a continuous scheme has one call, at its start", () => {
  const agitation = { ...EACH_MINUTE, manner: "continuous" } as const;
  const run = developing({ plan: aPlan({ steps: [aStep({ kind: "develop", seconds: 300, agitation })] }) });
  expect(cuesOf(run).map(({ kind }) => kind)).toEqual(["agitate-first", "get-ready", "next-bath"]);
});

test("a first agitation longer than the cycle swallows the agitations it covers", () => {
  const agitation = { ...EACH_MINUTE, initialSeconds: 60, cycleSeconds: 30 };
  const run = developing({ plan: aPlan({ steps: [aStep({ kind: "develop", seconds: 150, agitation })] }) });
  expect(seconds(run, "agitate")).toEqual([60, 90, 120]);
});

test("a run that waits with developer in the tank is asked three times", () => {
  const run = advance(developing(), { kind: "elapsed", atMs: START + 540_000 });
  if (!run.ok) throw new Error(run.fault.code);
  expect(seconds(run.value, "nudge")).toEqual([560, 600, 720]);
});

test("after a correction the past agitations are gone, pour-out and the end stay", () => {
  const moved = advance(developing(), { kind: "poured", agoSeconds: 535, atMs: START });
  if (!moved.ok) throw new Error(moved.fault.code);
  expect(cuesAfter(moved.value, START).map(({ kind }) => kind)).toEqual(["pour-out", "next-bath"]);
});

test("cue keys are never used twice within a run, whatever is corrected", () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 500 }), { maxLength: 12 }), (corrections) => {
      let run = developing();
      const keys = cuesOf(run).map(({ key }) => key);
      for (const agoSeconds of corrections) {
        const moved = advance(run, { kind: "poured", agoSeconds, atMs: START + 500_000 });
        if (!moved.ok) continue;
        run = moved.value;
        keys.push(...cuesOf(run).map(({ key }) => key));
      }
      expect(new Set(keys).size).toBe(keys.length);
      // With the run's own number in front it must still fit the 25 characters chats remember a message by.
      expect(Math.max(...keys.map(({ length }) => length))).toBeLessThanOrEqual(15);
    }),
  );
});

describe("settling", () => {
  test("a cue on time is said", () => {
    const run = developing();
    const { said } = settle(run, due(run, 0), START + 40);
    expect(said).toMatchObject([{ cue: { kind: "agitate-first" }, merged: [] }]);
  });

  test("after a minute away the missed agitations are counted in the newest", () => {
    const run = developing();
    const cues = due(run, 185).filter(({ kind }) => kind === "agitate");
    const { said } = settle(run, cues, START + 185_000);
    expect(said).toHaveLength(1);
    expect(said[0]).toMatchObject({ cue: { number: 3 } });
    expect(said[0]?.merged.map(({ number }) => number)).toEqual([1, 2]);
  });

  test("the end of the step speaks for all before it, and the run moves on", () => {
    const run = developing();
    const settled = settle(run, due(run, 700), START + 700_000);
    expect(settled.said.map(({ cue }) => cue.kind)).toEqual(["next-bath"]);
    expect(settled.run.phase).toEqual({ kind: "waiting", step: 1, sinceMs: START + 540_000 });
  });

  test("a cue that a correction made overdue is nobody's lateness", () => {
    const run = developing();
    const madeAtMs = START + 600_000;
    const [cue] = due(run, 600, madeAtMs).slice(-1);
    expect(cue && lateness(cue, madeAtMs + 10)).toBe(10);
    expect(cue && isMissed(cue, madeAtMs + 10)).toBe(false);
    expect(cue && isMissed(cue, madeAtMs + LATE_FROM_MS)).toBe(true);
  });

  test("each due cue comes out once: said, or merged into one that is", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 900 }), fc.integer({ min: 0, max: 300 }), (until, lag) => {
        const run = developing();
        const cues = due(run, until);
        const { said } = settle(run, cues, START + (until + lag) * 1000);
        const out = said.flatMap(({ cue, merged }) => [cue.id, ...merged.map(({ id }) => id)]);
        expect(out.sort((a, b) => a - b)).toEqual(cues.map(({ id }) => id));
      }),
    );
  });
});
