import { describe, expect, test } from "vitest";
import { printsSqIn, SQ_IN_PER_ROLL } from "../../../commands/batch/area.ts";
import { formatRolls } from "../../../commands/batch/batch-words.ts";
import { isFit, type Need } from "../../../commands/batch/choose.ts";
import { parseCapacity } from "../../../commands/batch/figures.ts";
import { HOUSE_SOURCES, presetFor } from "../../../commands/batch/presets.ts";
import { collectedFrom } from "../../../commands/batch/silver.ts";
import { stateOf } from "../../../commands/batch/state.ts";
import { BATCH_KINDS, isForPaper, kindOfStep } from "../../../store/shapes/batch.ts";
import { aBatch, HOUR_MS, ledger, mixed, used } from "../../support/batch.ts";
import { START } from "../../support/make.ts";
import { createRoom, type Room } from "../../support/room.ts";

const WORKING = { concentrateParts: 1, waterParts: 9 };

describe("sheets in units of one 8x10 in", () => {
  // Computed from the sheets' own sides: 8x10 in is 516.1 cm2.
  test.each([
    [127, 178, 0.438],
    [203.2, 254, 1],
    [279.4, 355.6, 1.925],
    [130, 180, 0.453],
    [180, 240, 0.837],
    [200, 250, 0.969],
    [240, 300, 1.395],
    [240, 305, 1.418],
    [300, 400, 2.325],
    [305, 406, 2.399],
  ])("%d x %d mm", (shortMm, longMm, units) => {
    expect(Math.abs(printsSqIn({ shortMm, longMm }, 100) / 100 / SQ_IN_PER_ROLL - units)).toBeLessThan(0.004);
  });
});

describe("what a litre takes", () => {
  test("200 prints of 8x10 in a US gallon are 52.8 in a litre (US Navy NAVEDTRA 14209)", () => {
    const read = parseCapacity("200 prints per gal");
    expect(read.ok && Math.round((read.value / SQ_IN_PER_ROLL) * 10) / 10).toBe(52.8);
  });

  test("an unknown fixer takes 20 (Anchell, p. 108), and its source tells the Navy's 53 as well", () => {
    const { capacitySqInPerLitre, source } = presetFor("paper-fixer", WORKING);
    expect(capacitySqInPerLitre).toBe(20 * SQ_IN_PER_ROLL);
    expect(source).toMatch(/20 prints.*Anchell.*NAVEDTRA 14209.*53 per litre/);
  });

  test("a figure from memory says so", () => {
    expect(HOUSE_SOURCES["paper-developer"]).toContain("from memory");
  });

  test("fibre paper counts twice in a developer", () => {
    const batch = aBatch({ kind: "paper-developer", ...presetFor("paper-developer", WORKING) });
    const after = (isTabular: boolean) =>
      stateOf(batch, ledger(mixed(), used(10, { isTabular })), START).leftRolls;
    expect([after(false), after(true)]).toEqual([40, 30]);
  });

  test("a tray of developer is good for a day", () => {
    const batch = aBatch({ kind: "paper-developer", ...presetFor("paper-developer", WORKING) });
    const standing = (hours: number) => stateOf(batch, ledger(mixed()), START + hours * HOUR_MS).standing;
    expect([standing(23), standing(24)]).toEqual(["ready", "out-of-date"]);
  });

  test("the silver of prints is in the same book, by their own rule of thumb", () => {
    const discard = { kind: "discarded", ml: 1000, to: "silver", isAll: true, note: "" } as const;
    const { lowMg, highMg } = collectedFrom(
      aBatch({ kind: "paper-fixer" }),
      ledger(mixed(), used(20), discard),
    );
    expect([lowMg, highMg]).toEqual([500, 1500]);
  });
});

describe("film's baths and paper's are never each other's", () => {
  const need = (kind: Need["kind"]): Need => ({
    kind,
    product: null,
    dilution: null,
    ml: 300,
    concentrateMl: null,
    areaSqIn: 80,
    isTabular: false,
    films: 1,
    place: null,
  });

  test("no bath fits the need of another kind", () => {
    for (const kind of BATCH_KINDS)
      expect(
        BATCH_KINDS.filter((other) => isFit({ batch: aBatch({ kind: other }), place: null }, need(kind))),
      ).toEqual([kind]);
  });

  test("a step in a tray takes a bath for paper, one in a tank a bath for film", () => {
    expect(kindOfStep({ kind: "fix", medium: "paper" })).toBe("paper-fixer");
    expect(kindOfStep({ kind: "fix" })).toBe("fixer");
    expect(kindOfStep({ kind: "wetting-agent", medium: "paper" })).toBeUndefined();
    for (const kind of BATCH_KINDS) expect(formatRolls(80, kind).includes("print")).toBe(isForPaper(kind));
  });

  function shelf(): Room {
    const room = createRoom();
    const mix = (line: string): void => void room.says("Aida", `/batch mix ${line}`, "aide");
    mix("kind:paper-fixer product:Pier Fix dilution:1+4 volume:2 l");
    mix("kind:fixer product:Pier Fix dilution:1+4 volume:1 l clearing:0:45");
    return room;
  }
  const PLAN = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20";

  test("of one product a film's plan takes the film's bottle, whichever was mixed first", () => {
    const room = shelf();
    expect(room.asks("Mina", PLAN).reply.text).toContain("B2");
    const refused = room.asks("Mina", `${PLAN} fixbatch:B1`);
    expect(refused.kind).toBe("refused");
    expect(refused.reply.text).toContain(
      "**B1, Pier Fix 1+4 is a bath for paper**: film never goes into it.",
    );
    expect(refused.reply.text).toContain("Use **B2** instead.");
  });

  test("the bottle says what it is for", () => {
    const room = shelf();
    expect(room.says("Mina", "/batch status batch:B1")).toContain("**40 prints of 8x10 in left** in B1");
    expect(room.says("Mina", "/batch status batch:B1")).toContain("(paper fixer)");
    expect(room.says("Mina", "/batch status batch:B2")).toContain("20 rolls left");
  });

  test("a tray's bath is not portioned", () => {
    const room = shelf();
    const refused = room.asks(
      "Aida",
      "/batch mix kind:paper-developer product:Dock Print volume:1 l use:once",
      "aide",
    );
    expect(refused.reply.text).toContain("leave out `use:once`");
  });
});
