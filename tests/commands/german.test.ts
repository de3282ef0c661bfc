import { readdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, test } from "vitest";
import { makeCards } from "../../bot/chat/room/cards.ts";
import type { Command, Forms } from "../../commands/define.ts";
import { aboutOf, summaryOf } from "../../commands/forms.ts";
import { commands } from "../../commands/index.ts";
import { speaking } from "../../commands/speech/language.ts";
import { ENGLISH_WORDS } from "../support/english.ts";

/* Whether everything a person reads has its German, whoever wrote it. What German means is for each folder's own test. */

const ROOT = join(import.meta.dirname, "../..");

/** Discord's own bound on a description, of a command and of an option (its documentation on application commands). */
const LONGEST = 100;

/** Words that are right in both languages; a text of these alone may be the same. */
const SAME_IN_BOTH = new Set(["Name", "Film", "Plan", "Start", "Sinkside"]);
/** Titles of sources are quoted as they are. */
const TITLES = /The Darkroom Cookbook|Photography: Theory and Practice|Book of Photography/g;

function filesUnder(folder: string, ending: RegExp): string[] {
  return readdirSync(join(ROOT, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => ending.test(name))
    .map((name) => join(folder, name))
    .sort();
}

async function load(file: string): Promise<Record<string, unknown>> {
  return (await import(/* @vite-ignore */ join(ROOT, file))) as Record<string, unknown>;
}

describe.each(commands.map((command) => [command.name, command] as const))(
  "the form of /%s",
  (_, command) => {
    test("says in German what the command does", () => {
      const german = summaryOf(command, "de");
      expect(german).not.toBe(summaryOf(command, "en"));
      expect(german.length).toBeLessThanOrEqual(LONGEST);
      expect(german.length).toBeGreaterThan(0);
      expect(englishIn(german)).toBeUndefined();
    });

    const described = optionsOf(command).filter((option) => aboutOf(command, option, "en") !== "");
    test.each(described)("says in German what %s is for", (option) => {
      const german = aboutOf(command, option, "de");
      expect(german).not.toBe(aboutOf(command, option, "en"));
      expect(german.length).toBeLessThanOrEqual(LONGEST);
      expect(german.length).toBeGreaterThan(0);
      expect(englishIn(german)).toBeUndefined();
    });
  },
);

/** Where a choice is shown by its German word, nobody finds the English one that its option speaks of. */
test("no option speaks of a choice by another word than it is shown by", () => {
  const cards = speaking("de", () => makeCards(commands, "teacher"));
  const options = cards.flatMap(({ options: each }) => each).filter(({ choices }) => choices.length > 0);
  expect(options.length).toBeGreaterThan(50);
  const strays = options.flatMap(({ about, choices }) =>
    choices
      .filter(({ value, label }) => value !== label && about.split(/[\s,;:()]+/).includes(value))
      .map(({ value }) => `${value}: ${about}`),
  );
  expect(strays).toEqual([]);
});

describe.each(filesUnder("commands", /words\/form\.de\.ts$/))("%s", (file) => {
  test("speaks of commands and options there are", async () => {
    const { forms } = (await load(file)) as { forms: Forms };
    const known = new Map(commands.map((command) => [command.name, optionsOf(command)]));
    const strays = Object.entries(forms).flatMap(([name, { options }]) =>
      known.has(name)
        ? Object.keys(options).flatMap((option) =>
            known.get(name)?.includes(option) ? [] : [`${name} ${option}`],
          )
        : [name],
    );
    expect(strays).toEqual([]);
  });
});

const dictionaries = ["commands", "bot"].flatMap((folder) => filesUnder(folder, /[./]en\.ts$/));

test("every folder that speaks has its words in a dictionary", () => {
  const folders = filesUnder("commands", /reply\.ts$/).map((file) => dirname(file));
  expect(new Set(folders).size).toBeGreaterThan(15);
  const silent = folders.filter(
    (folder) => !dictionaries.some((file) => [folder, `${folder}/words`].includes(dirname(file))),
  );
  expect([...new Set(silent)]).toEqual([]);
});

describe.each(dictionaries)("%s", (file) => {
  test("has the same keys in German, and no text that is still English", async () => {
    const { en } = await load(file);
    const { de } = await load(file.replace(/en\.ts$/, "de.ts"));
    const english = textsOf(en);
    const german = speaking("de", () => textsOf(de));
    expect([...german.keys()]).toEqual([...english.keys()]);
    const untranslated = [...german].filter(([key, text]) => {
      const isSame = text === english.get(key) && hasOwnWords(text);
      return isSame || englishIn(text) !== undefined;
    });
    expect(untranslated).toEqual([]);
  });
});

/** What a form asks for: the options, and the file where the command takes one. */
function optionsOf({ options, file }: Command): string[] {
  return [...Object.keys(options.shape), ...(file ? [file.name] : [])];
}

/** Each text by its path; of a sentence with gaps, the text with a 7 in each of them. */
function textsOf(words: unknown, path = ""): Map<string, string> {
  if (typeof words === "string") return new Map([[path, words]]);
  if (typeof words === "function") return new Map([[path, fill(words as (...given: unknown[]) => unknown)]]);
  if (typeof words !== "object" || words === null) return new Map([[path, ""]]);
  // The order of keys is free.
  const keys = Object.keys(words).sort();
  return new Map(
    keys.flatMap((key) => [...textsOf((words as Record<string, unknown>)[key], `${path}.${key}`)]),
  );
}

/** Of what kind a gap is can't be seen from outside: the first filling that gives a text is taken; else nothing. */
function fill(sentence: (...given: unknown[]) => unknown): string {
  for (const filling of [7, "7", ["7", "7"]]) {
    try {
      const said = sentence(...Array.from({ length: Math.max(1, sentence.length) }, () => filling));
      if (typeof said === "string" && !/undefined|\[object|NaN/.test(said)) return said;
    } catch {
      // Filled with another kind next.
    }
  }
  return "";
}

/** Whether there is anything in a text that reads otherwise in another language. */
function hasOwnWords(text: string): boolean {
  const words = typedOut(text).match(/\p{L}{3,}/gu) ?? [];
  return words.some((word) => !SAME_IN_BOTH.has(word));
}

function englishIn(text: string): string | undefined {
  return ENGLISH_WORDS.exec(typedOut(text))?.[0];
}

/** Without what is typed or quoted as it is: marked as code, as `/command word` or as `option:value`. */
function typedOut(text: string): string {
  const isLine = /^\/[a-z]+ .*[a-z]:/.test(text);
  return (isLine ? "" : text)
    .replace(/`[^`]*`/g, "")
    .replace(/\/[a-z]+( [a-z]+)?/g, "")
    .replace(/\b[a-z]+:[^\s;,.)]+/g, "")
    .replace(TITLES, "");
}
