import { describe, expect, it } from "vitest";
import { readJson } from "../../../commands/roll/export/file.ts";
import { createRoom, type Room } from "../../support/room.ts";

function withARoll(room: Room, person: string): void {
  room.says(person, "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20");
  room.says(person, "/run start");
  room.says(person, "/run stop sure:yes");
}

describe("/mine show", () => {
  it("says in plain words what is kept, and counts it", () => {
    const room = createRoom();
    withARoll(room, "Mina");
    const text = room.says("Mina", "/mine show");
    expect(text).toContain("**What I don't keep:**");
    expect(text).toContain("**Of you, Mina,** since 15 Jan 2026: 1 plan, 1 run, 1 roll, 0 photos");
  });
});

describe("/mine export", () => {
  it("holds everything of one person and nothing of another", () => {
    const room = createRoom();
    withARoll(room, "Mina");
    withARoll(room, "Bendix");
    const [file] = room.asks("Mina", "/mine export").reply.attachments ?? [];
    expect(file).toMatchObject({ name: "mine.json", mediaType: "application/json" });
    const mine = JSON.parse(file?.content ?? "");
    expect(mine).toMatchObject({
      format: "sinkside person",
      version: 1,
      person: { name: "Mina", role: "student", joined_at: "2026-01-15T18:00:00.000Z" },
      plans: [{ plan: 1, tenthsC: 200 }],
      runs: [{ run: 1, phase: { kind: "stopped" } }],
    });
    expect(file?.content).not.toContain("Bendix");
    // Its rolls are in the log's own format.
    const rolls = JSON.stringify({ format: "sinkside log", version: 1, rolls: mine.rolls });
    expect(readJson(rolls).map(({ roll, person }) => [roll, person])).toEqual([[1, "Mina"]]);
  });
});

describe("/mine erase", () => {
  it("does nothing before the name is typed, nor with another name", () => {
    const room = createRoom();
    withARoll(room, "Mina");
    expect(room.says("Mina", "/mine erase")).toContain("**This can't be taken back.**");
    expect(room.says("Mina", "/mine erase name:Ben")).toContain("Nothing is erased.");
    expect(room.stores.members.findByName(1, "Mina")).toBeDefined();
  });

  it("waits for a film that is still under way", () => {
    const room = createRoom();
    room.says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20");
    room.says("Mina", "/run start");
    expect(room.says("Mina", "/mine erase name:Mina")).toBe(
      "R1 is still under way: a film needs its calls. Finish or stop it first.",
    );
  });

  it("keeps a class from losing its only teacher", () => {
    const room = createRoom();
    room.says("Iris", "/help", "teacher");
    expect(room.asks("Iris", "/mine erase name:Iris", "teacher").code).toBe("ERR_LAST_TEACHER");
    room.says("Ola", "/help", "teacher");
    expect(room.says("Iris", "/mine erase name:Iris", "teacher")).toContain("**Done.**");
  });

  it("lets the same person come back as somebody new", () => {
    const room = createRoom();
    withARoll(room, "Mina");
    room.says("Mina", "/mine erase name:mina");
    expect(room.says("Mina", "/mine show")).toContain("0 plans, 0 runs, 0 rolls");
  });
});

describe("/class forget", () => {
  it("is the teacher's, and asks first", () => {
    const room = createRoom();
    withARoll(room, "Mina");
    room.says("Iris", "/help", "teacher");
    expect(room.asks("Ben", "/class forget person:Mina sure:yes").code).toBe("ERR_ROLE");
    expect(room.says("Iris", "/class forget person:Mina", "teacher")).toContain("sure:yes");
    expect(room.says("Iris", "/class forget person:Mina sure:yes", "teacher")).toContain(
      "1 roll stays in the log, nameless.",
    );
    expect(room.stores.members.findByName(1, "Mina")).toBeUndefined();
    expect(room.asks("Iris", "/class forget person:Mina", "teacher").code).toBe("ERR_UNKNOWN_PERSON");
  });
});

describe("/class erase", () => {
  it("asks for the class's name, tells the class, and can be taken back", async () => {
    const room = createRoom();
    const name = room.stores.classes.get(1)?.name ?? "";
    expect(room.says("Iris", "/class erase", "teacher")).toContain("**This erases the class:**");
    expect(room.says("Iris", "/class erase name:other", "teacher")).toContain("Nothing is planned.");
    expect(room.asks("Mina", `/class erase name:${name}`).code).toBe("ERR_ROLE");
    expect(room.says("Iris", `/class erase name:${name}`, "teacher")).toContain("in 7 d");
    await room.pass(1);
    expect(room.news().at(-1)).toContain(
      "**This class and everything in it will be erased on 22 Jan 2026.**",
    );
    // Asked twice, it is planned once.
    room.says("Iris", `/class erase name:${name}`, "teacher");
    expect(room.press("Iris", "Keep the class after all", "teacher")).toContain("**The class stays.**");
    await room.pass(1);
    expect(room.news().at(-1)).toContain("**The class stays after all:**");
    expect(room.stores.erasures.due(Number.MAX_SAFE_INTEGER)).toEqual([]);
    expect(room.says("Iris", "/class erase keep:yes", "teacher")).toContain("Nothing was planned");
  });
});
