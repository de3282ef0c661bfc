import { describe, expect, test } from "vitest";
import { speaking } from "../../../commands/speech/language.ts";
import { makeDilution } from "../../../store/shapes/sheet.ts";
import { parseDilution } from "../../../commands/speech/measure.ts";
import {
  formatBothScales,
  formatDilution,
  formatMl,
  formatNumber,
  formatTenthsC,
  instant,
  joinAnd,
  joinOr,
  quoted,
  sayDilution,
  sayInstants,
} from "../../../commands/speech/wording.ts";

const german = <T>(work: () => T): T => speaking("de", work);
const STOCK = { concentrateParts: 1, waterParts: 0 };

describe("numbers have a decimal comma in German, and no more digits than in English", () => {
  // Source: CLDR, number symbols of `de`, as the platform's own Intl carries them.
  test.each([0.5, 20.5, 1234.5, -3.25])("%d", (value) => {
    const intl = new Intl.NumberFormat("de-DE", { useGrouping: false, maximumFractionDigits: 3 });
    expect(german(() => formatNumber(value))).toBe(intl.format(value));
    expect(formatNumber(value)).toBe(String(value));
  });

  test("with as many digits as are asked for", () => {
    expect(german(() => [formatNumber(2, 1), formatNumber(2.345, 2)])).toEqual(["2,0", "2,35"]);
  });

  test("temperatures and volumes", () => {
    expect(german(() => [formatTenthsC(200), formatTenthsC(205), formatTenthsC(-5)])).toEqual([
      "20 °C",
      "20,5 °C",
      "-0,5 °C",
    ]);
    expect(german(() => formatBothScales(205))).toBe("20,5 °C");
    expect(german(() => [formatMl(300), formatMl(1500), formatMl(2000)])).toEqual(["300 ml", "1,5 l", "2 l"]);
  });
});

test("a dilution is worded for people, and kept the same whoever made it", () => {
  expect(german(() => formatDilution(STOCK))).toBe("Stammlösung");
  expect(formatDilution(STOCK)).toBe("stock");
  expect(german(() => makeDilution(STOCK))).toBe("stock");
  expect(german(() => [sayDilution("stock"), sayDilution("1+9")])).toEqual(["Stammlösung", "1+9"]);
});

test.each(["stock", "Stammlösung", "stammloesung", "unverdünnt"])("%s is read as the stock", (typed) => {
  const read = parseDilution(typed);
  expect(read.ok && makeDilution(read.value)).toBe("stock");
});

test("lists, quotes, instants", () => {
  expect(german(() => joinAnd(["a", "b", "c"]))).toBe("a, b und c");
  expect(german(() => joinOr(["a", "b"]))).toBe("a oder b");
  expect([joinOr(["a", "b", "c"]), joinOr(["a"]), joinOr([])]).toEqual(["a, b or c", "a", ""]);
  expect([quoted("x"), german(() => quoted("x"))]).toEqual(['"x"', "„x“"]);
  const now = Date.parse("2026-11-25T08:00:00Z");
  const text = `${instant(now, "time")} | ${instant(now, "date")} | ${instant(now + 5000, "relative")} | ${instant(now - 65_000, "relative")}`;
  expect(german(() => sayInstants(text, now, "UTC"))).toBe("08:00:00 | 25.11.2026 | in 5 s | vor 1 min 5 s");
  expect(sayInstants(text, now, "UTC")).toBe("08:00:00 | 25 Nov 2026 | in 5 s | 1 min 5 s ago");
});
