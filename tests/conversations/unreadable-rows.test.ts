import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeEach, describe, expect, test } from "vitest";
import { createDigest } from "../../bot/rounds/digest.ts";
import { commands } from "../../commands/index.ts";
import { EVERY_COMMAND } from "../support/every-command.ts";
import { createRoom, type Room } from "../support/room.ts";

/* A class with rows that nothing can read, made by hand: each takes only itself out, and its teacher mends it. */

let room: Room;
const PLAN = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20";

/** Changes one value of a row's JSON, past everything that examines it. */
function brick(table: string, number: number, path: string, value: unknown, column = "body"): void {
  const { changes } = room.stores.db
    .prepare(`update ${table} set ${column} = json_set(${column}, ?, json(?)) where number = ?`)
    .run(path, JSON.stringify(value), number);
  expect(changes).toBe(1);
}

const errors = (): string[] =>
  room.log.lines.filter(({ level }) => level === "error").map(({ message }) => message);

beforeEach(async () => {
  room = createRoom();
  room.says("Tess", "/mine language de", "teacher");
  room.says("Tess", "/batch mix kind:fixer product:Pier Fix dilution:1+4 volume:1 l", "teacher");
  room.says("Tess", "/batch mix kind:fixer product:Pier Fix dilution:1+4 volume:2 l", "teacher");
  for (const [person, tank] of [
    ["Mina", 1],
    ["Ben", 2],
  ] as const) {
    room.says(person, `${PLAN} tank:${tank}`);
    room.says(person, "/run start");
    room.says(person, "/run next");
  }
  await room.pass(1);
  room.news();
  brick("tanks", 3, "$.volumeMl", 10);
  brick("runs", 1, "$.plan.steps[0].seconds", "nine minutes");
  brick("batches", 2, "$.volumeMl", 0);
});

describe("one tank, one run and one bottle that can't be read", () => {
  test("every command still answers, and none breaks", () => {
    expect(Object.keys(EVERY_COMMAND).sort()).toEqual(commands.map(({ name }) => name).sort());
    for (const [name, options] of Object.entries(EVERY_COMMAND)) {
      const line = Object.entries(options).map(([key, value]) => ` ${key}:${value}`);
      for (const [person, role] of [
        ["Mina", "student"],
        ["Tess", "teacher"],
      ] as const) {
        if (name === "mine erase" || name === "class erase") continue;
        const { kind, reply } = room.asks(person, `/${name}${line.join("")}`, role);
        expect(kind, `${name}: ${reply.text}`).not.toBe("broken");
      }
    }
    expect(errors()).toEqual([]);
  });

  test("the others go on: they are listed, planned with, taken from and called", async () => {
    expect(room.says("Ada", "/tank list", "aide")).toMatch(/T?4/);
    expect(room.asks("Ada", `${PLAN} tank:4`, "aide").kind).toBe("done");
    expect(room.says("Ada", "/batch status", "aide")).toContain("B1");
    await room.pass(60);
    expect(room.news("Ben").join("\n")).toMatch(/[Aa]gitate/);
  });

  test("lists say what they leave out, and nobody is told that it is not there", () => {
    expect(room.says("Ada", "/tank list", "aide")).toContain(
      "T3 can't be read and is left out. `/class mend` says why (teacher).",
    );
    expect(room.says("Ada", "/batch status", "aide")).toContain("B2 can't be read");
    expect(room.says("Mina", "/run status")).toContain("R1 can't be read");
    expect(room.says("Ben", "/run status")).not.toContain("R1");
    expect(room.asks("Mina", "/run next run:R1").code).toBe("ERR_ROW_UNREADABLE");
    expect(room.asks("Tess", "/tank report tank:3 fault:leaks", "teacher").code).toBe("ERR_ROW_UNREADABLE");
    expect(room.asks("Tess", "/batch ledger batch:B2", "teacher").code).toBe("ERR_ROW_UNREADABLE");
    expect(room.says("Tess", "/help", "teacher")).toContain("T3 und R1 lassen sich nicht lesen");
  });

  test("whose film it is hears of it when its next call is due, and the teacher with them; each once", async () => {
    await room.pass(180);
    expect(room.news("Mina")).toEqual([
      "**No more calls come for R1**: its record can't be read. Finish the film by the clock, or ask the teacher.",
    ]);
    const told = room.heard.filter(({ personId }) => personId === "room:tess").map(({ text }) => text);
    expect(told).toEqual([expect.stringContaining("**3 Einträge lassen sich nicht lesen**: T3, R1 und B2.")]);
    expect(errors()).toContain("a run could not be settled");
  });

  test("where no call is due, the teacher hears of it by the clock", async () => {
    const digest = createDigest({ stores: room.stores, clock: room.clock, log: room.log });
    digest.beat(room.clock.now());
    await room.tick();
    expect(room.news("Tess").join()).toContain("T3, R1 und B2");
    digest.beat(room.clock.now() + 3_600_000);
    await room.tick();
    expect(room.news("Tess").filter((text) => text.includes("lesen"))).toEqual([]);
  });

  test("the teacher sees which and why, and sets aside what is not mended", () => {
    const { text, actions } = room.asks("Iris", "/class mend", "teacher").reply;
    expect(text.split("\n")).toEqual([
      "**3 things of the class can't be read.** Everything else goes on.",
      "- **T3** (tank): volume: 10 ml, must be at least 50 ml. Set it anew with `/tank add`, or set it aside.",
      "- **R1** (run): time: not as this version keeps it. No calls come for it: finish this film by the clock.",
      expect.stringMatching(
        /^- \*\*B2\*\* \(bottle\): volume: 0 ml, must be at least 1 ml\. Nobody is given it\./,
      ),
    ]);
    expect(actions?.map(({ label, line }) => [label, line])).toEqual([
      ["Set T3 aside", "class mend what:T3"],
      ["Set R1 aside", "class mend what:R1"],
      ["Set B2 aside", "class mend what:B2"],
    ]);
    for (const { line } of actions ?? []) expect(room.asks("Iris", `/${line}`, "teacher").kind).toBe("done");
    expect(room.says("Iris", "/class mend", "teacher")).toBe("Everything of the class can be read.");
    const kept = room.stores.db.prepare("select kind, number, body from set_aside order by id").all();
    expect(kept).toMatchObject([
      { kind: "tank", number: 3, body: expect.stringContaining('"volumeMl":10,') },
      { kind: "run", number: 1, body: expect.stringContaining("nine minutes") },
      { kind: "batch", number: 2 },
    ]);
    // R1 is over, and nobody else gets its number.
    room.says("Mina", `${PLAN} tank:1`);
    expect(room.asks("Mina", "/run start").reply.text).toContain("R3");
  });

  test("the commands that end such things do so as well, and a tank can be set anew", () => {
    expect(room.says("Mina", "/run stop run:R1")).toContain("**R1 is set aside.** It is over");
    expect(room.asks("Ben", "/run stop run:R1").code).toBe("ERR_UNKNOWN_RUN");
    expect(room.says("Iris", "/tank remove tank:3", "teacher")).toContain("**T3 is set aside.**");
    expect(room.says("Iris", "/batch discard batch:B2 to:silver", "teacher")).toContain(
      "**B2 is set aside.**",
    );
    expect(room.says("Iris", "/class mend", "teacher")).toBe("Everything of the class can be read.");
    brick("tanks", 4, "$.volumeMl", 60_000);
    expect(room.asks("Iris", "/tank add numbers:4 volume:500 ml", "teacher").kind).toBe("done");
    expect(room.says("Iris", "/class mend", "teacher")).toBe("Everything of the class can be read.");
  });
});

test("a bad line makes its bottle unreadable, a bad habit stands at its default, and a sheet is missing alone", () => {
  const path = join(mkdtempSync(join(tmpdir(), "sinkside-")), "rows.db");
  room = createRoom(path);
  room.says("Tess", "/batch mix kind:fixer product:Pier Fix dilution:1+4 volume:1 l", "teacher");
  room.says("Tess", "/batch mix kind:fixer product:Pier Fix dilution:1+4 volume:2 l", "teacher");
  room.stores.db.exec("drop trigger ledger_stays");
  const ledger = "update ledger set body = json_set(body, '$.volumeMl', -5) where batch_id = 1";
  expect(room.stores.db.prepare(ledger).run().changes).toBe(1);
  room.stores.db.exec("update classes set habits = json_set(habits, '$.roomTenthsC', 600, '$.sinks', 3)");
  room.stores.db.exec(
    "update sheets set body = json_set(body, '$.boxSpeed', 0) where film = 'Quay 100' and dilution = '1+9'",
  );
  room.stores.close();
  room = createRoom(path);
  const status = room.says("Iris", "/batch status", "teacher");
  expect(status).toContain("B1 can't be read and is left out");
  expect(status).toContain("B2");
  const school = room.stores.classes.find("room:demo");
  expect([school?.habits.roomTenthsC, school?.habits.sinks]).toEqual([200, 3]);
  const mend = room.says("Iris", "/class mend", "teacher");
  expect(mend).toContain(
    "**room temperature** (setting): room temperature: 60 °C (140 °F), can be at most 45 °C (113 °F)",
  );
  expect(mend).toContain("**Quay 100, Pier Fine 1+9** (data sheet): `boxSpeed`: 0, must be at least 1");
  expect(room.asks("Iris", "/class mend what:roomTenthsC", "teacher").kind).toBe("done");
  expect(room.says("Iris", "/class mend", "teacher")).not.toContain("room temperature");
});
