import { beforeEach, describe, expect, test } from "vitest";
import { CAUSES } from "../../../commands/print/fault/cause-table.ts";
import { weighCauses } from "../../../commands/print/fault/weigh.ts";
import { PRINT_LOOKS } from "../../../commands/print/looks.ts";
import { createRoom, type Room } from "../../support/room.ts";

interface Offered {
  readonly code: string;
  readonly likelihood: string;
  readonly for: readonly string[];
  readonly source: string;
}

let room: Room;
const causesOf = (line: string, person = "Mina"): Offered[] =>
  room.asks(person, line).reply.fields?.["causes"] as unknown as Offered[];

beforeEach(() => {
  room = createRoom();
});

describe("looks of prints and their published causes", () => {
  // Each with where it is published; the sources are told in the reply.
  test.each([
    ["mottled", "over-exposure", "US Army SS0509"],
    ["pale", "under-exposure", "NAVEDTRA 14209, p. 291"],
    ["flat", "pulled-early", "chestofbooks.com, 588"],
    ["grey", "forced", "chestofbooks.com, 590"],
    ["greenish", "too-much-bromide", "chestofbooks.com, 591"],
    ["hard", "hard-negative", "Book of Photography"],
    ["veiled", "safelight", "safelight pages"],
    ["dull-highlights", "safelight", "safelight pages"],
    ["yellow", "warm-developer", "section 573"],
    ["white-patches", "weak-developer", "section 573"],
    ["brown-patch", "out-of-liquid", "Amateur Work"],
    ["round-marks", "air-under", "p. 291"],
    ["bleached", "floated", "Wellington handbook, p. 69"],
    ["stained", "worn-fixer", "p. 249"],
    ["unsharp", "focus", "US Navy"],
  ] as const)("%s comes first of all from %s", (look, code, source) => {
    room.says("Mina", "/print log seconds:10");
    const [first] = causesOf(`/print fault look:${look}`);
    expect(first?.code).toBe(code);
    expect(first?.source).toContain(source);
  });

  test("each look has a cause, and each cause a look", () => {
    for (const look of PRINT_LOOKS) expect(weighCauses(look, []).length).toBeGreaterThan(0);
    for (const { looks } of CAUSES) expect(Object.keys(looks).length).toBeGreaterThan(0);
  });
});

describe("weighed by the print's own record", () => {
  test("pale and taken out after 30 s: it was too early; after 2 min it was too little light", () => {
    room.says("Mina", "/print log seconds:10 develop:30 s");
    expect(causesOf("/print fault look:pale")[0]).toMatchObject({
      code: "pulled-early",
      for: ["developed-short"],
    });
    room.says("Mina", "/print log seconds:10 develop:2:00");
    expect(causesOf("/print fault look:pale")[0]).toMatchObject({ code: "under-exposure" });
  });

  test("a cold developer speaks for itself", () => {
    room.says("Mina", "/print log seconds:10 temp:14C develop:2:00");
    expect(causesOf("/print fault look:pale")[0]).toMatchObject({ code: "cold-developer", for: ["cold"] });
  });

  test("beside a better print of the same frame: how much more or less light it had", () => {
    room.stores.classes.ensure("x", "x", 0);
    room.says("Mina", "/print log seconds:20 frame:3");
    room.stores.db.prepare("update prints set roll = 1").run();
    room.says("Mina", "/print rate print:V1 rating:5");
    room.says("Mina", "/print log as:V1 seconds:10");
    const text = room.says("Mina", "/print fault print:V2 look:pale");
    expect(text).toContain("it got 1 stop less light than V1, which came out well");
    expect(causesOf("/print fault print:V2 look:pale")[0]).toMatchObject({
      code: "under-exposure",
      likelihood: "likely",
    });
    room.says("Mina", "/print log as:V1 seconds:40");
    expect(causesOf("/print fault print:V3 look:dark")[0]?.for).toContain("more-light");
  });

  test("the same look on others' prints speaks for what everybody uses", () => {
    for (const person of ["Ben", "Iris"]) {
      room.says(person, "/print log seconds:10");
      room.says(person, "/print fault look:veiled cause:unknown");
    }
    room.says("Mina", "/print log seconds:10");
    const causes = causesOf("/print fault look:veiled");
    expect(causes[0]).toMatchObject({ code: "safelight", for: ["others-alike"] });
    expect(room.says("Mina", "/print fault look:veiled")).toContain(
      "2 prints of others in these days look the same",
    );
  });

  test("the bottle it was developed in is looked up as it stood then", () => {
    room.says("Ada", "/batch mix kind:developer product:House MQ dilution:1+9 volume:1 l", "aide");
    room.says("Mina", "/print log seconds:10 developer:B1 develop:2:00");
    expect(causesOf("/print fault look:white-patches")[0]).toMatchObject({ code: "weak-developer" });
    expect(room.says("Mina", "/print fault look:white-patches")).toContain("developer B1 was in order");
  });

  test("so is a paper developer's", () => {
    room.says("Ada", "/batch mix kind:paper-developer product:Dock Print dilution:1+9 volume:1 l", "aide");
    room.says("Mina", "/print log seconds:10 developer:B1 develop:2:00");
    expect(room.says("Mina", "/print fault look:white-patches")).toContain("developer B1 was in order");
  });
});

test("what it was is noted, found again, and taken back", () => {
  room.says("Mina", "/print log seconds:10 title:Pier");
  expect(room.says("Mina", "/print fault")).toContain("**What do you see on V1?**");
  expect(room.asks("Mina", "/print fault look:grey cause:gremlins").code).toBe("ERR_UNKNOWN_CAUSE");
  room.says("Mina", "/print fault look:grey cause:forced");
  expect(room.says("Mina", "/print show")).toContain("Fault: grey, put down to: too little exposure");
  expect(room.says("Ben", "/print find fault:yes")).toContain("**1 print**");
  room.says("Mina", "/print fault look:none");
  expect(room.says("Ben", "/print find fault:yes")).toContain("No print is like that");
});
