import { describe, expect, test } from "vitest";
import { DEFAULT_HABITS } from "../../../store/shapes/usual-habits.ts";
import { honestyLine } from "../../../commands/sheet/basis-words.ts";
import { CAUTION_TEXT, sayCaution } from "../../../commands/plan/caution-words.ts";
import { CAUTION_CODES, planSchema, type Plan } from "../../../store/shapes/plan.ts";
import { makePlan } from "../../../commands/plan/process.ts";
import { bareRequest, type PlanRequest } from "../../../commands/plan/request.ts";
import { aSheet } from "../../support/make.ts";

function planOf(over: Partial<PlanRequest> = {}, tenthsC = 200): Plan {
  const request = { ...bareRequest(over.sheet ?? aSheet(), tenthsC), ...over };
  const made = makePlan(request, DEFAULT_HABITS);
  if (!made.ok) throw new Error(made.fault.code);
  return made.value;
}

function codeOf(over: Partial<PlanRequest>, tenthsC = 200): string {
  const made = makePlan({ ...bareRequest(over.sheet ?? aSheet(), tenthsC), ...over }, DEFAULT_HABITS);
  return made.ok ? "" : made.fault.code;
}

const TANK = {
  number: 1,
  reels: 1,
  volumeMl: 300,
  format: "135",
  condition: null,
  timeConstantSeconds: null,
} as const;

const warnings = (plan: Plan): string[] => plan.cautions.map(({ code }) => code);
const said = (plan: Plan): string => plan.cautions.map((caution) => sayCaution(caution, plan)).join("\n");

describe("the plainest load: one sheet, 9:00 at 20 °C, 5 s each minute", () => {
  const plan = planOf();

  test("develops 540 s with 30 s of agitation first and a burst each minute, poured out from 10 s before the end", () => {
    expect(plan.steps[0]).toMatchObject({
      kind: "develop",
      seconds: 540,
      pourOutSeconds: 10,
      agitation: { initialSeconds: 30, burstSeconds: 5, cycleSeconds: 60 },
      ml: 300,
      concentrateMl: 150,
    });
  });

  test("goes on with two rinses, a fix of at least 5 min, a wash of 20 min (NAVEDTRA 14209), wetting, drying and cutting", () => {
    expect(plan.steps.map(({ kind, ordinal }) => `${kind}${ordinal || ""}`)).toEqual([
      "develop",
      "rinse1",
      "rinse2",
      "fix",
      "wash",
      "wetting-agent",
      "dry",
      "cut",
    ]);
    expect(plan.steps[3]?.seconds).toBeGreaterThanOrEqual(300);
    expect(plan.steps[4]?.seconds).toBe(1200);
    expect(plan.steps.at(-1)?.seconds).toBeNull();
  });

  test("warns of nothing but the chemicals", () => {
    expect(warnings(plan)).toEqual(["NOTE_CHEMICALS"]);
  });

  test("cuts 36 frames into strips of five at most, none of one", () => {
    expect(plan.strips).toEqual([5, 5, 5, 5, 5, 5, 4, 2]);
  });

  test("says of every timed step what it rests on", () => {
    const line = honestyLine(plan);
    for (const word of [
      "developer",
      "rinse 1",
      "fixer",
      "wash",
      "wetting agent",
      "drying",
      "a row of the data sheet",
      "house rule",
    ])
      expect(line).toContain(word);
    expect(planSchema.safeParse(plan).success).toBe(true);
  });
});

describe("what a load changes", () => {
  test("an acid stop takes the place of the rinses", () => {
    expect(planOf({ stop: "acid" }).steps.map(({ kind }) => kind)).toContain("stop");
    expect(planOf({ stop: "acid" }).steps.map(({ kind }) => kind)).not.toContain("rinse");
  });

  test("a wash aid comes between a short and a long wash, and ends the warning", () => {
    const plan = planOf({ washAid: true });
    expect(plan.steps.filter(({ kind }) => kind.startsWith("wash")).map(({ seconds }) => seconds)).toEqual([
      30, 120, 300,
    ]);
    expect(warnings(plan)).not.toContain("WARN_WASH_SHORT");
  });

  test("filling and emptying says how often", () => {
    expect(planOf({ washMethod: "fill-dump" }).steps.find(({ kind }) => kind === "wash")).toMatchObject({
      changes: 10,
    });
  });

  test("another agitation, a used developer, a shared tank and a drift each leave their mark in the basis", () => {
    const reuse = { everyFilms: 1, addPercent: 10, addSeconds: 0, maxFilms: 10 };
    const sheet = aSheet({ reuse });
    const plan = planOf({
      sheet,
      agitation: { initialSeconds: 0, burstSeconds: 0, cycleSeconds: 0, manner: "continuous", taps: 0 },
      filmsDone: 2,
      others: [aSheet({ film: "Quay 400", points: [{ ...sheet.points[0]!, seconds: 570 }] })],
      roomTenthsC: 140,
    });
    expect(plan.steps[0]?.basis.map(({ kind }) => kind)).toEqual([
      "point",
      "rule",
      "rule",
      "rule-of-thumb",
      "rule",
    ]);
    expect(warnings(plan)).toContain("WARN_SHARED_TANK");
    expect(plan.alsoFilms).toEqual(["Quay 400"]);
    expect(plan.spread).not.toBeNull();
  });

  test("batch labels stand at their steps", () => {
    const plan = planOf({ batches: { develop: "B3", fix: "B4" } });
    expect(
      plan.steps.filter(({ batch }) => batch !== null).map(({ kind, batch }) => `${kind} ${batch}`),
    ).toEqual(["develop B3", "fix B4"]);
  });

  test("sheet film is not cut", () => {
    expect(planOf({ format: "4x5", rolls: 4 })).toMatchObject({ strips: [], frames: 1, volumeMl: 500 });
  });
});

describe("cautions", () => {
  test("a time under 5 min suggests a cooler bath that is not short, and the water to reach it", () => {
    const sheet = aSheet({
      points: [{ tenthsC: 200, exposureIndex: 400, seconds: 330, source: "invented" }],
    });
    const plan = planOf({ sheet }, 230);
    const caution = plan.cautions.find(({ code }) => code === "WARN_SHORT_TIME");
    const better = Number(caution?.detail["betterTenthsC"]);
    expect(better).toBe(210);
    expect(planOf({ sheet }, better).steps[0]?.seconds).toBe(caution?.detail["betterSeconds"]);
    // 1+1 from a bottle at 20 °C: water of 22 °C makes 21 °C.
    expect(caution?.detail["waterTenthsC"]).toBe(220);
    expect(said(plan)).toContain("Better: 5 min 6 s at 21 °C");
  });

  test("where no bath is long enough it says so, and stock is cooled from outside", () => {
    const short = [{ tenthsC: 200, exposureIndex: 400, seconds: 150, source: "invented" }];
    expect(said(planOf({ sheet: aSheet({ points: short }) }))).toContain("weaker dilution");
    const stock = aSheet({
      dilution: { concentrateParts: 1, waterParts: 0 },
      points: [{ tenthsC: 200, exposureIndex: 400, seconds: 330, source: "invented" }],
    });
    expect(said(planOf({ sheet: stock }, 240))).toContain("never put ice");
  });

  test("outside 18 to 24 °C it warns, at their edges it does not", () => {
    expect(warnings(planOf({}, 179))).toContain("WARN_COOL");
    expect(warnings(planOf({}, 180))).not.toContain("WARN_COOL");
    expect(warnings(planOf({}, 240))).not.toContain("WARN_WARM");
    expect(warnings(planOf({}, 241))).toContain("WARN_WARM");
  });

  test("baths more than 5 °F (2.8 °C) apart warn of reticulation (US Army SS0509-8), with both published limits", () => {
    expect(warnings(planOf({ fixTenthsC: 172 }))).not.toContain("WARN_RETICULATION");
    const plan = planOf({ waterTenthsC: 171 });
    expect(warnings(plan)).toContain("WARN_RETICULATION");
    expect(said(plan)).toMatch(/2\.8 °C .*5 °C/);
  });

  test("too little concentrate says how much is needed", () => {
    const plan = planOf({ sheet: aSheet({ minConcentrateMl: 200 }) });
    expect(plan.cautions[0]).toMatchObject({
      code: "WARN_LITTLE_CONCENTRATE",
      detail: { concentrateMl: 150, neededMl: 200, enoughMl: 400 },
    });
  });

  test("a leaking tank, a long fix and stray agitation are warned of", () => {
    const tank = {
      number: 4,
      reels: 1,
      volumeMl: 300,
      format: "135" as const,
      condition: "leaks",
      timeConstantSeconds: null,
    };
    const agitation = {
      initialSeconds: 0,
      burstSeconds: 5,
      cycleSeconds: 60,
      manner: "inversion" as const,
      taps: 0,
    };
    const codes = warnings(planOf({ tank, clearingSeconds: 400, agitation, waterTenthsC: 250 }));
    for (const code of ["WARN_TANK_LEAKS", "WARN_LONG_FIX", "WARN_AGITATION", "WARN_WATER_TEMPERATURE"])
      expect(codes).toContain(code);
  });

  test("every code has a sentence", () => {
    expect(Object.keys(CAUTION_TEXT).sort()).toEqual([...CAUTION_CODES].sort());
  });
});

describe("refusals", () => {
  test("come with a code for each reason", () => {
    expect(codeOf({}, 990)).toBe("ERR_TOO_HOT");
    expect(codeOf({ exposureIndex: 102_400 })).toBe("ERR_PUSHED_TOO_FAR");
    expect(codeOf({ tank: TANK, volumeMl: 100 })).toBe("ERR_NOT_COVERED");
    expect(codeOf({ filmsDone: 1 })).toBe("ERR_ONE_SHOT");
    const slow = aSheet({
      film: "Slow",
      points: [{ tenthsC: 200, exposureIndex: 400, seconds: 700, source: "x" }],
    });
    expect(codeOf({ others: [slow] })).toBe("ERR_CANNOT_SHARE");
  });
});
