import { beforeEach, describe, expect, test } from "vitest";
import { englishIn } from "../support/english.ts";
import { createRoom, type Room } from "../support/room.ts";

/* Prints through the trays, as a class does them: several students at one line, one of them with a film beside it. */

let room: Room;
const RC = "/tray plan paper:resin-coated temp:20C";
const FIBRE = "/tray plan paper:fibre temp:20C";

beforeEach(() => {
  room = createRoom();
  room.says("Tess", "/help", "teacher");
  for (const line of [
    "kind:paper-developer product:Dock Print dilution:1+9 volume:2 l",
    "kind:paper-stop product:Harbour Stop dilution:1+19 volume:2 l",
    "kind:paper-fixer product:Pier Fix dilution:1+4 volume:2 l",
    "kind:fixer product:Pier Fix dilution:1+4 volume:1 l clearing:0:45",
  ])
    room.says("Ada", `/batch mix ${line}`, "aide");
});

/** Plans and starts; the run's number. */
function start(person: string, plan: string): number {
  room.says(person, plan);
  return Number(room.asks(person, "/run start").reply.fields?.["run"]);
}
const put = (person: string, run: number, step: number) =>
  room.asks(person, `/run next run:${run} step:${step}`);

describe("one print from the developer to the rack", () => {
  test("is called at each bath, on time, and goes through the ledger of the paper's bottles only", async () => {
    const run = start("Mina", `${RC} prints:2 size:8x10 in`);
    put("Mina", run, 0);
    await room.pass(60);
    expect(room.news("Mina").map((text) => text.split("\n")[0])).toEqual([
      "**Lift it out in 15 s.** Get ready: stop bath.",
      "**Lift it out now, drain 10 s.** Lift it by a corner and let it drain over the developer. Tongs of this tray only. Then: stop bath.",
      "**Now: stop bath.** Lay it into the stop bath (B2). Press the button when it is in.",
    ]);
    put("Mina", run, 1);
    await room.pass(30);
    put("Mina", run, 2);
    await room.pass(60);
    put("Mina", run, 3);
    await room.pass(300);
    const done = put("Mina", run, 4);
    expect(done.reply.text).toContain("**R1, trays 1** is finished: 2 prints fixed and washed");
    const left = (label: string) =>
      room.asks("Ada", `/batch status batch:${label}`, "aide").reply.fields?.["usedSqIn"];
    expect(["B1", "B2", "B3", "B4"].map(left)).toEqual([160, 160, 160, 0]);
    expect(room.says("Mina", "/roll find")).toContain("The log is empty yet");
  });

  test("pulled early it is told why not, and how the next one is exposed", async () => {
    const run = start("Mina", RC);
    put("Mina", run, 0);
    await room.pass(30);
    const refused = put("Mina", run, 1);
    expect(refused.code).toBe("ERR_TOO_EARLY");
    expect(refused.reply.text).toMatch(
      /^\*\*0:30 to go: leave it in\.\*\* Under 1:00 a print has no full black/,
    );
    expect(refused.reply.text).toContain("half the exposure");
  });

  test("by factor: one press sets the end", async () => {
    const run = start("Mina", `${RC} factor:15`);
    put("Mina", run, 0);
    await room.pass(9);
    expect(room.press("Mina", "I see it")).toContain("**2:15** in all");
    expect(room.asks("Mina", "/run seen").code).toBe("ERR_ALREADY_SEEN");
    await room.pass(126);
    expect(room.news("Mina").join("\n")).toContain("**Now: stop bath.**");
  });

  test("without a factor there is nothing to see", () => {
    const run = start("Mina", RC);
    put("Mina", run, 0);
    expect(room.asks("Mina", "/run seen").code).toBe("ERR_NO_FACTOR");
  });

  test("a warmer tray, measured in mid-bath, shortens what is left", async () => {
    const run = start("Mina", FIBRE);
    put("Mina", run, 0);
    await room.pass(60);
    // 60 s are left; by 2.07 in 10 °C they are 52 at 22 °C.
    expect(room.says("Mina", "/run correct temp:22C")).toContain(
      "**8 s shorter**: 0:52 left instead of 1:00.",
    );
  });
});

describe("many at one line", () => {
  test("who has no room is told when, and let in then", async () => {
    put("Mina", start("Mina", `${RC} prints:2`), 0);
    const ben = start("Ben", RC);
    await room.pass(20);
    const refused = put("Ben", ben, 0);
    expect(refused.code).toBe("ERR_TRAYS_FULL");
    expect(refused.reply.text).toContain("in 45 s.**");
    expect(room.says("Ben", "/tray lines")).toMatch(/R1, Mina: Developer until.*\n- R2, Ben: waits; room at/);
    await room.pass(40);
    put("Mina", 1, 1);
    await room.pass(5);
    expect(put("Ben", ben, 0).kind).toBe("done");
  });

  test("what is in already is taken at its word", async () => {
    put("Mina", start("Mina", `${RC} prints:2`), 0);
    start("Ben", RC);
    expect(room.asks("Ben", "/run next").code).toBe("ERR_TRAYS_FULL");
    expect(room.press("Ben", "It is in already")).toContain("left in the developer");
  });

  test("a wet print in the wash begins everybody's wash again, and they are told; a film's wash goes on", async () => {
    const through = async (person: string, run: number, steps: readonly number[]) => {
      for (const [step, seconds] of steps.entries()) {
        put(person, run, step);
        await room.pass(seconds);
      }
    };
    await through("Mina", start("Mina", RC), [60, 30, 60]);
    put("Mina", 1, 3);
    await through("Ben", start("Ben", RC), [60, 30, 60]);
    room.news();
    put("Ben", 2, 3);
    await room.pass(1);
    // Its run is named once: by the last line here, by the heading on the page, by the title of a push.
    expect(room.news("Mina")).toEqual([
      expect.stringMatching(
        /^\*\*A wet print came into the wash: wash 5 min again\*\*, until [^R]+\n_R1, trays 1_$/,
      ),
    ]);
    const toBen = room.heard.filter(({ personId }) => personId === "room:ben");
    expect(toBen.map(({ text }) => text).join("\n")).not.toContain("A wet print");
    expect(room.asks("Mina", "/run status").reply.text).toContain("**4:59** left in the wash");
    await room.pass(299);
    expect(room.news("Mina").join("\n")).toContain("Take it out");
  });

  test("a line in use stays on the list", () => {
    start("Mina", RC);
    expect(room.asks("Ada", "/tray set line:1 remove:yes", "aide").code).toBe("ERR_TRAYS_BUSY");
  });
});

describe("prints beside a film", () => {
  test("the plan says whose calls would meet", async () => {
    room.says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1");
    room.says("Mina", "/run start");
    room.says("Mina", "/run next");
    expect(room.says("Mina", RC)).not.toContain("Your film R1");
    await room.pass(60);
    expect(room.says("Mina", `${FIBRE} washaid:yes`)).toContain(
      "Your film R1 calls you before these prints are fixed",
    );
  });

  test("the film's own turns are reckoned without the trays", () => {
    start("Ben", RC);
    room.says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1");
    const turns = room.asks("Mina", "/class turns");
    expect(turns.kind).toBe("done");
    expect(turns.reply.fields?.["tanks"]).toBe(1);
    expect(turns.reply.text).toContain("**Trays 1**: empty.\n1. Ben (R1): put in now");
  });

  test("with nothing but prints under way the turns are those at the trays", () => {
    put("Ben", start("Ben", `${RC} prints:2`), 0);
    start("Ola", RC);
    room.says("Mina", "/mine language language:de");
    expect(room.says("Mina", "/class turns")).toBe(
      "**Schalen 1**: darin Ben (R1).\n1. Ola (R2): einlegen 18:01:05",
    );
  });

  test("who waits for a tank and who waits for the trays are both in the turns, each in order, whichever plan is newer", () => {
    const film = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20";
    put("Ben", start("Ben", `${RC} prints:2`), 0);
    start("Ola", RC);
    room.says("Mina", `${film} tank:1`);
    room.says("Mina", RC);
    room.says("Rui", RC);
    room.says("Rui", `${film} tank:2`);
    const { reply } = room.asks("Mina", "/class turns");
    const text = room.says("Mina", "/class turns");
    expect(text).toMatch(/1\. .*Mina \(P3\).*Rui \(P6\)|1\. .*Rui \(P6\).*Mina \(P3\)/);
    expect(text).toMatch(
      /\*\*Trays 1\*\*: Ben \(R1\) in them\.\n1\. Ola \(R2\): put in 18:01:05\n2\. Mina \(P4\): put in .*\n3\. Rui \(P5\): put in /,
    );
    const [trays] = (reply.fields?.["trays"] ?? []) as { waiting: { fromMs: number }[] }[];
    const moments = trays?.waiting.map(({ fromMs }) => fromMs) ?? [];
    expect(moments).toHaveLength(3);
    expect(moments).toEqual(moments.toSorted((a, b) => a - b));
    // Prints begun take nothing from the film that waits, nor the other way round.
    room.says("Mina", "/run start plan:P4");
    expect(room.asks("Mina", "/class turns").reply.text).toMatch(/Mina \(P3\)[^]*Mina \(R3\): put in /);
    room.says("Rui", "/run start plan:P6");
    expect(room.asks("Mina", "/class turns").reply.text).toMatch(/Rui \(R4\)[^]*Rui \(P5\): put in /);
  });
});

describe("fixer for prints that last", () => {
  test("too much silver by strip is refused for fibre, and a work print may go in", () => {
    room.says("Ada", "/batch test batch:B3 silver:0.6", "aide");
    const refused = room.asks("Mina", FIBRE);
    expect(refused.code).toBe("ERR_PRINT_SILVER");
    expect(refused.reply.text).toContain("**B3 carries 0.6 g of silver in a litre**");
    expect(room.asks("Mina", `${FIBRE} lasting:no`).kind).toBe("done");
    expect(room.asks("Mina", RC).kind).toBe("done");
  });

  test("film's fixer is never a print's", () => {
    const refused = room.asks("Mina", `${RC} fixbatch:B4`);
    expect(refused.reply.text).toContain(
      "**B4, Pier Fix 1+4 is a bath for film**: paper never goes into it.",
    );
  });

  test("what is exhausted by area is refused, with what is left told", () => {
    room.says("Ada", "/batch correct batch:B3 rolls:39 reason:prints without the bot", "aide");
    expect(room.asks("Mina", `${RC} prints:2 size:8x10 in`).reply.text).toContain(
      "room for 1 print of 8x10 in",
    );
  });
});

test("without a line of trays, or an unknown one, it is said what to do", () => {
  room.says("Ada", "/tray set line:1 remove:yes", "aide");
  expect(room.asks("Mina", RC).code).toBe("ERR_NO_TRAYS");
  expect(room.says("Mina", "/tray lines")).toContain("An aide or the teacher sets one up");
  room.says("Ada", "/tray set line:3 developer:Surf Print", "aide");
  expect(room.asks("Mina", `${RC} line:2`).reply.text).toContain(
    "There is no line of trays 2. The class has 3.",
  );
});

test("all of it in German, to the last call", async () => {
  room.says("Mina", "/mine language language:de");
  room.says("Ada", "/mine language language:de", "aide");
  const said = [
    room.says("Mina", `${FIBRE} factor:12 prints:2 watertemp:12C clear:40 s`),
    room.says("Mina", "/plan curve"),
    room.says("Mina", "/run start"),
    room.says("Mina", "/run next"),
    room.says("Mina", "/run seen"),
    room.says("Mina", "/run correct temp:21C"),
    room.says("Mina", "/tray lines"),
    room.says("Mina", "/tray factor agents:metol seen:8 s"),
    room.says("Ada", "/tray black least:140 s stain:270 s", "aide"),
    room.says("Ada", "/tray set line:2 developer:Surf Print per10:2.2 factor:9 baths:2", "aide"),
    room.says("Ada", "/tray set line:2 remove:yes", "aide"),
    room.says("Mina", "/run stop"),
  ];
  await room.pass(400);
  expect(englishIn(...said, ...room.news("Mina"))).toEqual([]);
});

describe("two fixing baths", () => {
  const FIXER = "/batch mix kind:paper-fixer product:Pier Fix dilution:1+4 volume:2 l";

  test("prints go through both, the fresher one last; film's are never paired with paper's", () => {
    room.says("Ada", FIXER, "aide");
    room.says("Ada", "/tray set line:1 baths:2", "aide");
    expect(room.asks("Mina", FIBRE).reply.text).toContain("No fixing bath 1 is ready");
    expect(room.asks("Ada", "/batch pair first:B4 second:B5", "aide").reply.text).toContain(
      "**B4 is for film, B5 for paper**",
    );
    const paired = room.says("Ada", "/batch pair first:B3 second:B5", "aide");
    expect(paired).toContain("for paper. Lines of trays with two fixing baths take them");
    // 50 prints of 8x10 in per litre, then swap; 250 in all, then both new (a practitioner's page); the third rotation
    // renews both (Anchell, p. 107): both are told.
    expect(paired).toMatch(/50 prints of 8x10 in per litre.*250 in all.*third rotation.*Anchell/);
    const { fields } = room.asks("Mina", FIBRE).reply;
    const steps = fields?.["steps"] as { kind: string; seconds: number; batch: string }[];
    expect(steps.filter(({ kind }) => kind === "fix")).toMatchObject([
      { seconds: 180, batch: "B3" },
      { seconds: 180, batch: "B5" },
    ]);
    // A film goes on through one bath of its own.
    expect(
      room.asks("Ben", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20").reply.text,
    ).toContain("B4");
  });

  test("the second moves up, and the silver of each is judged by its place", () => {
    room.says("Ada", FIXER, "aide");
    room.says("Ada", "/tray set line:1 baths:2", "aide");
    room.says("Ada", "/batch pair first:B3 second:B5", "aide");
    room.says("Ada", "/batch test batch:B3 silver:1.5", "aide");
    expect(room.asks("Mina", FIBRE).kind).toBe("done");
    room.says("Ada", FIXER, "aide");
    expect(room.says("Ada", "/batch rotate fresh:B6", "aide")).toContain(
      "**B5 is bath 1 now, B6 is bath 2.**",
    );
    room.says("Ada", "/batch test batch:B6 silver:0.5", "aide");
    expect(room.asks("Mina", FIBRE).code).toBe("ERR_PRINT_SILVER");
  });
});

test("prints whose row can't be read take only themselves out, and the field is named", async () => {
  start("Mina", RC);
  put("Ben", start("Ben", RC), 0);
  room.stores.db.exec("update runs set body = json_set(body, '$.plan.leastSeconds', 3) where number = 1");
  expect(room.says("Tess", "/class mend", "teacher")).toContain("R1");
  expect(room.says("Tess", "/class mend", "teacher")).toContain("must be at least 0:15");
  expect(room.says("Mina", "/tray lines")).toContain("R2, Ben: Developer");
  await room.pass(60);
  expect(room.news("Ben").join("\n")).toContain("**Now: stop bath.**");
});
