import { describe, expect, test } from "vitest";
import { DEMO_KEY } from "../../bot/demo/demo.ts";
import type { Role } from "../../store/shapes/person.ts";
import { commands } from "../../commands/index.ts";
import { createRoom, type Room } from "../support/room.ts";

const PLAN = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20";
const STOCK = "/batch mix kind:developer product:House MQ dilution:stock volume:5 l";
const FIXER =
  "/batch mix kind:fixer product:Pier Fix dilution:1+4 volume:1 l capacity:20 films/l clearing:0:45";

function open(...lines: readonly string[]): Room {
  const room = createRoom();
  room.asks("Tess", "/help", "teacher");
  for (const line of lines) {
    const answered = room.asks("Aida", line, "aide");
    if (answered.kind !== "done") throw new Error(answered.reply.text);
  }
  return room;
}

function field(room: Room, batch: string, name: string): unknown {
  return room.asks("Aida", `/batch status batch:${batch}`, "aide").reply.fields?.[name];
}

/** Takes a run to the step that waits for this bath, without waiting for the clock. */
function goTo(room: Room, person: string, step: number): ReturnType<Room["asks"]> {
  let answered = room.asks(person, "/run next sure:yes step:0");
  for (let at = 1; at <= step; at += 1) answered = room.asks(person, `/run next sure:yes step:${at}`);
  return answered;
}
const FIX_STEP = 3;

function plan(room: Room, person: string, more = ""): ReturnType<Room["asks"]> {
  return room.asks(person, `${PLAN} ${more}`);
}

describe("mixing", () => {
  test("gives a label to write on the bottle, and says what it is good for", () => {
    const room = open();
    const said = room.says("Aida", FIXER, "aide");
    expect(said).toMatch(/^\*\*B1\*\*: write it on the bottle\. 1 l of Pier Fix 1\+4, fixer/);
    expect(said).toContain("Good for 20 rolls");
    expect(said).toContain("Fresh it clears film in 0:45; at twice that it is exhausted.");
    expect(room.says("Aida", STOCK, "aide")).toContain("**B2**");
  });

  test("of a product mixed before only its name and volume are needed", () => {
    const room = open(FIXER);
    room.says("Aida", "/batch mix kind:fixer product:pier fix volume:2 l", "aide");
    expect(field(room, "B2", "capacitySqIn")).toBe(2 * 1600);
    expect(field(room, "B2", "dilution")).toBe("1+4");
    expect(field(room, "B2", "product")).toBe("Pier Fix");
  });

  test("takes its concentrate from the shelf", () => {
    const room = open(
      "/batch restock product:Pier Fix kind:fixer size:1 l dilution:1+4 packs:1",
      "/batch mix kind:fixer product:Pier Fix volume:2 l",
    );
    expect(room.says("Mina", "/batch shelf")).toContain("Pier Fix: 600 ml of concentrate for fixer 1+4");
  });

  test("a day to come and a bottle too small are refused in words", () => {
    const room = open();
    expect(room.says("Aida", `${FIXER} mixed:tomorrow`, "aide")).toContain("That day is still to come");
    expect(room.says("Aida", `${FIXER} bottle:500 ml`, "aide")).toContain("can't hold 1 l");
    expect(room.says("Aida", `${FIXER} tabular:30 films/l`, "aide")).toContain(
      "can't be above the plain one",
    );
  });
});

describe("who may", () => {
  const LINES: readonly [line: string, least: Role][] = [
    [FIXER, "aide"],
    ["/batch test batch:B1 clearing:0:50", "aide"],
    ["/batch topup batch:B1 add:10 ml remove:100 ml to:silver", "aide"],
    ["/batch correct batch:B1 rolls:1 reason:slipped", "aide"],
    ["/batch allow batch:B1 reason:no other fixer", "aide"],
    ["/batch discard batch:B1 to:silver", "aide"],
    ["/batch restock product:Pier Fix kind:fixer size:1 l dilution:1+4 packs:2", "aide"],
    ["/batch handover to:county collection", "teacher"],
  ];

  test.each(LINES)("%s: a student may not, and nothing is changed", (line) => {
    const room = open(FIXER);
    const before = room.stores.batches.lines(1);
    expect(room.asks("Mina", line)).toMatchObject({ kind: "refused", code: "ERR_ROLE" });
    expect(room.stores.batches.lines(1)).toEqual(before);
    expect(room.stores.batches.list(1)).toHaveLength(1);
  });

  test("a student reads every bottle and its ledger", () => {
    const room = open(FIXER, STOCK);
    expect(room.says("Mina", "/batch status")).toContain("**2 bottles**, all fit for use.");
    expect(room.says("Mina", "/batch ledger B1")).toContain("mixed 1 l, clears in 0:45 (Aida)");
    expect(room.says("Mina", "/batch waste")).toContain("No used fixer in the collection now.");
  });

  test("an aide hands nothing over: that is the teacher's", () => {
    const room = open(FIXER, "/batch discard batch:B1 to:silver");
    expect(room.asks("Aida", "/batch handover to:county", "aide").code).toBe("ERR_ROLE");
    expect(room.says("Tess", "/batch handover to:county collection", "teacher")).toContain(
      "**1 l** of used fixer",
    );
  });
});

describe("a run takes from the bottles its plan names", () => {
  test("the plan names them, and the sink says which to pour from and back into", () => {
    const room = open(STOCK, FIXER);
    expect(plan(room, "Mina", "tank:1").reply.text).toContain("from B2");
    expect(room.press("Mina", "Start")).toContain(
      "Pour in the developer: 150 ml from B1 and 150 ml of water, mixed. Press the button when the tank is full.",
    );
  });

  test("stock by the millilitre at pour-in, fixer by the roll when it goes in, each once", () => {
    const room = open(STOCK, FIXER);
    plan(room, "Mina", "tank:3 rolls:2");
    room.press("Mina", "Start");
    expect(field(room, "B1", "volumeMl")).toBe(5000);
    room.press("Mina", "Tank is full");
    expect(field(room, "B1", "volumeMl")).toBe(4750);
    expect(room.asks("Mina", "/run next step:0").code).toBe("ERR_ALREADY_RUNNING");
    expect(field(room, "B1", "volumeMl")).toBe(4750);
    expect(field(room, "B2", "usedSqIn")).toBe(0);
    for (const step of [1, 2, FIX_STEP]) room.asks("Mina", `/run next sure:yes step:${step}`);
    expect(field(room, "B2", "usedSqIn")).toBe(160);
    expect(field(room, "B2", "leftRolls")).toBe(18);
    for (const step of [4, 5, 6, 7]) room.asks("Mina", `/run next sure:yes step:${step}`);
    expect(room.stores.batches.lines(1)).toHaveLength(2);
    expect(room.stores.batches.lines(2)).toHaveLength(2);
    expect(room.says("Mina", "/batch ledger batch:B2")).toContain("used: 2 rolls (R1, Mina)");
  });

  test("a run that is stopped has used what was poured, and nothing more", () => {
    const room = open(STOCK, FIXER);
    plan(room, "Mina", "tank:1");
    room.press("Mina", "Start");
    goTo(room, "Mina", 1);
    room.asks("Mina", "/run stop sure:yes reason:lights went on");
    expect(field(room, "B1", "usedMl")).toBe(150);
    expect(field(room, "B2", "usedSqIn")).toBe(0);
    plan(room, "Mina", "tank:1");
    room.press("Mina", "Start");
    goTo(room, "Mina", FIX_STEP);
    room.asks("Mina", "/run stop sure:yes");
    expect(field(room, "B2", "usedSqIn")).toBe(80);
  });

  test("the fixing time follows the clearing time, tested and reckoned", () => {
    const room = open(STOCK, FIXER);
    const fixSeconds = (): unknown => {
      const made = plan(room, "Mina", "tank:1");
      const steps = made.reply.fields?.steps as { kind: string; seconds: number }[];
      return steps.find(({ kind }) => kind === "fix")?.seconds;
    };
    // The house's least is 5:00; twice 2:40 is 5:20. Fresh was 2:00.
    expect(fixSeconds()).toBe(300);
    room.asks(
      "Aida",
      "/batch mix kind:fixer product:Slow Fix dilution:1+9 volume:1 l capacity:20 films/l clearing:2:00",
      "aide",
    );
    room.asks("Aida", "/batch discard batch:B2 to:silver", "aide");
    room.asks("Aida", "/batch test batch:B3 clearing:2:40", "aide");
    expect(fixSeconds()).toBe(320);
    room.asks("Aida", "/batch correct batch:B3 rolls:5 reason:used by the morning class", "aide");
    // 2:40 and five twentieths of 2:00 more: 3:10, twice 6:20.
    expect(fixSeconds()).toBe(380);
  });

  test("a bottle is promised to the films on their way, so that it is never planned past its end", () => {
    const room = open(STOCK, FIXER, "/batch correct batch:B2 rolls:18 reason:last week's rolls");
    plan(room, "Mina", "tank:3 rolls:2");
    room.press("Mina", "Start");
    const second = plan(room, "Noor", "tank:1");
    expect(second).toMatchObject({ kind: "refused", code: "ERR_BATCH_ROOM" });
    expect(second.reply.text).toContain("B2 has room for 0 rolls");
    room.asks("Aida", "/batch mix kind:fixer product:Pier Fix volume:1 l", "aide");
    expect(plan(room, "Noor", "tank:1").reply.text).toContain("from B3");
  });

  test("what was promised away between plan and start is changed for another bottle", () => {
    const room = open(STOCK, FIXER, "/batch correct batch:B2 rolls:19 reason:last week's rolls");
    room.asks("Aida", "/batch mix kind:fixer product:Pier Fix volume:1 l", "aide");
    plan(room, "Mina", "tank:1");
    plan(room, "Noor", "tank:2");
    room.asks("Mina", "/run start");
    room.asks("Noor", "/run start");
    const labels = [1, 2].map(
      (run) => room.stores.runs.find(1, run)?.plan.steps.find(({ kind }) => kind === "fix")?.batch,
    );
    expect(labels).toEqual(["B2", "B3"]);
  });

  test("a label of a class that keeps no batches is left as it is", () => {
    const room = open();
    expect(plan(room, "Mina", "tank:1 fixbatch:brown bottle").reply.text).toContain("from brown bottle");
  });
});

describe("exhausted", () => {
  const spent = "/batch correct batch:B2 rolls:20 reason:used by the morning class";

  test("a student who names it is refused, with the bottle to use instead", () => {
    const room = open(STOCK, FIXER, "/batch mix kind:fixer product:Pier Fix volume:1 l", spent);
    const refused = plan(room, "Mina", "tank:1 fixbatch:B2");
    expect(refused.code).toBe("ERR_BATCH_WORN");
    expect(refused.reply.text).toContain("B2 is exhausted");
    expect(refused.reply.text).toContain("Use **B3** instead");
    expect(plan(room, "Mina", "tank:1").reply.text).toContain("from B3");
  });

  test("an aide allows it by name for one tank, and the ledger keeps who, for whom and why", () => {
    const room = open(STOCK, FIXER, spent);
    room.asks("Mina", "/help");
    expect(plan(room, "Mina", "tank:1").code).toBe("ERR_NO_BATCH_READY");
    expect(room.says("Aida", "/batch allow batch:B2 person:Mina reason:test strips only", "aide")).toContain(
      "**Mina** may use B2 for one tank",
    );
    expect(plan(room, "Noor", "tank:2").code).toBe("ERR_NO_BATCH_READY");
    plan(room, "Mina", "tank:1");
    room.press("Mina", "Start");
    expect(goTo(room, "Mina", FIX_STEP).kind).toBe("done");
    const ledger = room.says("Mina", "/batch ledger batch:B2");
    expect(ledger).toContain("allowed exhausted for one tank of Mina: test strips only (Aida)");
    expect(ledger).toContain("used: 1 roll (R1, Mina, exhausted, allowed by line 3)");
    expect(plan(room, "Mina", "tank:2").code).toBe("ERR_NO_BATCH_READY");
  });

  test("nobody needs leave for a good bottle, and a discarded one can't be allowed", () => {
    const room = open(FIXER);
    expect(room.asks("Aida", "/batch allow batch:B1 reason:why not", "aide").code).toBe("ERR_NOT_WORN");
    room.asks("Aida", "/batch discard batch:B1 to:silver", "aide");
    expect(room.asks("Aida", "/batch allow batch:B1 reason:why not", "aide").code).toBe("ERR_DISCARDED");
  });

  test("a bottle found exhausted while films are on their way is changed for them, and they are told at once", async () => {
    const room = open(STOCK, FIXER);
    plan(room, "Mina", "tank:1");
    room.press("Mina", "Start");
    goTo(room, "Mina", 1);
    room.asks("Aida", "/batch mix kind:fixer product:Pier Fix volume:1 l", "aide");
    room.asks("Aida", "/batch test batch:B2 clearing:1:40", "aide");
    await room.tick();
    expect(room.news("Mina").find((text) => text.includes("Take B3, not B2"))).toContain("it clears in 1:40");
    room.asks("Mina", "/run next sure:yes step:2");
    room.asks("Mina", `/run next sure:yes step:${FIX_STEP}`);
    expect(field(room, "B2", "usedSqIn")).toBe(0);
    expect(field(room, "B3", "usedSqIn")).toBe(80);
  });

  test("with no other bottle the film waits in water until one is mixed or an aide allows it", async () => {
    const room = open(STOCK, FIXER);
    plan(room, "Mina", "tank:1");
    room.press("Mina", "Start");
    goTo(room, "Mina", 2);
    room.asks("Aida", "/batch test batch:B2 clearing:1:40", "aide");
    await room.tick();
    expect(room.news("Mina").join()).toContain("Don't pour in B2.");
    const refused = room.asks("Mina", `/run next sure:yes step:${FIX_STEP}`);
    expect(refused.code).toBe("ERR_BATCH_WORN");
    expect(refused.reply.text).toContain("Keep the film in water");
    expect(field(room, "B2", "usedSqIn")).toBe(0);
    room.asks("Aida", "/batch mix kind:fixer product:Pier Fix volume:1 l", "aide");
    await room.tick();
    const again = room.asks("Mina", `/run next sure:yes step:${FIX_STEP}`);
    expect(again.kind).toBe("done");
    expect(field(room, "B3", "usedSqIn")).toBe(80);
  });

  test("a student may take another good bottle for a run of their own, and of nobody else", () => {
    const room = open(STOCK, FIXER, "/batch mix kind:fixer product:Pier Fix volume:1 l");
    plan(room, "Mina", "tank:1");
    room.press("Mina", "Start");
    expect(room.asks("Noor", "/batch take run:R1 batch:B3").code).toBe("ERR_NOT_YOURS");
    expect(room.says("Mina", "/batch take batch:B3")).toContain("**B3** for the fixer of R1");
    expect(room.asks("Mina", "/batch take batch:B9").code).toBe("ERR_UNKNOWN_BATCH");
    goTo(room, "Mina", FIX_STEP);
    expect(field(room, "B3", "usedSqIn")).toBe(80);
    expect(room.asks("Mina", "/batch take batch:B2").code).toBe("ERR_NO_BATH_TO_COME");
  });
});

describe("the ledger", () => {
  test("a slip is put right by a new line; the old one stays, struck through", () => {
    const room = open(FIXER, "/batch correct batch:B1 rolls:3 reason:morning class");
    room.asks("Aida", "/batch test batch:B1 clearing:0:50", "aide");
    expect(room.asks("Aida", "/batch correct batch:B1 line:1 reason:wrong bottle", "aide").code).toBe(
      "ERR_LINE_STAYS",
    );
    room.asks("Aida", "/batch correct batch:B1 line:3 reason:that was B2", "aide");
    const ledger = room.says("Mina", "/batch ledger batch:B1");
    expect(ledger).toMatch(/3\. ~~.*clears in 0:50 \(Aida\)~~/);
    expect(ledger).toContain("4. ");
    expect(ledger).toContain("line 3 counts no more: that was B2 (Aida)");
    expect(field(room, "B1", "testedClearingSeconds")).toBe(45);
    expect(room.asks("Aida", "/batch correct batch:B1 line:3 reason:again", "aide").code).toBe(
      "ERR_TAKEN_BACK",
    );
    expect(room.asks("Aida", "/batch correct batch:B1 line:9 reason:again", "aide").code).toBe(
      "ERR_NO_SUCH_LINE",
    );
  });

  test("used fixer never goes to the drain, and where it went is kept", () => {
    const room = open(FIXER);
    expect(room.asks("Tess", "/batch discard batch:B1 to:drain", "teacher").code).toBe("ERR_SILVER_DRAIN");
    expect(room.asks("Aida", "/batch topup batch:B1 add:100 ml remove:100 ml to:drain", "aide").code).toBe(
      "ERR_SILVER_DRAIN",
    );
    expect(room.says("Aida", "/batch discard batch:B1 to:silver", "aide")).toContain(
      "local rules come first",
    );
    expect(room.says("Mina", "/batch waste")).toContain("**1 l** of used fixer in the collection");
    expect(room.asks("Aida", "/batch test batch:B1 clearing:1:00", "aide").code).toBe("ERR_DISCARDED");
  });

  test("a top-up needs room in the bottle and a place for what was taken out", () => {
    const room = open(FIXER);
    const over = room.asks("Aida", "/batch topup batch:B1 add:100 ml", "aide");
    expect(over.code).toBe("ERR_OVERFLOW");
    // As much as must come out, and where that kind of bath may go.
    expect(over.reply.text).toMatch(/`remove:100 ml to:(silver|waste)`/);
    expect(room.asks("Aida", "/batch topup batch:B1 add:100 ml remove:100 ml", "aide").code).toBe(
      "ERR_WHERE_TO",
    );
    expect(room.asks("Aida", "/batch topup batch:B1 add:100 ml remove:2 l to:silver", "aide").code).toBe(
      "ERR_NOT_SO_MUCH",
    );
    expect(room.says("Aida", "/batch topup batch:B1 add:300 ml remove:300 ml to:silver", "aide")).toContain(
      "**1 l** in B1 now",
    );
    expect(room.says("Mina", "/batch waste")).toContain("**300 ml** of used fixer");
  });
});

test("the names offered while typing show each bottle's state", () => {
  const room = open(STOCK, FIXER, "/batch correct batch:B2 rolls:20 reason:morning class");
  const complete = (name: string, option: string) => {
    const context = {
      now: room.clock.now(),
      person: { id: "room:mina", name: "Mina" },
      role: "student",
      class: room.stores.classes.find(DEMO_KEY),
      stores: room.stores,
    } as never;
    return commandsByName(name)?.complete?.[option]?.("", context, {});
  };
  expect(complete("batch status", "batch")).toEqual([
    { label: "B1, House MQ stock: 5 l left", value: "B1" },
    { label: "B2, Pier Fix 1+4: EXHAUSTED, 0 rolls left, clears in about 1:30 (fresh 0:45)", value: "B2" },
  ]);
  expect(complete("plan", "fixbatch")).toHaveLength(1);
});

function commandsByName(name: string) {
  return commands.find((each) => each.name === name);
}
