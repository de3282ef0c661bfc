import { describe, expect, it, test } from "vitest";
import { CAUSES } from "../../../../commands/roll/fault/cause-table.ts";
import { findCause, wordsOfCause } from "../../../../commands/roll/fault/causes.ts";
import { FACTORS, findingsOf, type Surroundings } from "../../../../commands/roll/fault/evidence.ts";
import { LOOK_GROUPS, LOOKS, questionFor, type Answers, type Look } from "../../../../commands/roll/looks.ts";
import { weighCauses } from "../../../../commands/roll/fault/weigh.ts";
import type { RollBody } from "../../../../store/shapes/roll.ts";
import { createRoom } from "../../../support/room.ts";
import { aNewRoll, aRoll } from "../../../support/rolls.ts";

const NOTHING: Surroundings = { developer: null, fixer: null, tankCondition: null };
const seen = (look: Look, over: Partial<Answers> = {}): Answers => ({
  look,
  edge: null,
  margin: null,
  place: null,
  ...over,
});
const first = (answers: Answers, body: Partial<RollBody> = {}, around: Partial<Surroundings> = {}): string =>
  weighCauses(answers, findingsOf(aRoll({}, body), { ...NOTHING, ...around }))[0]?.cause.code ?? "";

describe("the table of causes", () => {
  it("explains every look, and names a source or says that there is none", () => {
    for (const look of LOOKS) expect(CAUSES.some((cause) => (cause.looks[look] ?? 0) >= 3)).toBe(true);
    for (const { code } of CAUSES)
      expect(wordsOfCause(code).source).toMatch(/\d|no source|page|handbook|tables/);
  });

  it("has no factor for a cause it does not know, and no cause twice", () => {
    const codes = CAUSES.map(({ code }) => code);
    expect(new Set(codes).size).toBe(codes.length);
    for (const factors of Object.values(FACTORS))
      for (const code of Object.keys(factors)) expect(findCause(code)?.code).toBe(code);
  });

  it("asks at most one question after the look", () => {
    for (const look of LOOKS) {
      const question = questionFor(seen(look));
      if (question === undefined) continue;
      const answered = {
        edge: { edge: "dark" },
        margin: { margin: "clear" },
        place: { place: "patches" },
      } as const;
      expect(questionFor(seen(look, answered[question]))).toBeUndefined();
    }
  });
});

describe("what handbooks say of a look alone", () => {
  // Sources: US Army SS0509-8, pp. 84-85; US Navy NAVEDTRA 14209, table 10-1 and p. 258; a handbook on chestofbooks.com,
  // p. 234; the edge print and the marks at perforations from memory.
  it.each([
    [seen("round-spots"), "air-bells"],
    [seen("wrinkled"), "reticulation"],
    [seen("frilled"), "soft-gelatin"],
    [seen("edge-streaks", { margin: "clear" }), "camera-leak"],
    [seen("edge-streaks", { margin: "grey" }), "tank-leak"],
    [seen("fogged", { margin: "grey" }), "tank-leak"],
    [seen("run-streaks"), "little-agitation"],
    [seen("blank-patches"), "film-touched"],
    [seen("milky", { place: "patches" }), "film-touched"],
    [seen("reversed"), "light-in-developer"],
    [seen("drying-marks"), "drying"],
    [seen("specks"), "dust"],
    [seen("lines"), "scratches"],
    [seen("thin", { edge: "faint" }), "short-development"],
    [seen("thin", { edge: "dark" }), "under-exposure"],
    [seen("blank", { edge: "dark" }), "not-exposed"],
    [seen("blank", { edge: "none" }), "not-developed"],
    [seen("hole-streaks"), "surge"],
    [seen("crescents"), "kinks"],
  ])("%o comes first from %s", (answers, code) => {
    const weighed = weighCauses(answers, []);
    expect(weighed[0]?.cause.code).toBe(code);
  });
});

describe("the roll's own record", () => {
  it("moves a thin negative between developing and exposing", () => {
    expect(first(seen("thin"), { dosePerMille: 800 })).toBe("short-development");
    expect(first(seen("thin", { edge: "dark" }), { dosePerMille: 1000 })).toBe("under-exposure");
    expect(
      first(
        seen("thin"),
        { dosePerMille: 1000 },
        { developer: { label: "B3", standing: "exhausted", clearingSeconds: null } },
      ),
    ).toBe("weak-developer");
  });

  it("holds the fixing time against the clearing time, threefold for tabular grain", () => {
    const fixer = { label: "B4", standing: "ready", clearingSeconds: 120 } as const;
    // The roll was fixed for 305 s: enough for twice 120 s, not for three times.
    expect(first(seen("milky"), { isTabular: false }, { fixer })).not.toBe("short-fixing");
    expect(first(seen("milky"), { isTabular: true }, { fixer })).toBe("short-fixing");
    const kinds = (isTabular: boolean) =>
      findingsOf(aRoll({}, { isTabular }), { ...NOTHING, fixer }).map(({ kind }) => kind);
    expect(kinds(false)).toContain("fix-enough");
    expect(kinds(true)).toContain("fix-short");
    expect(first(seen("stained"), {}, { fixer: { ...fixer, standing: "exhausted" } })).toBe("worn-fixer");
  });

  it("counts missed calls, a reported tank, baths apart, and a wetting agent left out", () => {
    expect(first(seen("patchy"), { missedCues: 4 })).toBe("little-agitation");
    const leaky = weighCauses(seen("fogged"), findingsOf(aRoll(), { ...NOTHING, tankCondition: "leaks" }));
    expect(leaky[0]).toMatchObject({ cause: { code: "tank-leak" }, likelihood: "likely" });
    const steps = aRoll().body.steps.map((step) => (step.kind === "fix" ? { ...step, tenthsC: 150 } : step));
    expect(findingsOf(aRoll({}, { steps }), NOTHING)).toContainEqual({ kind: "baths-apart", stepTenths: 50 });
    const dried = aRoll().body.steps.map((step) =>
      step.kind === "dry" ? { ...step, startedAtMs: 1 } : step,
    );
    expect(findingsOf(aRoll({}, { steps: dried }), NOTHING)).toContainEqual({ kind: "wetting-skipped" });
  });

  it("says what speaks for and what against", () => {
    const [best] = weighCauses(
      seen("thin", { edge: "faint" }),
      findingsOf(aRoll({}, { dosePerMille: 860 }), NOTHING),
    );
    expect(best).toMatchObject({
      cause: { code: "short-development" },
      likelihood: "likely",
      speaksFor: [{ kind: "dose-short", percent: 14 }],
    });
  });
});

test("each look belongs to one of the few kinds that are asked for first", () => {
  expect(Object.values(LOOK_GROUPS).flat().toSorted()).toEqual([...LOOKS].toSorted());
});

describe("/roll fault", () => {
  it("asks a few questions by buttons, ranks, and keeps what it was", () => {
    const room = createRoom();
    room.says("Mina", "/help");
    room.stores.rolls.add(aNewRoll({ personId: "room:mina", runId: null as never }, { dosePerMille: 880 }));
    const asked = room.asks("Mina", "/roll fault").reply;
    expect(asked.text).toContain("**What looks wrong on L1?**");
    expect(asked.actions?.map(({ label }) => label)).toEqual([
      "Too light",
      "Too dark",
      "Marks or streaks",
      "Colour or surface",
    ]);
    expect(room.press("Mina", "Too light")).toContain("**What do you see on L1?**");
    expect(room.press("Mina", "thin")).toContain("Look at the film's border:");
    const ranked = room.press("Mina", "Faint");
    expect(ranked).toContain("**1. Too little development (too short, or too cold)** (likely)");
    expect(ranked).toContain("For it: it was developed 12 % less than planned.");
    expect(ranked).toContain("_Source: ");
    expect(room.press("Mina", "1: Too little development (too short, or too cold)")).toBe(
      "Noted on L1: **thin**, too little development (too short, or too cold).",
    );
    expect(room.says("Mina", "/roll show L1")).toContain("Fault: thin, put down to: too little development");
    expect(room.says("Mina", "/roll fault roll:L1 look:none")).toBe("L1 has no fault on record now.");
  });

  it("goes on where somebody can't tell, and refuses a cause it does not know", () => {
    const room = createRoom();
    room.says("Mina", "/help");
    room.stores.rolls.add(aNewRoll({ personId: "room:mina", runId: null as never }));
    room.says("Mina", "/roll fault L1");
    room.press("Mina", "Marks or streaks");
    room.press("Mina", "None of these");
    room.press("Mina", "Too light");
    room.press("Mina", "blank");
    expect(room.press("Mina", "I can't tell")).toContain("**1. ");
    expect(room.asks("Mina", "/roll fault roll:L1 look:thin cause:magic").code).toBe("ERR_UNKNOWN_CAUSE");
  });

  it("keeps every line within what a button carries", () => {
    const room = createRoom();
    room.says("Mina", "/help");
    for (let count = 0; count < 3; count += 1)
      room.stores.rolls.add(aNewRoll({ personId: "room:mina", runId: null as never }));
    for (const look of LOOKS)
      for (const sure of ["yes", "no"])
        for (const { line } of room.asks("Mina", `/roll fault roll:L3 look:${look} sure:${sure}`).reply
          .actions ?? [])
          expect(line.length).toBeLessThanOrEqual(100);
  });
});
