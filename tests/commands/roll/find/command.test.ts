import { describe, expect, it } from "vitest";
import { readJson } from "../../../../commands/roll/export/file.ts";
import { createRoom, type Room } from "../../../support/room.ts";
import { aNewRoll, takeLog } from "../../../support/rolls.ts";

function aClassWithRolls(): Room {
  const room = createRoom();
  for (const person of ["Mina", "Ben"]) room.says(person, "/help");
  const add = (personName: string, film: string, tank: number): void =>
    void room.stores.rolls.add(
      aNewRoll({
        personName,
        personId: `room:${personName.toLowerCase()}`,
        film,
        tank,
        runId: null as never,
      }),
    );
  for (let count = 0; count < 9; count += 1) add("Mina", "Lantern 400", 1);
  add("Ben", "Quay 100", 2);
  return room;
}

describe("/roll find", () => {
  it("pages with buttons that keep the search", () => {
    const room = aClassWithRolls();
    expect(room.says("Ben", "/roll find film:Lantern 400")).toContain("**9 rolls**, page 1 of 2.");
    expect(room.press("Ben", "Older")).toContain("**9 rolls**, page 2 of 2.");
    expect(room.press("Ben", "Newer")).toContain("page 1 of 2");
  });

  it("takes a mistyped value for the one that was meant, and says so", () => {
    const room = aClassWithRolls();
    expect(room.says("Ben", "/roll find film:lantren 400 person:mina")).toContain(
      'I took "lantren 400" for Lantern 400.',
    );
    expect(room.says("Ben", "/roll find film:quay")).toContain("**1 roll**");
  });

  it("refuses a value the log has not, with the nearest", () => {
    const room = aClassWithRolls();
    expect(room.asks("Ben", "/roll find film:Kelp").code).toBe("ERR_UNKNOWN_VALUE");
    expect(room.asks("Ben", "/roll find person:Nobody").code).toBe("ERR_UNKNOWN_VALUE");
    expect(room.asks("Ben", "/roll find when:someday").code).toBe("ERR_NO_DAY");
    expect(room.asks("Ben", "/roll find from:2026-03-02 to:2026-03-01").code).toBe("ERR_DAYS_ORDER");
  });

  it("narrows by words, days, fault, rating and lateness in one line", () => {
    const room = aClassWithRolls();
    room.says("Ben", "/roll rate roll:L10 rating:4");
    room.says("Ben", "/roll note roll:L10 note:harbour at dusk");
    room.says("Ben", "/roll fault roll:L10 look:thin cause:short-development");
    expect(room.says("Ben", "/roll find harb dusk fault:thin rating:4 when:2026-01 batch:B9")).toContain(
      "No roll in the log is like that.",
    );
    const found = room.says("Ben", "/roll find harb dusk fault:thin rating:4 when:2026-01");
    expect(found).toContain("**1 roll**");
    expect(found).toContain("rated 4 of 5, fault: thin");
    expect(createRoom().says("Ben", "/roll find")).toContain("The log is empty yet");
    expect(room.says("Ben", "/roll find late:yes")).toContain("No roll in the log is like that.");
    expect(room.says("Ben", "/roll find fault:any")).toContain("**1 roll**");
  });

  it("totals what it found", () => {
    const room = aClassWithRolls();
    room.says("Ben", "/roll rate roll:L10 rating:2");
    room.says("Mina", "/roll rate roll:L9 rating:5");
    expect(room.says("Ben", "/roll find")).toContain("3.5 of 5 on average (2 rated).");
  });

  it("stands names that look like markup or like its own marks", () => {
    const room = createRoom();
    room.stores.rolls.add(aNewRoll({ film: "**<@everyone>** 'x' OR", runId: null as never }));
    expect(room.says("Ben", "/roll find")).not.toContain("<@everyone>");
  });
});

describe("/roll show", () => {
  it("draws the run as it really went", () => {
    const room = aClassWithRolls();
    const { reply } = room.asks("Ben", "/roll show L3");
    expect(reply.pictures?.[0]?.alt).toContain("Developer: 9:06 of 9:00");
    expect(reply.pictures?.[0]?.svg).toMatch(/^<svg [^]*<\/svg>$/);
    expect(reply.text).toContain("**L3** Mina");
  });

  it("shows a person their own newest roll", () => {
    const room = aClassWithRolls();
    expect(room.says("Ben", "/roll show")).toContain("**L10** Ben");
    expect(room.asks("Ola", "/roll show").code).toBe("ERR_NO_ROLL_YET");
  });
});

describe("/roll note and rate", () => {
  it("are the owner's, an aide's or the teacher's", () => {
    const room = aClassWithRolls();
    expect(room.asks("Ben", "/roll rate roll:L1 rating:1").code).toBe("ERR_NOT_YOUR_ROLL");
    expect(room.asks("Ben", "/roll note roll:L1 note:x").code).toBe("ERR_NOT_YOUR_ROLL");
    expect(room.asks("Ben", "/roll fault roll:L1 look:thin cause:unknown").code).toBe("ERR_NOT_YOUR_ROLL");
    expect(room.asks("Iris", "/roll rate roll:L1 rating:1", "aide").kind).toBe("done");
  });
});

describe("/roll export", () => {
  it("is the teacher's, and holds what was asked for", () => {
    const room = aClassWithRolls();
    expect(room.asks("Ben", "/roll export").code).toBe("ERR_ROLE");
    const { reply } = room.asks("Iris", "/roll export film:Quay 100", "teacher");
    expect(takeLog(room.stores, reply).trim().split("\r\n")).toHaveLength(2);
    const json = room.asks("Iris", "/roll export as:json", "teacher").reply;
    expect(json.fields).toMatchObject({ rolls: 10, isCapped: false });
    expect(readJson(takeLog(room.stores, json)).map(({ roll }) => roll)).toEqual([
      10, 9, 8, 7, 6, 5, 4, 3, 2, 1,
    ]);
  });

  it("goes on before a roll, whether that one is there or not", () => {
    const room = aClassWithRolls();
    for (const [before, left] of [
      ["L3", [2, 1]],
      ["3", [2, 1]],
      ["L999", [10, 9, 8, 7, 6, 5, 4, 3, 2, 1]],
      ["L1", []],
    ] as const) {
      const { reply } = room.asks("Iris", `/roll export as:json before:${before}`, "teacher");
      expect(readJson(takeLog(room.stores, reply)).map(({ roll }) => roll)).toEqual(left);
    }
    expect(room.asks("Iris", "/roll export before:yesterday", "teacher")).toMatchObject({
      code: "ERR_UNKNOWN_ROLL",
      reply: { text: "There is no roll yesterday. Write its number, like L1200." },
    });
  });
});
