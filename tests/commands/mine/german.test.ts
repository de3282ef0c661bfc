import { describe, expect, test } from "vitest";
import { commands } from "../../../commands/index.ts";
import { speaking } from "../../../commands/speech/language.ts";
import { erasedReply, forgottenReply, showReply, statement } from "../../../commands/mine/reply.ts";
import { forms } from "../../../commands/mine/words/form.de.ts";
import { forms as helpForms } from "../../../commands/help/words/form.de.ts";
import { ENGLISH_WORDS } from "../../support/english.ts";
import { createRoom, type Room } from "../../support/room.ts";

function withARoll(room: Room, person: string): void {
  room.says(person, "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20");
  room.says(person, "/run start");
  room.says(person, "/run stop sure:yes");
}

const isGerman = (text: string): void =>
  expect(ENGLISH_WORDS.exec(text.replace(/`[^`]*`/g, ""))?.[0], text).toBe(undefined);

describe("a person's own data in German", () => {
  test("the statement says each thing the English one says", () => {
    const [kept, not, who, ...more] = speaking("de", statement).split("\n");
    expect(more).toEqual([]);
    expect(kept).toMatch(/^\*\*Was ich von dir behalte:\*\*/);
    // One German word for each thing the English sentence names, in its order.
    for (const [english, german] of [
      ["the name", "den Namen"],
      ["the language", "deine Sprache"],
      ["student, aide, teacher", "Schüler:in, Hilfskraft, Lehrkraft"],
      ["plans", "Pläne"],
      ["runs", "Läufe"],
      ["rolls", "Filme"],
      ["times", "Zeiten"],
      ["temperatures", "Temperaturen"],
      ["ratings", "Wertungen"],
      ["notes", "Notizen"],
      ["photos", "Fotos"],
      ["ledger", "im Flaschenbuch"],
      ["typed", "getippt"],
      ["devices", "Geräte"],
    ]) {
      expect(statement()).toContain(english);
      expect(kept).toContain(german);
    }
    expect(not).toMatch(/^\*\*Was ich nicht behalte:\*\* Geburtsdatum, Adresse, wo du bist/);
    expect(who).toContain("Sicherungskopien enthalten dasselbe, bis sie ersetzt werden.");
    isGerman(speaking("de", statement));
  });

  test("what is held is counted, one and many", () => {
    const held = { name: "Mina", joinedAt: 0, photos: 0, messages: 12, ledgerLines: 1, devices: 1 };
    const say = (count: number): string =>
      speaking(
        "de",
        () => showReply({ ...held, plans: count, runs: count, rolls: count, prints: count }).text,
      );
    expect(say(1)).toContain(
      "**Von dir, Mina,** seit ⟦0:date⟧: 1 Plan, 1 Lauf, 1 Film, 0 Fotos, 1 Abzug, 12 Nachrichten, 1 Zeile im Flaschenbuch und 1 Gerät.",
    );
    expect(say(2)).toContain("2 Pläne, 2 Läufe, 2 Filme");
    const kept = (rolls: number): string => speaking("de", () => erasedReply(rolls).text);
    expect(kept(1)).toContain("1 Film von dir bleibt ohne Namen im Filmbuch.");
    expect(kept(2)).toContain("2 Filme von dir bleiben ohne Namen im Filmbuch.");
    expect(speaking("de", () => forgottenReply(1).text)).toContain("1 Film bleibt ohne Namen im Filmbuch.");
    expect(speaking("de", () => erasedReply(2, 1).text)).toContain(
      "2 Filme und 1 Abzug von dir bleiben ohne Namen im Buch.",
    );
  });

  test("each command and refusal answers in German, to the last word", () => {
    const room = createRoom();
    room.asks("Tess", "/mine language de", "teacher");
    expect(room.asks("Mina", "/mine language de").reply.text).toBe(
      "Ab jetzt spreche ich **Deutsch** mit dir: Antworten, Signale und Erinnerungen. Der Kanal des Kurses behält seine eigene Sprache.",
    );
    withARoll(room, "Mina");
    withARoll(room, "Bendix");
    const says = (person: string, line: string, role?: "teacher"): string => {
      const { reply } = room.asks(person, line, role);
      for (const { label } of reply.actions ?? []) isGerman(label);
      isGerman(reply.text);
      return reply.text;
    };
    says("Mina", "/mine show");
    expect(says("Mina", "/mine export")).toContain("als eine Datei");
    expect(says("Mina", "/mine erase")).toContain("**Das lässt sich nicht zurücknehmen.**");
    expect(says("Mina", "/mine erase name:Ben")).toContain(
      "**So heißt du bei mir nicht. Es wurde nichts gelöscht.**",
    );
    expect(says("Tess", "/mine erase name:Tess", "teacher")).toContain(
      "Du bist die einzige Lehrkraft des Kurses.",
    );
    expect(says("Tess", "/class forget person:Ben", "teacher")).toBe(
      "In diesem Kurs gibt es niemanden namens Ben.",
    );
    expect(says("Tess", "/class forget person:Bendix", "teacher")).toContain(
      "`/class forget person:Bendix sure:yes`",
    );
    expect(says("Tess", "/class forget person:Bendix sure:yes", "teacher")).toContain(
      "1 Film bleibt ohne Namen",
    );
    room.asks("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20");
    room.asks("Mina", "/run start");
    expect(says("Mina", "/mine erase name:Mina")).toMatch(
      /^R\d läuft noch: Ein Film braucht seine Signale\. Mach ihn fertig oder brich ihn ab\.$/,
    );
    room.asks("Mina", "/run stop sure:yes");
    expect(says("Mina", "/mine erase name:Mina")).toContain("**Erledigt.** Ich kenne dich nicht mehr.");
  });

  test("English is spoken again to whoever asks for it", () => {
    const room = createRoom();
    room.asks("Mina", "/mine language de");
    expect(room.asks("Mina", "/mine language en").reply.text).toContain(
      "From now on I speak **English** with you",
    );
    expect(room.asks("Mina", "/mine show").reply.text).toContain(
      "**What I keep about you:** the name you gave",
    );
  });
});

test("who is gone is somebody in the class's language in notes, and in the reader's where a name stood", () => {
  const room = createRoom();
  room.asks("Tess", "/class setup language:de", "teacher");
  room.asks("Mina", "/mine language de");
  const line = "/batch mix kind:stop product:Pier Stop dilution:1+19 volume:1 l";
  room.asks("Bendix", line, "aide");
  room.asks("Tess", "/batch test batch:B1 ph:5 note:Bendix sagt es", "teacher");
  room.asks("Tess", "/class forget person:Bendix sure:yes", "teacher");
  const german = room.asks("Mina", "/batch ledger B1").reply.text;
  expect(german).toContain("angesetzt: 1 l (Jemand)");
  expect(german).toContain("geprüft: pH 5, jemand sagt es (Tess)");
  expect(room.asks("Tess", "/batch ledger B1", "teacher").reply.text).toContain("mixed 1 l (Somebody)");
});

test("every form of these folders is in German, option by option", () => {
  for (const [name, form] of Object.entries({ ...forms, ...helpForms })) {
    const command = commands.find((each) => each.name === name);
    expect(Object.keys(form.options).sort(), name).toEqual(Object.keys(command?.options.shape ?? {}).sort());
    for (const text of [form.summary, ...Object.values(form.options)]) {
      expect(text.length).toBeGreaterThan(0);
      expect(text.length).toBeLessThanOrEqual(100);
      isGerman(text);
    }
  }
  const named = commands
    .map(({ name }) => name)
    .filter((name) => /^(help$|mine |class (forget|phone))/.test(name));
  expect(Object.keys({ ...forms, ...helpForms }).sort()).toEqual(named.sort());
});
