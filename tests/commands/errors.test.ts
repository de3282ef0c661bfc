import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { UserError } from "../../commands/define.ts";
import { ERRORS } from "../../commands/errors.ts";

const root = join(import.meta.dirname, "..", "..");
/** Codes of Node's and of its fetch, which are only read here. */
const OTHERS = ["ERR_PARSE_ARGS"];

/** Every code that stands in a source, outside the register; words only follow from codes made elsewhere. */
function codesIn(folders: readonly string[], isWanted: (file: string) => boolean): Set<string> {
  const files = folders.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
      .filter((name) => /\.tsx?$/.test(name))
      .map((name) => join(folder, name)),
  );
  const codes = files
    .filter((file) => file !== join("commands", "errors.ts") && isWanted(file))
    .flatMap((file) => readFileSync(join(root, file), "utf8").match(/(?<![A-Z_])ERR_[A-Z_]+/g) ?? []);
  return new Set(codes.filter((code) => !OTHERS.includes(code)));
}

const SOURCES = ["bot", "commands", "store"];
const isWords = (file: string): boolean => /(\.|\/)(en|de)\.ts$|words?\.ts$/.test(file);

test("every code is registered", () => {
  const unknown = [...codesIn(SOURCES, () => true)].filter((code) => !(code in ERRORS));
  expect(unknown).toEqual([]);
});

test("every registered code is made somewhere", () => {
  const made = codesIn(SOURCES, (file) => !isWords(file));
  expect(Object.keys(ERRORS).filter((code) => !made.has(code))).toEqual([]);
});

test("no two codes mean the same to the same people", () => {
  const meanings = Object.values(ERRORS).map((each) => each.join(": "));
  expect(meanings.filter((each, index) => meanings.indexOf(each) !== index)).toEqual([]);
});

test("a refusal of an unregistered code does not compile", () => {
  // @ts-expect-error This code is in no register.
  expect(new UserError("ERR_INVENTED", "").code in ERRORS).toBe(false);
});
