import { describe, expect, test } from "vitest";
import { readBlocks, readMarks } from "../../../../bot/chat/room-page/marks.ts";
import { instant, plain } from "../../../../commands/speech/wording.ts";

const text = (words: string) => ({ kind: "text", text: words });

describe("marks of a line", () => {
  test("bold, slanted and code are read, also one inside the other", () => {
    expect(readMarks("**30 s** agitate: _R7_ `now`")).toEqual([
      { kind: "bold", parts: [text("30 s")] },
      text(" agitate: "),
      { kind: "slanted", parts: [text("R7")] },
      text(" "),
      { kind: "code", text: "now" },
    ]);
    expect(readMarks("**a _b_**")).toEqual([
      { kind: "bold", parts: [text("a "), { kind: "slanted", parts: [text("b")] }] },
    ]);
  });

  test("an unclosed mark and an underscore in a word are text", () => {
    expect(readMarks("2 ** 3")).toEqual([text("2 ** 3")]);
    expect(readMarks("wetting_agent_ml")).toEqual([text("wetting_agent_ml")]);
  });

  test("an instant becomes one, whatever stands around it", () => {
    expect(readMarks(`at ${instant(1234, "time")}.`)).toEqual([
      text("at "),
      { kind: "instant", atMs: 1234, style: "time" },
      text("."),
    ]);
  });

  test("what a person wrote comes out as they wrote it, and as nothing but text", () => {
    for (const wild of [
      "<script>alert(1)</script>",
      "**bold** _x_ `y`",
      "@everyone",
      "[a](b)",
      "back\\slash",
    ]) {
      expect(readMarks(plain(wild))).toEqual([text(wild)]);
    }
  });
});

describe("blocks of a text", () => {
  test("lines, lists and fenced code are told apart", () => {
    expect(readBlocks("one\n- a\n- b\n1. c\n```\nx\ny\n```\n\ntwo").map(({ kind }) => kind)).toEqual([
      "line",
      "list",
      "list",
      "code",
      "line",
    ]);
  });

  test("a fence that is never closed takes the rest", () => {
    expect(readBlocks("```\nx")).toEqual([{ kind: "code", text: "x" }]);
  });
});
