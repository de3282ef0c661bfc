import { afterAll, beforeAll, expect, test } from "vitest";
import type { CommandCard } from "../../../../bot/chat/room/card.ts";
import type { FeedEvent } from "../../../../bot/chat/room/wire.ts";
import { renderPicture } from "../../../../bot/chat/picture.ts";
import { DEMO_KEY, inventDemo } from "../../../../bot/demo/demo.ts";
import type { Language } from "../../../../store/shapes/language.ts";
import { MOST_PHOTO_BYTES } from "../../../../commands/roll/photo/photo.ts";
import { englishIn } from "../../../support/english.ts";
import { aNewRoll } from "../../../support/rolls.ts";
import { type OpenPage, type RoomServer, startRoom, type Visitor } from "../../../support/room-server.ts";

/* A person's language from the page's first word to the last call, over a real socket. */

let room: RoomServer;

beforeAll(async () => {
  room = await startRoom();
});
afterAll(() => room.stop());

/** Somebody whose page greets in this language. */
async function enter(name: string, language: Language): Promise<{ visitor: Visitor; page: OpenPage }> {
  const visitor = room.visitor();
  await visitor.joinDemo(name);
  const page = await visitor.open();
  const before = page.got.length;
  page.send({ type: "hello", after: null, language });
  await page.hears("welcome", (message) => page.got.indexOf(message) >= before);
  return { visitor, page };
}

/** What was said to the page of this kind, newest last. */
const said = (page: OpenPage, kind: FeedEvent["kind"]): FeedEvent[] =>
  page.got.flatMap((message) =>
    message.type === "events" ? message.events.filter((event) => event.kind === kind) : [],
  );

async function cardsIn(visitor: Visitor, language: string): Promise<CommandCard[]> {
  return (await (await visitor.get(`/api/commands?language=${language}`)).json()) as CommandCard[];
}

test("a page that greets in German is answered, completed and called in German", async () => {
  const { page } = await enter("Frieda", "de");
  await page.says("/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20,5 tank:1");
  const plan = said(page, "reply").at(-1);
  expect(plan?.text).toContain("20,5 °C");
  expect(plan?.text).toContain("Entwickler");
  expect(englishIn(plan?.text ?? "", ...(plan?.actions ?? []).map(({ label }) => label))).toEqual([]);

  page.send({ type: "complete", seq: 7, name: "plan", option: "tank", typed: "", others: {} });
  const { choices } = await page.hears("choices", ({ seq }) => seq === 7);
  expect(choices.length).toBeGreaterThan(0);
  expect(choices.map(({ label }) => label).join(" ")).toMatch(/Dose|Spirale/);
  expect(englishIn(...choices.map(({ label }) => label))).toEqual([]);

  await page.says("/run start");
  await page.says("/run next");
  await room.pass(0);
  const call = await page.hears("events", ({ events }) => events.some(({ kind }) => kind === "cue"));
  const [first] = call.events.filter(({ kind }) => kind === "cue");
  expect(first?.text).toMatch(/bewegen|kippen/);
  expect(englishIn(first?.text ?? "")).toEqual([]);
});

test("a page that changes its language sees its film in it at once, and is answered in it from then on", async () => {
  const { page } = await enter("Mina", "en");
  await page.says("/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:2");
  await page.says("/run start");
  await page.says("/run next");
  await page.hears("views", ({ views }) => views[0]?.title === "Developer");
  page.send({ type: "language", language: "de" });
  const { views } = await page.hears("views", (message) => message.views[0]?.title === "Entwickler");
  expect(englishIn(JSON.stringify(views.map(({ title }) => title)))).toEqual([]);
  await page.says("/run status");
  expect(englishIn(said(page, "reply").at(-1)?.text ?? "")).toEqual([]);

  // What was chosen stays, whatever a page that is opened later greets in.
  page.send({ type: "hello", after: null, language: "en" });
  await page.says("/run status");
  expect(said(page, "reply").at(-1)?.text).toContain("Entwickler");
  page.send({ type: "language", language: "en" });
  await page.says("/run status");
  expect(said(page, "reply").at(-1)?.text).toContain("developer");
});

test("a page is told when a line typed on it has changed the language, and only then", async () => {
  const { page } = await enter("Lena", "en");
  await page.says("/help");
  await page.says("/mine language en");
  expect(page.got.filter(({ type }) => type === "language")).toEqual([]);
  await page.says("/mine language de");
  expect(page.got.filter(({ type }) => type === "language")).toEqual([{ type: "language", language: "de" }]);
  // Who is erased has no language to change to: their page says farewell in the one it has.
  page.send({ type: "line", id: "erases-lena", text: "/mine erase name:Lena", label: null });
  const { farewell } = await page.hears("gone");
  expect(englishIn(farewell ?? "")).toEqual([]);
  expect(page.got.filter(({ type }) => type === "language")).toHaveLength(1);
});

test("a person's other pages turn with the one they choose on, by its menu or by a line", async () => {
  const { visitor, page } = await enter("Abeni", "en");
  const phone = await visitor.open();
  page.send({ type: "language", language: "de" });
  expect(await phone.hears("language")).toEqual({ type: "language", language: "de" });
  await page.says("/mine language en");
  await phone.hears("language", ({ language }) => language === "en");
  expect(page.got.filter(({ type }) => type === "language")).toEqual([{ type: "language", language: "en" }]);
});

test("a plan that waits changes its words with its owner's", async () => {
  const { page } = await enter("Ben", "en");
  await page.says("/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20.5 tank:3");
  await page.hears("views", ({ plan }) => plan?.temperature === "20.5 °C");
  page.send({ type: "language", language: "de" });
  await page.hears("views", ({ plan }) => plan?.temperature === "20,5 °C");
});

test("a message in a language that is none of ours is refused and changes nothing", async () => {
  const { page } = await enter("Kofi", "de");
  page.send({ type: "language", language: "xx" });
  const { refusal } = await page.hears("refused");
  expect(refusal.code).toBe("ERR_NOT_UNDERSTOOD");
  const kofi = room.stores.members.findByName(1, "Kofi");
  expect(room.stores.members.languageOf(1, kofi?.personId ?? "")).toBe("de");
});

test("a photo that is sent, kept or refused, is spoken of in its sender's language", async () => {
  const { visitor, page } = await enter("Zoe", "de");
  const zoe = room.stores.members.findByName(1, "Zoe")?.personId ?? "";
  const { number } = room.stores.rolls.add(aNewRoll({ classId: 1, personId: zoe, runId: null as never }));
  const send = async (bytes: Buffer): Promise<string> => {
    const answer = await fetch(`${room.url}/api/photos/L${number}`, {
      method: "POST",
      headers: { "content-type": "image/png", origin: room.url, cookie: visitor.cookie },
      body: Uint8Array.from(bytes),
    });
    return ((await answer.json()) as { error?: { text: string } }).error?.text ?? "";
  };
  expect(await send(Buffer.from("no picture"))).toBe(
    "Das ist kein JPEG und kein PNG. Speichere das Foto als eines davon.",
  );
  expect(await send(Buffer.alloc(MOST_PHOTO_BYTES + 1))).toBe(
    "Das Foto hat 9 MB; höchstens 8. Mach es kleiner oder schneide es zu.",
  );
  const circle = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 8 8"><circle r="4"/></svg>';
  expect(await send(await renderPicture(circle, 8))).toBe("");
  const told = await page.hears("events", ({ events }) => events.some(({ photo }) => photo !== undefined));
  expect(told.events.find(({ photo }) => photo !== undefined)?.text).toBe(
    `Das Foto ist bei L${number}. Wo, wann und womit es gemacht wurde, wird nicht aufbewahrt.`,
  );
});

test("cards come in the language that is asked for, English for any other", async () => {
  const { visitor } = await enter("Ola", "en");
  const german = await cardsIn(visitor, "de");
  const english = await cardsIn(visitor, "en");
  expect(await cardsIn(visitor, "xx")).toEqual(english);
  // Names are typed and stay; what is read does not.
  expect(german.map(({ name }) => name)).toEqual(english.map(({ name }) => name));
  const start = (cards: CommandCard[]) => cards.find(({ name }) => name === "run start")?.summary;
  expect([start(german), start(english)]).toEqual([
    "Einen Lauf nach deinem Plan beginnen",
    "Start a run from your plan",
  ]);
  // A form is found by the words people use, whichever language they look in.
  const teacher = room.visitor();
  await teacher.joinDemo("Iris", "teacher");
  for (const language of ["de", "en"]) {
    const bell = (await cardsIn(teacher, language)).find(({ name }) => name === "class periods");
    expect(bell?.alike.split(" ")).toEqual(expect.arrayContaining(["bell", "klingel"]));
  }
  const typed = /`[^`]*`|\/[a-z]+( [a-z]+)?|\b[a-z]+:[^\s;,.)]+/g;
  for (const { summary, options } of german)
    for (const { about, choices } of options)
      for (const text of [summary, about, ...choices.map(({ label }) => label)])
        expect(englishIn(text.replace(typed, ""))).toEqual([]);
});

test("the invented class speaks the language of whoever comes in first, unless it was told which", async () => {
  const comeIn = (server: RoomServer, name: string, tag: string) =>
    server.visitor().post("/api/demo", { name, role: "teacher", language: tag });
  const languageOf = ({ stores }: RoomServer) => stores.classes.find(DEMO_KEY)?.habits.language;

  const fresh = await startRoom();
  await comeIn(fresh, " ", "de");
  // Nobody came in.
  expect(languageOf(fresh)).toBe("en");
  await comeIn(fresh, "Frieda", "de");
  expect(languageOf(fresh)).toBe("de");
  await comeIn(fresh, "Ola", "en");
  expect(languageOf(fresh)).toBe("de");
  await fresh.stop();

  const told = await startRoom(undefined, (stores, now) => {
    const demo = inventDemo(stores, "UTC", now);
    if (demo) stores.classes.setHabits(demo.id, { ...demo.habits, answered: ["language"] });
  });
  await comeIn(told, "Frieda", "de");
  expect(languageOf(told)).toBe("en");
  await told.stop();
});
