import { expect, test } from "vitest";
import { DEMO_KEY } from "../../bot/demo/demo.ts";
import { aSheet } from "../support/make.ts";
import { createRoom, type Room } from "../support/room.ts";

/* Film through two fixing baths, carry-over reckoned, by a class of ours. All of it is invented. */

const PLAN = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1";
const FIXER = "/batch mix kind:fixer product:Pier Fix dilution:1+4 volume:1 l clearing:0:45";

function must(room: Room, person: string, line: string, role: "aide" | "teacher" | "student" = "aide") {
  const answered = room.asks(person, line, role);
  if (answered.kind !== "done") throw new Error(`${line}: ${answered.reply.text}`);
  return answered.reply;
}
const status = (room: Room, label: string) =>
  must(room, "Aida", `/batch status batch:${label}`).fields as Record<string, number | string>;
const steps = (room: Room) =>
  must(room, "Mina", PLAN, "student").fields?.steps as {
    kind: string;
    ordinal: number;
    seconds: number;
    batch: string | null;
  }[];

/** A film through all its steps up to the end of the second fixing bath. */
async function fixOne(room: Room, person: string): Promise<void> {
  must(room, person, PLAN.replace("tank:1", person === "Mina" ? "tank:1" : "tank:2"), "student");
  room.press(person, "Start");
  room.press(person, "Tank is full");
  await room.pass(545);
  room.press(person, "Water is in");
  await room.pass(31);
  room.press(person, "Water is in");
  await room.pass(31);
}

test("each film fixes in both baths, half the time in each, and the ledger follows both", async () => {
  const room = createRoom();
  for (let bottle = 0; bottle < 2; bottle += 1) must(room, "Aida", FIXER);
  const demo = room.stores.batches.list(room.stores.classes.find(DEMO_KEY)?.id ?? 0);
  const [second, first] = demo.map(({ number }) => `B${number}`);
  must(room, "Tess", "/class baths carry:20 ml", "teacher");
  must(room, "Aida", `/batch pair first:${first} second:${second}`);
  const whole = 300;
  expect(steps(room).filter(({ kind }) => kind === "fix")).toMatchObject([
    { ordinal: 1, seconds: whole / 2, batch: first },
    { ordinal: 2, seconds: whole / 2, batch: second },
  ]);

  await fixOne(room, "Mina");
  expect(room.news("Mina").at(-1)).toContain(`Pour in fixing bath 1 from ${first}`);
  room.press("Mina", "Bath 1 is in");
  await room.pass(151);
  const called = room.news("Mina").at(-1) ?? "";
  expect(called).toContain(`fixing bath 1 back into ${first}`);
  expect(called).toContain(`Pour in fixing bath 2 from ${second}`);
  room.press("Mina", "Bath 2 is in");
  await room.pass(151);

  // The first took water in and gave a fiftieth of its silver on; the second took that, and fixer, in.
  expect(status(room, first ?? "")).toMatchObject({ strengthPercent: 98, carriedInMl: 20, usedSqIn: 80 });
  const behind = status(room, second ?? "");
  expect(behind).toMatchObject({ strengthPercent: 100, carriedInMl: 20, usedSqIn: 80, leftRolls: 16 });

  // Worn by test, the first bath is not used again: the second moves up, and films fix from there.
  must(room, "Aida", `/batch test batch:${first} clearing:1:40`);
  expect(room.asks("Mina", PLAN).code).toBe("ERR_NO_BATCH_READY");
  expect(room.asks("Mina", PLAN).reply.text).toContain("/batch rotate");
  must(room, "Aida", FIXER);
  const fresh = `B${Number(second?.slice(1)) + 1}`;
  must(room, "Aida", `/batch rotate fresh:${fresh}`);
  expect(status(room, first ?? "")).toMatchObject({ standing: "discarded" });
  expect(steps(room).filter(({ kind }) => kind === "fix")).toMatchObject([
    { ordinal: 1, batch: second },
    { ordinal: 2, batch: fresh },
  ]);
});

test("a film between the two baths gets the fresh one when they rotate, and is told", async () => {
  const room = createRoom();
  for (let bottle = 0; bottle < 3; bottle += 1) must(room, "Aida", FIXER);
  const demo = room.stores.batches.list(room.stores.classes.find(DEMO_KEY)?.id ?? 0);
  const [fresh, second, first] = demo.map(({ number }) => `B${number}`);
  must(room, "Aida", `/batch pair first:${first} second:${second}`);
  await fixOne(room, "Mina");
  room.press("Mina", "Bath 1 is in");
  await room.pass(60);
  must(room, "Aida", `/batch rotate fresh:${fresh}`);
  await room.pass(2);
  expect(room.news("Mina").join("\n")).toContain(`Take ${fresh}, not ${second}`);
  await room.pass(90);
  expect(room.news("Mina").join("\n")).toContain(`Pour in fixing bath 2 from ${fresh}`);
});

test("a replenished developer says how much it wants, in the plan, at the sink and to the class", async () => {
  const room = createRoom();
  const id = room.stores.classes.find(DEMO_KEY)?.id ?? 0;
  const stock = { concentrateParts: 1, waterParts: 0 };
  room.stores.sheets.save(id, aSheet({ developer: "Slip MQ", dilution: stock }), null, room.clock.now());
  must(
    room,
    "Aida",
    "/batch mix kind:developer product:Slip MQ dilution:stock volume:2 l bottle:2 l replenish:70 ml",
  );
  must(room, "Tess", "/class baths carry:20 ml", "teacher");
  const label = `B${room.stores.batches.list(id)[0]?.number}`;
  const line = "/plan film:Lantern 400 developer:Slip MQ temp:20 tank:1";
  expect(must(room, "Mina", line, "student").text).toContain("then 70 ml of replenisher into its bottle");
  room.press("Mina", "Start");
  room.press("Mina", "Tank is full");
  await room.pass(535);
  expect(room.news("Mina").at(-1)).toContain("Then 70 ml of replenisher go in");
  expect(room.heard.map(({ text }) => text).join("\n")).toContain(`70 ml of replenisher for ${label}`);
  // Dry film took 20 ml with it: the bottle has room for nearly a third of what it wants.
  expect(status(room, label)).toMatchObject({ volumeMl: 1980, replenishMl: 70, strengthPercent: 100 });
  must(room, "Aida", `/batch topup batch:${label} add:70 ml remove:50 ml to:waste`);
  expect(status(room, label)).toMatchObject({ replenishMl: 0, volumeMl: 2000 });
});

test("a bottle that holds less than the tank takes is told in the plan, not found at the sink", () => {
  const room = createRoom();
  must(room, "Aida", "/batch mix kind:fixer product:Pier Fix dilution:1+4 volume:250 ml");
  const { text, fields } = must(room, "Mina", PLAN, "student");
  const cautions = fields?.cautions as { code: string; ml?: number }[];
  expect(cautions.find(({ code }) => code === "WARN_BOTTLE_SHORT")).toMatchObject({ ml: 250 });
  expect(text).toContain("holds 250 ml");
});

test("more than the bottle holds is not corrected into it", () => {
  const room = createRoom();
  must(room, "Aida", "/batch mix kind:fixer product:Pier Fix dilution:1+4 volume:1 l bottle:1200 ml");
  const id = room.stores.classes.find(DEMO_KEY)?.id ?? 0;
  const label = `B${room.stores.batches.list(id)[0]?.number}`;
  const over = room.asks("Aida", `/batch correct batch:${label} ml:300 reason:measured`, "aide");
  expect(over.code).toBe("ERR_OVERFLOW");
  expect(over.reply.text).toContain("holds 1.2 l");
  must(room, "Aida", `/batch correct batch:${label} ml:200 reason:measured`);
});
