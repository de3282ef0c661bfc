import { describe, expect, it } from "vitest";
import { outlast } from "../../../commands/plan/outlast.ts";
import { outlastWords } from "../../../commands/plan/outlast-words.ts";
import { stagesLeft, stagesOf } from "../../../commands/plan/stages.ts";
import { advance } from "../../../commands/run/machine.ts";
import { aPlan, aRun, START } from "../../support/make.ts";

// Develop 9:00, two rinses of 0:30, fix 5:00, each with 20 s of handling; wash 3:00 and wetting agent 1:00 likewise.
const SINK = 540 + 30 + 30 + 300 + 4 * 20;
const WASH = 180 + 60 + 2 * 20;

describe("the stages of a plan", () => {
  it("end the sink with the fixer and the wash with the film hung up", () => {
    expect(stagesOf(aPlan())).toEqual({
      sinkSeconds: SINK,
      washSeconds: WASH,
      drySeconds: 1200,
      cutSeconds: 180,
    });
    expect(stagesOf(aPlan({ rolls: 2 })).cutSeconds).toBe(360);
  });

  it("shrink as a run goes on", () => {
    const run = aRun();
    expect(stagesLeft(run, START)).toEqual(stagesOf(run.plan));
    const begun = advance(run, { kind: "next", step: 0, sure: false, atMs: START });
    const running = begun.ok ? begun.value : run;
    expect(stagesLeft(running, START + 540_000).sinkSeconds).toBe(SINK - 540);
    expect(stagesLeft(running, START + 9_000_000).sinkSeconds).toBe(SINK - 540);
    expect(stagesLeft(aRun({ phase: { kind: "waiting", step: 6, sinceMs: 0 } }), START)).toEqual({
      sinkSeconds: 0,
      washSeconds: 0,
      drySeconds: 1200,
      cutSeconds: 180,
    });
    expect(stagesLeft(aRun({ phase: { kind: "finished", atMs: 0 } }), START).cutSeconds).toBe(0);
  });
});

describe("a run against the bell", () => {
  const total = SINK + WASH + 1200 + 180;
  const verdictAt = (seconds: number): string => outlast(aPlan(), START, START + seconds * 1000).verdict;

  it.each([
    [total, "fits"],
    [total - 1, "cut-later"],
    [total - 180, "cut-later"],
    [total - 181, "dry-later"],
    [SINK + WASH, "dry-later"],
    [SINK + WASH - 1, "wash-later"],
    [SINK, "wash-later"],
    [SINK - 1, "not-fixed"],
    [0, "not-fixed"],
  ])("with %i s to the bell %s", (seconds, verdict) => {
    expect(verdictAt(seconds)).toBe(verdict);
  });

  it("says nothing where it fits, and what can be left where it does not", () => {
    const wordsAt = (seconds: number): string =>
      outlastWords(outlast(aPlan(), START, START + seconds * 1000));
    expect(wordsAt(total)).toBe("");
    expect(wordsAt(total - 181)).toContain("let it dry overnight");
    expect(wordsAt(SINK)).toContain("never in the developer or the fixer");
    expect(wordsAt(0)).toContain("**Don't pour in.**");
  });
});
