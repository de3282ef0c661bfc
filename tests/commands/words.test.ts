import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parseSync } from "vite";
import { expect, test } from "vitest";
import { ENGLISH_WORDS } from "../support/english.ts";
import { HOUSE_SOURCES, OWN_FIRST } from "../../commands/batch/presets.ts";
import { STORED } from "../../commands/sheet/words/stored.de.ts";

/*
 * Whether sentences stand anywhere but in the dictionaries, where no other language would reach them, and whether the German
 * ones are German, read from the source: no sentence is missed since its values could not be guessed.
 */

const COMMANDS = join(import.meta.dirname, "../../commands");
const SENTENCE =
  /\b(the|of|your|you|is|are|and|with|for|this|that|from|not|nothing|was|it|at|by|to|no|has|can|there|only|a|an)\b/i;

/** Values of fields and of options, which are the same in every language. */
const VALUES = new Set(["has it", "not reached", "this week", "this month", "this year"]);
/** Titles of sources are quoted as they are. */
const TITLES =
  /The (Darkroom Cookbook|Complete Photobook)|Photography: Theory and Practice|Book of Photography/g;
/** Kept in English with a plan or a batch, and translated when they are read. */
const KEPT = new Set<string>([...STORED.keys(), ...Object.values(HOUSE_SOURCES), OWN_FIRST, "entered by 7"]);

interface Found {
  readonly line: number;
  /** With a 7 in each gap. */
  readonly text: string;
  /** The name of the property it is given to. */
  readonly property: string | undefined;
}

type Node = { readonly type: string; readonly start: number; readonly [key: string]: unknown };

function isNode(value: unknown): value is Node {
  return typeof value === "object" && value !== null && "type" in value;
}

/** Every text of a file but those of its forms, of its imports and of errors that nobody is shown. */
function textsIn(name: string): Found[] {
  const source = readFileSync(join(COMMANDS, name), "utf8");
  const found: Found[] = [];
  function look(value: unknown, property?: string): void {
    if (Array.isArray(value)) return value.forEach((each) => look(each, property));
    if (!isNode(value) || isLeftOut(value, source)) return;
    // What an option's form says stands in `describe`: of the call, only the rest is looked at.
    if (calledBy(value, source).endsWith(".describe")) return look(value["callee"]);
    const text = textOf(value);
    if (text !== undefined)
      found.push({ line: source.slice(0, value.start).split("\n").length, text, property });
    const key = value.type === "Property" && isNode(value["key"]) ? value["key"]["name"] : undefined;
    const inner =
      typeof key === "string" ? key : value.type === "ConditionalExpression" ? property : undefined;
    for (const [part, each] of Object.entries(value))
      if (value.type !== "Property" || part !== "key") look(each, inner);
  }
  look(parseSync(name, source).program);
  return found;
}

function textOf(node: Node): string | undefined {
  if (node.type === "Literal") return typeof node["value"] === "string" ? node["value"] : undefined;
  if (node.type !== "TemplateLiteral") return undefined;
  return (node["quasis"] as { value: { cooked: string } }[]).map(({ value }) => value.cooked).join("7");
}

function calledBy(node: Node, source: string): string {
  const callee = node["callee"];
  return isNode(callee) ? source.slice(callee.start, callee["end"] as number) : "";
}

function isLeftOut(node: Node, source: string): boolean {
  if (node.type === "ImportDeclaration") return true;
  if (node.type === "NewExpression")
    return ["Error", "RangeError", "RegExp"].includes(calledBy(node, source));
  // A form's own words stand in English; their German is looked after elsewhere.
  const name = node.type === "Property" && isNode(node["key"]) ? node["key"]["name"] : undefined;
  return (
    name === "summary" ||
    (name === "file" && isNode(node["value"]) && node["value"].type === "ObjectExpression")
  );
}

function isKept(text: string): boolean {
  if (KEPT.has(text) || VALUES.has(text)) return true;
  const pattern = new RegExp(`^${text.split("7").map(escape).join(".+")}$`);
  return text.includes("7") && [...KEPT].some((each) => pattern.test(each));
}

function escape(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
}

const sources = readdirSync(COMMANDS, { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".ts"))
  .sort();
/** Words that are read out of sentences, and what codes mean to developers: neither is said to anybody. */
const READ = new Set([
  "ask/lexicon.ts",
  "ask/rules.ts",
  "ask/around-rules.ts",
  "ask/basics-lexicon.ts",
  "ask/basics-rules.ts",
  "ask/desk-lexicon.ts",
  "ask/desk-rules.ts",
  "ask/harm-lexicon.ts",
  "ask/number-words.ts",
  "ask/way-words.ts",
  "errors.ts",
]);
const files = sources.filter((name) => !/[./](en|de)\.ts$/.test(name) && !READ.has(name));
const germans = sources.filter((name) => /[./]de\.ts$/.test(name));

test("finds a sentence where there is one", () => {
  // The check can fail: a form's own words are sentences, and are found where they are not left out.
  const all = files.flatMap(textsIn).map(({ text }) => text);
  expect(all.length).toBeGreaterThan(1000);
  expect(SENTENCE.test("Pour out the developer.")).toBe(true);
});

test.each(files)("%s has no sentence of its own", (name) => {
  const stray = textsIn(name).filter(
    ({ text, property }) =>
      !isKept(text) &&
      !text.includes("(?:") &&
      ((/\S \S/.test(text) && SENTENCE.test(text.replace(TITLES, ""))) ||
        (["label", "alt", "text"].includes(property ?? "") && /\p{L}{3}/u.test(text))),
  );
  expect(stray).toEqual([]);
});

test.each(germans)("%s has no English word, whatever the values in its gaps", (name) => {
  const typedOut = (text: string): string =>
    text
      .replace(/`[^`]*`/g, "")
      .replace(/\/[a-z]+( [a-z]+)?/g, "")
      .replace(/\b[a-z]+:[^\s;,.)]+/g, "")
      .replace(TITLES, "");
  const english = textsIn(name).filter(({ text }) => ENGLISH_WORDS.test(typedOut(text)));
  expect(english).toEqual([]);
});
