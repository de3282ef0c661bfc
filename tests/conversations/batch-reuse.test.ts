import { describe, expect, test } from "vitest";
import { DEMO_KEY } from "../../bot/demo/demo.ts";
import { aSheet } from "../support/make.ts";
import { createRoom, type Room } from "../support/room.ts";

/** Made up: 10 % more after each two films in a litre, ten at most. */
const REUSE = { everyFilms: 2, addPercent: 10, addSeconds: 0, maxFilms: 10 };
const DEVELOPER = "/batch mix kind:developer product:Slip MQ dilution:stock volume:1 l capacity:10 films/l";
const PLAN = "/plan film:Lantern 400 developer:Slip MQ temp:20 tank:1";

function open(): Room {
  const room = createRoom();
  const id = room.stores.classes.find(DEMO_KEY)?.id ?? 0;
  const sheet = aSheet({
    developer: "Slip MQ",
    dilution: { concentrateParts: 1, waterParts: 0 },
    reuse: REUSE,
  });
  room.stores.sheets.save(id, sheet, null, room.clock.now());
  return room;
}

const must = (room: Room, line: string): Room["asks"] extends (...args: never) => infer R ? R : never => {
  const answered = room.asks("Aida", line, "aide");
  if (answered.kind !== "done") throw new Error(answered.reply.text);
  return answered;
};

function developSeconds(room: Room): unknown {
  const answered = room.asks("Mina", PLAN);
  const steps = answered.reply.fields?.steps as { kind: string; seconds: number }[] | undefined;
  return steps?.find(({ kind }) => kind === "develop")?.seconds ?? answered.code;
}

describe("a developer that is poured back", () => {
  test("develops longer by the sheet's rule for the films each litre has done, and is refused at its end", () => {
    const room = open();
    must(room, DEVELOPER);
    expect(developSeconds(room)).toBe(540);
    must(room, "/batch correct batch:B1 rolls:3 reason:morning class");
    expect(developSeconds(room)).toBe(594);
    must(room, "/batch correct batch:B1 rolls:4 reason:noon class");
    // Seven films in the litre: three times two of them, 30 % more.
    expect(developSeconds(room)).toBe(702);
    must(room, "/batch correct batch:B1 rolls:3 reason:late class");
    expect(developSeconds(room)).toBe("ERR_NO_BATCH_READY");
  });

  test("goes back into its bottle, and the sink says so", async () => {
    const room = open();
    must(room, DEVELOPER);
    room.says("Mina", PLAN);
    room.press("Mina", "Start");
    room.press("Mina", "Tank is full");
    await room.pass(530);
    expect(room.news("Mina").at(-1)).toContain("Pour the developer back into B1.");
    expect(must(room, "/batch status batch:B1").reply.fields).toMatchObject({
      usedMl: 0,
      usedSqIn: 80,
      leftRolls: 9,
    });
  });

  test("a developer used once still goes where the class's waste goes", async () => {
    const room = createRoom();
    must(room, "/batch mix kind:developer product:House MQ dilution:stock volume:5 l");
    room.says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1");
    room.press("Mina", "Start");
    room.press("Mina", "Tank is full");
    await room.pass(530);
    expect(room.news("Mina").at(-1)).toContain("It is used once");
  });
});

test("a stop bath of a bottle goes back into it, and counts its rolls", () => {
  const room = createRoom();
  must(room, "/batch mix kind:stop product:Jetty Stop dilution:1+30 volume:1 l");
  room.says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1 stop:acid");
  room.press("Mina", "Start");
  room.asks("Mina", "/run next step:0");
  const said = room.asks("Mina", "/run next step:1 sure:yes");
  expect(said.kind).toBe("done");
  const run = room.stores.runs.find(1, 1);
  expect(run?.plan.steps[1]).toMatchObject({ kind: "stop", batch: "B1", isPouredBack: true });
  // 12 rolls a litre: Anchell, The Darkroom Cookbook, 3rd ed., p. 268.
  expect(must(room, "/batch status batch:B1").reply.fields).toMatchObject({ leftRolls: 11 });
});

describe("/mix class", () => {
  test("says what to mix, from what, into which bottles, and what to buy", () => {
    const room = createRoom();
    must(room, "/batch restock product:House MQ kind:developer form:powder size:1 l packs:2");
    must(room, "/batch restock product:Pier Fix kind:fixer size:500 ml dilution:1+4 packs:1");
    must(room, "/batch mix kind:developer product:House MQ dilution:stock volume:1 l");
    const said = room.says(
      "Mina",
      "/mix class rolls:24 film:Lantern 400 developer:House MQ dilution:1+1 date:2026-01-22",
    );
    expect(said).toContain("to mix** for 24 rolls of Lantern 400");
    // 24 x 300 ml less 2 l from the litre of stock: 5.2 l, 2.6 l of it stock, so three packs; the shelf has one.
    expect(said).toContain("for 7.2 l, 2 l ready in B1. **Mix 5.2 l**: powder for 3 l of stock, whole packs");
    expect(said).toContain("The shelf has 1 l: **buy 2 packs** of 1 l.");
    // 24 rolls at 20 a litre: 1.2 l, rounded to 1.25 l.
    expect(said).toContain(
      "**Mix 1250 ml**: 250 ml of concentrate or stock + 1 l of water. Bottles: 1 of 1 l and 1 of 250 ml.",
    );
    expect(said).toContain("The shelf has 500 ml: enough.");
  });

  test("refuses a day that is over and a film nobody knows", () => {
    const room = createRoom();
    const line = "/mix class rolls:5 film:Lantern 400 developer:House MQ dilution:1+1";
    expect(room.asks("Mina", `${line} date:yesterday`).code).toBe("ERR_DAY_GONE");
    expect(room.asks("Mina", `${line} date:soon`).code).toBe("ERR_NO_DATE");
    expect(room.asks("Mina", "/mix class rolls:5 film:Moonbeam").code).toBe("ERR_UNKNOWN_FILM");
  });
});
