import { describe, expect, test } from "vitest";
import { advance } from "../../../commands/run/machine.ts";
import { cuesOf } from "../../../commands/run/cues.ts";
import { wholeSeconds } from "../../../commands/tray/factor.ts";
import { recordRolls } from "../../../commands/roll/record.ts";
import { START } from "../../support/make.ts";
import { after, aLine, aTrayPlan, aTrayRun, next } from "../../support/trays.ts";

const SECOND = 1000;
const byFactor = aTrayPlan({ line: aLine({ factor: 15 }) });
const seen = (atMs: number) =>
  ({ kind: "seen", wholeSeconds: (seenAfter: number) => wholeSeconds(15, seenAfter, 60), atMs }) as const;
const TO_WASH = [0, 60, 90, 150].map((at) => next(START + at * SECOND));

describe("the image is seen", () => {
  test("at 9 s by factor 15 developing ends at 135 s, and the calls with it", () => {
    const run = after(aTrayRun({ plan: byFactor }), next(START), seen(START + 9 * SECOND));
    expect(run.phase).toMatchObject({ endsAtMs: START + 135 * SECOND });
    expect(cuesOf(run).map(({ kind, dueAtMs }) => [kind, (dueAtMs - START) / SECOND])).toEqual([
      ["get-ready", 110],
      ["pour-out", 125],
      ["next-bath", 135],
    ]);
    expect(run.deviations).toMatchObject([
      { kind: "seen", afterSeconds: 9, fromSeconds: 60, toSeconds: 135 },
    ]);
  });

  test("too soon for full black, it ends no sooner than that", () => {
    const run = after(aTrayRun({ plan: byFactor }), next(START), seen(START + 2 * SECOND));
    expect(run.phase).toMatchObject({ endsAtMs: START + 60 * SECOND });
  });

  test("only once, and only in the developer", () => {
    const once = after(aTrayRun({ plan: byFactor }), next(START), seen(START + 9 * SECOND));
    expect(advance(once, seen(START + 12 * SECOND))).toMatchObject({ fault: { code: "ERR_ALREADY_SEEN" } });
    const stopped = after(once, next(START + 135 * SECOND));
    expect(advance(stopped, seen(START + 140 * SECOND))).toMatchObject({
      fault: { code: "ERR_NOT_DEVELOPING" },
    });
    expect(advance(aTrayRun({ plan: byFactor }), seen(START))).toMatchObject({
      fault: { code: "ERR_NOT_DEVELOPING" },
    });
  });
});

describe("a wet print comes into the wash", () => {
  test("the wash begins anew, whole", () => {
    const washing = after(aTrayRun(), ...TO_WASH);
    const anew = after(washing, { kind: "wash-anew", atMs: START + 250 * SECOND });
    expect(anew.phase).toMatchObject({ kind: "running", step: 3, endsAtMs: START + 550 * SECOND });
    expect(anew.schedule).toBe(washing.schedule + 1);
    expect(anew.marks.filter(({ step }) => step === 3).map(({ endedAtMs }) => endedAtMs)).toEqual([
      START + 250 * SECOND,
      null,
    ]);
    expect(anew.deviations).toMatchObject([{ kind: "washed-anew", afterSeconds: 100 }]);
  });

  test("also when its time was over and the print is still in it", () => {
    const over = after(aTrayRun(), ...TO_WASH, { kind: "elapsed", atMs: START + 450 * SECOND });
    expect(over.phase).toMatchObject({ kind: "waiting", step: 4 });
    expect(after(over, { kind: "wash-anew", atMs: START + 500 * SECOND }).phase).toMatchObject({
      kind: "running",
      step: 3,
      endsAtMs: START + 800 * SECOND,
    });
  });

  test("prints in other trays, and those that dry, go on as they were", () => {
    const fixing = after(aTrayRun(), ...TO_WASH.slice(0, 3));
    expect(after(fixing, { kind: "wash-anew", atMs: START + 100 * SECOND })).toBe(fixing);
    const developing = after(aTrayRun(), next(START));
    expect(after(developing, { kind: "wash-anew", atMs: START + 10 * SECOND })).toBe(developing);
  });
});

test("prints are no rolls: the log gets none of them", () => {
  const done = after(aTrayRun(), ...TO_WASH, next(START + 450 * SECOND));
  expect(done.phase.kind).toBe("finished");
  expect(recordRolls(done, "Mina", { late: 0, missed: 0 })).toEqual([]);
});

test("nobody is called again within 10 s of a print's going in", () => {
  for (const plan of [aTrayPlan(), aTrayPlan({ paper: "fibre" })])
    for (const [step, { seconds }] of plan.steps.entries()) {
      if (seconds === null) continue;
      const phase = {
        kind: "running",
        step,
        startedAtMs: START,
        endsAtMs: START + seconds * SECOND,
      } as const;
      const soon = cuesOf(aTrayRun({ plan, phase })).filter(({ dueAtMs }) => dueAtMs < START + 10 * SECOND);
      expect(soon.filter(({ kind }) => kind !== "agitate-first")).toEqual([]);
    }
});
