import { describe, expect, test } from "vitest";
import { createRoom, type Room } from "../../support/room.ts";

/* A teacher or an aide changes somebody else's run: its owner's calls move, and they are told who did what and what is next. */

async function developing(language: "en" | "de" = "en"): Promise<Room> {
  const room = createRoom();
  if (language === "de") room.says("Mina", "/mine language language:de");
  room.says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1");
  room.says("Mina", "/run start");
  room.says("Mina", "/run next step:0");
  await room.pass(70);
  room.news();
  return room;
}

async function told(room: Room): Promise<string[]> {
  await room.tick();
  return room.news("Mina").map((text) => text.replace(/\d\d:\d\d:\d\d/g, "HH:MM:SS"));
}

describe("a teacher's correction of somebody's run", () => {
  test("of the moment of pouring", async () => {
    const room = await developing();
    room.says("Ada", "/run correct run:R1 ago:100", "teacher");
    const [text, ...others] = await told(room);
    expect(others).toEqual([]);
    expect(text).toMatch(
      /^\*\*Ada moved your calls by 30 s:\*\* this step began earlier than noted\.\nUntil \*\*HH:MM:SS\*\* in the developer\.\nPour out at HH:MM:SS, /,
    );
    expect(text).toContain("Pour out at");
  });

  test("of the temperature, with what it does to the time", async () => {
    const room = await developing();
    room.says("Ada", "/run correct run:R1 temp:22", "teacher");
    const [text] = await told(room);
    expect(text).toMatch(
      /^\*\*Ada measured 22 °C \(71\.6 °F\):\*\* this step takes \d min \d+ s in all, not 9 min\.\nUntil \*\*HH:MM:SS\*\* in the developer\./,
    );
  });

  test("of both at once is one word", async () => {
    const room = await developing("de");
    room.says("Ada", "/run correct run:R1 ago:100 temp:22", "teacher");
    const texts = await told(room);
    expect(texts).toHaveLength(1);
    expect(texts[0]).toMatch(
      /^\*\*Ada hat deine Signale um 30 s verschoben:\*\* Dieser Schritt hat früher begonnen als notiert\.\n\*\*Ada hat 22 °C gemessen:\*\* Dieser Schritt dauert insgesamt \d min \d+ s statt 9 min\.\nBis \*\*HH:MM:SS\*\* im Entwickler\.\n/,
    );
  });

  test("pressing the next step's key", async () => {
    const room = await developing();
    room.says("Ada", "/run next run:R1 sure:yes", "aide");
    const [text] = await told(room);
    expect(text).toMatch(
      /^\*\*Ada pressed "Water is in" for you\.\*\*\nUntil \*\*HH:MM:SS\*\* in the rinse 1\./,
    );
    // What is left goes on while it is read.
    expect(text).not.toMatch(/\d:\d\d left|\d\*\* left/);
  });

  test("stopping it", async () => {
    const room = await developing("de");
    room.says("Ada", "/run stop run:R1 sure:yes", "teacher");
    const [text] = await told(room);
    expect(text).toMatch(/^\*\*Ada hat diesen Lauf gestoppt:\*\* Es kommt kein Signal mehr\.\n/);
    await room.pass(600);
    expect(room.news("Mina")).toEqual([]);
  });

  test("calls their page by its run, and comes with the keys of the run", async () => {
    const room = await developing();
    room.says("Ada", "/run correct run:R1 ago:100", "teacher");
    await room.tick();
    const last = room.heard.at(-1);
    expect(last).toMatchObject({ personId: "room:mina", runs: [{ number: 1, tank: 1 }] });
    expect(last?.actions.map(({ line }) => line)).toEqual(["run next run:1 step:1", "run status run:1"]);
  });
});

test("nobody is told what they did themselves, nor of what was refused", async () => {
  const room = await developing();
  room.says("Mina", "/run correct ago:100");
  room.says("Ada", "/run next run:R1", "teacher");
  expect(await told(room)).toEqual([]);
});
