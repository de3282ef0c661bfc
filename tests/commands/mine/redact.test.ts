import { describe, expect, it } from "vitest";
import { namesOf, redactJson, redactText } from "../../../commands/mine/redact.ts";
import { plain } from "../../../commands/speech/wording.ts";

const redact = (text: string, name: string, others: readonly string[] = []): string =>
  redactText(text, namesOf([name], others));

describe("a name in a text", () => {
  it.each([
    ["Mina spilt it", "Mina", "somebody spilt it"],
    ["ask MINA or mina", "Mina", "ask somebody or somebody"],
    ["Mina's tank, Mina: yes", "Mina", "somebody's tank, somebody: yes"],
    ["the Minaret of Minas", "Mina", "the Minaret of somebody"],
    ["minas Dose, bei den müllern", "Mina Müller", "somebody Dose, bei den somebody"],
    ["Mina Vale and Mina", "Mina Vale", "somebody and somebody"],
    ["I will ask Will", "Will Reed", "I will ask somebody"],
    ["at a pool", "A P", "at a pool"],
    ["Zoë and zoë", "Zoë", "somebody and somebody"],
    ["a.b and axb", "a.b", "somebody and axb"],
    ["r*d", "r*d", "somebody"],
    ["日本 came", "日本", "somebody came"],
  ])("%j without %s", (text, name, clean) => {
    expect(redact(text, name)).toBe(clean);
  });

  it("keeps a first name that somebody else has as well", () => {
    expect(redact("Mina and Mina Vale", "Mina Vale", ["Mina Reed"])).toBe("Mina and somebody");
    expect(redact("Mina", "Mina", ["Mina 2"])).toBe("somebody");
  });

  it("is found as a reply writes it", () => {
    expect(redact(`hello ${plain("A_B [x]")}`, "A_B [x]")).toBe("hello somebody");
    expect(redact("<text>Tom &amp; Jo</text>", "Tom & Jo")).toBe("<text>somebody</text>");
  });

  it("is taken out of every text of a JSON value, and of no key", () => {
    expect(redactJson({ Mina: ["by Mina", 3, null, { deep: "Mina" }] }, namesOf(["Mina"], []))).toEqual({
      Mina: ["by somebody", 3, null, { deep: "somebody" }],
    });
  });
});
