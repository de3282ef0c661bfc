import { describe, expect, test } from "vitest";
import fc from "fast-check";
import { makeLine, parseLine } from "../../../commands/speech/line.ts";

const NAMES = ["plan", "plan curve", "run next", "run start", "roll find"];
const FORMS = NAMES.map((name) => ({ name }));
const parse = (text: string, rest?: string) =>
  parseLine(
    text,
    NAMES.map((name) => ({ name, rest })),
  );

describe("a typed line", () => {
  test("takes values up to the next option, without quotes", () => {
    expect(parse("/plan film:Lantern 400 developer:House MQ temp:20")).toEqual({
      ok: true,
      value: { name: "plan", options: { film: "Lantern 400", developer: "House MQ", temp: "20" } },
    });
  });
  test("takes the longest command name that fits", () => {
    expect(parse("plan curve plan:P3")).toMatchObject({
      value: { name: "plan curve", options: { plan: "P3" } },
    });
  });
  test("takes capitals and stray blanks in the name", () => {
    expect(parse("  /Run   next  run:R7")).toMatchObject({
      value: { name: "run next", options: { run: "R7" } },
    });
  });
  test("takes quoted values with colons in them", () => {
    expect(parse('roll find words:"at 9:30 film:x" film:y')).toMatchObject({
      value: { options: { words: "at 9:30 film:x", film: "y" } },
    });
  });
  test("puts words without a key where the command wants them", () => {
    expect(parse("roll find milky edge film:x", "words")).toMatchObject({
      value: { options: { words: "milky edge", film: "x" } },
    });
  });
  test.each([
    ["/roll note note:Doors: one stood open", { note: "Doors: one stood open" }],
    ["/roll note note:see http://example.org roll:L3", { note: "see http://example.org", roll: "L3" }],
    ["/roll note left: fogged roll:L3", { note: "left: fogged", roll: "L3" }],
    ["/roll note note: Doors roll: L3", { note: "Doors", roll: "L3" }],
    // Without a blank it is a slip, and told as one.
    ["/roll note note:Doors rol:L3", { note: "Doors", rol: "L3" }],
  ])("%j: what is no option and reads like prose is text", (line, options) => {
    const form = { name: "roll note", rest: "note", options: ["roll", "note"] };
    expect(parseLine(line, [form])).toEqual({ ok: true, value: { name: "roll note", options } });
  });
  test.each([
    ["", "ERR_EMPTY_LINE"],
    ["/", "ERR_EMPTY_LINE"],
    ["/plann film:x", "ERR_UNKNOWN_COMMAND"],
    ['plan film:"Lantern', "ERR_OPEN_QUOTE"],
    ["plan film:a film:b", "ERR_TWICE"],
    ["plan Lantern", "ERR_STRAY_WORDS"],
  ])("%j is refused with %s", (text, code) => {
    const result = parse(text);
    expect(result.ok ? "taken" : result.fault.code).toBe(code);
  });
  test("offers the command a slip of the finger away", () => {
    const result = parse("/rol fnd");
    expect(result.ok ? [] : "near" in result.fault && result.fault.near[0]).toBe("roll find");
  });
  test("an option name of Object's own is just an unknown option", () => {
    expect(parse("plan constructor:x")).toMatchObject({
      value: { options: { constructor: "x" } },
    });
  });
});

test("parse(make(x)) is x, whatever people write", () => {
  const key = fc.stringMatching(/^[a-z][a-z0-9]{0,8}$/);
  const value = fc.string({ unit: "grapheme", maxLength: 40 }).map((text) => text.trim());
  fc.assert(
    fc.property(fc.constantFrom(...NAMES), fc.dictionary(key, value, { maxKeys: 5 }), (name, options) => {
      expect(parseLine(makeLine(name, options), FORMS)).toEqual({ ok: true, value: { name, options } });
    }),
    { numRuns: 2000 },
  );
});
