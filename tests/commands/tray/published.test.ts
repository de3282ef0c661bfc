import { describe, expect, test } from "vitest";
import { honestyLines } from "../../../commands/sheet/basis-words.ts";
import { MOST_TIMES_LEAST } from "../../../commands/tray/develop.ts";
import {
  AGENTS,
  CONTRASTS,
  factorHad,
  factorOf,
  PYRO_RIVAL,
  wholeSeconds,
} from "../../../commands/tray/factor.ts";
import { HOUSE_FACTOR_PER_10C, timeAt } from "../../../commands/tray/rate.ts";
import { judgeSilver, silverLimit } from "../../../commands/tray/silver.ts";
import type { StepKind } from "../../../store/shapes/plan.ts";
import type { TrayPlan } from "../../../store/shapes/tray.ts";
import { createRoom } from "../../support/room.ts";
import { aLine, aTrayPlan } from "../../support/trays.ts";

/* Published rows of trays, each with its source; where sources contradict each other, all are told. */

const FIBRE = { paper: "fibre" } as const;
const secondsOf = ({ steps }: TrayPlan, kind: StepKind): (number | null)[] =>
  steps.filter((step) => step.kind === kind).map(({ seconds }) => seconds);
const rests = (plan: TrayPlan): string => honestyLines(plan).join("\n");

describe("the developer", () => {
  test("fibre prints lie within 1 1/2 to 2 min where nobody gave a time (US Army SS0509)", () => {
    const plan = aTrayPlan({ ...FIBRE, line: aLine({ isUsual: true }) });
    const [seconds] = secondsOf(plan, "develop");
    expect(seconds).toBeGreaterThanOrEqual(90);
    expect(seconds).toBeLessThanOrEqual(120);
    expect(rests(plan)).toContain("US Army SS0509");
    expect(rests(plan)).toContain("20 to 40 s at 18 °C (Glover 1924)");
  });

  test("an MQ developer takes 20 to 40 s at 65 °F and 30 to 60 s at 55 °F (Glover 1924, in Clerc 573)", () => {
    // 65 °F is 18.3 °C, 55 °F 12.8 °C.
    expect(timeAt(20, 183, 128, HOUSE_FACTOR_PER_10C)).toBeCloseTo(30, 0);
    expect(timeAt(40, 183, 128, HOUSE_FACTOR_PER_10C)).toBeCloseTo(60, 0);
  });

  test("a step rule has 30 s, and 60 s under 55 °F (Clerc 573): the curve stays between from 10 °C on", () => {
    expect(timeAt(30, 183, 100, HOUSE_FACTOR_PER_10C)).toBeLessThanOrEqual(60);
  });

  test("under 60 °F hydroquinone fails (Wellington, p. 130): a caution", () => {
    const codes = (tenthsC: number) => aTrayPlan({ tenthsC }).cautions.map(({ code }) => code);
    expect(codes(155)).toContain("WARN_TRAY_COLD");
    expect(codes(160)).not.toContain("WARN_TRAY_COLD");
  });

  test("trays of one line are within 5 °F of each other (US Navy drafting manual)", () => {
    const codes = (fixTenthsC: number) => aTrayPlan({ fixTenthsC }).cautions.map(({ code }) => code);
    expect(codes(172)).not.toContain("WARN_TRAYS_APART");
    expect(codes(171)).toContain("WARN_TRAYS_APART");
  });

  test("of 100, 140, 200, 280 s the first full black is at 140, 280 stains: 1 to 2 times the least (Clerc 556)", () => {
    const room = createRoom();
    const { fields } = room.asks("Ada", "/tray black least:140 s stain:280 s", "aide").reply;
    expect(fields).toMatchObject({ usableFromSeconds: 140, usableToSeconds: 280 });
    expect(MOST_TIMES_LEAST * 140).toBe(280);
    // The developer's own 60 s would be under it: no plan goes there.
    const planned = room.asks("Mina", "/tray plan paper:resin-coated temp:20C").reply;
    expect(planned.text).toMatch(/^\*\*2:20\*\* in Dock Print/);
    expect(planned.fields?.["leastSeconds"]).toBe(140);
  });

  test("the least time follows the temperature like the time itself", () => {
    const line = aLine({ leastSeconds: 140, factorPer10C: 2 });
    expect(aTrayPlan({ line, tenthsC: 300 }).leastSeconds).toBe(70);
    expect(secondsOf(aTrayPlan({ line, tenthsC: 300 }), "develop")).toEqual([70]);
  });

  test("drained within its time, and every published draining told: 0, 5, 10 and 15 s", () => {
    const plan = aTrayPlan();
    expect(plan.steps[0]).toMatchObject({ seconds: 60, pourOutSeconds: 10 });
    for (const words of [
      "momentarily (US Navy NAVEDTRA 14209)",
      "5 s or 10 s (class pages)",
      "15 s after it (US Army SS0509)",
    ])
      expect(rests(plan)).toContain(words);
  });
});

describe("by factor (Cyclopedia of Photography, one firm's formulae)", () => {
  test.each([
    ["amidol", 7, 10, 12],
    ["glycin", 9, 13, 16],
    ["metol", 20, 30, 35],
    ["para-aminophenol", 12, 16, 18],
    ["pyro", 4, 6, 7],
  ] as const)("%s", (agent, ...factors) => {
    expect(CONTRASTS.map((contrast) => factorOf([agent], contrast))).toEqual(factors);
  });

  test("no agent beyond those whose digits are whole in the source", () => expect(AGENTS).toHaveLength(5));
  test("MQ, factor 15, seen at 9 s: 135 s", () => expect(wholeSeconds(15, 9)).toBe(135));
  test("equal parts of pyro and metol: 18", () => expect(factorOf(["pyro", "metol"], "normal")).toBe(18));
  test("seen at 30 s, finished at 1200 s: 40 (Practical Photography, 506)", () =>
    expect(factorHad(30, 1200)).toBe(40));

  test("pyro-soda is 10 in a maker's handbook, 9 or 8 where that is too strong (Wellington, p. 26): told beside the 6", () => {
    expect(PYRO_RIVAL).toEqual({ normal: 10, softer: [9, 8] });
    const said = createRoom().says("Mina", "/tray factor agents:pyro");
    expect(said).toContain("**6 times first appearance.**");
    expect(said).toContain("(Wellington) has 10 for pyro-soda, 9, 8 where that is too strong");
    expect(said).toContain("not fast contact papers (Clerc, 573)");
  });
});

describe("stop, fixer and wash", () => {
  test("the stop lies between 5 s (NAVEDTRA 14209) and 1 min (US Army SS0509), and all four figures are told", () => {
    const plan = aTrayPlan();
    const [seconds] = secondsOf(plan, "stop");
    expect(seconds).toBeGreaterThanOrEqual(5);
    expect(seconds).toBeLessThanOrEqual(60);
    expect(rests(plan)).toMatch(/5 s \(US Navy.*15 s and 30 s.*1 min \(US Army/);
  });

  test("fibre: 5 to 10 min in one bath, 3 to 5 in each of two (a practitioner's page)", () => {
    expect(secondsOf(aTrayPlan(FIBRE), "fix")).toEqual([300]);
    const two = aTrayPlan({ ...FIBRE, line: aLine({ baths: 2 }) });
    expect(secondsOf(two, "fix")).toEqual([180, 180]);
    // Moved 30 s in each minute: Anchell, p. 107.
    expect(two.steps.find(({ kind }) => kind === "fix")?.agitation).toMatchObject({
      burstSeconds: 30,
      cycleSeconds: 60,
    });
  });

  test("strong rapid fixer: 1 min (Anchell, p. 107), and the earlier 30 s and the usual 5 to 10 min are told", () => {
    const plan = aTrayPlan({ ...FIBRE, fixer: "strong" });
    expect(secondsOf(plan, "fix")).toEqual([60]);
    expect(rests(plan)).toMatch(/1 min in strong.*earlier 30 s.*5 to 10 min/);
  });

  test("resin-coated paper: at most 2 min, whatever a strip says (a practitioner's page)", () => {
    expect(secondsOf(aTrayPlan(), "fix")).toEqual([60]);
    expect(secondsOf(aTrayPlan({ clearSeconds: 90 }), "fix")).toEqual([120]);
  });

  test.each([
    [45, 90],
    [35, 70],
    [25, 60],
  ])(
    "a strip's first clear patch at %d s: fixed %d s, never under a minute (Lambrecht)",
    (clearSeconds, seconds) => {
      expect(secondsOf(aTrayPlan({ ...FIBRE, clearSeconds }), "fix")).toEqual([seconds]);
    },
  );

  test("fibre after a short fix: wash 5, wash aid 10, wash 5 min (a maker, as quoted)", () => {
    const plan = aTrayPlan(FIBRE);
    expect(plan.steps.slice(-4).map(({ kind, seconds }) => [kind, seconds])).toEqual([
      ["wash", 300],
      ["wash-aid", 600],
      ["wash", 300],
      ["dry", null],
    ]);
  });

  test("fibre without wash aid: an hour, where what stays flattens; handbooks' 30 min and Clerc's 90 told", () => {
    const plan = aTrayPlan({ ...FIBRE, washAid: false });
    expect(secondsOf(plan, "wash")).toEqual([3600]);
    expect(rests(plan)).toMatch(/60 min.*30 min or 12 changes of 5 min.*90 min \(Clerc, 607\)/);
  });

  test("resin-coated: no wash aid (US Army SS0509), 5 min, and that classes say 2 to 20 min is told", () => {
    const plan = aTrayPlan({ washAid: true });
    expect(secondsOf(plan, "wash-aid")).toEqual([]);
    expect(secondsOf(plan, "wash")).toEqual([300]);
    expect(rests(plan)).toMatch(/2 to 3 min, 5 min begun again.*10 to 20 min/);
  });

  test("resin-coated paper must not go into a drum dryer of 82 °C (US Army SS0509-8)", () => {
    const codes = (plan: TrayPlan) => plan.cautions.map(({ code }) => code);
    expect(codes(aTrayPlan())).toContain("NOTE_DRYER");
    expect(codes(aTrayPlan(FIBRE))).not.toContain("NOTE_DRYER");
  });
});

describe("silver in the fixer of prints that last", () => {
  const fact = (mg: number, isMeasured = true) => ({ label: "B1", lowMg: mg, highMg: mg, isMeasured });

  test("a single bath ends at 0.5 g/l, the first of two at 2 g/l (a print maker's page)", () => {
    expect([silverLimit(0, 1), silverLimit(0, 2), silverLimit(1, 2)]).toEqual([500, 2000, 500]);
    expect([judgeSilver(fact(499), 0, 1), judgeSilver(fact(500), 0, 1)]).toEqual(["fit", "over"]);
    expect([judgeSilver(fact(1999), 0, 2), judgeSilver(fact(2000), 0, 2)]).toEqual(["fit", "over"]);
  });

  test("reckoned only, it may be over: nobody knows until it is tested", () => {
    expect(judgeSilver({ label: "B1", lowMg: 250, highMg: 750, isMeasured: false }, 0, 1)).toBe("unknown");
  });
});
