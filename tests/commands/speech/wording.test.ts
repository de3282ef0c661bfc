import { describe, expect, test } from "vitest";
import {
  formatBothScales,
  formatMl,
  formatSeconds,
  formatTenthsC,
  instant,
  joinAnd,
  makeNumber,
  parseNumber,
  plain,
  sayInstants,
  saySeconds,
} from "../../../commands/speech/wording.ts";

test.each([
  [540, "9:00"],
  [5, "0:05"],
  [3723, "1:02:03"],
  [-65, "-1:05"],
])("%i s is written %s", (seconds, text) => expect(formatSeconds(seconds)).toBe(text));

test.each([
  [40, "40 s"],
  [60, "1 min"],
  [90, "1 min 30 s"],
  [3599, "59 min 59 s"],
  [3600, "1 h"],
  [3930, "1 h 6 min"],
  [5400, "1 h 30 min"],
  [408_187, "4 d 17 h"],
  [0, "0 s"],
])("%i s is said %s", (seconds, text) => expect(saySeconds(seconds)).toBe(text));

// 65/68/75 F = 18.33/20/23.89 C (the two scales' definition: F = 9/5 C + 32).
test.each([
  [200, "20 °C (68 °F)"],
  [183, "18.3 °C (64.9 °F)"],
  [239, "23.9 °C (75 °F)"],
])("%i tenths are %s", (tenths, text) => expect(formatBothScales(tenths)).toBe(text));

test("temperatures and volumes carry their unit", () => {
  expect([formatTenthsC(205), formatMl(300), formatMl(1500)]).toEqual(["20.5 °C", "300 ml", "1.5 l"]);
});

test("lists read as people write them", () => {
  expect([joinAnd([]), joinAnd(["a"]), joinAnd(["a", "b"]), joinAnd(["a", "b", "c"])]).toEqual([
    "",
    "a",
    "a and b",
    "a, b and c",
  ]);
});

describe("numbers said aloud", () => {
  test.each(["R7", "r7", " 7 ", "R 7"])("%j is run 7", (text) => expect(parseNumber("run", text)).toBe(7));
  test.each(["B7", "7.5", "R", "", "0", "R0", "seven", "9999999999"])("%j is no run", (text) =>
    expect(parseNumber("run", text)).toBeUndefined(),
  );
  test("what is made is read back", () => expect(parseNumber("batch", makeNumber("batch", 12))).toBe(12));
});

describe("text that came from people", () => {
  test("carries no markdown, no mention, no mark of ours", () => {
    expect(plain("**b** @everyone <@123> `x` ⟦5:time⟧")).toBe(
      "\\*\\*b\\*\\* @\u2060everyone <\u2060@\u2060123\\> \\`x\\` 5:time",
    );
  });
  test("keeps emoji and letters of every script", () => expect(plain("Ĝoja 光 📷")).toBe("Ĝoja 光 📷"));
  test("loses control and direction characters", () => expect(plain("a\u202eb\u0000c\u200b")).toBe("abc"));
});

test("instants are shown in the reader's zone, relative ones from now", () => {
  const at = Date.UTC(2026, 6, 1, 18, 0, 0);
  const text = `${instant(at, "time")} ${instant(at + 90_000, "relative")} ${instant(at - 5000, "relative")}`;
  expect(sayInstants(text, at, "Europe/Lisbon")).toBe("19:00:00 in 1 min 30 s 5 s ago");
});
