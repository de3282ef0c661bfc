import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { afterEach, beforeEach, describe, expect, test } from "vitest";

import { createRoom, type Room } from "../../support/room.ts";
import { aNewRoll } from "../../support/rolls.ts";
import { BLIND_DE } from "./blind.de.ts";
import { BLIND_EN } from "./blind.en.ts";
import { EVENING_DE } from "./evening.de.ts";
import { EVENING_EN } from "./evening.en.ts";
import { MORE_DE } from "./more.de.ts";
import { MORE_EN } from "./more.en.ts";
import { TYPED_DE } from "./typed.de.ts";
import { TYPED_EN } from "./typed.en.ts";

const labels = (room: Room, person: string, typed: string): string[] =>
  (room.asks(person, typed).reply.actions ?? []).map(({ label }) => label);

const PLAN = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:3";

async function startDeveloping(room: Room): Promise<void> {
  room.says("Mina", PLAN);
  room.press("Mina", "Start");
  room.says("Mina", "/run next");
  await room.pass(40);
}

describe("a sentence", () => {
  let room: Room;
  beforeEach(() => {
    room = createRoom();
  });

  test("that asks for a time gets each time there is, and a key for each plan", () => {
    expect(room.says("Mina", "how long for lanten 400 at 20 degrees?")).toBe(
      [
        "**9:00** at 20 °C (68 °F): Lantern 400 in House MQ 1+1, EI 400.",
        "**7:00** at 20 °C (68 °F): Lantern 400 in House MQ stock, EI 400.",
        "In which developer?",
      ].join("\n"),
    );
    expect(room.press("Mina", "9:00 · House MQ 1+1")).toContain("**9:00** at 20 °C");
  });

  test("tells the time the plan then keeps", () => {
    const told = /\*\*(\d+:\d\d)\*\*/;
    const asked = told.exec(room.says("Mina", "quay 100 in pier fine, 21.5"))?.[1];
    expect(told.exec(room.press("Mina", "Make the plan"))?.[1]).toBe(asked);
  });

  test("without a temperature says what it took", () => {
    expect(room.says("Mina", "lantern 400 house mq stock")).toContain("That is for 20 °C (68 °F). Measure");
  });

  test("without a film asks which, with a key for each", () => {
    expect(labels(room, "Mina", "how long do i develop at 22")).toEqual(["Lantern 400", "Quay 100"]);
    expect(room.press("Mina", "Quay 100")).toContain("at 22 °C");
  });

  test.each([
    ["how do i make a test strip", "Make a test strip", "print strip"],
    ["how do i make a contact sheet", "Contact sheet of my newest roll", "contact sheet"],
    ["can i make that print again", "Make a test strip", "print strip"],
    ["how long in the trays", "Plan a print", "tray plan"],
    ["is white light ok", "Who is at the trays", "tray lines"],
    ["my print is too dark", "Make a test strip", "print strip"],
    ["my print is too light", "Make a test strip", "print strip"],
    ["my print is grey", "Make a test strip", "print strip"],
    ["my print has too much contrast", "Make a test strip", "print strip"],
  ])("about prints, %s, has the key of its form", (typed, label, line) => {
    expect(room.asks("Mina", typed).reply.actions).toEqual([{ label, line }]);
  });

  test("about a print in the log shows what the log has of it", () => {
    room.says("Mina", "/print log seconds:12.5 frame:12");
    room.says("Mina", "/print log seconds:20 frame:7");
    expect(room.says("Mina", "print frame 12 again")).toMatch(/^Again \*\*V1\*\*[^]*\*\*12.5 s\*\*/);
    expect(room.says("Mina", "can you print that again please")).toMatch(/^Again \*\*V2\*\*/);
    expect(room.says("Mina", "V1 again please, the print")).toMatch(/^Again \*\*V1\*\*/);
    expect(room.says("Mina", "print frame 13 again")).toContain("None of your prints");
    expect(room.says("Mina", "my print is too dark")).toMatch(/^\*\*V2, too dark:\*\*[^]*Too much exposure/);
    expect(room.says("Mina", "my print of frame 12 is too dark")).toMatch(/^\*\*V1, too dark:/);
    expect(labels(room, "Mina", "my print looks wrong")).toEqual(["My newest print looks wrong"]);
  });

  // The demo's own line of trays: as lines usually are, its times invented.
  test("about a film that is done says what comes after the bath, with its roll where it is in the log", () => {
    expect(room.says("Mina", "my film is dry, what now")).toMatch(/^\*\*When it is dry: cut it/);
    room.stores.rolls.add(aNewRoll({ personId: "room:mina", runId: null as never }));
    expect(room.says("Mina", "my film is done")).toMatch(/^\*\*Your newest film is in the log as L1\.\*\*/);
    expect(labels(room, "Mina", "my film is dry, what now")).toEqual([
      "Contact sheet of my newest roll",
      "L1",
    ]);
    expect(room.press("Mina", "L1")).toContain("Lantern 400");
  });

  test("about trays says the class's own times, the bath that is asked for first", () => {
    expect(room.says("Mina", "how long in the fix for RC paper")).toMatch(
      /^\*\*Fixer: 1:00\*\* for resin-coated paper\. All of it in Dock Print at 20 °C \(68 °F\): Developer: 1:00,/,
    );
    const both = room.says("Mina", "how long in the trays").split("\n");
    expect(both).toHaveLength(2);
    expect(both[1]).toMatch(/^\*\*Developer: 2:00, .*fibre paper/);
    expect(room.says("Mina", "is the paper fixer still good")).toContain("No bottle of that");
  });

  test("about the safelight says what its test has shown, and that film bears none", () => {
    expect(room.says("Mina", "is the safelight safe")).toMatch(/^\*\*Nobody has tested it yet[^]*Load film/);
    room.says("Iris", "/tray lamp lamp:Window before:5 after:5", "teacher");
    expect(room.says("Mina", "is the safelight safe")).toMatch(/^\*\*2:30 in all under Window\*\*/);
    room.says("Iris", "/tray lamp lamp:Window before:1 after:1", "teacher");
    expect(room.says("Mina", "is the safelight safe")).not.toContain("2:30");
  });

  test("starts nothing by itself: the key does", async () => {
    room.says("Mina", PLAN);
    expect(room.says("Mina", "ok lets go")).toContain("Plan P1 is ready");
    expect(room.says("Mina", "/run status")).toContain("No run is going");
    room.press("Mina", "Start");
    expect(room.says("Mina", "its in")).toContain("press the button when it is so");
    expect(room.press("Mina", "Tank is full")).toContain("left in");
  });

  test("with a film in the tank: how long, where, no pause, too warm, poured before", async () => {
    await startDeveloping(room);
    expect(room.says("Mina", "how long left")).toContain("**8:20** left in the developer");
    expect(room.says("Mina", "what now")).toContain("R1, tank 3");
    expect(room.says("Mina", "can it wait")).toContain("there is no pause");
    expect(labels(room, "Mina", "its 22 now")).toEqual(["R1: 22 °C (71.6 °F) now"]);
    expect(room.press("Mina", "R1: 22 °C (71.6 °F) now")).toContain("22 °C (71.6 °F) in the tank");
    expect(labels(room, "Mina", "i poured it in 20 seconds ago")).toEqual(["R1: poured 20 s ago"]);
    expect(labels(room, "Mina", "oops")).toContain("Stop R1");
    expect(labels(room, "Mina", "stop")).toEqual(["Stop R1"]);
    expect(room.says("Ola", "who has tank 3")).toMatch(/^\*\*Tank 3: Mina\*\*, Developer until/);
    expect(room.says("Ola", "is tank 4 free")).toBe("**Tank 4 is free.**");
  });

  test("with two films in two tanks shows both, or the one it names", async () => {
    await startDeveloping(room);
    room.says("Mina", PLAN.replace("tank:3", "tank:4"));
    room.press("Mina", "Start");
    room.says("Mina", "/run next run:2");
    expect(room.says("Mina", "how long left")).toMatch(/R1, tank 3[^]*R2, tank 4/);
    expect(room.says("Mina", "how long left in tank 4")).not.toContain("tank 3");
    expect(labels(room, "Mina", "stop tank 4")).toEqual(["Stop R2"]);
  });

  test("about a bottle shows it", () => {
    room.says("Iris", "/batch mix kind:fixer product:Pier Fix volume:1 l dilution:1+4", "teacher");
    expect(room.says("Mina", "is the fixer still good")).toContain("B1");
    expect(room.says("Mina", "how old is b1")).toContain("B1");
    expect(room.says("Mina", "is the stop bath ok")).toContain("No bottle of that");
  });

  test("of harm gets first aid before anything else, with or without a slash", () => {
    for (const typed of ["fixer in my eye", "/fixer in my eye", "help fixer in my eye", "/help eye burns"])
      expect(room.says("Mina", typed), typed).toMatch(/^\*\*Eye: rinse now/);
    expect(room.says("Mina", "she drank stop bath")).toContain("Do not make them vomit");
    expect(room.says("Mina", "i spilt fixer")).toMatch(/^\*\*Spilt: say it aloud/);
    expect(room.says("Mina", "i spilt fixer")).toContain("safety data sheet");
  });

  test("that means two things gives two keys; one that means nothing three, and help", () => {
    expect(labels(room, "Mina", "what is the wifi password")).toEqual([
      "How long for a film?",
      "Where am I?",
      "How long left?",
      "Help",
    ]);
    const torn = room.asks("Mina", "start next");
    expect(torn.reply.text).toBe("That can mean two things. Which?");
    expect(torn.reply.actions).toHaveLength(2);
  });

  test("is answered in German", async () => {
    room.says("Mina", "/mine language language:de");
    await startDeveloping(room);
    expect(room.says("Mina", "wie lange noch")).toContain("8:20");
    expect(room.says("Mina", "was ist ein stoppbad")).toContain("**Stoppbad** beendet");
    expect(room.says("Mina", "ist mir ins auge gespritzt")).toMatch(/^\*\*Auge: sofort/);
  });

  test("of a command that is not quite one keeps its fault", () => {
    expect(room.asks("Mina", "/plam film:Lantern 400 temp:20").code).toBe("ERR_UNKNOWN_COMMAND");
    expect(room.asks("Mina", "/my film").kind).toBe("done");
    expect(room.asks("Mina", "plan lantern 400").kind).toBe("done");
    // Words where a print's number would stand: a sentence, unless it is written as a command.
    expect(room.says("Mina", "print again please")).toContain("no print in the log yet");
    expect(room.asks("Mina", "print again V9").code).toBe("ERR_UNKNOWN_PRINT");
    expect(room.asks("Mina", "/print again please").code).toBe("ERR_UNKNOWN_PRINT");
  });
});

describe("no sentence changes anything", () => {
  let folder: string;
  beforeEach(() => void (folder = mkdtempSync(join(tmpdir(), "sinkside-ask-"))));
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  /** All rows but when somebody was last seen. */
  function rowsIn(path: string): string {
    const db = new Database(path, { readonly: true });
    const tables = db
      .prepare(
        "select name from sqlite_master where type = 'table' and name not like '%fts%' and name <> 'members'",
      )
      .pluck()
      .all() as string[];
    const rows = tables.map((table) => [table, db.prepare(`select * from "${table}"`).all()]);
    db.close();
    return JSON.stringify(rows);
  }

  test("in the middle of a run, for every sentence of the tables", async () => {
    const path = join(folder, "sinkside.db");
    const room = createRoom(path);
    room.says("Iris", "/batch mix kind:fixer product:Pier Fix volume:1 l dilution:1+4", "teacher");
    await startDeveloping(room);
    room.says("Mina", "/print log seconds:12.5 frame:12");
    room.says("Mina", "hello");
    const before = rowsIn(path);
    const english = [...TYPED_EN, ...MORE_EN, ...BLIND_EN, ...EVENING_EN];
    for (const [, sentence] of [...english, ...TYPED_DE, ...MORE_DE, ...BLIND_DE, ...EVENING_DE]) {
      const { kind, reply } = room.asks("Mina", `ask ${sentence}`);
      expect(kind, sentence).toBe("done");
      expect(reply.text, sentence).not.toBe("");
      for (const { line } of reply.actions ?? []) expect(line.length, line).toBeLessThanOrEqual(100);
    }
    expect(rowsIn(path)).toBe(before);
  });
});
