import { describe, expect, it } from "vitest";
import { aPlan } from "../../../support/make.ts";
import { createRoom, type Room } from "../../../support/room.ts";

// The clock of the room stands at Thursday, 15 January 2026, 18:00 UTC.
function withBell(to: string): Room {
  const room = createRoom();
  room.says("Iris", `/class periods days:thu from:18:00 to:${to}`, "teacher");
  return room;
}

function plans(room: Room, person: string): void {
  room.says(person, "/help");
  room.stores.plans.add(1, `room:${person.toLowerCase()}`, aPlan(), room.clock.now());
}

describe("/class turns", () => {
  it("says that all can be done, with each student's latest pour-in", () => {
    const room = withBell("20:30");
    plans(room, "Mina");
    plans(room, "Ben");
    const text = room.says("Iris", "/class turns", "teacher");
    expect(text).toContain(
      "**All films of 2 tank loads** can be dry, cut and sleeved by the bell at 20:30:00.",
    );
    // 980 s at the sink, 280 s wash, 1200 s drying, 180 s cutting before 20:30: 19:46.
    expect(text).toMatch(/1\. Ben \(P2\) and Mina \(P1\): pour in 18:00:00, at the latest \*\*19:46:00\*\*/);
  });

  it("lets films dry overnight where the bell comes sooner", () => {
    const room = withBell("18:25");
    plans(room, "Mina");
    const text = room.says("Mina", "/class turns");
    expect(text).toContain(
      "**All films of 1 tank load** can hang by the bell at 18:25:00 and dry overnight. None can be dry",
    );
    expect(text).toContain("at the latest **18:04:00**");
  });

  it("names who must wait when the sinks are too few", () => {
    const room = withBell("18:45");
    room.says("Iris", "/class setup sinks:1", "teacher");
    for (const person of ["Mina", "Ben", "Ola"]) plans(room, person);
    const { reply } = room.asks("Iris", "/class turns", "teacher");
    expect(reply.text).toContain("**The films of 2 of 3 tank loads** can hang by the bell");
    expect(reply.text).toContain("**Must wait for next time:** Ola (P3).");
    expect(reply.fields).toMatchObject({ bottleneck: "sinks", hungByBell: 2, tanks: 3 });
  });

  it("counts runs under way where they are", () => {
    const room = withBell("20:30");
    room.says("Iris", "/class setup sinks:1", "teacher");
    plans(room, "Mina");
    room.says("Mina", "/run start");
    room.says("Mina", "/run next");
    plans(room, "Ben");
    const text = room.says("Iris", "/class turns", "teacher");
    expect(text).toContain("Mina (R1): under way");
    expect(text).toMatch(/Ben \(P2\): pour in 18:16:20/);
  });

  it("knows who waits for one certain tank and who has it, and lets nobody pour in before it is free", async () => {
    const room = withBell("20:30");
    for (const { number } of room.stores.tanks.list(1)) if (number !== 2) room.stores.tanks.remove(1, number);
    for (const person of ["Mina", "Ben", "Ola"]) {
      room.says(person, "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:2");
      room.says(person, "/run start");
    }
    // Three runs go through one tank, and the class has no other.
    expect(room.says("Iris", "/class turns", "teacher")).toMatch(/^\*\*All films of 3 tank loads\*\* can /);
    expect(room.says("Iris", "/class turns", "teacher")).toContain(
      "**Tank 2**: Mina (R1) has it. Waiting for it: Ben (R2) and Ola (R3).",
    );
    room.says("Mina", "/run next run:1 step:0");
    const text = room.says("Iris", "/class turns", "teacher");
    expect(text).toContain(
      "**Tank 2**: Mina (R1) has it until about 18:21:00. Waiting for it: Ben (R2) and Ola (R3).",
    );
    expect(text).toContain("Bottleneck: a tank that somebody waits for.");
    const { reply } = room.asks("Iris", "/class turns", "teacher");
    const hangs = Date.UTC(2026, 0, 15, 18, 21);
    // Our estimate of rinsing, drying and loading a tank: 15 min. Then the same 21 min again.
    expect(reply.fields).toMatchObject({
      bottleneck: "waited-for",
      waits: [{ tank: 2, holder: "Mina (R1)", freeAtMs: hangs, waiting: ["Ben (R2)", "Ola (R3)"] }],
      loads: [
        { label: "Mina (R1)", pourInAtMs: null },
        { label: "Ben (R2)", pourInAtMs: hangs + 15 * 60_000 },
        { label: "Ola (R3)", pourInAtMs: hangs + (15 + 21 + 15) * 60_000 },
      ],
    });
    for (let step = 1; step <= 6; step += 1) room.says("Mina", `/run next run:1 step:${step} sure:yes`);
    await room.pass(1);
    expect(room.says("Iris", "/class turns", "teacher")).toContain(
      "**Tank 2**: Ben (R2) has it. Waiting for it: Ola (R3).",
    );
  });

  it("answers before the class begins, from its first minute on", () => {
    const room = createRoom();
    room.says("Iris", "/class periods days:fri from:18:00 to:20:30", "teacher");
    const { reply } = room.asks("Iris", "/class turns loads:12 developing:9:00", "teacher");
    expect(reply.fields).toMatchObject({ tanks: 12, bellAtMs: Date.UTC(2026, 0, 16, 20, 30) });
    const [first] = (reply.fields?.["loads"] ?? []) as { pourInAtMs: number }[];
    expect(first?.pourInAtMs).toBe(Date.UTC(2026, 0, 16, 18));
    expect(reply.text).toContain("Bottleneck:");
  });

  it("leaves out plans of another day, tanks that leak, and refuses a bell that is over", () => {
    const room = withBell("20:30");
    plans(room, "Mina");
    room.away(13 * 3600);
    expect(room.asks("Iris", "/class turns", "teacher").code).toBe("ERR_NOTHING_TO_FIT");
    expect(room.asks("Iris", "/class turns loads:2 by:3:00", "teacher").code).toBe("ERR_BELL_PAST");
    for (const tank of [1, 2, 3, 4]) room.says("Mina", `/tank report tank:${tank} fault:leaks`);
    const { reply } = room.asks("Iris", "/class turns loads:2 by:20:00", "teacher");
    expect(reply.fields).toMatchObject({ bottleneck: "tanks" });
  });

  it("works out thirty tanks", () => {
    const room = withBell("22:00");
    const { reply } = room.asks("Iris", "/class turns loads:30 films:2", "teacher");
    expect(reply.fields).toMatchObject({ tanks: 30 });
  });
});

describe("/run start against the bell", () => {
  it("warns of a run that would outlast it, and says what can be left", () => {
    const room = withBell("18:30");
    plans(room, "Mina");
    expect(room.says("Mina", "/run start")).toContain(
      "**The bell rings at 18:30:00.** The film hangs at 18:21:00",
    );
  });

  it("says not to pour in where the film would not even be fixed", () => {
    const room = withBell("18:10");
    plans(room, "Mina");
    expect(room.says("Mina", "/run start")).toContain("**Don't pour in.**");
  });

  it("is quiet where the run fits, and outside class", () => {
    const room = withBell("20:30");
    plans(room, "Mina");
    expect(room.says("Mina", "/run start")).not.toContain("bell");
  });
});
