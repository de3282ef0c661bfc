import { afterEach, beforeEach, expect, test } from "vitest";
import { makeParts } from "../../../../bot/chat/discord/message.ts";
import { listBreaches, setStage, type Stage } from "../../../support/gateway/bot.ts";
import type { User } from "../../../support/gateway/world.ts";
import { createMemoryLog } from "../../../support/room.ts";

let stage: Stage;
let frieda: User;

beforeEach(async () => {
  stage = await setStage();
  frieda = stage.gateway.addUser("Frieda", { locale: "de" });
  await stage.start();
});
afterEach(async () => {
  const breaches = listBreaches(stage);
  await stage.stop();
  expect(breaches).toEqual([]);
});

test("a call says what language its person's client is set to, and nothing where that is none of ours", async () => {
  await stage.gateway.slash(frieda, "help");
  await stage.gateway.slash(stage.gateway.addUser("Kofi", { locale: "pt-BR" }), "help");
  expect(stage.calls.map(({ language }) => language)).toEqual(["de", undefined]);
});

test("from somebody unknown, in a direct message, in the language of their client", async () => {
  const answer = await stage.gateway.slash(frieda, "help", {}, { isDirect: true });
  expect(answer.text).toBe(
    "Ich weiß noch nicht, zu welchem Kurs du gehörst. Gib einen Befehl auf dem Server deines Kurses, dann komm hierher zurück.",
  );
});

test("an old button, and a handler that breaks", async () => {
  stage.onCommand = (call) =>
    call.answer({ text: "Start?", actions: [{ label: "Los", line: "run begin" }] }, "class");
  await stage.gateway.slash(frieda, "run start");
  expect((await stage.gateway.press(frieda, "run begin")).text).toBe(
    "Dieser Knopf ist aus einer älteren Version. Tippe stattdessen den Befehl.",
  );
  stage.onCommand = () => Promise.reject(new Error("a bug"));
  expect((await stage.gateway.slash(frieda, "run start")).text).toBe(
    "Es ist ein Fehler aufgetreten. Sieh nach, wo dein Lauf steht, bevor du es noch einmal versuchst.",
  );
});

test("what a message could not carry, in the language it is worded in", async () => {
  const attachments = [
    { name: "log.csv", mediaType: "text/csv", content: "x".repeat(10 * 1024 * 1024 + 1) } as const,
  ];
  const pictures = [{ name: "kurve", alt: "Die Zeit sinkt mit der Temperatur", svg: "<svg/>" }];
  const settings = {
    renderPicture: () => Promise.reject(new Error("no font")),
    log: createMemoryLog(),
    sayPaths: (text: string) => text,
  };
  const rest = { actions: [], mentions: [] };
  const [part] = await makeParts({ text: "Hier", attachments, pictures, language: "de", ...rest }, settings);
  expect(part?.body.content?.split("\n")).toEqual([
    "Hier",
    "Das Bild ließ sich nicht zeichnen. Es zeigt: Die Zeit sinkt mit der Temperatur",
    "log.csv ist zu groß für diesen Chat (11 MB). Frag nach weniger auf einmal.",
  ]);
  const empty = { text: "", attachments: [], pictures: [], ...rest };
  const texts = await Promise.all([
    makeParts({ ...empty, language: "de" }, settings),
    makeParts(empty, settings),
  ]);
  expect(texts.map(([first]) => first?.body.content)).toEqual(["Erledigt.", "Done."]);
});
