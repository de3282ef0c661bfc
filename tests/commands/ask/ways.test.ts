import { beforeEach, expect, test } from "vitest";
import { commands } from "../../../commands/index.ts";
import { WAY_WORDS } from "../../../commands/ask/way-words.ts";
import { createRoom, type Room } from "../../support/room.ts";

/* Whoever asks how something is done is shown the command for it; the sentences are as teachers and aides type them. */

const ASKED: readonly (readonly [sentence: string, command: string])[] = [
  ["how do i add a film", "sheet add"],
  ["how do i add a tank", "tank add"],
  ["how do i tell everyone something", "class say"],
  ["how do i export the log", "roll export"],
  ["how do i make someone an aide", "class role"],
  ["how do i set the bell", "class periods"],
  ["how do i change the language", "mine language"],
  ["how do i remove a student", "class forget"],
  ["how do i stop a students run", "run stop"],
  ["how do i move to another computer", "mine phone"],
  ["what do i mix for 12 rolls", "mix class"],
  ["is everything ready for tonight", "class firstday"],
  ["can i press for a student", "run next"],
  ["i mixed new fixer", "batch mix"],
  ["how do i add a bottle", "batch mix"],
  ["wie füge ich einen film hinzu", "sheet add"],
  ["wie trage ich eine dose ein", "tank add"],
  ["wie sage ich allen bescheid", "class say"],
  ["wie exportiere ich das filmbuch", "roll export"],
  ["wie mache ich jemanden zur hilfskraft", "class role"],
  ["wie stelle ich die klingel ein", "class periods"],
  ["wie ändere ich die sprache", "mine language"],
  ["wie entferne ich einen schüler", "class forget"],
  ["wie breche ich den lauf eines schülers ab", "run stop"],
  ["wie drucke ich den bericht", "class report"],
  ["ist alles bereit für heute abend", "class firstday"],
  ["ich hab neuen fixierer angesetzt", "batch mix"],
  ["wie trage ich eine flasche ein", "batch mix"],
  ["kann ich für einen schüler drücken", "run next"],
];

let room: Room;
beforeEach(() => {
  room = createRoom();
});
const namesIn = (text: string): string[] =>
  [...text.matchAll(/^- `\/([a-z ]+)`: /gm)].map(([, name = ""]) => name);

test.each(ASKED)("a teacher who asks “%s” is shown /%s first", (sentence, command) => {
  const { reply } = room.asks("Iris", sentence, "teacher");
  const named = namesIn(reply.text);
  expect(named[0]).toBe(command);
  expect(named.length).toBeLessThanOrEqual(3);
  // Named, never done: no key calls any of them.
  for (const { line } of reply.actions ?? []) expect(line).toMatch(/^(ask |help$)/);
});

test.each([
  ["how do i rate my film", "roll rate"],
  ["how do i write a note", "roll note"],
  ["wie schreibe ich eine notiz", "roll note"],
  ["how do i add a photo", "roll photo"],
  ["how do i delete my data", "mine erase"],
])("a student who asks “%s” is shown /%s first", (sentence, command) => {
  expect(namesIn(room.says("Mina", sentence))[0]).toBe(command);
});

test("nobody is shown what they may not do", () => {
  const barred = commands.filter(({ who }) => who !== "student").map(({ name }) => name);
  expect(barred).toContain("sheet add");
  const shown = ASKED.flatMap(([sentence]) => namesIn(room.says("Mina", sentence)));
  expect(shown.length).toBeGreaterThan(5);
  expect(shown.filter((name) => barred.includes(name))).toEqual([]);
});

test("what is known of films is answered before any command is named", () => {
  for (const sentence of [
    "how warm must the developer be",
    "how do i open the canister",
    "how often do i agitate",
    "how does this work",
  ])
    expect(namesIn(room.says("Iris", sentence, "teacher"))).toEqual([]);
  expect(room.says("Iris", "xyzzy plugh frotz", "teacher")).toMatch(/^\*\*I don't know that\.\*\* Did you/);
});

test("words are kept for commands there are", () => {
  const names = commands.map(({ name }) => name);
  expect(Object.keys(WAY_WORDS).filter((name) => !names.includes(name))).toEqual([]);
  // A page compares them as they stand, with what is typed in small letters.
  for (const words of Object.values(WAY_WORDS)) expect(words).toBe(words.toLowerCase());
});

test("a command is shown in the language of whoever asks", () => {
  room.says("Iris", "/mine language language:de", "teacher");
  expect(room.says("Iris", "wie trage ich eine dose ein", "teacher")).toMatch(
    /^\*\*Vielleicht eins davon:\*\*\n- `\/tank add`: Dosen eintragen/,
  );
});
