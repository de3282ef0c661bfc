import { describe, expect, it } from "vitest";
import { nextStep, type HelpFacts } from "../../../commands/help/next-step.ts";
import { viewOf } from "../../../commands/run/view.ts";
import { aRun } from "../../support/make.ts";
import { createRoom } from "../../support/room.ts";
import { aNewRoll } from "../../support/rolls.ts";

const NOTHING: HelpFacts = {
  role: "student",
  runs: [],
  plan: null,
  firstStep: null,
  setupMissing: 0,
  bottles: [],
  unratedRoll: null,
  sheets: 1,
  rollsEver: 3,
};
const BUSY: HelpFacts = {
  role: "teacher",
  runs: [viewOf(aRun(), "Mina")],
  plan: { number: 4, bellWarning: "" },
  firstStep: "tanks",
  setupMissing: 3,
  bottles: [{ label: "B4", mark: "exhausted" }],
  unratedRoll: 9,
  sheets: 0,
  rollsEver: 0,
};

describe("the next sensible step", () => {
  it("takes what can't wait first, and each thing once the one before is done", () => {
    const order: [Partial<HelpFacts>, string][] = [
      [{}, "run"],
      [{ runs: [] }, "start"],
      [{ plan: null }, "first-day"],
      [{ firstStep: null }, "setup"],
      [{ setupMissing: 0 }, "bottle"],
      [{ bottles: [] }, "rate"],
      [{ unratedRoll: null }, "no-sheet"],
      [{ sheets: 1 }, "plan"],
    ];
    let facts = BUSY;
    for (const [change, kind] of order) {
      facts = { ...facts, ...change };
      expect(nextStep(facts).kind).toBe(kind);
    }
  });

  it("asks nobody for what they may not do", () => {
    const student = { ...BUSY, role: "student", runs: [], plan: null } as const;
    expect(nextStep(student).kind).toBe("rate");
    expect(nextStep({ ...student, role: "aide" }).kind).toBe("bottle");
  });

  it("tells a beginner more", () => {
    expect(nextStep({ ...NOTHING, rollsEver: 0 })).toEqual({ kind: "plan", isFirst: true });
    expect(nextStep(NOTHING)).toEqual({ kind: "plan", isFirst: false });
  });
});

describe("/help", () => {
  it("leads a beginner through a whole roll by its buttons alone", async () => {
    const room = createRoom();
    expect(room.says("Mina", "/help")).toContain("**Begin with a plan.**");
    room.says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20");
    expect(room.says("Mina", "/help")).toContain("**Your plan P1 is ready.**");
    room.press("Mina", "Start");
    expect(room.says("Mina", "/help")).toContain("**R1 waits for you: developer.**");
    room.press("Mina", "Tank is full");
    expect(room.says("Mina", "/help")).toContain("**R1, developer.** Agitate 30 s.");
    await room.pass(545);
    expect(room.says("Mina", "/help")).toContain("**R1 waits for you: rinse 1.**");
  });

  it("asks about the newest negatives, with a button for each answer", () => {
    const room = createRoom();
    room.says("Mina", "/help");
    room.stores.rolls.add(aNewRoll({ personId: "room:mina", runId: null as never }));
    expect(room.says("Mina", "/help")).toContain("**How did L1 come out?**");
    expect(room.press("Mina", "4")).toBe("L1 is rated 4 of 5.");
    expect(room.says("Mina", "/help")).toContain("**Make a plan**");
  });

  it("sends the teacher of a new class to the set-up, and an aide to the bottle that needs a hand", () => {
    const room = createRoom();
    expect(room.says("Iris", "/help", "teacher")).toContain("**The class is not set up yet:**");
    room.says(
      "Ola",
      "/batch mix kind:fixer product:Brine volume:1 l capacity:1 films/l clearing:40 s",
      "aide",
    );
    room.says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 fixbatch:B1");
    expect(room.says("Ola", "/help", "aide")).toMatch(/\*\*B1\*\* is nearly exhausted\./);
  });

  it("names commands only to whom they belong", () => {
    const room = createRoom();
    const commandsOf = (role: "student" | "teacher") =>
      room.asks("Mina", "/help", role).reply.fields?.["commands"] as string[];
    expect(commandsOf("student")).not.toContain("class say");
    expect(commandsOf("teacher")).toContain("class say");
  });
});
