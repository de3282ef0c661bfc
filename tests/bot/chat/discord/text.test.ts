import { array, assert, property, string } from "fast-check";
import { describe, expect, test } from "vitest";
import { shorten, showInstants, splitText } from "../../../../bot/chat/discord/text.ts";
import { instant } from "../../../../commands/speech/wording.ts";

describe("splitting", () => {
  test("a text that fits stays whole; an empty one is none", () => {
    expect(splitText("9:00", 100)).toEqual(["9:00"]);
    expect(splitText("", 100)).toEqual([]);
    expect(splitText(" \n ", 100)).toEqual([]);
  });

  test("any text: no part is too long, nothing is lost", () => {
    assert(
      property(
        array(
          string({ maxLength: 90 }).map((line) => line.replaceAll(/[\n`]/g, "")),
          { maxLength: 60 },
        ),
        (lines) => {
          const text = lines.join("\n");
          const parts = splitText(text, 120);
          expect(Math.max(0, ...parts.map((part) => part.length))).toBeLessThanOrEqual(120);
          expect(parts.join("").replaceAll(/\s/g, "")).toBe(text.replaceAll(/\s/g, ""));
        },
      ),
    );
  });

  test("a long line is cut at a space", () => {
    const parts = splitText("agitate ".repeat(40).trim(), 120);
    expect(parts.every((part) => part.split(" ").every((word) => word === "agitate"))).toBe(true);
  });

  test("a mark is never cut", () => {
    const text = `${"x".repeat(90)}<t:1793730600:R>${"y".repeat(90)}`;
    expect(splitText(text, 120).filter((part) => part.includes("<t:1793730600:R>"))).toHaveLength(1);
  });

  test("a character of two units is never cut", () => {
    const parts = splitText("\u{1F39E}".repeat(100), 121);
    expect(parts.every((part) => [...part].every((each) => each === "\u{1F39E}"))).toBe(true);
    expect(parts.join("")).toHaveLength(200);
  });

  test("a code block that is cut is closed and opened again", () => {
    const rows = Array.from({ length: 12 }, (_, index) => `20.${index} °C   9:0${index % 10}`);
    const parts = splitText(["before", "```text", ...rows, "```", "after"].join("\n"), 120);
    expect(parts.length).toBeGreaterThan(1);
    for (const part of parts) {
      expect(part.length).toBeLessThanOrEqual(120);
      expect(part.match(/```/g)?.length ?? 0).toSatisfy((count: number) => count % 2 === 0);
    }
    expect(rows.every((row) => parts.some((part) => part.includes(row)))).toBe(true);
  });
});

test("instants are whole seconds, in the platform's three styles", () => {
  const at = Date.UTC(2026, 10, 3, 18, 30) + 999;
  expect(
    showInstants(["time", "date", "relative"].map((style) => instant(at, style as "time")).join(" ")),
  ).toBe("<t:1793730600:T> <t:1793730600:D> <t:1793730600:R>");
});

test.each([
  ["Lantern 400", 20, "Lantern 400"],
  ["Lantern 400 in House MQ", 12, "Lantern 400…"],
  ["ab\u{1F39E}c", 4, "ab…"],
])("%s in %i characters", (text, limit, expected) => {
  expect(shorten(text, limit)).toBe(expected);
});
