import { describe, expect, test } from "vitest";
import fc from "fast-check";
import { advance, type RunEvent } from "../../../commands/run/machine.ts";
import { isOver, type Run } from "../../../store/shapes/run.ts";
import { aPlan, aRun, START, someSteps } from "../../support/make.ts";

const at = (seconds: number): number => START + seconds * 1000;
const next = (seconds: number, step: number | null = null, sure = false): RunEvent => ({
  kind: "next",
  step,
  sure,
  atMs: at(seconds),
});

function after(run: Run, ...events: readonly RunEvent[]): Run {
  return events.reduce((each, event) => {
    const result = advance(each, event);
    if (!result.ok) throw new Error(result.fault.code);
    return result.value;
  }, run);
}

const faultOf = (run: Run, event: RunEvent): string => {
  const result = advance(run, event);
  return result.ok ? "none" : result.fault.code;
};

describe("a run goes on", () => {
  test("the developer's time starts when the tank is said to be full", () => {
    expect(after(aRun(), next(40)).phase).toEqual({
      kind: "running",
      step: 0,
      startedAtMs: at(40),
      endsAtMs: at(580),
    });
  });

  test("the clock ends a step, and the run then waits for the next bath", () => {
    const run = after(aRun(), next(0), { kind: "elapsed", atMs: at(541) });
    expect(run.phase).toEqual({ kind: "waiting", step: 1, sinceMs: at(540) });
  });

  test("a bath acts until the next one is in", () => {
    const run = after(aRun(), next(0), { kind: "elapsed", atMs: at(540) }, next(553));
    expect(run.marks[0]).toMatchObject({ startedAtMs: at(0), endedAtMs: at(553) });
    expect(run.deviations).toEqual([{ kind: "overrun", step: 0, bySeconds: 13, atMs: at(553) }]);
  });

  test("a change within the pour-out is the change itself, without a question", () => {
    const run = after(aRun(), next(0), next(531, 1));
    expect(run.phase).toMatchObject({ kind: "running", step: 1, startedAtMs: at(531) });
  });

  test("a run goes through all its steps to the end", () => {
    let run = aRun();
    let seconds = 0;
    for (const step of run.plan.steps) {
      run = after(run, next(seconds));
      seconds += step.seconds ?? 60;
      if (step.seconds !== null) run = after(run, { kind: "elapsed", atMs: at(seconds) });
    }
    expect(run.phase).toEqual({ kind: "finished", atMs: at(seconds - 60) });
    expect(run.marks.map(({ step }) => step)).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    expect(run.marks.every(({ endedAtMs }) => endedAtMs !== null)).toBe(true);
    expect(run.deviations).toEqual([]);
  });

  test("a longer wash is no news, a shorter one is", () => {
    const washing = aRun({ phase: { kind: "waiting", step: 4, sinceMs: START } });
    const long = after(washing, next(0), { kind: "elapsed", atMs: at(180) }, next(900));
    const short = after(washing, next(0), next(100, null, true));
    expect(long.deviations).toEqual([]);
    expect(short.deviations).toEqual([{ kind: "cut-short", step: 4, bySeconds: 80, atMs: at(100) }]);
  });
});

describe("a wrong or an old button changes nothing", () => {
  test("a second tap on the same button is recognised", () => {
    expect(advance(after(aRun(), next(0, 0)), next(1, 0))).toEqual({
      ok: false,
      fault: { code: "ERR_ALREADY_RUNNING", step: 0, leftSeconds: 539 },
    });
  });

  test("a button of another step is refused", () => {
    expect(faultOf(after(aRun(), next(0)), next(540, 5))).toBe("ERR_OLD_BUTTON");
    expect(faultOf(aRun(), next(0, 3))).toBe("ERR_OLD_BUTTON");
  });

  test("a bath changed in the middle of the developer is asked for again", () => {
    const run = after(aRun(), next(0));
    expect(faultOf(run, next(200, 1))).toBe("ERR_TOO_EARLY");
    expect(after(run, next(200, 1, true)).deviations).toEqual([
      { kind: "cut-short", step: 0, bySeconds: 340, atMs: at(200) },
    ]);
  });

  test("a run that is over takes no event", () => {
    const run = after(aRun(), { kind: "stop", reason: "light leak", atMs: at(5) });
    expect(run.phase).toEqual({ kind: "stopped", step: 0, atMs: at(5), reason: "light leak" });
    expect(faultOf(run, next(6))).toBe("ERR_RUN_OVER");
    expect(faultOf(run, { kind: "stop", reason: "", atMs: at(7) })).toBe("ERR_RUN_OVER");
  });
});

describe("corrections", () => {
  test("poured 20 s ago moves the whole step", () => {
    const run = after(aRun(), next(0), { kind: "poured", agoSeconds: 20, atMs: at(10) });
    expect(run.phase).toMatchObject({ startedAtMs: at(-10), endsAtMs: at(530) });
    expect(run.deviations).toEqual([{ kind: "moved", step: 0, bySeconds: -10, atMs: at(10) }]);
  });

  test("poured 20 s ago begins a step nobody had tapped for", () => {
    const run = after(aRun(), { kind: "poured", agoSeconds: 20, atMs: at(60) });
    expect(run.phase).toMatchObject({ kind: "running", step: 0, startedAtMs: at(40) });
  });

  test("a moved pour-in also ends the bath before it", () => {
    const run = after(aRun(), next(0), { kind: "elapsed", atMs: at(540) }, next(560), {
      kind: "poured",
      agoSeconds: 15,
      atMs: at(562),
    });
    expect(run.marks[0]?.endedAtMs).toBe(at(547));
    expect(run.marks[1]?.startedAtMs).toBe(at(547));
  });

  test("no bath can have been in before the one in front of it", () => {
    const run = after(aRun(), next(0), { kind: "elapsed", atMs: at(540) }, next(545));
    expect(faultOf(run, { kind: "poured", agoSeconds: 600, atMs: at(550) })).toBe("ERR_BEFORE_LAST_STEP");
  });

  test("a new temperature sets what is left, not what was", () => {
    const run = after(aRun(), next(0), {
      kind: "new-temperature",
      tenthsC: 215,
      leftSeconds: 200,
      atMs: at(300),
    });
    expect(run.phase).toMatchObject({ startedAtMs: at(0), endsAtMs: at(500) });
    expect(run.deviations.at(-1)).toMatchObject({ kind: "new-temperature", step: 0, tenthsC: 215 });
  });

  test("once pour-out has begun a new temperature is too late", () => {
    const event: RunEvent = { kind: "new-temperature", tenthsC: 215, leftSeconds: 60, atMs: at(531) };
    expect(faultOf(after(aRun(), next(0)), event)).toBe("ERR_POURING_OUT");
  });
});

describe("whatever happens", () => {
  const anyEvent = fc.oneof(
    fc.record({
      kind: fc.constant("next" as const),
      step: fc.option(fc.integer({ min: 0, max: 9 })),
      sure: fc.boolean(),
      gapSeconds: fc.integer({ min: 0, max: 700 }),
    }),
    fc.record({ kind: fc.constant("elapsed" as const), gapSeconds: fc.integer({ min: 0, max: 700 }) }),
    fc.record({
      kind: fc.constant("poured" as const),
      agoSeconds: fc.integer({ min: 0, max: 900 }),
      gapSeconds: fc.integer({ min: 0, max: 60 }),
    }),
    fc.record({
      kind: fc.constant("new-temperature" as const),
      tenthsC: fc.integer({ min: 150, max: 300 }),
      leftSeconds: fc.integer({ min: 0, max: 900 }),
      gapSeconds: fc.integer({ min: 0, max: 60 }),
    }),
    fc.record({
      kind: fc.constant("stop" as const),
      reason: fc.string(),
      gapSeconds: fc.integer({ min: 0, max: 60 }),
    }),
  );

  test("a run keeps its marks in order, and a running step has one open mark that began with it", () => {
    fc.assert(
      fc.property(fc.array(anyEvent, { maxLength: 40 }), (events) => {
        let run = aRun({ plan: aPlan({ steps: someSteps() }) });
        let now = START;
        for (const { gapSeconds, ...event } of events) {
          now += gapSeconds * 1000;
          const clockIsUp = run.phase.kind === "running" && now >= run.phase.endsAtMs;
          if (event.kind === "elapsed" && !clockIsUp) continue;
          const result = advance(run, { ...event, atMs: now });
          if (!result.ok) continue;
          run = result.value;
          const open = run.marks.filter(({ endedAtMs }) => endedAtMs === null);
          expect(open.length).toBeLessThanOrEqual(1);
          if (run.phase.kind === "running") {
            expect(open[0]).toMatchObject({ step: run.phase.step, startedAtMs: run.phase.startedAtMs });
            expect(run.phase.endsAtMs).toBeGreaterThanOrEqual(run.phase.startedAtMs);
          }
          if (isOver(run)) expect(open).toEqual([]);
          const steps = run.marks.map(({ step }) => step);
          expect(steps).toEqual([...new Set(steps)].sort((a, b) => a - b));
          for (const mark of run.marks)
            if (mark.endedAtMs !== null) expect(mark.endedAtMs).toBeGreaterThanOrEqual(mark.startedAtMs);
        }
      }),
      { numRuns: 500 },
    );
  });
});
