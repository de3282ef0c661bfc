import { beforeEach, describe, expect, test } from "vitest";
import { createRoom, type Room } from "../../support/room.ts";

// The clock of the room stands at Thursday, 15 January 2026, 18:00 UTC.
const PLAN = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:2";

let room: Room;
beforeEach(() => {
  room = createRoom();
});

/** Through its steps up to this one, its bath included. */
function begin(person: string, run: number, upTo: number): void {
  for (let step = 0; step <= upTo; step += 1) room.says(person, `/run next run:${run} step:${step} sure:yes`);
}
/** What stands under the plan's two head lines. */
const third = (text: string): string => text.split("\n")[2] ?? "";
const hangsAt = (run: number): number =>
  room.stores.runs.find(1, run)?.plan.steps.findIndex(({ kind }) => kind === "dry") ?? -1;

describe("a plan in a tank that another film is in", () => {
  beforeEach(() => {
    room.says("Mina", PLAN);
    room.says("Mina", "/run start");
  });

  test("says whose it is; until when only once that film's first bath is in", async () => {
    expect(third(room.says("Ben", PLAN))).toBe("Tank 2 is in use by Mina (R1).");
    begin("Mina", 1, 0);
    // 9:00 developer, twice 0:30 rinse and 5:00 fixer, 3:00 wash and 1:00 wetting agent, 20 s between each: 21:00 in all.
    expect(third(room.says("Ben", PLAN))).toBe("Tank 2 is in use by Mina (R1), until about 18:21:00.");
    await room.pass(61);
    expect(third(room.says("Ben", PLAN)), "its steps still end when they end").toBe(
      "Tank 2 is in use by Mina (R1), until about 18:21:00.",
    );
    expect(room.says("Ben", "/run start"), "whoever starts it hears it, too").toMatch(
      /^Tank 2 is in use by Mina \(R1\), until about 18:21:00\. \*\*Take /,
    );
  });

  test("says so of one's own, and in German", () => {
    begin("Mina", 1, 0);
    expect(third(room.says("Mina", PLAN))).toBe("Tank 2 is in use by your own R1, until about 18:21:00.");
    room.says("Ben", "/mine language language:de");
    expect(third(room.says("Ben", PLAN))).toBe("Dose 2 ist belegt von Mina (R1), bis etwa 18:21:00.");
    room.says("Mina", "/mine language language:de");
    expect(third(room.says("Mina", PLAN))).toBe(
      "Dose 2 ist belegt von deinem eigenen Lauf R1, bis etwa 18:21:00.",
    );
  });

  test("says nothing of it in another tank, in none, and once the film hangs", () => {
    begin("Mina", 1, 0);
    expect(third(room.says("Ben", PLAN.replace("tank:2", "tank:3")))).toBe("");
    expect(third(room.says("Ben", PLAN.replace(" tank:2", "")))).toBe("");
    begin("Mina", 1, hangsAt(1));
    expect(third(room.says("Ben", PLAN))).toBe("");
  });
});
