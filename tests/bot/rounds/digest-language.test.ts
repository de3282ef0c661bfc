import { describe, expect, test } from "vitest";
import { createDigest, type Digest } from "../../../bot/rounds/digest.ts";
import { DEMO_KEY } from "../../../bot/demo/demo.ts";
import type { Delivery } from "../../../bot/chat/port.ts";
import { ENGLISH_WORDS } from "../../support/english.ts";
import { createRoom, type Room } from "../../support/room.ts";

/* Who is told something unasked reads it in their own language: the class in its own, each person in theirs. */

const FIXER =
  "/batch mix kind:fixer product:Pier Fix dilution:1+4 volume:1 l capacity:20 films/l clearing:0:45";
const PLAN = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20";
const HOUR = 3600;
const DAY = 24 * HOUR;

interface Class extends Room {
  readonly digest: Digest;
  live(seconds: number): Promise<void>;
}

/**
 * A class spoken to in German, with a teacher who reads English (Tess) and one who reads German (Jonte); a period on
 * Thursdays 20:00-22:00 UTC; it is Thursday 15 January 2026, 18:00.
 */
function open(): Class {
  const room = createRoom();
  const digest = createDigest({ stores: room.stores, clock: room.clock, log: room.log });
  const found = room.stores.classes.find(DEMO_KEY);
  if (!found) throw new Error("no demo class");
  const periods = [{ weekday: 4, startMinute: 20 * 60, endMinute: 22 * 60, name: "" }];
  room.stores.classes.setHabits(found.id, { ...found.habits, periods, language: "de" });
  room.asks("Tess", "/help", "teacher");
  room.asks("Jonte", "/mine language de", "teacher");
  return {
    ...room,
    digest,
    async live(seconds) {
      for (let past = 0; past < seconds; past += 60) {
        room.clock.advance(60);
        digest.beat(room.clock.now());
      }
      await room.tick();
    },
  };
}

const texts = (said: readonly Delivery[]): string[] => said.map(({ text }) => text);
const germanOnly = (said: readonly Delivery[]): void => {
  for (const { text, actions } of said)
    for (const part of [text.replace(/`[^`]*`/g, ""), ...actions.map(({ label }) => label)])
      expect(ENGLISH_WORDS.exec(part.replace("The Darkroom Cookbook", ""))?.[0], part).toBe(undefined);
};

describe("a warning of a bottle", () => {
  test("goes to the class in its language and to each teacher in theirs", async () => {
    const room = open();
    room.asks("Aida", FIXER, "aide");
    room.asks("Aida", "/batch correct batch:B1 rolls:18 reason:x-1", "aide");
    await room.tick();
    const toClass = room.heard.filter(({ personId }) => personId === null);
    const toJonte = room.heard.filter(({ personId }) => personId === "room:jonte");
    const toTess = room.heard.filter(({ personId }) => personId === "room:tess");
    expect(texts(toClass)).toEqual([
      "**B1: noch 2 Filme** (Pier Fix 1+4). Jetzt setzt eine Hilfskraft oder die Lehrkraft neues Fixierbad an (`/batch mix`).",
      expect.stringContaining("**B1 braucht eine Klärprobe** (Pier Fix 1+4): 18 Filme seit der letzten."),
    ]);
    expect(toClass[0]?.actions.map(({ label }) => label)).toEqual(["B1 ansehen"]);
    expect(toTess[0]?.text).toContain(
      "**2 rolls left in B1** (Pier Fix 1+4). Next: an aide or the teacher mixes new fixer (`/batch mix`).",
    );
    expect(toTess[0]?.text).toContain("18 rolls through it so far");
    expect(toTess[0]?.actions.map(({ label }) => label)).toEqual(["See B1"]);
    expect(toJonte[0]?.text).toContain("seitdem 18 Filme; Klärzeit frisch 0:45. Grenzen: wie beim Ansetzen");
    expect([toTess.length, toJonte.length]).toEqual([2, 2]);
    germanOnly([...toClass, ...toJonte]);
  });

  test("that is used up, short, about to go out of date and out of date is German from end to end", async () => {
    const room = open();
    room.asks("Aida", FIXER, "aide");
    room.asks("Aida", "/batch mix kind:developer product:House MQ dilution:stock volume:300 ml", "aide");
    room.asks("Aida", `${FIXER} full:6 days part:6 days`, "aide");
    room.asks("Aida", "/batch correct batch:B1 rolls:20 reason:x-1", "aide");
    room.asks("Aida", "/batch correct batch:B2 ml:-200 reason:x-1", "aide");
    await room.tick();
    room.away(4 * DAY + HOUR);
    await room.live(60);
    room.away(2 * DAY);
    await room.live(60);
    const said = texts(room.heard.filter(({ personId }) => personId === null));
    for (const part of [
      "**B1 ist verbraucht: nicht mehr nehmen.** Pier Fix 1+4: schon 20 Filme, und kein weiterer passt mehr. Nimm stattdessen **B3**. Das alte Bad kommt in die Silbersammlung, nie in den Ausguss (`/batch discard`).",
      "**In B2 ist nicht genug für einen Film** (House MQ Stammlösung): 100 ml.",
      "**B3 läuft in 2 Tagen ab** (Pier Fix 1+4, noch 20 Filme), am ",
      "**B3 ist abgelaufen: nicht mehr nehmen.** Pier Fix 1+4: haltbar bis ",
    ])
      expect(said.join("\n")).toContain(part);
    germanOnly(room.heard.filter(({ personId }) => personId !== "room:tess"));
  });
});

describe("a run whose bottle goes bad", () => {
  test("is turned to another in the words of its owner, whoever emptied it and whatever the class reads", async () => {
    const room = open();
    for (const line of [FIXER, FIXER]) room.asks("Aida", line, "aide");
    room.asks("Bendix", "/mine language de");
    for (const person of ["Mina", "Bendix"]) {
      room.asks(person, PLAN);
      room.asks(person, "/run start");
    }
    room.asks("Aida", "/batch correct batch:B1 rolls:20 reason:x-1", "aide");
    await room.tick();
    const said = (person: string): string =>
      texts(room.heard.filter(({ personId, text }) => personId === person && text.includes("B1"))).join("\n");
    expect(said("room:mina")).toContain(
      "**Take B2, not B1**, when it is time for the fixer. B1: it has done 20 rolls, and not one more fits.",
    );
    expect(said("room:bendix")).toContain(
      "**Nimm B2, nicht B1**, wenn dieses Bad an der Reihe ist: Fixierbad. B1: schon 20 Filme, und kein weiterer passt mehr. Dein Plan ist geändert.",
    );
    room.asks("Aida", "/batch correct batch:B2 rolls:20 reason:x-1", "aide");
    await room.tick();
    expect(texts(room.heard).join("\n")).toContain(
      "**Gieß B2 nicht ein.** Schon 20 Filme, und kein weiterer passt mehr, und ein anderes Fixierbad ist nicht bereit.",
    );
    germanOnly(room.heard.filter(({ personId }) => personId === "room:bendix"));
  });
});

describe("the digests", () => {
  test("before a period the class reads German, the picture too", async () => {
    const room = open();
    room.asks("Aida", FIXER, "aide");
    room.asks("Aida", "/batch mix kind:developer product:House MQ dilution:stock volume:5 l", "aide");
    room.asks("Aida", "/batch correct batch:B1 rolls:18 reason:x-1", "aide");
    room.digest.beat(room.clock.now());
    await room.live(HOUR);
    const told = room.heard.filter(({ personId, text }) => personId === null && text.includes("Kurstermin"));
    expect(texts(told)).toEqual([
      expect.stringMatching(/^\*\*Der nächste Kurstermin\*\* um ⟦\d+:time⟧, ⟦\d+:relative⟧\./),
    ]);
    expect(told[0]?.text).toContain(
      "Im Auge behalten: B1 (noch 2 Filme, lässt nach, letzte Filme, braucht eine Klärprobe).",
    );
    expect(told[0]?.text).toContain("- B2, House MQ Stammlösung: noch 5 l");
    expect(told[0]?.pictures?.[0]?.svg).toContain(">Rest und Alter<");
    expect(told[0]?.pictures?.[0]?.alt).toContain("B2, House MQ Stammlösung: noch 5 l");
    germanOnly(told);
  });

  test("what is worn is named, what is missing is to be mixed, and being late is said", async () => {
    const room = open();
    room.asks("Aida", FIXER, "aide");
    room.asks("Aida", "/batch correct batch:B1 rolls:20 reason:x-1", "aide");
    room.digest.beat(room.clock.now());
    room.away(7 * DAY + 3 * HOUR);
    await room.live(60);
    const told = room.heard.filter(({ text }) => text.includes("Vorher ansetzen"));
    expect(texts(told)).toHaveLength(1);
    expect(told[0]?.text).toMatch(
      /^\*\*2 h zu spät\*\*: Das war für den ⟦\d+:date⟧, ⟦\d+:time⟧\. Einmal davor fiel es aus\./,
    );
    expect(told[0]?.text).toContain(
      "**Vorher ansetzen: Fixierbad (nichts bereit).** Eine Hilfskraft oder die Lehrkraft.",
    );
    expect(told[0]?.text).toContain("**Nicht nehmen:** B1 (verbraucht).");
    expect(told[0]?.text).toContain("Nichts Angesetztes ist bereit.");
    germanOnly(told);
  });

  test("once a week, with a decimal comma", async () => {
    const room = open();
    room.asks("Aida", FIXER, "aide");
    room.asks("Aida", "/batch correct batch:B1 rolls:10 reason:x-1", "aide");
    room.asks("Aida", "/batch discard batch:B1 to:silver", "aide");
    room.digest.beat(room.clock.now());
    // To Monday morning, two minutes before eight.
    room.away(3 * DAY + 14 * HOUR - 120);
    await room.live(240);
    const told = room.heard.filter(({ text }) => text.includes("sieben Tagen"));
    expect(told[0]?.text).toContain("**0 Filme** in den letzten sieben Tagen entwickelt.");
    expect(told[0]?.text).toContain(
      "Angesetzt: 1 l. Entwickler verbraucht: 0 ml. Abfall: 1 l Fixierbad in die Silbersammlung.",
    );
    expect(told[0]?.text).toContain("**1 l** gebrauchtes Fixierbad mit etwa 1,0 bis 3,0 g Silber.");
    germanOnly(told);
  });
});

test("faults above chance are told to each teacher in their own language", async () => {
  const room = open();
  const now = room.clock.now();
  room.asks("Aida", FIXER, "aide");
  room.asks("Aida", "/batch mix kind:fixer product:Pier Fix volume:1 l", "aide");
  const insert = room.stores.db.prepare(
    `insert into rolls (class_id, number, person_name, film, developer, dilution, batches, outcome, ended_at, fault, body)
     values (1, ?, 'Mina', 'Lantern 400', 'House MQ', '1+1', ?, 'finished', ?, ?, '{}')`,
  );
  for (let roll = 1; roll <= 40; roll += 1) {
    const isFirst = roll <= 9;
    const isFaulty = isFirst ? roll <= 6 : roll <= 11;
    insert.run(roll, isFirst ? "B1" : "B2", now, isFaulty ? "milky" : "");
  }
  room.digest.beat(now);
  await room.live(HOUR / 2);
  const told = room.heard.filter(({ text }) => /milky|milchig/.test(text));
  expect(told.map(({ personId }) => personId).sort()).toEqual(["room:jonte", "room:tess"]);
  const to = (person: string): string => told.find(({ personId }) => personId === person)?.text ?? "";
  expect(to("room:tess")).toContain("**6 of 9 rolls through B1 show “milky”**");
  // 142,880 of 273,438,880 ways to draw 9 of 40: 1 in 1,914.
  expect(to("room:tess")).toContain("once in about 1,914");
  expect(to("room:jonte")).toContain(
    "**6 von 9 Filmen durch B1 zeigen „milchig“**; sonst sind es in diesen Wochen 2 von 31 Filmen.",
  );
  expect(to("room:jonte")).toContain("nur in etwa einem von 1.914 Fällen vor");
  germanOnly(told.filter(({ personId }) => personId === "room:jonte"));
});
