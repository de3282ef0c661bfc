import { describe, expect, test } from "vitest";
import { cautionsOf, mixingCautions } from "../../../commands/batch/hazards.ts";
import { mayGo, WAYS } from "../../../commands/batch/ways.ts";
import { BATCH_KINDS } from "../../../store/shapes/batch.ts";
import { DESTINATIONS } from "../../../store/shapes/ledger.ts";
import { createRoom, type Room } from "../../support/room.ts";

function open(...lines: readonly string[]): Room {
  const room = createRoom();
  for (const line of lines) {
    const answered = room.asks("Aida", line, "aide");
    if (answered.kind !== "done") throw new Error(answered.reply.text);
  }
  return room;
}

const STOP = "/batch mix kind:stop product:Pier Stop dilution:1+19 volume:1 l";
const FIXER = "/batch mix kind:fixer product:Pier Fix dilution:1+4 volume:1 l";

describe("where a used bath may go", () => {
  test("the silver collection takes fixer only (acid into fixer: Anchell p. 171), fixer never the drain (Rutgers, Cornell)", () => {
    expect(BATCH_KINDS.filter((kind) => mayGo(kind, "silver"))).toEqual(["fixer", "paper-fixer"]);
    expect(BATCH_KINDS.filter((kind) => !mayGo(kind, "drain"))).toEqual(["fixer", "paper-fixer"]);
    for (const kind of BATCH_KINDS) expect(WAYS[kind].length, kind).toBeGreaterThan(1);
  });

  test.each(["developer", "stop", "wash-aid", "wetting-agent"])(
    "a %s into the silver collection is refused, with where it goes, and its ledger stays",
    (kind) => {
      const room = open(`/batch mix kind:${kind} product:Pier X dilution:1+19 volume:1 l`);
      const refused = room.asks("Aida", "/batch discard batch:B1 to:silver", "aide");
      expect(refused.code).toBe("ERR_NOT_INTO_SILVER");
      expect(refused.reply.text).toMatch(/Not into the silver collection.*`to:waste`/);
      expect(room.asks("Aida", "/batch topup batch:B1 add:100 ml remove:100 ml to:silver", "aide").code).toBe(
        "ERR_NOT_INTO_SILVER",
      );
      expect(room.asks("Aida", "/batch status batch:B1", "aide").reply.fields).toMatchObject({
        standing: "ready",
        volumeMl: 1000,
      });
      for (const to of DESTINATIONS.filter((each) => mayGo(kind as "stop", each)))
        expect(room.asks("Aida", `/batch discard batch:B1 to:${to} ml:100 ml`, "aide").kind).toBe("done");
    },
  );

  test("fixer goes neither to the drain nor into a container of mixed waste", () => {
    const room = open(FIXER);
    for (const to of ["drain", "waste"])
      expect(room.asks("Aida", `/batch discard batch:B1 to:${to}`, "aide").code).toBe("ERR_SILVER_DRAIN");
    expect(room.asks("Aida", "/batch discard batch:B1 to:silver", "aide").kind).toBe("done");
  });
});

describe("what to mind while mixing", () => {
  test("each kind with a hazard says so, with the sums, water first", () => {
    const room = open();
    expect(room.says("Aida", STOP, "aide")).toMatch(
      /950 ml of water, then 50 ml of concentrate[\s\S]*Acid into water, never water into acid/,
    );
    expect(room.says("Aida", FIXER, "aide")).toMatch(
      /800 ml of water, then 200 ml of concentrate[\s\S]*sulfur/,
    );
    expect(
      room.says("Aida", "/batch mix kind:wetting-agent product:Pier Wet dilution:1+200 volume:1 l", "aide"),
    ).not.toMatch(/Gloves/);
  });

  test("a powder has a word on dust and draught, a liquid none", () => {
    expect(mixingCautions("developer", "powder").join()).toMatch(/no draught.*pregnant/);
    expect(mixingCautions("developer", "liquid").join()).not.toMatch(/draught/);
    expect(
      cautionsOf([
        { kind: "fixer", from: "powder" },
        { kind: "developer", from: "powder" },
      ]),
    ).toHaveLength(3);
    const room = open(
      "/batch stock product:Slip MQ kind:developer size:5 l form:powder dilution:stock packs:1",
    );
    expect(
      room.says("Aida", "/batch mix kind:developer product:Slip MQ dilution:stock volume:5 l", "aide"),
    ).toMatch(/Powder to 5 l of stock[\s\S]*no draught/);
  });

  test("hot water from 50 °C scalds; below there is no word of it, and chemistry has its caution in /mix", () => {
    const room = open();
    const temper = (hot: string, more = ""): string =>
      room.says("Mina", `/mix temper total:1 l target:24C cold:12C hot:${hot} ${more}`);
    expect(temper("50C")).toMatch(/50 °C \(122 °F\) scalds/);
    expect(temper("49.5C")).not.toMatch(/scald/);
    expect(temper("49.5C")).not.toMatch(/Gloves/);
    expect(temper("60C", "dilution:1+9")).toMatch(/Acid goes into water.*Gloves/);
  });
});

describe("a worn fixer", () => {
  const fresh = `${FIXER} clearing:0:45`;
  const PLAN = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1";

  test("is said in the plan at twice its fresh time (NAVEDTRA 14209), with the time that the film needs", () => {
    const room = open(fresh);
    const plan = room.asks("Mina", `${PLAN} clearing:4 min`).reply;
    expect(plan.text).toMatch(/The fixer is exhausted.*clears in 4 min, fresh it did in 45 s.*needs 8 min/);
    expect(plan.fields?.["steps"]).toContainEqual(expect.objectContaining({ kind: "fix", seconds: 480 }));
    expect(room.says("Mina", `${PLAN} clearing:1:29`)).not.toMatch(/exhausted/);
    expect(room.says("Mina", `${PLAN} clearing:1:30`)).toMatch(/exhausted/);
  });

  test("is said where nobody knows the fresh time, too: 1 to 3 min are usual (a practitioner's page, grade C)", () => {
    expect(open().says("Mina", `${PLAN} clearing:3:30`)).toMatch(/3 min 30 s is slow.*needs 7 min/);
    expect(open().says("Mina", `${PLAN} clearing:3 min`)).not.toMatch(/slow/);
    expect(open(FIXER).says("Aida", "/batch test batch:B1 clearing:3:30", "aide")).toMatch(/is slow/);
  });

  test("is marked by its silver, at its own cap or the house's 4 g/l (printers' compliance text, grade C)", () => {
    const room = open(FIXER, `${FIXER} silver:2`);
    expect(room.says("Aida", "/batch test batch:B1 silver:3.9", "aide")).toMatch(/3.9 g.*ends at 4 g/);
    expect(room.asks("Aida", "/batch status batch:B1", "aide").reply.fields).toMatchObject({
      standing: "ready",
    });
    expect(room.says("Aida", "/batch test batch:B1 silver:4", "aide")).toMatch(/B1 is exhausted.*silver/);
    expect(room.asks("Aida", "/batch status batch:B1", "aide").reply.fields).toMatchObject({
      standing: "exhausted",
      exhaustedBy: "silver",
    });
    expect(room.says("Aida", "/batch test batch:B2 silver:2.1", "aide")).toMatch(/B2 is exhausted/);
    expect(room.says("Aida", "/batch test batch:B2 silver:2.1", "aide")).toMatch(/Sources differ/);
    // A top-up of half takes half of it out.
    room.asks("Aida", "/batch topup batch:B2 add:500 ml remove:500 ml to:silver", "aide");
    expect(room.asks("Aida", "/batch status batch:B2", "aide").reply.fields).toMatchObject({
      standing: "ready",
    });
  });
});

test("a class is told once that its wash is short, not in every plan", () => {
  const room = open();
  const told = room.says("Iris", "/class setup washmin:3 min", "teacher");
  expect(told).toMatch(/20 min to 30 min of running water; 3 min leaves about 12.5 %/);
  expect(
    room.says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1"),
  ).not.toMatch(/handbooks/i);
  expect(room.says("Iris", "/class setup washmin:20 min", "teacher")).not.toMatch(/leaves about/);
});
